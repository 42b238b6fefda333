package onerm_test

import (
	"maps"
	"math"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/testdata/dosetest"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An openSet is a set of the open bench-press data.
type openSet struct {
	person  string // records 14 and 16 are probably one person
	visit   string // SV for the three loads of one visit, else the load's own
	percent string // of the 1RM
	age     body.Age
	load    units.Mass
	reps    int
	oneRM   float64 // measured, ng
}

func openSets(t testing.TB) []openSet {
	t.Helper()
	var list []openSet
	for _, row := range table(t, "bench-rtf.csv") {
		person := row["subject_ID"]
		if person == "16" {
			person = "14"
		}
		for _, protocol := range []string{"SV", "MV"} {
			for _, percent := range []string{"90", "80", "70"} {
				visit := row["subject_ID"] + protocol
				if protocol == "MV" {
					visit += percent
				}
				list = append(list, openSet{
					person, visit, percent, body.Age(fieldtest.Number(t, row["age(yrs)"])),
					units.Must(units.Kilograms(fieldtest.Number(t, row["load"+percent+"(n)"]))),
					int(fieldtest.Number(t, row[protocol+"_reps"+percent+"(n)"])),
					fieldtest.Number(t, row["1RM_true(kg)"]) * float64(units.Kilogram),
				})
			}
		}
	}
	return list
}

// miss is estimate/measured − 1 by an equation.
func (s openSet) miss(t testing.TB, f onerm.Formula) float64 {
	t.Helper()
	m, err := f.OneRM(s.load, float64(s.reps))
	if err != nil {
		t.Fatal(err)
	}
	return float64(m)/s.oneRM - 1
}

// misses are those of the sets of low to high repetitions.
func misses(t testing.TB, sets []openSet, f onerm.Formula, low, high int) []float64 {
	var list []float64
	for _, s := range sets {
		if s.reps >= low && s.reps <= high {
			list = append(list, s.miss(t, f))
		}
	}
	return list
}

func rms(list []float64) float64 {
	sum := 0.0
	for _, x := range list {
		sum += x * x
	}
	return math.Sqrt(sum / float64(len(list)))
}

func mean(list []float64) float64 {
	sum := 0.0
	for _, x := range list {
		sum += x
	}
	return sum / float64(len(list))
}

// TestOpenBench: the errors shipped are those of the data, no less than the
// least half-widths and than the band before.
func TestOpenBench(t *testing.T) {
	sets, a := openSets(t), onerm.OpenBench()
	if err := a.Validate(); err != nil || len(sets) != 60 {
		t.Fatal(len(sets), err)
	}
	from, least := 2, 0.0
	for i, floor := range []float64{0.05, 0.07, 0.10} {
		band := a.Bands[i]
		measured := misses(t, sets, a.Formula, from, band.UpTo)
		want := max(least, rms(measured), floor/(2.3060041*1.0540926)) // t of nine people
		if math.Abs(float64(band.Error)-want) > 1e-4 {
			t.Errorf("up to %d: error %v, want %v (%d sets, measured %v)", band.UpTo, float64(band.Error), want, len(measured), rms(measured))
		}
		from, least = band.UpTo+1, want
	}
	for _, s := range sets {
		if !a.Ages.Contains(s.age) {
			t.Errorf("age %v outside %v", s.age, a.Ages)
		}
	}
}

// TestFactsOfOpenData: the numbers in the facts on the open data follow from it.
func TestFactsOfOpenData(t *testing.T) {
	sets := openSets(t)
	near, mid, far := misses(t, sets, onerm.OConner, 1, 10), misses(t, sets, onerm.OConner, 11, 15), misses(t, sets, onerm.OConner, 16, 20)
	behind := func(percent string) float64 {
		byVisit := map[bool][]float64{}
		for _, s := range sets {
			if s.percent == percent {
				one := s.visit[len(s.visit)-2:] == "SV"
				byVisit[one] = append(byVisit[one], s.miss(t, onerm.OConner))
			}
		}
		return mean(byVisit[false]) - mean(byVisit[true])
	}
	day, set := components(t, sets)
	tests := []struct {
		what             string
		got, want, digit float64
	}{
		{"sets up to 10", float64(len(near)), 37, 0}, {"11 to 15", float64(len(mid)), 17, 0}, {"16 to 20", float64(len(far)), 5, 0},
		{"error up to 10", rms(near), 0.0253, 5e-5}, {"bias up to 10", mean(near), -0.007, 5e-4},
		{"error at 11 to 15", rms(mid), 0.0584, 5e-5}, {"bias at 11 to 15", mean(mid), -0.046, 5e-4}, {"error at 16 to 20", rms(far), 0.0196, 5e-5},
		{"Epley", mean(misses(t, sets, onerm.Epley, 1, 10)), 0.039, 5e-4}, {"Brzycki", mean(misses(t, sets, onerm.Brzycki, 1, 10)), 0.015, 5e-4},
		{"tired at 80 %", behind("80"), 0.012, 5e-4}, {"tired at 70 %", behind("70"), 0.037, 5e-4},
		{"day", day, 0.016, 5e-4}, {"set", set, 0.018, 6e-4},
	}
	for _, tt := range tests {
		if !(math.Abs(tt.got-tt.want) <= tt.digit) {
			t.Errorf("%s: %v, the fact says %v", tt.what, tt.got, tt.want)
		}
	}
}

// components are the standard deviations of day and set, from the products of
// a person's errors up to 10 repetitions: those of one visit share person and
// day, those of different visits the person alone, whose part cannot be below 0.
func components(t testing.TB, sets []openSet) (day, set float64) {
	var near []openSet
	for _, s := range sets {
		if s.reps <= 10 {
			near = append(near, s)
		}
	}
	bias := mean(misses(t, near, onerm.OConner, 1, 10))
	var all, same, apart []float64
	for i, a := range near {
		x := a.miss(t, onerm.OConner) - bias
		all = append(all, x*x)
		for _, b := range near[:i] {
			product := x * (b.miss(t, onerm.OConner) - bias)
			switch {
			case a.visit == b.visit:
				same = append(same, product)
			case a.person == b.person:
				apart = append(apart, product)
			}
		}
	}
	return math.Sqrt(mean(same) - max(0, mean(apart))), math.Sqrt(mean(all) - mean(same))
}

var bench = exercise.Exercise{
	ID: "bench-press", Name: "bench press", Pattern: exercise.HorizontalPush, Hold: body.OnBar, Measure: exercise.Repetitions,
	Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
}

func benchSet(load units.Mass, reps int, on units.Day) setlog.Set {
	return setlog.Set{Day: on, Exercise: bench.ID, Side: body.Both, Hold: body.OnBar, Load: load, Reps: reps, Effort: units.Must(units.InReserve(0))}
}

// forward is how far an equation is wrong in the repetitions that people do with a load of
// 75 % of their 1RM or more, as a standard deviation of the logarithm for a set of somebody
// new: bias, people and sets together, with people random (analysis of variance). A load
// is chosen and repetitions come of it; ranked by the 1RM that repetitions give, flat
// curves would win.
func forward(t testing.TB, sets []openSet, f onerm.Formula) float64 {
	t.Helper()
	by := map[string][]float64{}
	for _, s := range sets {
		if share := float64(s.load) / s.oneRM; share >= 0.75 {
			reps, err := f.Reps(units.Fraction(share))
			if err != nil {
				t.Fatal(err)
			}
			by[s.person] = append(by[s.person], math.Log(reps/float64(s.reps)))
		}
	}
	var means []float64
	within, freedom, inverse := 0.0, 0, 0.0
	for _, person := range slices.Sorted(maps.Keys(by)) { // sums to the last digit alike
		list := by[person]
		means = append(means, mean(list))
		for _, x := range list {
			within += (x - mean(list)) * (x - mean(list))
		}
		freedom += len(list) - 1
		inverse += 1 / float64(len(list)) / float64(len(by))
	}
	within /= float64(freedom)
	between := 0.0
	for _, m := range means {
		between += (m - mean(means)) * (m - mean(means)) / float64(len(means)-1)
	}
	return math.Sqrt(mean(means)*mean(means) + max(0, between-within*inverse) + within)
}

// withoutPerson is the accuracy that is learned from all others: the classical equation that
// goes best from load to repetitions, its errors by band, none below the band before.
func withoutPerson(t *testing.T, sets []openSet, person string) onerm.Accuracy {
	others := slices.DeleteFunc(slices.Clone(sets), func(s openSet) bool { return s.person == person })
	a := onerm.OpenBench()
	a.Formula, a.Bands, a.Fact, a.People = 0, nil, "", a.People-1
	least := math.Inf(1)
	for f := onerm.Epley; f <= onerm.Kemmler2006; f++ {
		if e := forward(t, others, f); e < least {
			a.Formula, least = f, e
		}
	}
	low, error := 1, 0.0
	for _, high := range []int{10, 15, 20} {
		if list := misses(t, others, a.Formula, low, high); len(list) > 1 {
			error = max(error, rms(list))
		}
		a.Bands = append(a.Bands, onerm.ErrorBand{UpTo: high, Error: units.Fraction(error)})
		low = high + 1
	}
	return a
}

// TestRank: the order of the equations from load to repetitions, and the two figures that the
// fact gives.
func TestRank(t *testing.T) {
	sets := openSets(t)
	best := forward(t, sets, onerm.OConner)
	if math.Abs(best-0.224) > 0.0005 {
		t.Errorf("O'Conner %.4f, want 0.224", best)
	}
	for f := onerm.Epley; f <= onerm.Kemmler2006; f++ {
		x := forward(t, sets, f)
		if f != onerm.OConner && x <= best {
			t.Errorf("%v %.4f is below %.4f", f, x, best)
		}
		if next := f == onerm.Brzycki || f == onerm.Adams; next != (x > best && x < 0.2425) {
			t.Errorf("%v %.4f", f, x)
		}
	}
}

// TestLeaveOnePersonOut: on people whom choice and widths know nothing of. The
// aims are 2.75 % up to 10 repetitions, 3.8 % up to 20, coverage of 85 % at 90.
func TestLeaveOnePersonOut(t *testing.T) {
	sets := openSets(t)
	var near, all []float64
	inside, width := 0, 0.0
	for _, s := range sets {
		if s.reps > 20 {
			continue
		}
		o := onerm.Options{Level: 0.9, Accuracy: withoutPerson(t, sets, s.person)}
		e, err := o.FromSet(benchSet(s.load, s.reps, day), bench, body.Person{Age: s.age, Sex: body.Male, Training: body.Advanced})
		if err != nil {
			t.Fatal(err)
		}
		if e.Formula != onerm.OConner {
			t.Errorf("without %s the choice is %v", s.person, e.Formula)
		}
		miss := float64(e.OneRM)/s.oneRM - 1
		all = append(all, miss)
		if s.reps <= 10 {
			near = append(near, miss)
		}
		low, _ := e.Interval.Min()
		high, _ := e.Interval.Max()
		if float64(low) <= s.oneRM && s.oneRM <= float64(high) {
			inside++
		}
		width += float64(high-low) / s.oneRM
	}
	coverage := float64(inside) / float64(len(all))
	t.Logf("%d sets: error %.2f %% up to 10, %.2f %% up to 20; coverage %.1f %% at 90 %%, mean width %.1f %%",
		len(all), 100*rms(near), 100*rms(all), 100*coverage, 100*width/float64(len(all)))
	if len(all) != 59 || rms(near) > 0.0275 || rms(all) > 0.038 || coverage < 0.85 || coverage > 0.97 {
		t.Errorf("%d sets: errors %v and %v, coverage %v", len(all), rms(near), rms(all), coverage)
	}
}

// TestDefaultOnOpenData: what FromSet itself says of practised people, with no
// option, up to 10 repetitions.
func TestDefaultOnOpenData(t *testing.T) {
	var list []float64
	for _, s := range openSets(t) {
		e, err := onerm.FromSet(benchSet(s.load, s.reps, day), bench, body.Person{Age: s.age, Sex: body.Male, Training: body.Advanced})
		if err != nil {
			if s.reps <= 10 {
				t.Error(err)
			}
			continue
		}
		list = append(list, float64(e.OneRM)/s.oneRM-1)
		if !e.Interval.Contains(units.Mass(s.oneRM)) || float64(dosetest.LowEnd(e)) > s.oneRM {
			t.Errorf("%v for %d: %v, measured %v", s.load, s.reps, e.Interval, s.oneRM)
		}
	}
	if len(list) != 37 || rms(list) > 0.0275 {
		t.Errorf("%d sets, error %v", len(list), rms(list))
	}
}
