package rule_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/progression/rule"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func rpe(v float64) units.Effort { return units.Must(units.RPE(v)) }

func rir(v float64) units.Effort { return units.Must(units.InReserve(v)) }

// Hackett 2017: about 1 repetition with 0 to 5 left, more than 2 with 7 to 10.
func TestTrueReserve(t *testing.T) {
	for _, tt := range []struct {
		told units.Effort
		want string
	}{
		{rir(0), "0 to 1"}, {rir(2), "1 to 3"}, {rir(5), "4 to 6"}, {rir(5.01), "at least 3.01"}, {rir(10), "at least 8"},
		{rpe(8.5), "0 to 3"}, {rpe(10), "0 to 1"}, {rpe(5), "4 to 6"}, {rpe(6), "at least 3"},
	} {
		if got, err := rule.TrueReserve(tt.told); err != nil || got.String() != tt.want {
			t.Errorf("%v: %v, %v, want %v", tt.told, got, err, tt.want)
		}
	}
	for _, bad := range []struct {
		told units.Effort
		want error
	}{{units.Effort{}, field.ErrMissing}, {units.Must(units.OMNI(8)), units.ErrNoRIR}, {rpe(4.5), units.ErrNoRIR}} {
		if _, err := rule.TrueReserve(bad.told); !errors.Is(err, bad.want) {
			t.Errorf("%v: %v, want %v", bad.told, err, bad.want)
		}
	}
}

// Every row of the printed table, with the error of reserve carried along.
func TestSetToSetKg(t *testing.T) {
	for _, tt := range []struct {
		told units.Effort
		want string
	}{
		{rpe(5), "5 kg, 5 kg, 3, 2 to 4"},
		{rpe(6), "5 kg, at least 2.5 kg, 2, at least 1"},
		{rir(5), "5 kg, 5 kg, 3, 2 to 4"},
		{rpe(7), "2.5 kg, 0 kg to 5 kg, 1, 0 to 2"},
		{rpe(8), "0 kg, -2.5 kg to 2.5 kg, 0, -1 to 1"},
		{rpe(9), "-2.5 kg, -5 kg to 0 kg, -1, -2 to 0"},
		{rpe(10), "-5 kg, -5 kg to -2.5 kg, -2, -2 to -1"},
		{rir(0), "-5 kg, -5 kg to -2.5 kg, -2, -2 to -1"},
	} {
		c, err := rule.SetToSetKg(tt.told)
		if got := fmt.Sprintf("%v, %v, %d, %v", c.Change, c.Within, c.Reps, c.RepsWithin); err != nil || got != tt.want {
			t.Errorf("%v: %s, %v, want %s", tt.told, got, err, tt.want)
		}
	}
	for _, bad := range []units.Effort{rpe(7.5), rpe(8.5), rir(0.5), rir(6.5), rir(7)} {
		if _, err := rule.SetToSetKg(bad); !errors.Is(err, field.ErrOutOfRange) || paths(err) != "/reported" {
			t.Errorf("%v: %v, want out of range", bad, err)
		}
	}
	if _, err := rule.SetToSetKg(units.Must(units.OMNI(8))); !errors.Is(err, units.ErrNoRIR) {
		t.Errorf("OMNI: %v", err)
	}
}

func TestSetToSetPercent(t *testing.T) {
	for _, tt := range []struct {
		target, told units.Effort
		want         string
	}{
		{rpe(8), rpe(7.5), "1 kg, -1 kg to 3 kg, 0, -1 to 2"},
		{rpe(8), rpe(10), "-4 kg, -4 kg to -2 kg, -2, -2 to -1"},
		{rpe(9.5), rpe(10), "-1 kg, -1 kg to 1 kg, 0, 0 to 1"},
		{rir(2), rir(4), "4 kg, 2 kg to 6 kg, 2, 1 to 3"},
		{rir(2), rir(6), "8 kg, at least 4 kg, 4, at least 2"},
		{rpe(8), rpe(5), "6 kg, 4 kg to 8 kg, 3, 2 to 4"},
	} {
		c, err := rule.SetToSetPercent(kg(50), tt.target, tt.told)
		if got := fmt.Sprintf("%v, %v, %d, %v", c.Change, c.Within, c.Reps, c.RepsWithin); err != nil || got != tt.want {
			t.Errorf("%v after %v: %s, %v, want %s", tt.target, tt.told, got, err, tt.want)
		}
	}
	_, err := rule.SetToSetPercent(0, units.Effort{}, units.Must(units.OMNI(3)))
	if paths(err) != "/each /target /reported" || !errors.Is(err, field.ErrMissing) || !errors.Is(err, units.ErrNoRIR) {
		t.Errorf("bad fields: %v", err)
	}
}

