package main

import (
	"math"
	"strings"
	"testing"

	"example.org/posology/examples/internal/programtest"
	"example.org/posology/screening"
)

func TestTable(t *testing.T) {
	status, got, errs := programtest.Run(run)
	if status != 0 || errs != "" {
		t.Fatalf("status %d, %s", status, errs)
	}
	programtest.Golden(t, "golden.txt", got)
	if !strings.Contains(got, "invented") {
		t.Error("the table does not say that its people are invented")
	}
}

func TestFlags(t *testing.T) {
	for _, args := range [][]string{{"-n", "0"}, {"-n", "1000001"}, {"-n", "x"}, {"-unknown", "3"}, {"-unknown", "NaN"}, {"extra"}} {
		if status, _, errs := programtest.Run(run, args...); status != 2 || errs == "" {
			t.Errorf("%v: status %d, %q", args, status, errs)
		}
	}
	_, few, _ := programtest.Run(run, "-n", "400", "-seed", "7")
	_, all, _ := programtest.Run(run, "-n", "400", "-seed", "7", "-all")
	if strings.Count(all, "\n") <= strings.Count(few, "\n") {
		t.Error("-all prints no more")
	}
	if _, again, _ := programtest.Run(run, "-n", "400", "-seed", "7"); again != few {
		t.Error("the same seed draws other people")
	}
	if _, other, _ := programtest.Run(run, "-n", "400", "-seed", "8"); other == few {
		t.Error("another seed draws the same people")
	}
}

func TestRates(t *testing.T) {
	seen := map[screening.Code]bool{}
	for kind, list := range rates.Lists {
		for _, r := range list {
			if term, ok := screening.LookUp(r.Code); !ok || term.Kind != kind {
				t.Errorf("%s is no %s", r.Code, kind)
			}
			if seen[r.Code] {
				t.Errorf("%s stands twice", r.Code)
			}
			seen[r.Code] = true
			for _, share := range []float64{r.At55, r.At85} {
				if share <= 0 || share*max(1, r.Women, r.Men) > 0.7 {
					t.Errorf("%s: %v", r.Code, share)
				}
			}
		}
	}
	mean, shares := 0.0, 0.0
	for _, b := range burdens {
		mean += float64(b.factor * b.share)
		shares += b.share
	}
	if math.Abs(mean-1) > 1e-9 || math.Abs(shares-1) > 1e-9 {
		t.Errorf("the burdens have mean %v and shares of %v", mean, shares)
	}
}

// Every person can be screened, and the counts add up.
func TestCounts(t *testing.T) {
	sum := newTally()
	d := draws(3, 1)
	for range 1000 {
		p, o, err := d.screened(screening.JoinPolicy{})
		if err != nil {
			t.Fatal(err)
		}
		sum.add(p, o)
		if err := sum.untriggered(p, o); err != nil {
			t.Fatal(err)
		}
	}
	total := func(counts ...int) (all int) {
		for _, n := range counts {
			all += n
		}
		return all
	}
	m, r := sum.meanwhile, sum.route
	if got := total(m[screening.WithinLimits], m[screening.LightSupervised], m[screening.UnloadedPractice], m[screening.Nothing]); got != 1000 {
		t.Errorf("%d people in the counts of what may go on", got)
	}
	if got := total(r[screening.NoRoute], r[screening.Tell], r[screening.PhysioLooks], r[screening.AskFirst], r[screening.SameDay], r[screening.Emergency]); got != 1000 {
		t.Errorf("%d people in the counts of routes", got)
	}
	if sum.rescreened != 1000 || sum.untold+sum.untrigger != 0 {
		t.Errorf("%d screened again, %d stopped or limited, %d asked", sum.rescreened, sum.untold, sum.untrigger)
	}
	for code, r := range sum.findings {
		if r.alone > r.stopped || r.stopped+r.held+r.limited > r.with || r.sent > r.with {
			t.Errorf("%s: %+v", code.name(), *r)
		}
	}
}

// The check sees a question that nothing triggered: an outcome is compared with
// that of the same person who has more to answer for.
func TestUntriggeredIsSeen(t *testing.T) {
	d := draws(5, 1)
	sum := newTally()
	p := d.person()
	p.Diseases, p.Symptoms, p.RedFlags, p.Conditions = screening.AskedFor(), screening.AskedFor(), screening.AskedFor(), screening.AskedFor()
	p.Events, p.Clearances, p.Restrictions, p.Answers = nil, nil, nil, nil
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	o.Meanwhile = screening.Nothing
	for prompt := range screening.Prompts() {
		if len(prompt.Triggers) > 0 {
			o.Missing = append(o.Missing, screening.Question{Code: prompt.Code})
			break
		}
	}
	if err := sum.untriggered(p, o); err != nil || sum.untold != 1 || sum.untrigger != 1 {
		t.Errorf("%v: %d stopped, %d asked; want one each", err, sum.untold, sum.untrigger)
	}
}
