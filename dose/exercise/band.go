package exercise

import (
	"slices"

	"example.org/posology/units/body"
)

// WithBands returns a catalogue in which each exercise with a band that names none has,
// beside it, one for each of the bands, given from the weakest to the strongest as
// their user put them in order: "band-row-soft" of a band "soft". The next band is the harder
// variant of the one before; the weakest stands above what the exercise stood above.
// No mass is known of a band, so nothing but this order is. Those that the catalogue
// has already stay as they are. Names that make no ID, or that stand twice, are
// reported as [Catalogue.With] reports them.
func (c Catalogue) WithBands(weakestFirst ...string) (Catalogue, error) {
	if len(weakestFirst) == 0 {
		return c, nil
	}
	n := Catalogue{listed: slices.Clone(c.listed)}
	first := map[ID]ID{} // of an exercise that names no band, the one with the weakest
	var added []Exercise
	for _, e := range c.listed {
		if e.Hold != body.OnBand || e.Band != "" || c.at(banded(e.ID, weakestFirst[0])) != nil {
			continue
		}
		first[e.ID] = banded(e.ID, weakestFirst[0])
		added = append(added, e.withEach(weakestFirst)...)
	}
	if len(added) == 0 {
		return c, nil
	}
	for i := range n.listed {
		if to, some := first[n.listed[i].Harder]; some {
			n.listed[i].Harder = to
		}
	}
	for i := range added {
		if to, some := first[added[i].Easier]; some {
			added[i].Easier = to
		}
	}
	return Catalogue{}.With(append(n.listed, added...)...)
}

// withEach returns e with each of the bands.
func (e Exercise) withEach(bands []string) []Exercise {
	list := make([]Exercise, len(bands))
	for i, band := range bands {
		b := e.clone()
		b.ID, b.Name, b.Aliases, b.Band, b.Harder = banded(e.ID, band), e.Name+": "+band, nil, band, ""
		if i > 0 {
			b.Easier, list[i-1].Harder = list[i-1].ID, b.ID
		}
		list[i] = b
	}
	return list
}

func banded(id ID, band string) ID { return id + "-" + ID(band) }
