// Package document is a paper for people as a small tree of headings, paragraphs,
// lists and tables, printed as plain text or as one HTML file that is read on a
// screen or printed.
package document
