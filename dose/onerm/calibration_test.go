package onerm_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A study measures nine people, four sets each, and its errors make intervals for a tenth.
// What is true of people and sets is drawn from no constant of this package: a study knows only
// what it measured.
type truth struct {
	person, set float64 // standard deviations, as shares
	tails       float64 // degrees of freedom of both; 0 for normal
}

func (w truth) draw(rng *rand.Rand, sd float64) float64 {
	z := rng.NormFloat64()
	if w.tails == 0 || sd == 0 {
		return sd * z
	}
	chi := 0.0
	for range int(w.tails) {
		x := rng.NormFloat64()
		chi += x * x
	}
	return sd * z / math.Sqrt(chi/w.tails) / math.Sqrt(w.tails/(w.tails-2))
}

// held simulates studies, and returns how often the interval at 90 % for a set of somebody
// new holds the 1RM; wider multiplies the errors that the study found.
func (w truth) held(t *testing.T, wider float64) float64 {
	t.Helper()
	rng := rand.New(rand.NewPCG(2026, 11))
	const studies, people, sets, reps = 4000, 9, 4, 6
	inside := 0
	share := float64(units.Must(onerm.OConner.Fraction(reps)))
	for range studies {
		var found []float64
		for range people {
			own := w.draw(rng, w.person)
			for range sets {
				found = append(found, own+w.draw(rng, w.set))
			}
		}
		a := onerm.OpenBench()
		a.People, a.Fact = people, ""
		a.Bands = []onerm.ErrorBand{{UpTo: 10, Error: units.Fraction(wider * rms(found))}}
		miss := w.draw(rng, w.person) + w.draw(rng, w.set)
		load := units.Must(units.Kilograms(100 * (1 + miss) * share))
		e, err := onerm.Options{Level: 0.9, Accuracy: a}.FromSet(benchSet(load, reps, day), bench, body.Person{Age: 28, Sex: body.Male, Training: body.Advanced})
		if err != nil {
			t.Fatal(err)
		}
		if e.Interval.Contains(100 * units.Kilogram) {
			inside++
		}
	}
	return float64(inside) / studies
}

// TestCalibration: intervals at 90 % from nine people hold the 1RM of a tenth in 88 to 95.5 of
// 100, the most where sets do not hang together within a person, which none of the data
// says. The check finds errors taken for 20 % too small, as the normal distribution takes them
// for so few, and for a third too large.
func TestCalibration(t *testing.T) {
	honest := func(x float64) bool { return x >= 0.88 && x <= 0.955 }
	for name, w := range map[string]truth{
		"people differ, sets do not": {0.025, 0, 0}, "both": {0.018, 0.018, 0}, "sets alone": {0, 0.025, 0}, "long tails": {0.018, 0.018, 5},
	} {
		x := w.held(t, 1)
		t.Logf("%s: %.1f %% of intervals at 90 %% hold the 1RM", name, 100*x)
		if !honest(x) {
			t.Errorf("%s: coverage %v", name, x)
		}
	}
	people := truth{0.025, 0, 0}
	for _, wider := range []float64{1.6449 / (1.8595 * 1.0541), 1.34} {
		if x := people.held(t, wider); honest(x) {
			t.Errorf("errors times %v: coverage %v passes", wider, x)
		}
	}
}

// TestCombinedOnOpenData: all sets up to 10 repetitions of somebody who was left out,
// together: of the intervals at 90 % most hold the 1RM, and they are narrower than those of
// single sets.
func TestCombinedOnOpenData(t *testing.T) {
	sets := openSets(t)
	by := map[string][]onerm.Estimate{}
	truth := map[string]float64{}
	single, singles := 0.0, 0.0
	for i, s := range sets {
		if s.reps > 10 {
			continue
		}
		o := onerm.Options{Level: 0.9, Accuracy: withoutPerson(t, sets, s.person)}
		record := s.visit[:len(s.visit)-len(strings.TrimLeft(s.visit, "0123456789"))]
		when := day
		if s.visit != record+"SV" {
			when += units.Day(1 + i%3)
		}
		e, err := o.FromSet(benchSet(s.load, s.reps, when), bench, body.Person{Age: s.age, Sex: body.Male, Training: body.Advanced})
		if err != nil {
			t.Fatal(err)
		}
		by[record], truth[record] = append(by[record], e), s.oneRM
		low, high := ends(e)
		single, singles = single+(high-low)/s.oneRM, singles+1
	}
	inside, width := 0, 0.0
	var list []float64
	for record, all := range by {
		e, err := onerm.Combine(all...)
		if err != nil {
			t.Fatal(err)
		}
		low, high := ends(e)
		width += (high - low) / truth[record] / float64(len(by))
		list = append(list, float64(e.OneRM)/truth[record]-1)
		if low <= truth[record] && truth[record] <= high {
			inside++
		}
	}
	t.Logf("%d of %d hold; error %.2f %%; mean width %.1f %%, of single sets %.1f %%", inside, len(by), 100*rms(list), 100*width, 100*single/singles)
	if len(by) != 10 || inside < 8 || rms(list) > 0.022 || width > single/singles {
		t.Errorf("%d of %d, error %v, width %v", inside, len(by), rms(list), width)
	}
}

func ends(e onerm.Estimate) (low, high float64) {
	least, _ := e.Interval.Min()
	most, _ := e.Interval.Max()
	return float64(least), float64(most)
}
