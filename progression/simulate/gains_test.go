package simulate_test

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/progression/simulate"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
)

// rack is a fine rack: every kilogram to 20.
func rack() []float64 {
	var kg []float64
	for m := range 20 {
		kg = append(kg, float64(m+1))
	}
	return kg
}

// people trains n typical trainees of 6 to 20 kg at a fine rack.
func people(t *testing.T, n, weeks int, choose simulate.Chooser) (trainees []simulate.Trainee, runs [][]simulate.Lived) {
	t.Helper()
	for seed := range uint64(n) {
		d := draw{rand.New(rand.NewPCG(seed, 9))}
		s := beginner(t, "one-arm-dumbbell-row", dumbbells(rack()...))
		s.Weeks, s.Choose = weeks, choose
		tr := simulate.Typical(units.Must(units.Kilograms(6 + float64(14*d.Float64()))))
		trainees, runs = append(trainees, tr), append(runs, runOf(t, tr, s, seed))
	}
	return trainees, runs
}

func mean(list []float64) float64 {
	sum := 0.0
	for _, v := range list {
		sum += v
	}
	return sum / float64(len(list))
}

// The true gain of typical trainees over 12 weeks of two days at a good dose, that of
// somebody who knows the truth, lies within the mean gains of 47 trials with people
// from 50 years (Peterson 2010), whose length was not seen. The module's own policy
// doses more carefully, and they gain less: what that costs is logged.
func TestGainsAgainstPublishedMeans(t *testing.T) {
	gained := func(choose simulate.Chooser) (gains []float64) {
		trainees, runs := people(t, 200, 12, choose)
		for i, visits := range runs {
			gains = append(gains, 100*(visits[len(visits)-1].Usual.Kilograms()/trainees[i].OneRM.Kilograms()-1))
		}
		return gains
	}
	const low, high = 24.0 - 2, 33.0 + 3 // chest press, knee extension, with what was printed behind the means
	got, own := mean(gained(simulate.Informed)), mean(gained(simulate.Own))
	t.Logf("mean gain at 12 weeks %.1f %%, by the module's own policy %.1f %%; published means of programmes %.0f to %.0f %%", got, own, low, high)
	if got < low || got > high || own > got {
		t.Errorf("mean gain %.1f %%, published means lie from %.0f to %.0f %%; by the own policy %.1f %%", got, low, high, own)
	}
}

// Untrained young adults gained more in 12 weeks (Hammarström 2020, open data):
// the simulated gain, made for older people, stays below each of their lifts.
func TestGainsAgainstOpenData(t *testing.T) {
	_, runs := people(t, 200, 12, simulate.Informed)
	first, last := 0.0, 0.0
	for _, visits := range runs {
		first += visits[0].Usual.Kilograms()
		last += visits[len(visits)-1].Usual.Kilograms()
	}
	simulated := 100 * (last/first - 1)
	for lift, gain := range hammarstrom(t) {
		t.Logf("%s: %.1f %% in %d legs or people; simulated %.1f %%, %.1f points less", lift, mean(gain), len(gain), simulated, mean(gain)-simulated)
		if simulated >= mean(gain) {
			t.Errorf("%s: simulated %.1f %%, measured %.1f %%", lift, simulated, mean(gain))
		}
	}
}

// hammarstrom returns the gains from before to after 12 weeks, in per cent, by lift,
// of those in the published analysis.
func hammarstrom(t *testing.T) map[string][]float64 {
	t.Helper()
	included := map[string]bool{}
	for _, row := range fieldtest.Rows(t, "../../testdata/published/hammarstrom-allocation.csv", ';') {
		included[row["subject"]] = row["include"] == "incl"
	}
	before, gains := map[string]float64{}, map[string][]float64{}
	for _, point := range []string{"pre", "post"} {
		for _, row := range fieldtest.Rows(t, "../../testdata/published/hammarstrom-onerm.csv", ',') {
			kg, err := strconv.ParseFloat(row["load"], 64)
			if err != nil || row["timepoint"] != point || !included[row["subject"]] {
				continue
			}
			key := row["subject"] + row["exercise"] + strings.TrimSpace(row["leg"])
			if point == "pre" {
				before[key] = kg
			} else if was := before[key]; was > 0 {
				gains[row["exercise"]] = append(gains[row["exercise"]], 100*(kg/was-1))
			}
		}
	}
	if len(gains) != 4 {
		t.Fatalf("%d lifts", len(gains))
	}
	return gains
}

// With a fine rack the loads come out near where the guideline for older adults puts
// them, though nothing in the course knows the true 1RM: 16 weeks on, half of all are
// in its band. Those below it are what the policy's care costs in people who tell fewer
// left than there are; few sets truly end with less than two left, though three are
// told.
func TestLoadsAgainstTheGuideline(t *testing.T) {
	band := units.Must(guideline.Get("acsm2009-older-strength")).Load
	_, runs := people(t, 200, 16, simulate.Own)
	var shares []float64
	sets, near := 0, 0
	for _, visits := range runs {
		last := visits[len(visits)-1]
		shares = append(shares, last.Done.Plan.Load.Each().Kilograms()/last.Strength.Kilograms())
		for _, v := range visits {
			for _, s := range v.Sets {
				sets++
				if s.Left < 2 {
					near++
				}
			}
		}
	}
	slices.Sort(shares)
	low, middle, high := shares[len(shares)/10], shares[len(shares)/2], shares[9*len(shares)/10]
	t.Logf("share of the true 1RM at 16 weeks: %.0f, %.0f and %.0f %% (10th, 50th, 90th of 100); the band: %v; %d of %d sets with less than 2 truly left", 100*low, 100*middle, 100*high, band, near, sets)
	if !band.Contains(units.Fraction(middle)) || !band.Contains(units.Fraction(high)) || low < 0.5 {
		t.Errorf("shares %.3f, %.3f, %.3f, band %v", low, middle, high, band)
	}
	if near > sets/50 {
		t.Errorf("%d of %d sets end nearer to failure than asked", near, sets)
	}
}
