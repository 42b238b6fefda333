// Package programtest calls a program within its test, writes files for it, and kills it. Only
// tests import it.
package programtest
