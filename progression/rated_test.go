package progression_test

import (
	"testing"

	"example.org/posology/progression/rule"
	"example.org/posology/units"
)

// Where the policy's rule goes by rating, whoever rates and never tells a reserve does
// one repetition more a visit, and takes the next weight once the repetitions alone
// show it; whoever notes nothing, or rates 8, takes none. The numbers are invented.
func TestNextByRatingAlone(t *testing.T) {
	for _, tt := range []struct {
		name  string
		rates func(visit int) float64
		rises bool
	}{
		{"6", func(int) float64 { return 6 }, true},
		{"8", func(int) float64 { return 8 }, false},
		{"6 once, then 8", func(i int) float64 { return float64(6 + min(2, 2*i)) }, false},
	} {
		c := rowCourse(t, 3, 4, 4.5, 5)
		c.Policy.Rule = rule.NameOMNIBelow8
		done(&c, 4*kilo, 10, 3)
		for i := range 16 {
			rate(&c, tt.rates(i))
			d := nextOf(t, c)
			was := last(&c).Plan
			if now := d.Next.Load.Each(); now > was.Load.Each() && now > 4500*units.Gram || now == was.Load.Each() && d.Next.Count > was.Count+1 {
				t.Errorf("rated %s, visit %d: %s after %d × %v", tt.name, i, told(d), was.Count, was.Load.Each())
			}
			v := *last(&c)
			v.Day, v.Plan, v.Observer.Day = c.Day, *d.Next, c.Day
			c.Log, c.Day = append(c.Log, v), c.Day+3
			c.Request.Screening.Day, c.Request.Technique.Day = v.Day, v.Day
			done(&c, d.Next.Load.Each(), d.Next.Count, 3)
		}
		if got := last(&c).Plan.Load.Each(); (got > 4*kilo) != tt.rises {
			t.Errorf("rated %s: %v in the end", tt.name, got)
		}
	}
}
