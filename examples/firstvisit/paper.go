package main

import (
	"io"

	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/visit"
)

func newPaper(w io.Writer) (*page.Paper, error) {
	words, err := visit.Words()
	return page.New(w, words), err
}
