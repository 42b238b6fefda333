package progression_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Whoever came down from a weight would be given it again after a visit that was none to go by:
// two calm ones come first.
func TestNextComesBackAfterCalmVisits(t *testing.T) {
	for name, spoil := range map[string]func(v *progression.Visit){
		"calm":                      func(*progression.Visit) {},
		"too near to failure":       func(v *progression.Visit) { v.Sets[0].Effort = units.Must(units.InReserve(2)) },
		"a set with another weight": func(v *progression.Visit) { v.Sets[0].Load = 3 * kilo },
		"one more that nobody believes": func(v *progression.Visit) {
			v.Sets = append(v.Sets, v.Sets[0])
			v.Sets[len(v.Sets)-1].Load = 7 * kilo
		},
		"nothing done in a search":    func(v *progression.Visit) { v.Sets, v.Plan.Finding = nil, &dose.Search{MaxSteps: 1} },
		"form was lost":               func(v *progression.Visit) { v.FormLost = screening.Yes },
		"planned with another weight": func(v *progression.Visit) { v.Plan.Load = held(3 * kilo) },
	} {
		for _, down := range []bool{false, true} {
			c := rowCourse(t, 3, 4, 4.25)
			repeat(&c, 3)
			for i := range c.Log {
				c.Log[i] = pastVisit(c, int(last(&c).Day-c.Log[i].Day), 4*kilo, 12, 3)
			}
			if down {
				c.Log[0].Plan.Load = held(4250 * units.Gram)
			}
			spoil(&c.Log[1])
			if d := nextOf(t, c); (d.Change == progression.MoreLoad) != (!down || name == "calm") {
				t.Errorf("%s, came down %v: %s", name, down, tell(d))
			}
		}
	}
}
