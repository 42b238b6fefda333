// Command screencases asks every published screening rule of a table of cases
// by itself and prints each answer that is not the one expected.
//
//	go run ./examples/screencases [FILE]
//
// FILE is a CSV file with the columns id, inputs, expected and source, where
// inputs and expected are JSON in the vocabulary of the published table;
// without it that table is used. What its first lines say behind a # is printed
// first: whose cases they are. The status is 0 if all agree, 1 if any does
// not, and 2 if the file, or a row of it, cannot be read; the rows that can are
// compared nevertheless.
package main
