// Package shape holds the forms of published equations: 1RM over load by repetitions.
package shape
