package field_test

import (
	"database/sql/driver"
	"fmt"
	"iter"

	"example.org/posology/units/field"
)

// A shelf is an enumeration of a program's own. Its methods are one line each.
type shelf uint8

const (
	low shelf = iota + 1
	high
)

var shelves = field.NewVocabulary[shelf]("shelf", "", "low", "high")

func (s shelf) String() string                   { return shelves.Text(s) }
func (s shelf) MarshalText() ([]byte, error)     { return shelves.Marshal(s) }
func (s *shelf) UnmarshalText(text []byte) error { return shelves.Unmarshal(text, s) }
func (s shelf) Value() (driver.Value, error)     { return field.Value(s) }
func (s *shelf) Scan(src any) error              { return field.Scan(src, s) }

// An enumeration prints as its text, is stored as that, and refuses a bare number.
func ExampleNewVocabulary() {
	shelves := field.NewVocabulary[shelf]("shelf", "", "low", "high")
	s, err := shelves.Parse("high")
	fmt.Println(s == high, err)
	stored, err := field.Value(s)
	fmt.Println(stored, err)
	var back shelf
	fmt.Println(field.Scan("low", &back), back == low)
	fmt.Println(field.Scan(2, &back))
	_, err = shelves.Parse("middle")
	fmt.Println(err)
	// Output:
	// true <nil>
	// high <nil>
	// <nil> true
	// malformed: value = int 2, allowed: the text that was stored, not a number
	// unknown: value = "middle", allowed: shelf: low, high
}

// An error names the field, what stood there, and what may stand there.
func ExampleNew() {
	err := field.New("/load", "30 kg", "at most 20 kg", field.ErrOutOfRange)
	fmt.Println(err)
	fmt.Println(field.At("/sets/2", err)) // a caller says where the value stands
	fmt.Println(field.At("/sets/2/load", field.Bad("30 kg", "at most 20 kg", field.ErrOutOfRange)))
	// Output:
	// out of range: /load = 30 kg, allowed: at most 20 kg
	// out of range: /sets/2/load = 30 kg, allowed: at most 20 kg
	// out of range: /sets/2/load = 30 kg, allowed: at most 20 kg
}

// What is read is checked before it is handed on.
func ExampleDecodeChecked() {
	var n int
	even := func(n int) error {
		if n%2 != 0 {
			return field.Bad(n, "an even number", field.ErrOutOfRange)
		}
		return nil
	}
	fmt.Println(field.DecodeChecked([]byte("4"), &n, field.Strict, even), n)
	fmt.Println(field.DecodeChecked([]byte("5"), &n, field.Strict, even), n)
	// Output:
	// <nil> 4
	// out of range: value = 5, allowed: an even number (line 1, column 1) 4
}

// A name that is not known, and those that may have been meant.
func ExampleDidYouMean() {
	names := func() iter.Seq2[string, string] {
		return func(yield func(string, string) bool) {
			_ = yield("goblet-squat", "goblet squat") && yield("split-squat", "split squat") && yield("calf-raise", "standing calf raise")
		}
	}
	fmt.Println(field.DidYouMean("squats", names()))
	fmt.Println(field.DidYouMean("calf-rase", names()))
	// Output:
	// did you mean goblet-squat or split-squat
	// did you mean calf-raise
}
