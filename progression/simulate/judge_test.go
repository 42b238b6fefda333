package simulate_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/simulate"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

const right = body.Right

func set(reps int, share, left float64) simulate.TrueSet {
	return simulate.TrueSet{Reps: reps, Share: units.Fraction(share), Left: left, Failed: reps == 0}
}

func TestWorks(t *testing.T) {
	heavy, near, easy, none := set(8, 0.6, 9), set(12, 0.5, 5), set(10, 0.59, 5.1), set(0, 1.1, 0)
	for name, tt := range map[string]struct {
		sets []simulate.TrueSet
		want bool
	}{
		"one set":                     {[]simulate.TrueSet{heavy}, false},
		"two by load":                 {[]simulate.TrueSet{heavy, heavy}, true},
		"two by reserve":              {[]simulate.TrueSet{near, near}, true},
		"half of two":                 {[]simulate.TrueSet{easy, heavy}, true},
		"a third":                     {[]simulate.TrueSet{easy, heavy, easy}, false},
		"what was not lifted is none": {[]simulate.TrueSet{heavy, none}, false},
		"26 repetitions":              {[]simulate.TrueSet{heavy, heavy, set(26, 0.4, 1)}, false},
		"25 repetitions":              {[]simulate.TrueSet{set(25, 0.4, 1), set(25, 0.4, 1)}, true},
		"nothing":                     {nil, false},
	} {
		if got := (simulate.Lived{Sets: tt.sets}).Works(); got != tt.want {
			t.Errorf("%s: %v", name, got)
		}
	}
}

// course is a run of 12 weeks of two visits, as the pattern says of each: w works,
// l does not, m was missed; what is left out was not trained any more.
func course(pattern string) (run []simulate.Lived) {
	for i, c := range pattern {
		v := simulate.Lived{Week: i/2 + 1, Day: firstDay + units.Day(i), Usual: 5 * units.Kilogram, Missed: c == 'm', Fits: 4 * units.Kilogram}
		v.Done.Plan.Sets, v.Done.Plan.Load = 2, units.Must(equipment.NewLoad(2*units.Kilogram, body.OneHand))
		one := set(8, 0.4, 9)
		if c == 'w' {
			one = set(8, 0.6, 1.5)
		}
		if c == 'e' {
			v.Done.Plan.Sets = 0
		}
		v.Sets = []simulate.TrueSet{one, one}
		run = append(run, v)
	}
	return run
}

func TestJudge(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4))
	s.Weeks = 12
	tr := exact(4)
	for name, tt := range map[string]struct {
		run            []simulate.Lived
		visits, works  int
		first          int
		away, under    bool
		late, heavier  int
		near, workSets int
	}{
		"all work":          {course("wwwwwwwwwwwwwwwwwwwwwwww"), 20, 20, 1, false, false, 8, 8, 48, 48},
		"none":              {course("llllllllllllllllllllllll"), 20, 0, 0, false, true, 8, 8, 0, 48},
		"three in four":     {course("llllwlwwllllllllllllllll"), 20, 3, 3, false, true, 8, 8, 6, 48},
		"the first works":   {course("llllllwwwlllllllllllllll"), 20, 3, 4, false, true, 8, 8, 6, 48},
		"over a miss":       {course("llllwmmmlwwlllllllllllll"), 17, 3, 3, false, true, 8, 8, 6, 42},
		"two in four":       {course("llwwllllllllllllwlwlwlwl"), 20, 4, 0, false, false, 8, 8, 12, 48},
		"sent away":         {course("wwwwwwe"), 20, 2, 1, true, true, 0, 0, 12, 12},
		"refused":           {nil, 20, 0, 0, true, true, 0, 0, 0, 0},
		"missed at the end": {course("wwwwwwwwwwwwwwwwwwwwwwmm"), 18, 18, 1, false, false, 6, 6, 44, 44},
	} {
		f := units.Must(simulate.Judge(tr, s, tt.run, 0))
		got := []int{f.Visits, f.Working, f.First, f.Late, f.Heavier, f.Near, f.Sets}
		if want := []int{tt.visits, tt.works, tt.first, tt.late, tt.heavier, tt.near, tt.workSets}; !slices.Equal(got, want) || f.Elsewhere != tt.away || f.Undertreated != tt.under {
			t.Errorf("%s: %v, want %v; %v, %v", name, got, want, f.Elsewhere, f.Undertreated)
		}
		if gain := f.Gain; tt.run != nil && (gain < 24.99 || gain > 25.01) {
			t.Errorf("%s: gain %v", name, gain)
		}
	}
	if f := units.Must(simulate.Judge(tr, s, course("llllllllllllllllllllllll"), 1)); f.Heavier != 0 {
		t.Errorf("twice as heavy counts as the same: %d", f.Heavier)
	}
	tried := course("llllllllllllllllllllllll")
	tried[0].Sets = append(tried[0].Sets, simulate.TrueSet{Search: true, Reps: 3, Left: 0.5}, simulate.TrueSet{Search: true, Failed: true})
	if f := units.Must(simulate.Judge(tr, s, tried, 0)); f.Sets != 48 || f.Near != 0 || f.Vain != 1 || f.Failed != 0 {
		t.Errorf("sets of a search: %+v", f)
	}
	tr.OneRM = 9 * units.Kilogram // the kit is less than half
	if f := units.Must(simulate.Judge(tr, s, nil, 0)); f.Visits != 0 {
		t.Errorf("%d visits counted", f.Visits)
	}
}

