package volume

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A VolumeClass is one class of weekly sets.
type VolumeClass struct {
	Name string               `json:"name"` // low, medium, moderate or high
	Sets units.Range[float64] `json:"sets"` // a week
}

// A Classification is a published way to class weekly volume. It describes what groups
// of people did in trials, per muscle group; it asks nothing of anybody.
type Classification struct {
	ID         string        `json:"id"`
	Population string        `json:"population"`
	Bands      []VolumeClass `json:"bands"`               // rising; numbers between two belong to neither
	Convention Convention    `json:"convention,omitzero"` // zero: what was seen of the source does not say
	// Assumed says that the convention is the caller's and not the source's.
	Assumed bool            `json:"assumed,omitzero"`
	Fact    evidence.FactID `json:"fact"`
}

// below, above and from write classes of sets, which go by half sets.
func below(n float64) units.Range[float64]       { return units.AtMost(n - 0.5) }
func above(n float64) units.Range[float64]       { return units.AtLeast(n + 0.5) }
func from(min, max float64) units.Range[float64] { return units.Must(units.Between(min, max)) }

// schemes are the published classes, with their source.
var schemes = []struct {
	Classification
	source evidence.SourceID
}{
	{Classification{ID: "schoenfeld2017", Population: "people in the trials that were pooled", Fact: "volume.bands-schoenfeld2017",
		Bands: []VolumeClass{{"low", below(5)}, {"medium", from(5, 9)}, {"high", units.AtLeast(10.0)}}}, "schoenfeld2017"},
	{Classification{ID: "bazvalle2022", Population: "young trained men", Fact: "volume.bands-bazvalle2022",
		Bands: []VolumeClass{{"low", below(12)}, {"moderate", from(12, 20)}, {"high", above(20)}}}, "bazvalle2022"},
}

// Classifications yields the published schemes. None says how it counts indirect sets,
// as far as its source was read: [Classification.Assuming] reads one in a convention.
func Classifications() iter.Seq[Classification] {
	return func(yield func(Classification) bool) {
		for _, s := range schemes {
			one := s.Classification
			one.Bands = slices.Clone(one.Bands)
			if !yield(one) {
				return
			}
		}
	}
}

// Assuming returns s read in convention c where its source does not say one.
func (s Classification) Assuming(c Convention) Classification {
	if s.Convention == 0 && c.Check() == nil {
		s.Convention, s.Assumed = c, true
	}
	return s
}

// Class returns the band that n sets a week lie in. It is a
// [field.ErrMissing] or [field.ErrConflict] if the conventions are not known
// to be the same, and a [field.ErrOutOfRange] between two bands.
func (s Classification) Class(n Sets) (VolumeClass, error) {
	for _, b := range s.Bands {
		side, err := n.Against(b.Sets, s.Convention)
		if err != nil {
			return VolumeClass{}, err
		}
		if side == 0 {
			return b, nil
		}
	}
	return VolumeClass{}, field.Bad(n, s.describe(), field.ErrOutOfRange)
}

func (s Classification) describe() string {
	text := "weekly sets per muscle"
	for _, b := range s.Bands {
		text += fmt.Sprintf("; %s: %v", b.Name, b.Sets)
	}
	return text
}
