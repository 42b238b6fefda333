// Package page prints plain text for people: wrapped lines, reasons in the words
// of their reader, what screening found, and the facts behind it.
package page
