package cli

import (
	"errors"
	"fmt"
	"io"
	"slices"

	"github.com/alecthomas/kong"
)

// Exit codes of every command.
const (
	exitWell       = 0 // nothing worse than close to a limit
	exitFault      = 1 // a fault or a danger
	exitUnreadable = 2 // the command line, the file or the document could not be read
)

// commands is the whole grammar of the command line.
type commands struct {
	Check   checkCommand   `cmd:"" help:"Say what is wrong or close to a limit."`
	Figures figuresCommand `cmd:"" help:"Print the figures of a build."`
	Working workingCommand `cmd:"" help:"Show how a figure was worked out."`
	Finding findingCommand `cmd:"" help:"Explain a finding, here or in general."`
	Draw    drawCommand    `cmd:"" help:"Draw the arrangement as SVG, PDF or PNG."`
	Compare compareCommand `cmd:"" help:"Lay two builds, or a build and one of its alternatives, side by side."`
	New     newCommand     `cmd:"" help:"Begin a build from the nearest generic body."`
	Import  importCommand  `cmd:"" help:"Make a build's own file from a document, or from the archive of a whole build."`
	Export  exportCommand  `cmd:"" help:"Write the document of a build, or the whole build as an archive."`
	Backup  backupCommand  `cmd:"" help:"Copy a build's own file, check the copy, and thin out older ones."`
	Restore restoreCommand `cmd:"" help:"Put a backup in the place of a build's own file, which is kept."`
	Verify  verifyCommand  `cmd:"" help:"Read every revision and photo of a build's own file and say whether it is sound."`
	Weather weatherCommand `cmd:"" help:"Print the months of an hourly weather file, to put into a document."`
	Schema  schemaCommand  `cmd:"" help:"Print the JSON Schema of the document."`
	Serve   serveCommand   `cmd:"" help:"Open the workspace on a build in the browser."`
	Demo    demoCommand    `cmd:"" help:"Open the workspace on an invented build and print its headline."`
}

// streams are where a command reads and writes.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// exit is how a command asks for an exit code without a message of its own.
type exit int

func (e exit) Error() string { return fmt.Sprintf("exit %d", int(e)) }

// Run parses the arguments, runs one command and returns the exit code.
func Run(args []string, in io.Reader, out, errs io.Writer) int {
	var grammar commands
	leave := -1
	parser, err := kong.New(&grammar,
		kong.Name("tumblehome"),
		kong.Description("Works out a small camper from one document and keeps it true."),
		kong.Writers(out, errs),
		kong.Exit(func(code int) { leave = code }),
		kong.UsageOnError(),
	)
	if err != nil {
		fmt.Fprintln(errs, "tumblehome:", err)
		return exitUnreadable
	}
	if len(args) == 0 || args[0] == "help" { // "help check" is "check --help"
		args = append(slices.Clone(args[min(len(args), 1):]), "--help")
	}
	context, err := parser.Parse(args)
	if leave >= 0 {
		return leave
	}
	if err != nil {
		fmt.Fprintf(errs, "tumblehome: %v\nTry tumblehome --help.\n", err)
		return exitUnreadable
	}
	return codeOf(context.Run(&streams{in, out, errs}), errs)
}

// codeOf turns what a command returned into its exit code, printing what has not been printed.
func codeOf(err error, errs io.Writer) int {
	var asked exit
	switch {
	case err == nil:
		return exitWell
	case errors.As(err, &asked):
		return int(asked)
	}
	fmt.Fprintln(errs, "tumblehome:", plain(err))
	return exitUnreadable
}
