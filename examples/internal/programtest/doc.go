// Package programtest calls a program within its test, and kills it. Only tests import it.
package programtest
