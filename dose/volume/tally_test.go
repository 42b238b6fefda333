package volume_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

func TestConventions(t *testing.T) {
	tally := counter(t, volume.Options{}).NewTally()
	add(t, tally, 3, set("press", body.OneEachHand, 20*units.Kilogram, 8))
	add(t, tally, 2, set("dip-press", body.OnBar, 20*units.Kilogram, 8))
	got := week(t, tally)
	tests := []struct {
		muscle                    body.Muscle
		direct, fractional, total string
	}{
		{body.PectoralisMajor, "3 direct", "3 fractional", "3 total"},
		{body.TricepsBrachii, "0 direct", "2.5 fractional", "5 total"},
		{body.AnteriorDeltoid, "2 direct", "3.5 fractional", "5 total"},
		{body.Soleus, "0 direct", "0 fractional", "0 total"},
	}
	for _, tt := range tests {
		m := muscle(got, tt.muscle)
		d, f, all := m.Sets(volume.DirectSets), m.Sets(volume.FractionalSets), m.Sets(volume.TotalSets)
		if d.String() != tt.direct || f.String() != tt.fractional || all.String() != tt.total {
			t.Errorf("%v: %v, %v, %v, want %s, %s, %s", tt.muscle, d, f, all, tt.direct, tt.fractional, tt.total)
		}
	}
	if u := got.Untrained(); len(u) != 34-3 || slices.Contains(u, body.TricepsBrachii) || !slices.Contains(u, body.Soleus) {
		t.Errorf("untrained: %v", u)
	}
	if m := muscle(got, body.Soleus); !m.Sets(0).IsZero() || !m.SideSets(0, volume.DirectSets).IsZero() || !m.SideSets(body.Left, 9).IsZero() {
		t.Error("sets of no convention or no side")
	}
}

// TestSides: a set of each side is one set of the muscle group; of unequal
// sides the lesser counts.
func TestSides(t *testing.T) {
	tally := counter(t, volume.Options{}).NewTally()
	left := set("row", body.OneHand, 10*units.Kilogram, 8)
	left.Side = body.Left
	right := left
	right.Side = body.Right
	add(t, tally, 3, left)
	add(t, tally, 2, right)
	got := week(t, tally)
	lats := muscle(got, body.LatissimusDorsi)
	biceps := muscle(got, body.BicepsBrachii)
	for _, tt := range []struct {
		what string
		got  volume.Sets
		want string
	}{
		{"group", lats.Sets(volume.DirectSets), "2 direct"},
		{"left", lats.SideSets(body.Left, volume.DirectSets), "3 direct"},
		{"right", lats.SideSets(body.Right, volume.DirectSets), "2 direct"},
		{"both", lats.SideSets(body.Both, volume.TotalSets), "2 total"},
		{"biceps", biceps.Sets(volume.FractionalSets), "1 fractional"},
		{"left biceps", biceps.SideSets(body.Left, volume.FractionalSets), "1.5 fractional"},
	} {
		if tt.got.String() != tt.want {
			t.Errorf("%s: %v, want %s", tt.what, tt.got, tt.want)
		}
	}
	if e := ex(got, "row"); e.Reps != 40 || e.Held.String() != "400 kg" || e.Left != 3 || e.Right != 2 {
		t.Errorf("row: %+v", e)
	}
	// One after the other: both sides did their repetitions.
	both := left
	both.Side = body.Both
	tally = counter(t, volume.Options{}).NewTally()
	add(t, tally, 1, both)
	got = week(t, tally)
	if e := ex(got, "row"); e.Reps != 16 || e.Held.String() != "160 kg" || e.Span != units.Exactly(8) {
		t.Errorf("both sides in turn: %+v", e)
	}
	if s := muscle(got, body.LatissimusDorsi).Sets(volume.DirectSets); s.Count() != 1 {
		t.Errorf("both sides in turn: %v, want 1", s)
	}
}

