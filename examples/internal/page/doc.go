// Package page prints plain text for people: wrapped lines, and what a client
// is to leave out, in everyday words.
package page