// An easier set never gives a smaller change, the change lies within its own
// error, and pounds come out as exact as kilograms.
func TestSetToSetIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		half := func(name string) units.Effort { return rpe(float64(rapid.IntRange(10, 20).Draw(t, name)) / 2) }
		target, a, b := half("target"), half("one"), half("other")
		each := units.Must((100 * units.Pound).Times(rapid.IntRange(1, 50).Draw(t, "hundredweights")))
		one := units.Must(rule.SetToSetPercent(each, target, a))
		other := units.Must(rule.SetToSetPercent(each, target, b))
		if a.Number() < b.Number() && (one.Change < other.Change || one.Reps < other.Reps) {
			t.Fatalf("%v gives %v and %d, %v gives %v and %d", a, one.Change, one.Reps, b, other.Change, other.Reps)
		}
		if !one.Within.Contains(one.Change) || !one.RepsWithin.Contains(one.Reps) {
			t.Fatalf("%v: %v not in %v or %d not in %v", a, one.Change, one.Within, one.Reps, one.RepsWithin)
		}
		if halves := math.Round((target.Number() - a.Number()) * 2); one.Change != units.Must((each / 50).Times(int(halves))) {
			t.Fatalf("%v off %v: %v", a, target, one.Change.Text(units.LB))
		}
	})
}

// Where the kit is coarse the repetitions change, and the load where it is not.
func TestInKit(t *testing.T) {
	percent := func(each units.Mass, told float64) rule.SetChange {
		return units.Must(rule.SetToSetPercent(each, rpe(8), rpe(told)))
	}
	table := func(told float64) rule.SetChange { return units.Must(rule.SetToSetKg(rpe(told))) }
	coarse := []units.Mass{kg(2), kg(4), kg(6), kg(10)}
	for name, tt := range map[string]struct {
		change rule.SetChange
		kit    []units.Mass
		each   units.Mass
		want   string
	}{
		"memory never raises load":     {percent(kg(10), 6), []units.Mass{kg(10), kg(10.4)}, kg(10), "10 kg by reps true"},
		"0.4 kg on coarse dumbbells":   {percent(kg(10), 9), coarse, kg(10), "10 kg by reps true"},
		"step as large as correction":  {percent(kg(10), 9), []units.Mass{kg(9.6), kg(10)}, kg(10), "9.6 kg by reps false"},
		"step just larger":             {percent(kg(10), 9), []units.Mass{kg(9.6) - 1, kg(10)}, kg(10), "10 kg by reps true"},
		"down past the correction":     {percent(kg(10), 10), []units.Mass{kg(9), kg(9.5), kg(10)}, kg(10), "9 kg by reps false"},
		"nothing off":                  {percent(kg(10), 8), coarse, kg(10), "10 kg by reps false"},
		"table up, beyond 10 %":        {table(6), coarse, kg(4), "4 kg by reps true"},
		"table up, just beyond 10 %":   {table(6), []units.Mass{kg(40), kg(44) + 1}, kg(40), "40 kg by reps true"},
		"table up, 10 %":               {table(6), []units.Mass{kg(40), kg(42), kg(44)}, kg(40), "44 kg by reps false"},
		"table up, less than it says":  {table(7), []units.Mass{kg(40), kg(42), kg(44)}, kg(40), "42 kg by reps false"},
		"table down, lighter than all": {table(10), coarse, kg(4), "2 kg by reps false"},
		"table down, at the lightest":  {table(10), coarse, kg(2), "2 kg by reps true"},
		"table down":                   {table(9), coarse, kg(6), "2 kg by reps false"},
	} {
		before := len(tt.change.Reasons)
		c, err := tt.change.InKit(pairs(t, tt.kit...), tt.each)
		if err != nil || c.Load == nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if got := fmt.Sprintf("%v by reps %v", c.Load.Each(), c.ByReps); got != tt.want {
			t.Errorf("%s: %s, want %s", name, got, tt.want)
		}
		if (len(c.Reasons) > before) != c.ByReps {
			t.Errorf("%s: reasons %+v", name, c.Reasons)
		}
	}
	if _, err := table(8).InKit(pairs(t, coarse...), kg(5)); !errors.Is(err, field.ErrUnknown) || paths(err) != "/each" {
		t.Errorf("not in the kit: %v", err)
	}
	if _, err := table(8).InKit(nil, kg(5)); !errors.Is(err, field.ErrUnknown) {
		t.Errorf("no kit: %v", err)
	}
}

// Whatever the kit, a rise stays within 10 % and a fall never lifts the load.
func TestInKitNeverLeaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var kit []units.Mass
		for range rapid.IntRange(1, 12).Draw(t, "size") {
			kit = append(kit, units.Must((units.Kilogram / 2).Times(rapid.IntRange(1, 120).Draw(t, "half kilograms"))))
		}
		each := rapid.SampledFrom(kit).Draw(t, "each")
		told := rpe(float64(rapid.IntRange(10, 20).Draw(t, "told")) / 2)
		changes := []rule.SetChange{units.Must(rule.SetToSetPercent(each, rpe(8), told))}
		if byTable, err := rule.SetToSetKg(told); err == nil {
			changes = append(changes, byTable)
		}
		for _, c := range changes {
			c, err := c.InKit(pairs(t, kit...), each)
			if err != nil {
				t.Fatal(err)
			}
			up, down := c.Load.Each() > each, c.Load.Each() < each
			if up && (c.Change <= 0 || 10*(c.Load.Each()-each) > each || c.Rule == rule.NameSetToSetPercent) || down && c.Change >= 0 {
				t.Fatalf("%v by %s: %v to %v", c.Reported, c.Rule, each, c.Load.Each())
			}
			if c.ByReps && (up || down) {
				t.Fatalf("two changes: %+v", c)
			}
		}
	})
}