// TestLoads: two fours are eight kilograms a repetition, however stated; the
// body counts apart; seconds and metres lift nothing.
func TestLoads(t *testing.T) {
	tests := []struct {
		name              string
		id                exercise.ID
		hold              body.Hold
		load              units.Mass
		stated            body.Stated
		held, least, most string
		noBody, noMass    int
	}{
		{"per hand", "press", body.OneEachHand, 4 * units.Kilogram, body.PerHand, "80 kg", "0 kg", "0 kg", 0, 0},
		{"in all", "press", body.OneEachHand, 8 * units.Kilogram, body.Total, "80 kg", "0 kg", "0 kg", 0, 0},
		{"both hands on one", "squat", body.BothHandsOnOne, 8 * units.Kilogram, body.Total, "80 kg", "0 kg", "0 kg", 0, 0},
		{"body, share known", "sit", body.Unloaded, 0, 0, "0 kg", "400 kg", "600 kg", 0, 0},
		{"body, share unknown", "dip", body.Unloaded, 0, 0, "0 kg", "0 kg", "0 kg", 1, 0},
		{"band", "row", body.OnBand, 0, 0, "0 kg", "0 kg", "0 kg", 0, 1},
		{"seconds", "plank", body.Unloaded, 0, 0, "0 kg", "0 kg", "0 kg", 0, 0},
		{"metres", "carry", body.OneEachHand, 8 * units.Kilogram, body.PerHand, "0 kg", "0 kg", "0 kg", 0, 0},
	}
	for _, tt := range tests {
		tally := counter(t, volume.Options{BodyMass: 80 * units.Kilogram}).NewTally()
		s := set(tt.id, tt.hold, tt.load, 10)
		s.Stated = tt.stated
		add(t, tally, 1, s)
		e := ex(week(t, tally), tt.id)
		if e.Held.String() != tt.held || e.BodyLeast.String() != tt.least || e.BodyMost.String() != tt.most || e.NoBody != tt.noBody || e.NoMass != tt.noMass {
			t.Errorf("%s: %v held, body %v to %v (%d not known), %d bands", tt.name, e.Held, e.BodyLeast, e.BodyMost, e.NoBody, e.NoMass)
		}
		if tt.id == "plank" && (e.Tension != 10 || e.Reps != 0 || e.Span != units.Exactly(10)) || tt.id == "carry" && (e.Metres != 10 || e.Tension != 0 || e.Reps != 0) {
			t.Errorf("%s: %+v", tt.name, e)
		}
	}
	tally := counter(t, volume.Options{}).NewTally()
	add(t, tally, 1, set("sit", body.Unloaded, 0, 10))
	if e := ex(week(t, tally), "sit"); e.NoBody != 1 {
		t.Errorf("body mass not given: %+v", e)
	}
}

// TestRule: only where asked does the reserve matter.
func TestRule(t *testing.T) {
	rule := volume.Rule{Source: "a trial", Reserve: units.AtMost[units.RIR](2)}
	tests := []struct {
		effort                      units.Effort
		counted, leftOut, noReserve int
	}{
		{units.Must(units.InReserve(2)), 1, 0, 0},
		{units.Must(units.InReserve(2.5)), 0, 1, 0},
		{units.Must(units.RPE(8)), 1, 0, 0},
		{units.Must(units.RPE(7.5)), 0, 1, 0}, // 2 to 3
		{units.Must(units.RPE(4)), 0, 0, 1},
		{units.Must(units.OMNI(9)), 0, 0, 1},
		{units.Effort{}, 0, 0, 1},
	}
	for _, tt := range tests {
		s := set("press", body.OneEachHand, 20*units.Kilogram, 8)
		s.Effort = tt.effort
		strict, all := counter(t, volume.Options{Rule: rule}).NewTally(), counter(t, volume.Options{}).NewTally()
		add(t, strict, 1, s)
		add(t, all, 1, s)
		got := week(t, strict)
		if got.Done != 1 || got.Counted != tt.counted || got.LeftOut != tt.leftOut || got.NoReserve != tt.noReserve {
			t.Errorf("%v: %+v", tt.effort, got)
		}
		if got := int(muscle(got, body.PectoralisMajor).Sets(volume.DirectSets).Count()); got != tt.counted {
			t.Errorf("%v: %d sets, want %d", tt.effort, got, tt.counted)
		}
		if ex(got, "press").Held.String() != "160 kg" || week(t, all).Counted != 1 {
			t.Errorf("%v: the rule touches the load, or there is one where none was asked for", tt.effort)
		}
	}
}

