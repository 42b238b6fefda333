package body_test

import (
	"database/sql/driver"
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"iter"
	"strings"
	"testing"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

type value interface {
	comparable
	encoding.TextMarshaler
	fmt.Stringer
	driver.Valuer
}

// checkTexts walks every number of a vocabulary of count values: each comes
// back from its text, from a database and from JSON, and the rest is refused.
func checkTexts[E value, P interface {
	*E
	encoding.TextUnmarshaler
	Scan(src any) error
}](t *testing.T, number func(uint8) E, count int) {
	t.Helper()
	texts := map[string]bool{}
	for n := range 256 {
		e := number(uint8(n))
		text, err := e.MarshalText()
		if n > count {
			if !errors.Is(err, field.ErrOutOfRange) || !strings.HasSuffix(e.String(), fmt.Sprintf("(%d)", n)) {
				t.Errorf("%T %d: text %q, %v, want ErrOutOfRange", e, n, text, err)
			}
			continue
		}
		if err != nil || string(text) != e.String() || texts[string(text)] || (n == 0) != (len(text) == 0) {
			t.Errorf("%T %d: text %q, %v, want one of its own", e, n, text, err)
		}
		texts[string(text)] = true
		var back E
		if err := P(&back).UnmarshalText(text); err != nil || back != e {
			t.Errorf("%T %q comes back as %v, %v", e, text, back, err)
		}
		stored, err := e.Value()
		if want := any(string(text)); n == 0 && stored != nil || n > 0 && stored != want || err != nil || P(&back).Scan(stored) != nil || back != e {
			t.Errorf("%T %q: stored as %#v, %v, comes back as %v", e, text, stored, err, back)
		}
		quoted, err := json.Marshal(e)
		if err != nil || field.Decode(quoted, &back, field.Strict) != nil || back != e {
			t.Errorf("%T: JSON %s comes back as %v", e, quoted, back)
		}
	}
	for _, bad := range []string{"x", " ", strings.Repeat("left", 100), "\xff"} {
		back := number(1)
		if err := P(&back).UnmarshalText([]byte(bad)); !errors.Is(err, field.ErrUnknown) || back != number(1) {
			t.Errorf("%T %q: %v, %v, want ErrUnknown and no change", back, bad, back, err)
		}
	}
}

func TestTexts(t *testing.T) {
	checkTexts(t, func(n uint8) body.Sex { return body.Sex(n) }, int(body.Male))
	checkTexts(t, func(n uint8) body.Training { return body.Training(n) }, int(body.Advanced))
	checkTexts(t, func(n uint8) body.Side { return body.Side(n) }, int(body.Both))
	checkTexts(t, func(n uint8) body.Region { return body.Region(n) }, int(body.AnkleFoot))
	checkTexts(t, func(n uint8) body.Muscle { return body.Muscle(n) }, int(body.ToeExtensors))
	checkTexts(t, func(n uint8) body.Demand { return body.Demand(n) }, int(body.FastMovement))
	checkTexts(t, func(n uint8) body.Hold { return body.Hold(n) }, int(body.Unloaded))
	checkTexts(t, func(n uint8) body.Stated { return body.Stated(n) }, int(body.Total))
}

// TestEvery holds that the sequences give each value once, in rising order,
// from the first to the last, and stop when asked.
func TestEvery(t *testing.T) {
	checkEvery(t, body.Regions(), body.WholeBody, body.AnkleFoot)
	checkEvery(t, body.Muscles(), body.LevatorScapulae, body.ToeExtensors)
	checkEvery(t, body.EveryDemand(), body.SpinalCompression, body.FastMovement)
	checkEvery(t, body.Holds(), body.OneHand, body.Unloaded)
}

func checkEvery[E ~uint8](t *testing.T, all iter.Seq[E], first, last E) {
	t.Helper()
	next := first
	for e := range all {
		if e != next {
			t.Errorf("%v stands where %v belongs", e, next)
		}
		next++
	}
	if next != last+1 {
		t.Errorf("the sequence ends before %v, want after %v", next, last)
	}
	for e := range all {
		if e != first {
			t.Errorf("%v stands first, want %v", e, first)
		}
		break
	}
}

func TestMuscleTexts(t *testing.T) {
	var got body.Muscle
	for m := range body.Muscles() {
		if err := got.UnmarshalText([]byte(m.String())); err != nil || got != m {
			t.Errorf("%q reads as %v, %v", m, got, err)
		}
	}
	if err := got.UnmarshalText([]byte("pinky")); !errors.Is(err, field.ErrUnknown) || !strings.Contains(err.Error(), "gluteus_maximus") {
		t.Errorf("pinky: %v, want ErrUnknown with the muscles there are", err)
	}
}

func TestChecks(t *testing.T) {
	tests := []struct {
		name string
		err  error
		want error
	}{
		{"no age", body.Age(0).Check(), field.ErrMissing},
		{"1 year", body.Age(1).Check(), field.ErrOutOfRange},
		{"17 years", body.Age(17).Check(), field.ErrOutOfRange},
		{"18 years", body.Age(18).Check(), nil},
		{"19 years", body.Age(19).Check(), nil},
		{"119 years", body.Age(119).Check(), nil},
		{"120 years", body.Age(120).Check(), nil},
		{"121 years", body.Age(121).Check(), field.ErrOutOfRange},
		{"255 years", body.Age(255).Check(), field.ErrOutOfRange},
		{"no training status", body.Training(0).Check(), field.ErrMissing},
		{"novice", body.Novice.Check(), nil},
		{"advanced", body.Advanced.Check(), nil},
		{"beyond advanced", (body.Advanced + 1).Check(), field.ErrOutOfRange},
		{"no side", body.Side(0).Check(), field.ErrMissing},
		{"both sides", body.Both.Check(), nil},
		{"a fourth side", (body.Both + 1).Check(), field.ErrOutOfRange},
		{"no region", body.Region(0).Check(), field.ErrMissing},
		{"ankle and foot", body.AnkleFoot.Check(), nil},
		{"beyond the regions", (body.AnkleFoot + 1).Check(), field.ErrOutOfRange},
		{"no hold", body.Hold(0).Check(), field.ErrMissing},
		{"unloaded", body.Unloaded.Check(), nil},
		{"beyond the holds", (body.Unloaded + 1).Check(), field.ErrOutOfRange},
	}
	for _, tt := range tests {
		if !errors.Is(tt.err, tt.want) || (tt.want == nil) != (tt.err == nil) {
			t.Errorf("%s: %v, want %v", tt.name, tt.err, tt.want)
		}
	}
}

func TestResisted(t *testing.T) {
	want := map[body.Region]body.Demand{
		body.Neck: body.SpinalCompression, body.UpperBack: body.SpinalCompression, body.LowerBack: body.SpinalCompression,
		body.Shoulder: body.ShoulderResisted, body.Elbow: body.ElbowResisted, body.WristHand: body.WristResisted,
		body.Abdomen: body.AbdominalPressure, body.Hip: body.HipResisted, body.Knee: body.KneeResisted, body.AnkleFoot: body.AnkleResisted,
	}
	for n := range 256 {
		r := body.Region(n)
		got, ok := r.Resisted()
		if d, has := want[r]; got != d || ok != has {
			t.Errorf("%v.Resisted() = %v, %v, want %v, %v", r, got, ok, d, has)
		}
	}
	for r := range body.Regions() {
		if _, ok := r.Resisted(); !ok && r != body.WholeBody {
			t.Errorf("loaded work of %s makes no demand", r)
		}
	}
}
