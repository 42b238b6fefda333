package evidence_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

type cup string

// said is a value of a reason and what %v prints for what it was made of, or what the
// type's own method for people prints.
type said struct {
	arg  evidence.Arg
	want string
	kind string
}

func drawRange[T int | float64 | units.Fraction | units.Mass](t *rapid.T, low, high T) units.Range[T] {
	return rapid.SampledFrom([]units.Range[T]{
		{}, units.AtLeast(low), units.AtMost(high), units.Exactly(low), units.Must(units.Between(min(low, high), max(low, high))),
	}).Draw(t, "range")
}

func drawSaid(t *rapid.T) said {
	text := rapid.String().Draw(t, "text")
	n, m := rapid.Int().Draw(t, "n"), rapid.Int().Draw(t, "m")
	x := rapid.Float64().Draw(t, "x") + 0 // the sum has no -0
	y := rapid.Float64().Draw(t, "y") + 0
	mass, other := units.Mass(rapid.Int64().Draw(t, "mass")), units.Mass(rapid.Int64().Draw(t, "other"))
	marked := units.Marked{Mass: mass, Unit: rapid.SampledFrom([]units.MassUnit{units.KG, units.LB, units.G, units.OZ}).Draw(t, "unit")}
	day := units.Day(rapid.Int32Range(-2, 3652061).Draw(t, "day"))
	effort := rapid.SampledFrom([]units.Effort{{}, units.Must(units.RPE(8.5)), units.Must(units.InReserve(2))}).Draw(t, "effort")
	ints, floats := drawRange(t, n, m), drawRange(t, x, y)
	shares, masses := drawRange(t, units.Fraction(x), units.Fraction(y)), drawRange(t, mass, other)
	return rapid.SampledFrom([]said{
		{evidence.Text("a", text), text, "text"},
		{evidence.ID("a", cup(text)), text, "code"},
		{evidence.Term("a", text), text, "term"},
		{evidence.Terms("a", text, "lime"), text + ", lime", "terms"},
		{evidence.Count("a", n), fmt.Sprint(n), "count"},
		{evidence.Count("a", ints), ints.String(), "count"},
		{evidence.Seconds("a", ints), ints.String(), "seconds"},
		{evidence.Minutes("a", n), fmt.Sprint(n), "minutes"},
		{evidence.Days("a", ints), ints.String(), "days"},
		{evidence.Change("a", n), fmt.Sprintf("%+d", n), "change"},
		{evidence.Day("a", day), day.String(), "day"},
		{evidence.Mass("a", mass), mass.Short(units.Down), "mass"},
		{evidence.NearMass("a", mass), mass.Short(units.Nearest), "mass"},
		{evidence.Marked("a", marked), marked.String(), "mass"},
		{evidence.Masses("a", masses), masses.String(), "mass"},
		{evidence.Number("a", x), fmt.Sprint(x), "number"},
		{evidence.Number("a", units.RIR(x)), fmt.Sprint(x), "number"},
		{evidence.Number("a", floats), floats.String(), "number"},
		{evidence.Tenths("a", x), fmt.Sprintf("%.1f", x), "tenths"},
		{evidence.Share("a", units.Fraction(x)), units.Fraction(x).String(), "share"},
		{evidence.Share("a", shares), shares.String(), "share"},
		{evidence.Quantity("a", 1.75, "L"), "1.75 L", "quantity"},
		{evidence.Quantity("a", -1e7, "m"), "-10000000 m", "quantity"},
		{evidence.Reserve("a", units.RIR(x), true), fmt.Sprintf("at least %v", x), "reserve"},
		{evidence.Reserve("a", units.RIR(x), false), fmt.Sprintf("more than %v, not countable", x), "uncounted"},
		{evidence.Effort("a", effort), effort.String(), "effort"},
		{evidence.Number("a", math.NaN()), "NaN", "text"},
		{evidence.Share("a", units.Fraction(math.Inf(1))), "+Inf %", "text"},
		{evidence.Number("a", units.AtMost(math.Inf(1))), "at most +Inf", "text"},
	}).Draw(t, "said")
}

