// Package sheet answers: how does this build look on paper?
package sheet
