// Command proof prints the table of every figure that a test checked against
// a source outside this project. `make proof` calls it with the folder that
// the tests wrote to.
package main

import (
	"fmt"
	"os"

	"tumblehome/internal/proof"
)

func main() {
	if len(os.Args) != 2 {
		fmt.Fprintln(os.Stderr, "usage: proof FOLDER")
		os.Exit(2)
	}
	if err := print(os.Args[1]); err != nil {
		fmt.Fprintln(os.Stderr, "proof:", err)
		os.Exit(1)
	}
}

func print(folder string) error {
	records, err := proof.Read(folder)
	if err != nil {
		return err
	}
	if len(records) == 0 {
		return fmt.Errorf("%s holds no case: no test wrote one", folder)
	}
	failed, err := proof.Table(os.Stdout, records)
	if err != nil {
		return err
	}
	if failed > 0 {
		return fmt.Errorf("%d of %d figures do not hold", failed, len(records))
	}
	return nil
}