// A value prints in English as it was printed before it kept its kind, and JSON
// gives back an equal one.
func TestArgs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSaid(t)
		badDay := s.kind == "day" && strings.HasPrefix(s.want, "Day(")
		if s.arg.Value() != s.want || s.arg.Kind() != s.kind && !badDay {
			t.Fatalf("%s %q, want %s %q", s.arg.Kind(), s.arg.Value(), s.kind, s.want)
		}
		data, err := json.Marshal(s.arg)
		if err != nil {
			t.Fatal(err)
		}
		var back, strict evidence.Arg
		if err := json.Unmarshal(data, &back); err != nil {
			t.Fatal(err)
		}
		if err := field.Decode(data, &strict, field.Strict); err != nil {
			t.Fatal(err)
		}
		if valid := strings.ToValidUTF8(s.want, "") == s.want; valid && (back != s.arg || strict != s.arg) {
			t.Fatalf("%s reads back as %#v, want %#v", data, back, s.arg)
		}
		checkRange(t, s)
	})
}

// checkRange holds the numbers of a value to those that it prints.
func checkRange(t *rapid.T, s said) {
	r := s.arg.Range()
	if slices.Contains([]string{"text", "code", "term", "terms", "day"}, s.arg.Kind()) && !r.IsZero() {
		t.Fatalf("%v has the range %v", s.arg, r)
	}
	switch s.arg.Kind() {
	case "number", "count":
		low, hasLow := r.Min()
		high, hasHigh := r.Max()
		if want := s.want; hasLow && hasHigh && low == high && fmt.Sprint(low) != want && fmt.Sprint(int64(low)) != want && math.Abs(low) < 1<<53 {
			t.Fatalf("%v has the range %v", s.arg, r)
		}
	}
}

// A range that is open at one end stays open there.
func TestOpenRange(t *testing.T) {
	for _, tt := range []struct {
		arg  evidence.Arg
		want units.Range[float64]
	}{
		{evidence.Count("n", units.AtLeast(8)), units.AtLeast(8.0)},
		{evidence.Count("n", units.AtMost(12)), units.AtMost(12.0)},
		{evidence.Count("n", units.Must(units.Between(8, 12))), units.Must(units.Between(8.0, 12.0))},
		{evidence.Share("load", units.AtLeast[units.Fraction](0.4)), units.AtLeast(0.4)},
		{evidence.Text("who", "client A"), units.Range[float64]{}},
	} {
		if got := tt.arg.Range(); got != tt.want {
			t.Errorf("%v: %v, want %v", tt.arg, got, tt.want)
		}
	}
}

