package equipment_test

import (
	"slices"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func buyDumbbells(m units.Marked, n int) equipment.Purchase {
	return equipment.Purchase{Dumbbell: equipment.Dumbbell{Mass: m, Count: n}}
}

func buyPlates(m units.Marked, n int) equipment.Purchase {
	return equipment.Purchase{Plate: equipment.Plate{Mass: m, Count: n}}
}

func buyHandles(name string, m units.Marked, n int) equipment.Purchase {
	return equipment.Purchase{Handle: equipment.Handle{Name: name, Mass: m, Count: n}}
}

// homeKit has a pair of 2 kg, a single 4 kg and one handle with two plates.
func homeKit() equipment.Kit {
	return equipment.Kit{
		Dumbbells: []equipment.Dumbbell{{Mass: kg(2), Count: 2}, {Mass: kg(4), Count: 1}},
		Handles:   []equipment.Handle{{Name: "h", Mass: kg(2), Count: 1}},
		Plates:    []equipment.Plate{{Mass: kg(2), Count: 2}},
	}
}

// By hand: 3 kg pairs end both steps from two times 2 kg and from one 2 kg, a
// single ends the latter alone; plates of 0.5 kg do so too, at less mass.
func TestAdvise(t *testing.T) {
	stalls := []equipment.Stall{
		{Hold: body.OneEachHand, Present: 2 * kilo, Wanted: 3 * kilo},
		{Hold: body.OneHand, Present: 2 * kilo, Share: 0.5},
		{Hold: body.OneHand, Present: 2 * kilo, Wanted: 4 * kilo}, // none: there is a 4 kg dumbbell
		{Hold: body.OneHand, Present: 2 * kilo, Wanted: 5 * kilo, Ceiling: 2500 * units.Gram},
	}
	candidates := []equipment.Purchase{
		buyDumbbells(kg(4), 1), buyDumbbells(kg(3), 1), buyDumbbells(kg(3), 2), buyPlates(kg(0.5), 2), buyHandles("h", kg(2), 1),
	}
	want := []equipment.Advice{
		{Purchase: candidates[2], Mass: 6 * kilo, Removes: []int{0, 1}},
		{Purchase: candidates[3], Mass: kilo, Removes: []int{1}},
		{Purchase: candidates[1], Mass: 3 * kilo, Removes: []int{1}},
		{Purchase: candidates[4], Mass: 2 * kilo},
		{Purchase: candidates[0], Mass: 4 * kilo},
	}
	got, err := equipment.Advise(homeKit(), stalls, candidates)
	if diff := gocmp.Diff(want, got); err != nil || diff != "" {
		t.Errorf("Advise: %v (-want +got):\n%s", err, diff)
	}
}

// Equal gains and masses keep the order given.
func TestAdviseKeepsTheOrder(t *testing.T) {
	candidates := []equipment.Purchase{buyDumbbells(kg(5), 1), buyDumbbells(kg(2.5), 2), buyPlates(kg(1.25), 4)}
	got, err := equipment.Advise(equipment.Kit{}, nil, candidates)
	if err != nil || len(got) != 3 {
		t.Fatal(got, err)
	}
	for i, a := range got {
		if a.Purchase != candidates[i] || a.Removes != nil {
			t.Errorf("place %d: %+v", i, a)
		}
	}
}

// The limit of a stall belongs to it: a load at the limit ends it, a nanogram
// above does not, nor does the present mass itself.
func TestStallBoundaries(t *testing.T) {
	with := func(m units.Mass) equipment.Kit {
		return equipment.Kit{Dumbbells: []equipment.Dumbbell{{Mass: units.Marked{Mass: m, Unit: units.KG}, Count: 1}}}
	}
	tests := []struct {
		name  string
		kit   equipment.Kit
		stall equipment.Stall
		want  bool
	}{
		{"at the wanted mass", with(5 * kilo), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 5 * kilo}, false},
		{"just over", with(5*kilo + 1), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 5 * kilo}, true},
		{"just over the present", with(4*kilo + 1), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 5 * kilo}, false},
		{"the present", with(4 * kilo), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 5 * kilo}, true},
		{"at the share", with(4400 * units.Gram), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Share: 0.1}, false},
		{"over the share", with(4400*units.Gram + 1), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Share: 0.1}, true},
		{"at the ceiling", with(5 * kilo), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 6 * kilo, Ceiling: 5 * kilo}, false},
		{"over the ceiling", with(5*kilo + 1), equipment.Stall{Hold: body.OneHand, Present: 4 * kilo, Wanted: 6 * kilo, Ceiling: 5 * kilo}, true},
		{"only one of a pair", with(5 * kilo), equipment.Stall{Hold: body.OneEachHand, Present: 4 * kilo, Wanted: 5 * kilo}, true},
		{"empty kit", equipment.Kit{}, equipment.Stall{Hold: body.OnStack, Present: 4 * kilo, Wanted: 5 * kilo}, true},
		{"from nothing", with(1), equipment.Stall{Hold: body.OneHand, Wanted: 1}, false},
		{"ten times the present", with(1000 * kilo), equipment.Stall{Hold: body.OneHand, Present: 100 * kilo, Share: 10}, false},
		{"huge", with(5 * kilo), equipment.Stall{Hold: body.OneHand, Present: units.MaxMass, Share: 10}, true},
	}
	for _, tt := range tests {
		if got, err := tt.stall.In(tt.kit); err != nil || got != tt.want {
			t.Errorf("%s: stalls %v, %v, want %v", tt.name, got, err, tt.want)
		}
	}
}

