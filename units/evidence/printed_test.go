package evidence_test

import (
	"errors"
	"fmt"
	"reflect"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

type named string

// kettle prints itself, and cannot when it is nil.
type kettle struct{ litres float64 }

func (k *kettle) String() string { return fmt.Sprintf("kettle of %v L", k.litres) }

// lid can be printed even when it is nil.
type lid struct{}

func (l *lid) String() string { return "lid" }

type leak struct{}

func (leak) String() string { panic("a leak") }

// spout is a Stringer and an error; the error comes first.
type spout struct{}

func (spout) String() string { return "spout" }
func (spout) Error() string  { return "spout is blocked" }

// scale is a Stringer and a Formatter; the Formatter comes first.
type scale struct{}

func (scale) String() string             { return "scale" }
func (scale) Format(f fmt.State, _ rune) { fmt.Fprint(f, "scale of lime") }

// With prints a value as fmt.Sprint does.
func TestWithPrints(t *testing.T) {
	values := []any{
		nil, true, []byte("lime"), []int{1, 2}, struct{ a, b int }{1, 2}, &struct{ a int }{1}, map[string]int{"a": 1},
		"", "lime", named("lime"), evidence.FactID("kettle.lime"), []string{"a"},
		&kettle{1.7}, (*kettle)(nil), kettle{1.7}, (*lid)(nil), leak{}, &leak{}, (*leak)(nil), fmt.Stringer(nil),
		errors.New("blocked"), error(nil), spout{}, &spout{}, (*spout)(nil), scale{}, &scale{}, (*scale)(nil),
		reflect.ValueOf(7), reflect.ValueOf(spout{}), reflect.ValueOf("lime"), reflect.Value{}, reflect.TypeFor[int](),
		units.KG, units.MassUnit(9), units.ScaleBorg, units.Scale(99), units.Must(units.RPE(8.5)), units.Effort{}, evidence.Design,
		units.Marked{Mass: 25 * units.Pound, Unit: units.LB}, units.Range[float64]{}, field.Errors(nil),
	}
	for _, value := range values {
		checkPrinted(t, value)
	}
	rapid.Check(t, func(t *rapid.T) {
		text, n, x := rapid.String().Draw(t, "text"), rapid.Int().Draw(t, "n"), rapid.Float64().Draw(t, "x")
		for _, value := range []any{
			text, named(text), n, int8(n), uint(n), x, float32(x), units.RIR(x), units.Fraction(x), units.Day(n),
			units.AtLeast(n), units.AtMost(x), units.Exactly(units.Mass(n)), units.AtMost(text), &n, spout{}, leak{},
		} {
			checkPrinted(t, value)
		}
	})
}

// A mass that was worked out is not printed to the nanogram, and never above itself.
func TestWithPrintsMassesShort(t *testing.T) {
	got := evidence.Because("kettle.note").With("most", units.Mass(2_266_666_666_666)).Args[0].Value
	if got != "2.2 kg" {
		t.Errorf("With prints %q, want %q", got, "2.2 kg")
	}
}

func checkPrinted(t interface{ Errorf(string, ...any) }, value any) {
	want := []evidence.Arg{{Name: "value", Value: fmt.Sprint(value)}}
	if got := evidence.Because("kettle.note").With("value", value).Args; !reflect.DeepEqual(got, want) {
		t.Errorf("With(%T) gives %+v, want %+v", value, got, want)
	}
}
