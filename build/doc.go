// Package build answers: what has the builder said, and is it well said?
//
// A Document is everything a builder knows or has decided, as one value. Decode reads it from YAML or JSON, strictly: every error has a
// place, says what was expected and what was perhaps meant, and nothing is loaded unless all of it can be. Encode and WriteYAML
// write it in one canonical form, Apply makes another document from one and a merge patch (RFC 7396), Schema describes it.
// One set of Go types serves all of these; what a field is called, means and allows stands in its tags:
//
//	doc       the key; ",need" where it must be given
//	says      what it is, in plain words
//	range     least and most, in the unit of the field
//	one       the words allowed; separated by commas where a word holds a blank
//	ref       what it refers to: a collection, "path" (dotted, from the top), "row", "material" or "setting"
//	keys      what the keys of a map are, where they are not free ids
//	reserved  ids that may not be chosen
//	draft     its trade comes later; it is read, checked and kept
package build
