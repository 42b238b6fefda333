package evidence

import (
	"iter"
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

// Sources yields every source, in the order of the subjects.
func Sources() iter.Seq[Source] {
	return func(yield func(Source) bool) {
		for _, part := range sources {
			for _, s := range part {
				if !yield(s) {
					return
				}
			}
		}
	}
}

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

// sources are kept by subject, one file each.
var sources = [][]Source{effortSources, loadRepsSources, screeningSources, guidelineSources, exerciseSources, progressionSources, functionSources, volumeSources, besideSources, dailySources, choiceSources}