// What is removed is what looking through all loads says, and the ranking holds.
func TestAdviseAgainstCompile(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawKit(t)
		stalls := few(t, "stalls", 4, func(int) equipment.Stall {
			return equipment.Stall{
				Hold:    rapid.SampledFrom([]body.Hold{body.OneHand, body.OneEachHand, body.OnBar}).Draw(t, "hold"),
				Present: units.Mass(rapid.IntRange(1, 10).Draw(t, "present")) * kilo,
				Share:   units.Fraction(rapid.SampledFrom([]float64{0.1, 0.25, 0.5}).Draw(t, "share")),
				Ceiling: units.Mass(rapid.IntRange(0, 12).Draw(t, "ceiling")) * kilo,
			}
		})
		list, err := equipment.Advise(k, stalls, nil)
		if err != nil {
			t.Fatal(err)
		}
		for i, a := range list {
			larger := units.Must(k.With(a.Purchase))
			var want []int
			for j, s := range stalls {
				if reaches(larger, s) && !reaches(k, s) {
					want = append(want, j)
				}
			}
			if !slices.Equal(a.Removes, want) || a.Mass != a.Purchase.Mass() || a.Mass <= 0 {
				t.Fatalf("%s removes %v of %+v, want %v", a.Purchase, a.Removes, stalls, want)
			}
			if i > 0 && (len(list[i-1].Removes) < len(want) || len(list[i-1].Removes) == len(want) && list[i-1].Mass > a.Mass) {
				t.Fatalf("place %d: %+v after %+v", i, a, list[i-1])
			}
		}
	})
}

// reaches looks through all loads for one within the stall's limit.
func reaches(k equipment.Kit, s equipment.Stall) bool {
	table, err := k.Compile(s.Hold)
	if err != nil {
		return false
	}
	top := s.Present + units.Must(s.Present.Scale(s.Share, units.Down))
	for l := range table.Loads() {
		if l.Each() > s.Present && l.Each() <= top && (s.Ceiling == 0 || l.Each() <= s.Ceiling) {
			return true
		}
	}
	return false
}

