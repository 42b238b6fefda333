package main

import (
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
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
		if asked, stopped, err := untriggered(p, o); err != nil || asked > 0 || stopped {
			t.Fatalf("a question that nothing triggered: %d asked, stopped or limited: %v, %v", asked, stopped, err)
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
	if asked, stopped, err := untriggered(p, o); err != nil || !stopped || asked != 1 {
		t.Errorf("%v: stopped %v, %d asked; want one", err, stopped, asked)
	}
}

// untriggered screens p again with every question that nothing triggered answered with no:
// how many of these are asked, and whether one stops or limits.
func untriggered(p screening.Profile, o screening.Outcome) (asked int, stopped bool, err error) {
	codes := slices.Concat(p.Diseases.Present, p.Diseases.Unsure, p.Symptoms.Present, p.Symptoms.Unsure, p.RedFlags.Present, p.RedFlags.Unsure, p.Conditions.Present, p.Conditions.Unsure)
	for _, e := range p.Events {
		codes = append(codes, e.Code)
	}
	for _, f := range o.Findings { // a fall or fracture stands for a condition, a question for its topic
		codes = append(codes, f.Code)
	}
	again := p
	again.Answers = map[screening.Code]screening.Answer{}
	maps.Copy(again.Answers, p.Answers)
	for prompt := range screening.Prompts() {
		triggered := len(prompt.Triggers) == 0 || slices.ContainsFunc(prompt.Triggers, func(c screening.Code) bool { return slices.Contains(codes, c) })
		if triggered {
			continue
		}
		if prompt.YesNo && again.Answers[prompt.Code] == screening.Unknown {
			again.Answers[prompt.Code] = screening.No
		}
		if slices.ContainsFunc(o.Missing, func(q screening.Question) bool {
			return q.Code == prompt.Code && !q.Unsure
		}) {
			asked++
		}
	}
	second, err := screening.Assess(again, o.Policy)
	if err != nil {
		return asked, false, err
	}
	return asked, second.Meanwhile < o.Meanwhile || second.Route < o.Route || !second.Limits.AsTightAs(o.Limits), nil
}
