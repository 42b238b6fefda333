package protocol_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression/protocol"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Each set takes the greatest weight not above its mass; 0.7 of 20 kg, which is
// a little less in binary, still takes the 14 kg.
func TestKit(t *testing.T) {
	kit := table(t, "2 kg", "4 kg", "6 kg", "10 kg", "14 kg", "19 kg")
	session := units.Must(protocol.OxfordTenSetTenth.Plan(marked("20 kg"), kit))
	var got []string
	for _, set := range session.Sets {
		got = append(got, set.Load.Each().String())
		if set.Load.Each() > set.Mass.Mass {
			t.Errorf("%v is above %v", set.Load.Each(), set.Mass)
		}
	}
	if strings.Join(got, " ") != "19 kg 14 kg 14 kg 14 kg 10 kg 10 kg 6 kg 6 kg 4 kg 2 kg" {
		t.Error(got)
	}
	_, err := protocol.DeLorme.Plan(marked("3 kg"), kit)
	var bad field.Errors
	if !errors.As(err, new(*equipment.TooHeavyError)) || !errors.As(err, &bad) || len(bad) != 1 || bad[0].Path != "/sets/0" {
		t.Errorf("too light for the kit: %v", err)
	}
	c := units.Must(protocol.DAPRE.FourthSet(units.KG, 8))
	fourth, err := c.Fourth(marked("10 kg"), kit)
	if err != nil || fourth.Mass != marked("12.5 kg") || fourth.Load.Each() != 10*units.Kilogram || !fourth.ToFailure || !fourth.AsMany {
		t.Errorf("fourth set: %+v, %v", fourth, err)
	}
	if _, err := units.Must(protocol.DAPRE.FourthSet(units.KG, 1)).Fourth(marked("6 kg"), kit); !errors.As(err, new(*equipment.TooHeavyError)) {
		t.Errorf("1 kg is below the kit: %v", err)
	}
}

func TestRefused(t *testing.T) {
	for name, tt := range map[string]struct {
		err   error
		is    error
		paths string
	}{
		"no scheme":      {second(protocol.Scheme(0).Plan(units.Marked{}, nil)), field.ErrMissing, "/scheme /base /base"},
		"not a scheme":   {second(protocol.Scheme(99).Plan(marked("1 kg"), nil)), field.ErrOutOfRange, "/scheme"},
		"grams":          {second(protocol.DeLorme.Plan(marked("500 g"), nil)), field.ErrOutOfRange, "/base"},
		"nine pounds":    {second(protocol.OxfordTenSetPound.Plan(marked("9 lb"), nil)), field.ErrOutOfRange, "/base"},
		"3 on the 10RM":  {second(protocol.APRE10.FourthSet(units.LB, 3)), field.ErrOutOfRange, "/reps"},
		"0 on the 3RM":   {second(protocol.APRE3.FourthSet(units.LB, 0)), field.ErrOutOfRange, "/reps"},
		"below nought":   {second(protocol.DAPRE.FourthSet(units.KG, -1)), field.ErrOutOfRange, "/reps"},
		"next, on 10RM":  {second(protocol.APRE10.NextSession(units.LB, 3)), field.ErrOutOfRange, "/reps"},
		"kilograms":      {second(protocol.APRE6.FourthSet(units.KG, 5)), field.ErrConflict, "/unit"},
		"both":           {second(protocol.APRE10.FourthSet(units.KG, 3)), field.ErrOutOfRange, "/reps /unit"},
		"ounces":         {second(protocol.DAPRE.FourthSet(units.OZ, 5)), field.ErrOutOfRange, "/unit"},
		"no unit":        {second(protocol.DAPRE.NextSession(0, 5)), field.ErrMissing, "/unit"},
		"no table":       {second(protocol.DeLorme.FourthSet(units.KG, 5)), field.ErrConflict, "/scheme"},
		"scheme unknown": {second(protocol.Scheme(0).NextSession(0, 5)), field.ErrMissing, "/scheme /unit"},
		"nothing left":   {second(units.Must(protocol.DAPRE.FourthSet(units.KG, 0)).From(marked("5 kg"))), field.ErrOutOfRange, ""},
		"from nothing":   {second(units.Must(protocol.DAPRE.FourthSet(units.KG, 9)).Fourth(marked("0 kg"), nil)), field.ErrOutOfRange, ""},
		"too much":       {second(units.Must(protocol.DAPRE.FourthSet(units.KG, 9)).From(units.Marked{Mass: units.MaxMass, Unit: units.KG})), field.ErrOverflow, ""},
	} {
		var all field.Errors
		all.Add("", tt.err)
		var paths []string
		for _, f := range all {
			paths = append(paths, f.Path)
		}
		if !errors.Is(tt.err, tt.is) || strings.Join(paths, " ") != tt.paths {
			t.Errorf("%s: %v, want %v at %q", name, tt.err, tt.is, tt.paths)
		}
	}
	if _, err := protocol.OxfordTenSetPound.Plan(units.Marked{Mass: 9*units.Pound + 1, Unit: units.LB}, nil); err != nil {
		t.Errorf("just above nine pounds: %v", err)
	}
}

