// Command tumblehome works out a small camper from one document and keeps it true.
package main

import (
	"os"

	"tumblehome/internal/cli"
)

func main() {
	os.Exit(cli.Run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
