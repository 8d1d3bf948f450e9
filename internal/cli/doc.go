// Package cli answers from the command line what the pages answer in the browser.
//
// Every command reads one build, a document (YAML or JSON) or a build's own file (*.tumblehome), and leaves 0 when all is well,
// 1 when it found a fault, 2 when it could not read what it was given.
package cli
