package store

import "fmt"

// stacks are the revisions that undo, and those that redo, would reverse, the next one last. Every revision carries its own inverse,
// so an undo is reversed like any edit.
type stacks struct{ undo, redo []int }

// add follows the history by one revision. The error says that the history can not have happened.
func (s *stacks) add(n int, kind Kind) error {
	switch kind {
	case Begin:
		if n != 1 {
			return fmt.Errorf("revision %d begins the build again", n)
		}
	case Made:
		s.undo, s.redo = append(s.undo, n), nil
	case Undid:
		if len(s.undo) == 0 {
			return fmt.Errorf("revision %d takes back an edit, and there is none", n)
		}
		s.undo, s.redo = s.undo[:len(s.undo)-1], append(s.redo, n)
	case Redid:
		if len(s.redo) == 0 {
			return fmt.Errorf("revision %d brings back an edit, and none was taken back", n)
		}
		s.undo, s.redo = append(s.undo, n), s.redo[:len(s.redo)-1]
	default:
		return fmt.Errorf("revision %d is a %q, which is no kind of revision", n, kind)
	}
	return nil
}

// top is the last of a stack.
func top(stack []int) (n int, ok bool) {
	if len(stack) == 0 {
		return 0, false
	}
	return stack[len(stack)-1], true
}
