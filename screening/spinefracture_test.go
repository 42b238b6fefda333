package screening_test

import (
	"fmt"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// TestFractureOfTheBack holds that a fracture told by a region of the spine is
// the vertebral fracture told by its code, at every date: afterwards the same,
// and while it is recent no looser, since the region is spared as well.
func TestFractureOfTheBack(t *testing.T) {
	for _, region := range []body.Region{body.Neck, body.UpperBack, body.LowerBack} {
		for _, day := range []units.Day{0, visit, visit - 30, monthsAgo(t, 6) + 1, monthsAgo(t, 6), visit - 300, visit - 9000} {
			name := fmt.Sprintf("%v, %v", region, day)
			byCode, byRegion := blank(), blank()
			byCode.Events = []screening.Event{{Code: "vertebral_fracture", Day: day}}
			byRegion.Events = []screening.Event{{Code: "fracture", Day: day, Region: region}}
			a, b := assess(t, byCode), assess(t, byRegion)
			if a.Route != b.Route || a.Meanwhile != b.Meanwhile || !b.Limits.AsTightAs(a.Limits) {
				t.Errorf("%s: by its code %v, %v, %+v; by its region %v, %v, %+v", name, a.Route, a.Meanwhile, a.Limits, b.Route, b.Meanwhile, b.Limits)
			}
			if old := day != 0 && day <= monthsAgo(t, 6); old && !a.Limits.AsTightAs(b.Limits) {
				t.Errorf("%s: limits by its region %+v, by its code %+v", name, b.Limits, a.Limits)
			}
			if misses(a, "vertebral_fracture_day") != misses(b, "vertebral_fracture_day") {
				t.Errorf("%s: the day asked for by its code %v, by its region %v", name, a.Missing, b.Missing)
			}
			if len(screening.Cautions(byRegion)) != len(screening.Cautions(byCode)) {
				t.Errorf("%s: cautions %v, want %v", name, screening.Cautions(byRegion), screening.Cautions(byCode))
			}
		}
	}
	other := blank()
	other.Events = []screening.Event{{Code: "operation", Day: visit - 30, Region: body.LowerBack}}
	if o := assess(t, other); len(o.Rules.Wider) > 0 || o.Limits.Avoid != 0 {
		t.Errorf("an operation on the back is a fracture: %+v", o.Findings)
	}
	other.Conditions, other.Events[0].Day = screening.AskedFor("vertebral_fracture"), visit-3000
	if o := assess(t, other); o.Meanwhile != screening.UnloadedPractice {
		t.Errorf("an operation long ago tells when the spine broke: %v", o.Meanwhile)
	}
	c, d := quiet(), quiet()
	c.Events = []screening.Event{{Code: "vertebral_fracture", Day: visit}}
	d.Events = []screening.Event{{Code: "fracture", Day: visit, Region: body.LowerBack}}
	a, b := mustToday(t, c, assess(t, blank())), mustToday(t, d, assess(t, blank()))
	if a.Route != b.Route || a.Meanwhile != b.Meanwhile || !b.Limits.AsTightAs(a.Limits) {
		t.Errorf("on the day: by its code %v, %v, %+v; by its region %v, %v, %+v", a.Route, a.Meanwhile, a.Limits, b.Route, b.Meanwhile, b.Limits)
	}
}

// TestFractureOfTheBackWider holds that the wider list of Willey 2003 still has
// the fracture of the last 6 months.
func TestFractureOfTheBackWider(t *testing.T) {
	p := blank()
	p.Events = []screening.Event{{Code: "fracture", Day: visit - 30, Region: body.LowerBack}}
	if got := screening.WiderContraindications(p); len(got) != 1 || got[0] != "recent_fracture" {
		t.Errorf("wider list %v", got)
	}
}