func TestArgJSON(t *testing.T) {
	for _, tt := range []struct {
		arg  evidence.Arg
		want string
	}{
		{evidence.Text("who", "client A"), `{"name":"who","value":"client A"}`},
		{evidence.ID("exercise", cup("squat")), `{"name":"exercise","value":"squat","kind":"code"}`},
		{evidence.Mass("most", 2_266_666_666_666), `{"name":"most","value":"2.2 kg","kind":"mass","number":2.2,"unit":"kg"}`},
		{evidence.Marked("low", units.Marked{Mass: 5 * units.Pound, Unit: units.LB}), `{"name":"low","value":"5 lb","kind":"mass","number":5,"unit":"lb"}`},
		{evidence.Seconds("rest", units.Must(units.Between(60, 120))), `{"name":"rest","value":"60 to 120","kind":"seconds","low":60,"high":120,"unit":"s"}`},
		{evidence.Share("load", units.AtMost[units.Fraction](0.375)), `{"name":"load","value":"at most 37.5 %","kind":"share","high":0.375}`},
		{evidence.Day("until", units.Must(units.NewDay(2026, 11, 25))), `{"name":"until","value":"2026-11-25","kind":"day"}`},
		{evidence.Effort("effort", units.Must(units.RPE(8.5))), `{"name":"effort","value":"rpe 8.5","kind":"effort","number":8.5,"unit":"rpe"}`},
		{evidence.Reserve("reserve", 5, false), `{"name":"reserve","value":"more than 5, not countable","kind":"uncounted","low":5}`},
	} {
		if got, err := json.Marshal(tt.arg); err != nil || string(got) != tt.want {
			t.Errorf("%s, %v, want %s", got, err, tt.want)
		}
	}
	// What does not fit together, or is of a later version, is read as the text that stands there.
	for _, text := range []string{
		`{"name":"a","value":"2.2 kg"}`,
		`{"name":"a","value":"2.2 kg","kind":"mass","number":3,"unit":"kg"}`,
		`{"name":"a","value":"2.2 kg","kind":"mass","number":"2.2","unit":"kg"}`,
		`{"name":"a","value":"2.2 kg","kind":"mass","number":2.2}`,
		`{"name":"a","value":"2.2 kg","kind":"torque","number":2.2,"unit":"kg"}`,
		`{"name":"a","value":"2.2 kg","kind":"day"}`,
	} {
		var got evidence.Arg
		if err := json.Unmarshal([]byte(text), &got); err != nil || got != evidence.Text("a", "2.2 kg") {
			t.Errorf("%s reads as %#v, %v", text, got, err)
		}
	}
	var got evidence.Arg
	if err := json.Unmarshal([]byte(`{"name":"a","value":"b","colour":1}`), &got); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("an unknown name: %v", err)
	}
}

func TestArgUnits(t *testing.T) {
	for unit, arg := range map[string]evidence.Arg{
		"kg": evidence.Mass("a", units.Kilogram), "lb": evidence.Marked("a", units.Marked{Unit: units.LB}), "s": evidence.Seconds("a", 1),
		"min": evidence.Minutes("a", 1), "d": evidence.Days("a", 1),
		"L": evidence.Quantity("a", 1, "L"), "rir": evidence.Effort("a", units.Must(units.InReserve(2))), "": evidence.Term("a", "left"),
	} {
		if arg.Unit() != unit {
			t.Errorf("the unit of %v is %q, want %q", arg, arg.Unit(), unit)
		}
	}
	if a := evidence.Text("who", "client A"); a.String() != "who client A" || !a.Equal(a) || a.Equal(evidence.Term("who", "client A")) {
		t.Errorf("%v", a)
	}
}

// german is a locale for the tests; its words are ours.
func german() evidence.Locale {
	terms := map[string]string{"left": "links", "right": "rechts", "{low} to {high}": "{low} bis {high}", "at least {low}": "mindestens {low}",
		"more than {low}, not countable": "mehr als {low}, nicht zählbar", "not stated": "ohne Angabe"}
	return evidence.Locale{
		Mark: ",",
		Unit: func(unit string) string { return map[string]string{"kg": "Kilo", "rpe": "RPE"}[unit] },
		Term: func(_, text string) string { return terms[text] },
		Day: func(d units.Day) string {
			year, month, day := d.Date()
			return fmt.Sprintf("%d.%d.%d", day, month, year)
		},
	}
}