func second[T any](_ T, err error) error { return err }

// The printed bands cover every count from the first on without a gap or an
// overlap, and more repetitions never lower the change.
func TestBands(t *testing.T) {
	first := map[protocol.Scheme]int{protocol.DAPRE: 0, protocol.APRE10: 4, protocol.APRE6: 0, protocol.APRE3: 1}
	for s, from := range first {
		for name, read := range map[string]func(units.MassUnit, int) (protocol.Adjustment, error){"fourth set": s.FourthSet, "next session": s.NextSession} {
			for _, u := range []units.MassUnit{units.LB, units.KG} {
				if u == units.KG && s != protocol.DAPRE {
					continue
				}
				last := protocol.Adjustment{}
				for reps := from; reps <= 60; reps++ {
					c, err := read(u, reps)
					if err != nil || !c.Reps.Contains(reps) || c.Low.Mass > c.High.Mass {
						t.Fatalf("%v, %s, %d repetitions: %+v, %v", s, name, reps, c, err)
					}
					if reps > from && (c.Pick.Mass < last.Pick.Mass || c.High.Mass < last.High.Mass) {
						t.Errorf("%v, %s: %d repetitions give %v, one fewer %v", s, name, reps, c.Pick, last.Pick)
					}
					if reps > from && c.Reps != last.Reps {
						low, _ := c.Reps.Min()
						high, bounded := last.Reps.Max()
						if !bounded || low != high+1 {
							t.Errorf("%v, %s: %v follows %v", s, name, c.Reps, last.Reps)
						}
					}
					last = c
				}
				if _, bounded := last.Reps.Max(); bounded {
					t.Errorf("%v, %s: the last band ends at %v", s, name, last.Reps)
				}
			}
		}
	}
}

// The kilograms are no conversion of the pounds, and both print as printed.
func TestColumns(t *testing.T) {
	kg, lb := units.Must(protocol.DAPRE.NextSession(units.KG, 7)), units.Must(protocol.DAPRE.NextSession(units.LB, 7))
	if got := fmt.Sprint(kg.Low, ", ", kg.High, ", ", lb.Low, ", ", lb.High); got != "2.5 kg, 7.5 kg, 5 lb, 15 lb" {
		t.Error(got)
	}
	if kg.Low.Mass == lb.Low.Mass {
		t.Error("2.5 kg is not 5 lb")
	}
	if from, err := lb.From(marked("40 lb")); err != nil || from.String() != "45 lb" {
		t.Errorf("%v, %v", from, err)
	}
}

// Shares are exact in both units and a set is never above the base.
func TestSharesAreExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]units.MassUnit{units.KG, units.LB}).Draw(t, "unit")
		base := units.Marked{Mass: units.Must((20 * u.Mass()).Times(rapid.IntRange(1, 50).Draw(t, "twenties"))), Unit: u}
		for s := range protocol.Schemes() {
			session, err := s.Plan(base, nil)
			if err != nil {
				t.Fatal(err)
			}
			for i, set := range session.Sets {
				if set.Mass.Mass > base.Mass || set.Mass.Mass > 0 && set.Mass.Unit != u || (set.Reps > 0) == set.AsMany {
					t.Fatalf("%v, set %d: %+v of %v", s, i+1, set, base)
				}
				if percent := units.Mass(set.Share*100 + 0.5); set.Share > 0 && set.Mass.Mass*100 != base.Mass*percent {
					t.Fatalf("%v, set %d: %v is not %d %% of %v", s, i+1, set.Mass, percent, base)
				}
			}
		}
	})
}