func TestWith(t *testing.T) {
	k := homeKit()
	want := homeKit()
	want.Dumbbells[1].Count = 3
	got, err := k.With(buyDumbbells(kg(4), 2))
	if diff := gocmp.Diff(want, got); err != nil || diff != "" {
		t.Errorf("two more of 4 kg: %v (-want +got):\n%s", err, diff)
	}
	want = homeKit()
	want.Plates = append(want.Plates, equipment.Plate{Mass: kg(1), Count: 2})
	got, err = k.With(buyPlates(kg(1), 2))
	if diff := gocmp.Diff(want, got); err != nil || diff != "" {
		t.Errorf("two plates of 1 kg: %v (-want +got):\n%s", err, diff)
	}
	for name, loads := range map[string]int{"h": 1, "g": 1} {
		larger := units.Must(k.With(buyHandles(name, kg(2), 1)))
		paired := len(larger.Handles) == 1 && larger.Handles[0].Count == 2
		if table := units.Must(larger.Compile(body.OneEachHand)); table.Len() != loads || paired != (name == "h") {
			t.Errorf("a handle %s: %d loads, %+v", name, table.Len(), larger.Handles)
		}
	}
	if diff := gocmp.Diff(homeKit(), k); diff != "" {
		t.Errorf("the kit changed:\n%s", diff)
	}
}

func TestCandidates(t *testing.T) {
	k := homeKit()
	k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: lb(10), Count: 1}, equipment.Dumbbell{Mass: lb(13), Count: 1}, equipment.Dumbbell{Mass: kg(2), Count: 1})
	text := func(list []equipment.Purchase) (texts []string) {
		for _, p := range list {
			texts = append(texts, p.String())
		}
		return texts
	}
	wantMore := []string{
		"1 × 2 kg dumbbell", "2 × 2 kg dumbbell", "1 × 4 kg dumbbell", "2 × 4 kg dumbbell", "1 × 10 lb dumbbell", "2 × 10 lb dumbbell",
		"1 × 13 lb dumbbell", "2 × 13 lb dumbbell", "1 × h 2 kg", "4 × 2 kg plate",
	}
	if diff := gocmp.Diff(wantMore, text(equipment.More(k))); diff != "" {
		t.Errorf("More (-want +got):\n%s", diff)
	}
	// Halfway from 4 kg to 10 lb, 4.27 kg, is rounded down to 4 kg, which is there.
	wantBetween := []string{"1 × 3 kg dumbbell", "2 × 3 kg dumbbell", "1 × 11 lb dumbbell", "2 × 11 lb dumbbell", "4 × 1 kg plate"}
	if diff := gocmp.Diff(wantBetween, text(equipment.InBetween(k))); diff != "" {
		t.Errorf("Between (-want +got):\n%s", diff)
	}
	stalls := []equipment.Stall{
		{Hold: body.OneHand, Present: 8 * kilo, Share: 0.1},                 // 8.8 kg
		{Hold: body.OneHand, Present: 8 * kilo, Wanted: 8600 * units.Gram},  // the same half kilogram
		{Hold: body.OneHand, Present: 8 * kilo, Share: 0.05},                // 8.4 kg: 8 kg is no step
		{Hold: body.OnBar, Present: 8 * kilo, Share: 0.1},                   // no dumbbell
		{Hold: body.OneEachHand, Present: 2 * kilo, Share: 1},               // 4 kg is in the kit
		{Hold: body.OneHand, Present: 999 * kilo, Wanted: 4_000_000 * kilo}, // heavier than a kit may state
	}
	wantReaching := []string{"1 × 8.5 kg dumbbell", "2 × 8.5 kg dumbbell", "1 × 1000 kg dumbbell", "2 × 1000 kg dumbbell"}
	if diff := gocmp.Diff(wantReaching, text(equipment.Reaching(k, stalls))); diff != "" {
		t.Errorf("Reaching (-want +got):\n%s", diff)
	}
	if list := slices.Concat(equipment.More(equipment.Kit{}), equipment.InBetween(equipment.Kit{})); list != nil {
		t.Errorf("from nothing: %v", list)
	}
	if got := (equipment.Purchase{}).String(); got != "nothing" || (equipment.Purchase{}).Mass() != 0 {
		t.Errorf("zero purchase: %q", got)
	}
}