func TestLocale(t *testing.T) {
	day := units.Must(units.NewDay(2026, 11, 25))
	words := units.Must(evidence.NewLexicon(evidence.Words{"kettle.a": {Client: "{a}", Clinician: "{a}!"}})).In(german())
	for want, arg := range map[string]evidence.Arg{
		"1.7 L": evidence.Text("a", "1.7 L"), "x.7": evidence.ID("a", cup("x.7")), "links": evidence.Term("a", "left"), "oben": evidence.Term("a", "oben"),
		"links, oben, rechts": evidence.Terms("a", "left", "oben", "right"), "25.11.2026": evidence.Day("a", day), "": evidence.Day("a", 0),
		"2,2 Kilo": evidence.Mass("a", 2_266_666_666_666), "5,5 lb": evidence.Marked("a", units.Marked{Mass: 11 * units.Pound / 2, Unit: units.LB}),
		"37,5 %": evidence.Share("a", units.Fraction(0.375)), "8 bis 12": evidence.Count("a", units.Must(units.Between(8, 12))), "RPE 8,5": evidence.Effort("a", units.Must(units.RPE(8.5))),
		"mindestens 2,5": evidence.Reserve("a", 2.5, true), "mehr als 5, nicht zählbar": evidence.Reserve("a", 5, false),
		"at most 1,5": evidence.Number("a", units.AtMost(1.5)), "ohne Angabe": evidence.Count("a", units.Range[int]{}), "3,0": evidence.Tenths("a", 3),
		"1,75 L": evidence.Quantity("a", 1.75, "L"), "+2": evidence.Change("a", 2),
	} {
		r := evidence.Because("kettle.a").With(arg)
		if words.Client(r) != want || words.Clinician(r) != want+"!" {
			t.Errorf("%v prints %q, want %q", arg, words.Client(r), want)
		}
	}
	strange := evidence.Because("kettle.b").With(evidence.Share("a", units.Fraction(0.375)))
	if got := words.Clinician(strange); got != "kettle.b; a: 37,5 %" {
		t.Errorf("a code without words: %q", got)
	}
}

func TestMissing(t *testing.T) {
	words := evidence.Words{
		"kettle.a": {Client: "A kettle of {litres}.", Clinician: "{litres}, {months}"},
		"kettle.b": {Clinician: "lime"},
		"kettle.c": {Clinician: "lime"},
	}
	same := evidence.Words{"kettle.a": {Client: "Ein Kessel, {litres}, {months}.", Clinician: "{months}: {litres}"}, "kettle.b": {Clinician: "Kalk"}, "kettle.c": {Clinician: "Kalk"}}
	if err := words.Missing(same); err != nil {
		t.Errorf("a full translation: %v", err)
	}
	err := words.Missing(evidence.Words{
		"kettle.a": {Client: "Ein Kessel.", Clinician: "{litres}, {months}, {Liter}"},
		"kettle.b": {Client: "Kalk"},
		"kettle.d": {Clinician: "Tee"},
	})
	var bad field.Errors
	if !errors.As(err, &bad) {
		t.Fatal(err)
	}
	var got []string
	for _, e := range bad {
		got = append(got, fmt.Sprint(e.Path, " ", errors.Is(e, field.ErrMissing), errors.Is(e, field.ErrUnknown)))
	}
	want := []string{"/kettle.a/client true false", "/kettle.a/clinician false true", "/kettle.b/client true false", "/kettle.b/clinician true false",
		"/kettle.c true false", "/kettle.d false true"}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%q, want %q\n%v", got, want, err)
	}
}

// A decimal comma and words of one's own.
func ExampleLexicon_In() {
	english := evidence.Words{"kettle.full": {Client: "The {side} kettle holds {litres}.", Clinician: "{side}: {share} of {litres}"}}
	german := evidence.Words{"kettle.full": {Client: "In den Kessel {side} gehen {litres}.", Clinician: "{side}: {share} von {litres}"}}
	if err := english.Missing(german); err != nil {
		fmt.Println(err)
	}
	terms := map[string]string{"left": "links", "right": "rechts"}
	lexicon, err := evidence.NewLexicon(german)
	if err != nil {
		fmt.Println(err)
	}
	voice := lexicon.In(evidence.Locale{
		Mark: ",",
		Unit: func(unit string) string { return map[string]string{"L": "Liter"}[unit] },
		Term: func(_, text string) string { return terms[text] },
	})
	r := evidence.Because("kettle.full", "kettle.lime").
		With(evidence.Term("side", "left"), evidence.Quantity("litres", 1.7, "L"), evidence.Share("share", units.Fraction(0.725)))
	fmt.Println(english.Client(r))
	fmt.Println(voice.Client(r))
	fmt.Println(voice.Clinician(r))
	// Output:
	// The left kettle holds 1.7 L.
	// In den Kessel links gehen 1,7 Liter.
	// links: 72,5 % von 1,7 Liter
}