func TestDisagreements(t *testing.T) {
	for s := range protocol.Schemes() {
		for _, d := range s.Disagreements() {
			if d.Text == "" || d.Fact == "" {
				t.Errorf("%v: %+v", s, d)
			}
		}
	}
	for s, want := range map[protocol.Scheme]int{protocol.DAPRE: 3, protocol.OxfordTenSetPound: 1, protocol.OxfordTenSetTenth: 1, protocol.MacQueenPower: 0, 0: 0} {
		if got := len(s.Disagreements()); got != want {
			t.Errorf("%v: %d disagreements, want %d", s, got, want)
		}
	}
}

func TestVocabulary(t *testing.T) {
	count := 0
	for s := range protocol.Schemes() {
		var back protocol.Scheme
		if err := back.UnmarshalText(units.Must(s.MarshalText())); err != nil || back != s {
			t.Errorf("%v: %v, %v", s, back, err)
		}
		count++
	}
	if count != 10 {
		t.Errorf("%d schemes", count)
	}
	if protocol.Scheme(99).Base() != 0 {
		t.Error("a base for no scheme")
	}
}

func TestRoundTrips(t *testing.T) {
	kit := table(t, "1 kg", "10 kg")
	for s := range protocol.Schemes() {
		session := units.Must(s.Plan(marked("20 kg"), kit))
		fieldtest.ComesBack(t, session)
		fieldtest.ComesBack(t, session.Sets[0])
	}
	fieldtest.ComesBack(t, units.Must(protocol.DAPRE.NextSession(units.KG, 11)))
}

func TestFactsAndWords(t *testing.T) {
	ids := map[evidence.FactID]bool{}
	for f := range protocol.Facts() {
		ids[f.ID] = true
	}
	for n := range 40 {
		seen := 0
		for range protocol.Facts() {
			if seen++; seen > n {
				break // stopping early must not panic
			}
		}
	}
	for s := range protocol.Schemes() {
		reasons := units.Must(s.Plan(marked("20 kg"), nil)).Reasons
		if c, err := s.FourthSet(units.LB, 9); err == nil {
			reasons = append(reasons, c.Reasons...)
		}
		for _, r := range reasons {
			if protocol.Words().Copy()[r.Code].Clinician == "" {
				t.Errorf("%v: no words for %s", s, r.Code)
			}
			for _, id := range r.Facts {
				if !ids[id] {
					t.Errorf("%v: no fact %s", s, id)
				}
			}
		}
	}
}

// No input makes a plan panic, go above its base or take a set to zero.
func FuzzPlan(f *testing.F) {
	f.Add(uint8(1), int64(20*units.Kilogram), uint8(1), 5)
	f.Add(uint8(3), int64(9*units.Pound), uint8(3), 0)
	f.Add(uint8(9), int64(-1), uint8(0), -3)
	f.Fuzz(func(t *testing.T, scheme uint8, mass int64, unit uint8, reps int) {
		s, base := protocol.Scheme(scheme), units.Marked{Mass: units.Mass(mass), Unit: units.MassUnit(unit)}
		session, err := s.Plan(base, nil)
		for i, set := range session.Sets {
			if err != nil || set.Mass.Mass < 0 || set.Mass.Mass > base.Mass || set.Share > 0 && set.Mass.Mass == 0 && base.Mass > 10 {
				t.Fatalf("%v of %v, set %d: %+v, %v", s, base, i+1, set, err)
			}
		}
		if c, err := s.FourthSet(base.Unit, reps); err == nil {
			if next, err := c.From(base); err == nil && next.Mass <= 0 {
				t.Fatalf("%v from %v: %v", c.Pick, base, next)
			}
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	kit := table(b, "2 kg", "4 kg", "6 kg", "10 kg")
	b.ReportAllocs()
	for b.Loop() {
		if _, err := protocol.DAPRE.Plan(marked("10 kg"), kit); err != nil {
			b.Fatal(err)
		}
	}
}

func ExampleScheme_FourthSet() {
	c, err := protocol.DAPRE.FourthSet(units.KG, 8)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%v repetitions: %v to %v, picked %v\n", c.Reps, c.Low, c.High, c.Pick)
	// Output: 7 to 10 repetitions: 2.5 kg to 5 kg, picked 2.5 kg
}
