package guideline_test

import (
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

var ranges = cmp.AllowUnexported(units.Range[int]{}, units.Range[units.Fraction]{}, units.Range[float64]{}, units.Range[units.RIR]{})

func TestRowsConsistent(t *testing.T) {
	for r := range guideline.All() {
		if err := r.Goal.Check(); err != nil {
			t.Errorf("%s: %v", r.ID, err)
		}
		for _, id := range r.SupersededBy {
			later, err := guideline.Get(id)
			if err != nil || later.Year <= r.Year || later.Body != r.Body {
				t.Errorf("%s is superseded by %s of %d, %v", r.ID, id, later.Year, err)
			}
		}
		if r.Source == "ratamess2009" && (len(r.SupersededBy) == 0 || !strings.Contains(r.Notes, "healthy adults")) {
			t.Errorf("%s: superseded by %v, notes %q", r.ID, r.SupersededBy, r.Notes)
		}
		for i, b := range r.Bases {
			if i > 0 && r.Bases[i-1].Field >= b.Field {
				t.Errorf("%s: bases of %s and %s are out of order", r.ID, r.Bases[i-1].Field, b.Field)
			}
			if _, stated := r.Stated(b.Field); !stated {
				t.Errorf("%s: basis of %s, which is not stated", r.ID, b.Field)
			}
		}
		secondary := false
		for f := range guideline.Fields() {
			secondary = secondary || r.BasisOf(f) == evidence.Secondary
		}
		if secondary && r.Via == "" {
			t.Errorf("%s has secondary fields and does not say where they were read", r.ID)
		}
		for _, share := range []units.Range[units.Fraction]{r.Load, r.LoadUpper, r.LoadLower, r.LoadStart, r.LoadStep} {
			for _, end := range shareEnds(share) {
				if end < 0 || end > 1 {
					t.Errorf("%s: a share of %s", r.ID, end)
				}
			}
		}
	}
}

func shareEnds(r units.Range[units.Fraction]) []units.Fraction {
	var list []units.Fraction
	if v, ok := r.Min(); ok {
		list = append(list, v)
	}
	if v, ok := r.Max(); ok {
		list = append(list, v)
	}
	return list
}

func TestFacts(t *testing.T) {
	facts := ledger(t)
	f, ok := facts.Fact("guideline.acsm2011-older-start.load")
	if want := "load in shares of 1RM: 40 % to 50 %"; !ok || f.Value != want || f.Basis != evidence.Secondary || f.Via == "" {
		t.Errorf("fact = %+v, want %q", f, want)
	}
	f, _ = facts.Fact("guideline.gschwind2013-beginner.effort")
	if want := "effort: 12 to 13 on Borg 6-20"; f.Value != want || f.Basis != evidence.Published || f.Via != "" {
		t.Errorf("fact = %+v, want %q", f, want)
	}
	named := map[evidence.FactID]bool{}
	for r := range guideline.All() {
		for f := range guideline.Fields() {
			id, stated := r.Fact(f)
			if stated {
				named[id] = true
			}
			if text, said := r.Stated(f); said != stated || said != (text != f.About()+": ") {
				t.Errorf("%s: Fact of %s says stated %v, Stated says %v, %q", r.ID, f, stated, said, text)
			}
		}
		if id, stated := r.Fact(0); stated || id != "" || r.BasisOf(99) != 0 {
			t.Errorf("%s states %q in a field that there is not", r.ID, id)
		}
	}
	for f := range facts.All() {
		if !named[f.ID] {
			t.Errorf("fact %s belongs to no field", f.ID)
		}
	}
	for range guideline.Facts() {
		break
	}
	for range guideline.All() {
		break
	}
}

// A recommendation of the caller's own, and a row that the caller changed,
// answer for what they state themselves.
func TestFactOfOwn(t *testing.T) {
	r, err := guideline.Get("acsm2011-older-start")
	if err != nil {
		t.Fatal(err)
	}
	r.Load, r.LoadRule = units.Range[units.Fraction]{}, "when it feels light"
	if id, stated := r.Fact(guideline.FieldLoad); stated || r.BasisOf(guideline.FieldLoad) != 0 {
		t.Errorf("states %q in a field that was emptied", id)
	}
	if id, stated := r.Fact(guideline.FieldLoadRule); !stated || id != "guideline.acsm2011-older-start.load_rule" {
		t.Errorf("Fact = %q, %v for a field that was filled", id, stated)
	}
	r.ID = "clinic-start"
	if id, stated := r.Fact(guideline.FieldLoadRule); !stated || id != "guideline.clinic-start.load_rule" {
		t.Errorf("Fact = %q, %v of a row of the clinic's own", id, stated)
	}
}

func TestGet(t *testing.T) {
	tests := []struct {
		id      guideline.ID
		allowed string
	}{
		{"acsm2011-older", "perhaps acsm2011-older-start, acsm2011-older-power"},
		{"acsm2026-hyper", "perhaps acsm2026-hypertrophy"},
		{"gschwind2013-begginer", "perhaps gschwind2013-beginner"},
		{"who", "perhaps who2020-older, who2020-adults"},
		{"ca", "perhaps cardiacrehab2021-stage0, cardiacrehab2021-stage1, cardiacrehab2021-stage2, cardiacrehab2021-stage3"},
		{"cat", "perhaps cardiacrehab2021-stage0, cardiacrehab2021-stage1, cardiacrehab2021-stage2, cardiacrehab2021-stage3"},
		{"coat", "the ID of a recommendation, such as acsm2009-strength-novice"},
		{"zzz", "the ID of a recommendation, such as acsm2009-strength-novice"},
		{"", "the ID of a recommendation, such as acsm2009-strength-novice"},
	}
	for _, tt := range tests {
		_, err := guideline.Get(tt.id)
		var f *field.Error
		if !errors.As(err, &f) || !errors.Is(err, field.ErrUnknown) || f.Allowed != tt.allowed {
			t.Errorf("Get(%q): %v, want %q", tt.id, err, tt.allowed)
		}
	}
}

// TestCopies holds that what callers do to a row stays with them.
func TestCopies(t *testing.T) {
	r, err := guideline.Get("borde2015-strength")
	if err != nil {
		t.Fatal(err)
	}
	r.Effects[0].Value = 99
	clinical, _ := guideline.Get("giangregorio2014-osteoporosis")
	clinical.Conditions[0] = guideline.Cancer
	n := guideline.For(guideline.Query{Training: body.Novice})[0]
	n.Training[0] = body.Advanced
	again, _ := guideline.Get(n.ID)
	if r, _ := guideline.Get("borde2015-strength"); r.Effects[0].Value == 99 || again.Training[0] == body.Advanced {
		t.Error("the table was changed through a copy")
	}
	if again, _ := guideline.Get("giangregorio2014-osteoporosis"); again.Conditions[0] == guideline.Cancer {
		t.Error("the table was changed through a copy of the conditions")
	}
}

func TestJSON(t *testing.T) {
	for r := range guideline.All() {
		text, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		var back guideline.Recommendation
		if err := field.Decode(text, &back, field.Strict); err != nil {
			t.Errorf("%s: %v", r.ID, err)
		}
		if diff := cmp.Diff(r, back, ranges); diff != "" {
			t.Errorf("%s: %s", r.ID, diff)
		}
	}
	q := guideline.Query{Goal: guideline.Bone, Training: body.Novice, Age: 66, Conditions: []guideline.Condition{guideline.Frailty}, AtLarge: true}
	text, err := json.Marshal(q)
	var back guideline.Query
	if err != nil || field.Decode(text, &back, field.Strict) != nil || !cmp.Equal(back, q) {
		t.Errorf("query %+v: %s, %v, comes back as %+v", q, text, err, back)
	}
	for _, bad := range []string{`{"daze":{}}`, `{"goal":"beauty"}`, `{"days":{"min":3,"max":2}}`, `{"goal":"bone","goal":"bone"}`} {
		var r guideline.Recommendation
		var f *field.Error
		if err := field.Decode([]byte(bad), &r, field.Strict); !errors.As(err, &f) || f.Path == "" {
			t.Errorf("Unmarshal(%s) = %v, want the field", bad, err)
		}
	}
}

func TestVocabularies(t *testing.T) {
	for v := range uint8(255) {
		g, f := guideline.Goal(v), guideline.Field(v)
		text, err := g.MarshalText()
		var back guideline.Goal
		if valid := v <= uint8(guideline.Health); valid != (err == nil) || valid && (back.UnmarshalText(text) != nil || back != g || g.String() != string(text)) {
			t.Errorf("goal %d: %q, %v, comes back as %v", v, text, err, back)
		}
		checkText(t, guideline.Condition(v), v <= uint8(guideline.AchillesTendinopathy), new(guideline.Condition))
		checkText(t, guideline.EffectUnit(v), v <= 4, new(guideline.EffectUnit))
		text, err = f.MarshalText()
		var which guideline.Field
		if valid := v <= uint8(guideline.FieldSides); valid != (err == nil) || valid && (which.UnmarshalText(text) != nil || which != f || f.String() != string(text)) {
			t.Errorf("field %d: %q, %v, comes back as %v", v, text, err, which)
		}
	}
}

// checkText holds that e comes back from its text, or is refused if it is no value.
func checkText[E interface {
	comparable
	fmt.Stringer
	encoding.TextMarshaler
}, P interface {
	*E
	encoding.TextUnmarshaler
}](t *testing.T, e E, valid bool, back P) {
	t.Helper()
	text, err := e.MarshalText()
	if valid != (err == nil) || valid && (back.UnmarshalText(text) != nil || *back != e || e.String() != string(text)) {
		t.Errorf("%v: text %q, %v, comes back as %v", e, text, err, *back)
	}
}

func ExampleRecommendation_BasisOf() {
	// Garber 2011: the days are in the abstract, the repetitions are from memory.
	r, _ := guideline.Get("acsm2011-older-start")
	fmt.Println(r.Days, "days a week:", r.BasisOf(guideline.FieldDays))
	fmt.Println(r.Reps, "repetitions:", r.BasisOf(guideline.FieldReps))
	fmt.Printf("%q\n", r.BasisOf(guideline.FieldRM).String())
	// Output:
	// 2 to 3 days a week: published
	// 10 to 15 repetitions: from memory
	// ""
}

func FuzzRecommendationJSON(f *testing.F) {
	for r := range guideline.All() {
		text, err := json.Marshal(r)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var r, back guideline.Recommendation
		if field.Decode(data, &r, field.Strict) != nil {
			return
		}
		for which := range guideline.Fields() {
			if _, stated := r.Stated(which); !stated && r.BasisOf(which) != 0 {
				t.Errorf("%s is not stated and yet known", which)
			}
		}
		once, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		if err := field.Decode(once, &back, field.Strict); err != nil {
			t.Fatalf("%s does not come back: %v", once, err)
		}
		if twice, _ := json.Marshal(back); string(twice) != string(once) {
			t.Errorf("%s comes back as %s", once, twice)
		}
	})
}

func FuzzGet(f *testing.F) {
	f.Add("acsm2011-older-start")
	f.Add("acsm")
	f.Fuzz(func(t *testing.T, id string) {
		r, err := guideline.Get(guideline.ID(id))
		if (err == nil) != (string(r.ID) == id && id != "") {
			t.Errorf("Get(%q) = %q, %v", id, r.ID, err)
		}
	})
}

func BenchmarkGet(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := guideline.Get("borde2015-strength"); err != nil {
			b.Fatal(err)
		}
	}
}
