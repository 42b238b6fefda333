package progression_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/posology/progression"
)

// Means and SDs of the maps and gains, from the collected rules (Gearhart 2009,
// Cotter 2017, Peterson 2010, Churchward-Venne 2015), read a second time by a
// program.
func TestTranscribedMaps(t *testing.T) {
	round := func(v float64) float64 { return math.Round(v*100) / 100 }
	for _, want := range []string{
		"omni-leg-press-before 4:36.84±11.23 6:54.72±10.56 8:72.58±12.22",
		"omni-leg-press-after 4:61.08±14.91 6:74.07±11.14 8:86.56±8.43",
		"borg-young-women 11.26±1.95:40 13.94±1.58:57 15.52±2.05:70",
	} {
		id, _, _ := strings.Cut(want, " ")
		m, _ := progression.LookUpMap(progression.MapID(id))
		got := id
		for _, p := range m.Points {
			rating, _ := p.Rating.Min()
			share, _ := p.Share.Min()
			got += fmt.Sprintf(" %v", rating)
			if p.RatingSD > 0 {
				got += fmt.Sprintf("±%v", p.RatingSD)
			}
			got += fmt.Sprintf(":%v", round(share.Percent()))
			if p.ShareSD > 0 {
				got += fmt.Sprintf("±%v", round(p.ShareSD.Percent()))
			}
		}
		if got != want {
			t.Errorf("got %s, want %s", got, want)
		}
	}
	if d := progression.CR10Drift(); d.TooHeavy != 6 || d.FirstReps != 2 || d.For.String() != "12 to 15" || d.From.String() != "4 to 6" {
		t.Errorf("drift %+v (Buckley & Borg 2011)", d)
	}
}

func TestTranscribedGains(t *testing.T) {
	var got []string
	for _, g := range progression.MeanGains() {
		got = append(got, fmt.Sprintf("%s %v±%v", g.Lift, g.Percent, g.Uncertainty))
	}
	ranges, _ := progression.GainRanges()
	for _, g := range ranges {
		got = append(got, fmt.Sprintf("%s %dwk %v %v %v %v", g.Lift, g.Weeks, g.Mean, g.SE, g.Min, g.Max))
	}
	for _, want := range []string{
		"leg press 29±2",
		"chest press 24±2",
		"knee extension 33±3",
		"lat pull 25±2",
		"leg press 12wk 33 2 -36 87",
		"leg press 24wk 50 3 -28 145",
		"leg extension 12wk 20 1 -22 56",
		"leg extension 24wk 29 2 -19 60",
	} {
		if len(got) == 0 || got[0] != want {
			t.Fatalf("got %v, want %s next", got, want)
		}
		got = got[1:]
	}
	if len(got) > 0 {
		t.Errorf("not collected: %v", got)
	}
}
