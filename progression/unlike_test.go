package progression_test

import (
	"testing"

	"example.org/posology/units"
)

// Four left at every visit though the count falls, or three though it rises, is asked about
// from the fifth on, and changes no dose; three left of one and the same dose is not, nor
// what is told so roughly as more than can be counted, nor less once.
func TestNextAsksAboutReservesToldAlike(t *testing.T) {
	asks := func(reps []int, left ...float64) bool {
		c := rowCourse(t, 4, 6)
		c.Log = nil
		v := rowCourse(t, 4).Log[0]
		for i, n := range reps {
			v.Plan.Count, v.Day = n, firstDay+units.Day(3*i)
			c.Log = append(c.Log, v)
			c.Day = v.Day + 3
			done(&c, 4*kilo, n, left[min(i, len(left)-1)])
		}
		return hasReason(nextOf(t, c), "progression.same-told")
	}
	for name, tt := range map[string]struct {
		reps []int
		left []float64
		asks bool
	}{
		"it falls":                   {[]int{12, 11, 10, 9, 8}, []float64{4}, true},
		"it rises":                   {[]int{8, 9, 10, 11, 12}, []float64{3}, true},
		"four visits":                {[]int{11, 10, 9, 8}, []float64{4}, false},
		"nothing left":               {[]int{12, 11, 10, 9, 8}, []float64{0}, true},
		"one dose":                   {[]int{12, 12, 12, 12, 12}, []float64{3}, false},
		"a repetition apart":         {[]int{12, 12, 11, 12, 11}, []float64{3}, false},
		"more than can be counted":   {[]int{12, 11, 10, 9, 8}, []float64{6}, false},
		"one of five told otherwise": {[]int{12, 11, 10, 9, 8}, []float64{4, 4, 5, 4}, false},
		"and before five of one":     {[]int{12, 12, 11, 10, 9, 8}, []float64{5, 4}, true},
	} {
		if got := asks(tt.reps, tt.left...); got != tt.asks {
			t.Errorf("%s: asked about %v", name, got)
		}
	}
}

// Of a slip that is not asked about any more nothing is concluded.
func TestNextAsksNothingOfASlip(t *testing.T) {
	c := rowCourse(t, 2.5, 5, 12.5)
	done(&c, 4*kilo, 10, 3)
	for i := range 3 {
		v := *last(&c)
		v.Day += 3
		c.Log, c.Day = append(c.Log, v), v.Day+1
		done(&c, 4*kilo, 10, 3)
		if i == 0 {
			last(&c).Sets[0].Load = 40 * kilo
		}
	}
	if d := nextOf(t, c); hasReason(d, "progression.far-below") {
		t.Errorf("%+v", d.Reasons)
	}
}

// One left of six with 2.5 kg, where 12.5 kg went fifteen times with five left days before.
func TestNextAsksAboutMuchLess(t *testing.T) {
	for name, tt := range map[string]struct {
		kilograms, left float64
		days            units.Day
		asks            bool
	}{
		"a fifth of it":             {2.5, 1, 2, true},
		"weeks later":               {2.5, 1, 29, false},
		"as much":                   {12.5, 1, 2, false},
		"with more than is counted": {2.5, 6, 2, false},
	} {
		c := rowCourse(t, 2.5, 5, 12.5)
		done(&c, units.Must(units.Kilograms(12.5)), 15, 5)
		v := *last(&c)
		v.Day += tt.days
		c.Log, c.Day = append(c.Log, v), v.Day+1
		done(&c, units.Must(units.Kilograms(tt.kilograms)), 6, tt.left)
		d := nextOf(t, c)
		if hasReason(d, "progression.far-below") != tt.asks {
			t.Errorf("%s: asked about %v", name, !tt.asks)
		}
	}
}
