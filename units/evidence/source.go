package evidence

import (
	_ "embed"
	"iter"
	"slices"
	"strings"
	"sync"
)

// SourceID is the key of a publication: first author or body, and year.
type SourceID string

// A Source is a publication.
type Source struct {
	ID       SourceID `json:"id"`
	Citation string   `json:"citation"`
	DOI      string   `json:"doi,omitzero"`
	// DOISeen reports whether the DOI was printed where the source was read;
	// otherwise it is from memory and unchecked.
	DOISeen bool `json:"doi_seen,omitzero"`
}

// sourcesTSV holds the sources, by subject. Nothing else holds these rows.
//
//go:embed sources.tsv
var sourcesTSV string

// sources reads the list on first use. A test holds that every row has its four cells.
var sources = sync.OnceValue(func() []Source {
	var list []Source
	for line := range strings.SplitSeq(sourcesTSV, "\n") {
		if cells := strings.Split(line, "\t"); len(cells) == 4 {
			list = append(list, Source{ID: SourceID(cells[0]), DOI: cells[1], DOISeen: cells[2] == "seen", Citation: cells[3]})
		}
	}
	return list
})

// Sources yields every source, in the order of the subjects.
func Sources() iter.Seq[Source] { return slices.Values(sources()) }

// LookUp returns the source with the given ID, and whether there is one.
func LookUp(id SourceID) (Source, bool) {
	s, ok := sourceOf()[id]
	return s, ok
}

var sourceOf = sync.OnceValue(func() map[SourceID]Source {
	all := map[SourceID]Source{}
	for s := range Sources() {
		all[s.ID] = s
	}
	return all
})