// Sums are the same in every order, and count people, visits and sets each by their own.
func TestSum(t *testing.T) {
	fates := []simulate.Fate{
		{Visits: 40, Working: 10, First: 3, Gain: 20, Sets: 100, Near: 10, Close: 4, Failed: 1, Late: 30, LateSets: 50, Share: 30, Heavier: 15, Vain: 1},
		{Visits: 40, Working: 30, First: 5, Gain: 10, Sets: 100, Late: 30, LateSets: 50, Share: 35, Undertreated: true},
		{Visits: 20, First: 0, Gain: 0.1, Elsewhere: true},
	}
	got := simulate.Sum(fates)
	want := simulate.Toll{People: 3, Working: 40, Gain: 30.1 / 3, Median: 5, P90: 0, Share: 65, Near: 5, Close: 2, Failed: 0.5, Heavier: 25, Vain: 100.0 / 3, Elsewhere: 100.0 / 3, Undertreated: 100.0 / 3}
	if got != want {
		t.Errorf("%+v\n%+v", got, want)
	}
	slices.Reverse(fates)
	if again := simulate.Sum(fates); again != got {
		t.Errorf("another order: %+v", again)
	}
	if none := simulate.Sum(nil); none != (simulate.Toll{}) {
		t.Errorf("nobody: %+v", none)
	}
}

// The plain policies do what their rules say: load rises by one weight of the kit, and
// only then; after three visits below the bottom of the range it falls.
func TestPlainPolicies(t *testing.T) {
	rises, eased := map[string]int{}, 0
	kits := []equipment.Kit{dumbbells(2, 4, 5, 6, 8, 9, 10, 12), dumbbells(2, 4, 8, 12)}
	for name, choose := range map[string]simulate.Chooser{"two": simulate.ByTwoForTwo, "reps": simulate.ByRepsThenLoad, "linear": simulate.ByWeeks} {
		for seed := range uint64(30) {
			s := beginner(t, "one-arm-dumbbell-row", kits[seed%2])
			s.Request.Side, s.Choose, s.Weeks = right, choose, 40
			tr := simulate.Mixed(12*units.Kilogram, rand.NewPCG(seed, 1))
			table := units.Must(s.Request.Kit.Compile(s.Request.Exercise.Hold))
			var log []progression.Visit
			since := units.Day(0) // the load changed
			for _, v := range runOf(t, tr, s, seed) {
				if v.Missed {
					continue
				}
				if n := len(log); n > 3 && log[n-1].Plan.Phase == dose.Build {
					was, is := log[n-1].Plan, v.Done.Plan
					gap, _ := table.Next(was.Load.Each())
					up := is.Load.Each() > was.Load.Each()
					if up {
						rises[name]++
					}
					if name == "linear" && up && v.Day-since < 14 {
						t.Fatalf("linear: up after %d days", v.Day-since)
					}
					if is.Load.Each() < was.Load.Each() {
						eased++
						since = v.Day
					}
					if up {
						since = v.Day
					}
					if up != (v.Decision.Action == progression.Progress) || up && is.Load.Each() != gap.To.Each() {
						t.Fatalf("%s: from %v to %v, %v", name, was.Load, is.Load, v.Decision.Action)
					}
					final := func(back int) int {
						if sets := log[n-back].Sets; len(sets) > 0 {
							return sets[len(sets)-1].Reps
						}
						return 0
					}
					two := final(1) >= 12 && final(2) >= 12 && log[n-2].Plan.Load.Each() == was.Load.Each() && log[n-2].Plan.Phase == dose.Build
					if name == "two" && up != two && gap.To.Each() > 0 {
						t.Fatalf("two for two: %d, %d, rises %v", final(2), final(1), up)
					}
					if name == "reps" && up != (final(1) > 12) && gap.To.Each() > 0 {
						t.Fatalf("reps then load: %d of %d, rises %v", final(1), was.Count, up)
					}
					if name == "reps" && up && is.Count != 8 {
						t.Fatalf("reps then load begins with %d", is.Count)
					}
					if is.Load.Each() < was.Load.Each() && (final(1) >= 8 || final(2) >= 8 || final(3) >= 8 || v.Decision.Action != progression.EaseOff) {
						t.Fatalf("%s: eased after %d, %d, %d", name, final(3), final(2), final(1))
					}
				}
				log = append(log, v.Done)
			}
		}
	}
	if eased == 0 || rises["two"] == 0 || rises["reps"] == 0 || rises["linear"] == 0 {
		t.Errorf("rises: %v, eased %d times", rises, eased)
	}
	if given.Countable != 5 {
		t.Error("a reserve above five can be counted")
	}
}

// Who knows the truth takes the heaviest weight that leaves three after eight.
func TestInformed(t *testing.T) {
	s := beginner(t, "one-arm-dumbbell-row", dumbbells(2, 4, 6, 10))
	s.Choose = simulate.Informed
	if v := runOf(t, exact(8.1), s, 1)[5]; v.Fits != 4*units.Kilogram || v.Done.Plan.Load.Each() != v.Fits { // ten with 6 kg
		t.Errorf("fits %v, takes %v", v.Fits, v.Done.Plan.Load)
	}
	for i, v := range runOf(t, exact(10), s, 1)[1:] {
		if p := v.Done.Plan; p.Load.Each() != 6*units.Kilogram || p.Count != 17 || v.Fits != p.Load.Each() { // 20 to failure
			t.Fatalf("visit %d: %v × %d, fits %v", i, p.Load, p.Count, v.Fits)
		}
	}
}