func TestMeans(t *testing.T) {
	lift := volume.Lift{Exercise: "press", Side: body.Both, Hold: body.OneEachHand}
	tally := counter(t, volume.Options{OneRM: map[volume.Lift]units.Mass{lift: 20 * units.Kilogram}}).NewTally()
	a := set("press", body.OneEachHand, 20*units.Kilogram, 10) // 10 kg each: a half
	a.Effort, a.RepSeconds = units.Must(units.RPE(8.5)), 4.5
	b := set("press", body.OneEachHand, 30*units.Kilogram, 5) // three quarters
	b.Effort = units.Must(units.InReserve(4))
	c := b
	c.Side, c.Effort = body.Left, units.Effort{} // no maximum for one side
	for _, s := range []setlog.Set{a, b, c} {
		add(t, tally, 1, s)
	}
	e := ex(week(t, tally), "press")
	if want := (0.5*10 + 0.75*5) / 15; e.ShareReps != 15 || e.Share < units.Fraction(want-1e-6) || e.Share > units.Fraction(want+1e-6) {
		t.Errorf("share %v of %d, want %v of 15", float64(e.Share), e.ShareReps, want)
	}
	if want := units.Must(units.Between[units.RIR](2.5, 3)); e.Reserve != want || e.Rated != 2 || e.Unrated != 1 {
		t.Errorf("reserve %v of %d, %d unrated", e.Reserve, e.Rated, e.Unrated)
	}
	if e.Tension != 45 || e.TimedReps != 10 || e.Untimed != 10 {
		t.Errorf("tension %v s over %d, %d untimed", e.Tension, e.TimedReps, e.Untimed)
	}
	third := counter(t, volume.Options{OneRM: map[volume.Lift]units.Mass{lift: 3 * units.Kilogram}}).NewTally()
	add(t, third, 1, set("press", body.OneEachHand, 4*units.Kilogram, 1))
	if got := ex(week(t, third), "press").Share; got != 0.666667 {
		t.Errorf("two thirds to the nearest millionth: %v", float64(got))
	}
	over := set("press", body.OneEachHand, 400*units.Kilogram+2*10, 1)
	if err := tally.Add(over); !errors.Is(err, field.ErrConflict) || paths(t, err) != "/load" {
		t.Errorf("more than ten times the maximum: %v", err)
	}
}

func TestAddRefuses(t *testing.T) {
	tests := []struct {
		name   string
		change func(*setlog.Set)
		paths  string
		want   error
	}{
		{"no day", func(s *setlog.Set) { s.Day = 0 }, "/day", field.ErrMissing},
		{"past the last week", func(s *setlog.Set) { s.Day = 3652059 }, "/day", field.ErrOutOfRange},
		{"unknown", func(s *setlog.Set) { s.Exercise = "mystery" }, "/exercise", field.ErrUnknown},
		{"not valid", func(s *setlog.Set) { s.Reps, s.Side = 0, 0 }, "/side /reps", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		tally := counter(t, volume.Options{}).NewTally()
		s := set("press", body.OneEachHand, 20*units.Kilogram, 8)
		tt.change(&s)
		if err := tally.Add(s); !errors.Is(err, tt.want) || paths(t, err) != tt.paths {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.want, tt.paths)
		}
		if n := len(slices.Collect(tally.Weeks())); n != 0 {
			t.Errorf("%s: a refused set left %d weeks", tt.name, n)
		}
	}
	if err := new(volume.Tally).Add(set("press", body.OneEachHand, 0, 1)); !errors.Is(err, field.ErrMissing) {
		t.Errorf("tally of no counter: %v", err)
	}
	if got := new(volume.Tally).Totals(5); got.Week != 5 || got.Done != 0 {
		t.Errorf("tally of no counter: %+v", got)
	}
}

