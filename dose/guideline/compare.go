package guideline

import (
	"fmt"
	"slices"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Comparison sets recommendations side by side, a column each.
type Comparison struct {
	Columns []ID             `json:"columns"`
	Lines   []ComparisonLine `json:"lines"` // of the fields that any column states, in their order
}

// A ComparisonLine is one field across the columns of a table.
type ComparisonLine struct {
	Field Field  `json:"field"`
	About string `json:"about"` // what the field is about, with its unit
	Cells []Cell `json:"cells"` // one for each column
}

// A Cell is what one recommendation states in one field. The zero value means
// that it does not state it.
type Cell struct {
	Value string          `json:"value,omitzero"`
	Basis evidence.Basis  `json:"basis,omitzero"`
	Fact  evidence.FactID `json:"fact,omitzero"` // for rows of this package
}

// Stated reports whether the recommendation states the field.
func (c Cell) Stated() bool { return c.Value != "" }

// Compare sets the given recommendations side by side, in their order, such as
// those that [For] found. Nothing is filled in where one of them is silent.
func Compare(list ...Recommendation) Comparison {
	t := Comparison{Columns: make([]ID, len(list))}
	for i, r := range list {
		t.Columns[i] = r.ID
	}
	for f := range Fields() {
		line := ComparisonLine{f, f.About(), make([]Cell, len(list))}
		for i, r := range list {
			line.Cells[i] = r.cell(f)
		}
		if slices.ContainsFunc(line.Cells, Cell.Stated) {
			t.Lines = append(t.Lines, line)
		}
	}
	return t
}

func (r Recommendation) cell(f Field) Cell {
	c := Cell{Value: readers[f].value(&r), Basis: r.BasisOf(f)}
	if c.Stated() {
		c.Fact = r.factID(f)
	}
	return c
}

// UnmarshalJSON is strict: unknown fields and fields given twice are errors,
// and so is a line with more or fewer cells than there are columns.
func (t *Comparison) UnmarshalJSON(data []byte) error {
	type plain Comparison
	var got plain
	if err := field.Decode(data, &got, field.Strict); err != nil {
		return err
	}
	var bad field.Errors
	for i, line := range got.Lines {
		if len(line.Cells) != len(got.Columns) {
			bad.Add(fmt.Sprintf("/lines/%d/cells", i), field.Bad(len(line.Cells), fmt.Sprintf("%d cells, one for each column", len(got.Columns)), field.ErrConflict))
		}
	}
	return field.Assign(t, Comparison(got), bad.Err())
}