func TestOptions(t *testing.T) {
	bad := volume.Options{
		Rule: volume.Rule{Source: "x"}, BodyMass: -1,
		OneRM: map[volume.Lift]units.Mass{{Exercise: "b"}: -1, {Exercise: "a", Side: body.Right}: 0, {Exercise: "a", Side: body.Left}: 0, {Exercise: "a", Side: body.Left, Hold: 1}: 0},
	}
	_, err := volume.NewCounter(catalogue(t), bad)
	if got, want := paths(t, err), "/kind /rule/reserve /body_mass /one_rm/a /one_rm/a /one_rm/a /one_rm/b"; got != want {
		t.Errorf("%s, want %s (%v)", got, want, err)
	}
	if err := (volume.Rule{Reserve: units.AtMost[units.RIR](3)}).Validate(); !errors.Is(err, field.ErrMissing) {
		t.Errorf("a rule of no source: %v", err)
	}
	if err := (volume.Options{Kind: volume.Prescribed, BodyMass: 1000 * units.Kilogram}).Validate(); err != nil {
		t.Error(err)
	}
	if err := (volume.Options{Kind: volume.Prescribed, BodyMass: 1000*units.Kilogram + 1}).Validate(); err == nil {
		t.Error("body mass above 1000 kg is taken")
	}
}

// TestISOWeeks: 2026 has 53 weeks; its last reaches into January 2027.
func TestISOWeeks(t *testing.T) {
	tally := counter(t, volume.Options{}).NewTally()
	for _, day := range []string{"2027-01-04", "2026-12-28", "2027-01-03", "2026-12-27", "2024-12-30"} {
		s := set("press", body.OneEachHand, 20*units.Kilogram, 8)
		s.Day = units.Must(units.ParseDay(day))
		add(t, tally, 1, s)
	}
	var got []string
	for totals := range tally.All() {
		got = append(got, totals.Week.String()+" "+strings.Repeat("x", totals.Done))
	}
	want := []string{"2025-W01 x", "2026-W52 x", "2026-W53 xx", "2027-W01 x"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	var places []string
	for p, sets := range tally.Sets(volume.FractionalSets) {
		places = append(places, p.Week.String()+" "+p.Muscle.String()+" "+sets.String())
	}
	if len(places) != 12 || places[0] != "2025-W01 anterior_deltoid 0.5 fractional" || places[11] != "2027-W01 triceps_brachii 0.5 fractional" || !slices.IsSorted(places[:3]) {
		t.Errorf("%q", places)
	}
	for range tally.Sets(0) {
		t.Error("sets of no convention")
	}
	for range tally.Sets(volume.TotalSets) {
		break
	}
	for range tally.All() {
		break
	}
}

func TestMerge(t *testing.T) {
	c := counter(t, volume.Options{})
	mine := c.NewTally()
	if err := mine.Merge(counter(t, volume.Options{}).NewTally()); !errors.Is(err, field.ErrConflict) {
		t.Errorf("another counter: %v", err)
	}
	if err := mine.Merge(mine); !errors.Is(err, field.ErrConflict) {
		t.Errorf("with itself: %v", err)
	}
	if err := mine.Merge(nil); !errors.Is(err, field.ErrConflict) {
		t.Errorf("nil: %v", err)
	}
	add(t, mine, 1, set("press", body.OneEachHand, 1000*units.Kilogram, 1000)) // the most that a set may say
	for {
		double := c.NewTally()
		if err := errors.Join(double.Merge(mine), double.Merge(mine)); err != nil {
			if !errors.Is(err, field.ErrOverflow) || week(t, mine).Done != 1<<25 {
				t.Errorf("%v at %d sets", err, week(t, mine).Done)
			}
			break
		}
		mine = double
	}
	full := week(t, mine)
	if kg, _ := ex(full, "press").Held.Parts(); kg <= 0 {
		t.Errorf("a full week lifts %d kg", kg)
	}
	if err := mine.Add(set("press", body.OneEachHand, 0, 1)); !errors.Is(err, field.ErrOverflow) {
		t.Errorf("one more than a full week: %v", err)
	}
	if diff := cmp.Diff(full, week(t, mine), plain); diff != "" {
		t.Errorf("a refused set changed the week: %s", diff)
	}
}
