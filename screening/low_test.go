package screening_test

import (
	"slices"
	"testing"

	"example.org/posology/screening"
)

// lowRows are pressures and pulses at the lower edges. Systolic 70 and a pulse
// of 40, both "or below": Japanese Association of Rehabilitation Medicine 2006,
// read through teaching pages. All others are this module's own (design): no
// lower edge was found in European or American texts for outpatients.
var lowRows = []struct {
	name                       string
	systolic, diastolic, pulse int
	code                       screening.Code
	route                      screening.Route
	meanwhile                  screening.Meanwhile
}{
	{"systolic 70", 70, 45, 64, "systolic_le_70", screening.SameDay, screening.Nothing},
	{"systolic 71", 71, 50, 64, "bp_lt_90_or_40", screening.AskFirst, screening.Nothing},
	{"systolic 89", 89, 60, 64, "bp_lt_90_or_40", screening.AskFirst, screening.Nothing},
	{"systolic 90", 90, 60, 64, "bp_lt_100_or_50", screening.Tell, screening.WithinLimits},
	{"systolic 99", 99, 60, 64, "bp_lt_100_or_50", screening.Tell, screening.WithinLimits},
	{"systolic 100", 100, 60, 64, "", screening.NoRoute, screening.WithinLimits},
	{"diastolic 39", 120, 39, 64, "bp_lt_90_or_40", screening.AskFirst, screening.Nothing},
	{"diastolic 40", 120, 40, 64, "bp_lt_100_or_50", screening.Tell, screening.WithinLimits},
	{"diastolic 49", 120, 49, 64, "bp_lt_100_or_50", screening.Tell, screening.WithinLimits},
	{"diastolic 50", 120, 50, 64, "", screening.NoRoute, screening.WithinLimits},
	{"pulse 20", 120, 70, 20, "hr_le_40", screening.AskFirst, screening.Nothing},
	{"pulse 40", 120, 70, 40, "hr_le_40", screening.AskFirst, screening.Nothing},
	{"pulse 41", 120, 70, 41, "hr_le_50", screening.Tell, screening.WithinLimits},
	{"pulse 50", 120, 70, 50, "hr_le_50", screening.Tell, screening.WithinLimits},
	{"pulse 51", 120, 70, 51, "", screening.NoRoute, screening.WithinLimits},
}

// TestLowReadings holds the lower edges, at the screening and on the day.
func TestLowReadings(t *testing.T) {
	for _, tt := range lowRows {
		p := blank()
		p.BP, p.RestingPulse = pressure(tt.systolic, tt.diastolic), tt.pulse
		o := assess(t, p)
		c := quiet()
		c.BP, c.RestingPulse = p.BP, p.RestingPulse
		today := mustToday(t, c, assess(t, blank()))
		for when, o := range map[string]screening.Outcome{"assessed": o, "today": today} {
			if o.Route != tt.route || o.Meanwhile != tt.meanwhile {
				t.Errorf("%s, %s: %v, %v; want %v, %v", tt.name, when, o.Route, o.Meanwhile, tt.route, tt.meanwhile)
			}
			_, nothing := finding(o, "screening.nothing-found")
			if nothing != (tt.code == "") {
				t.Errorf("%s, %s: says that nothing was found: %v", tt.name, when, nothing)
			}
			if o.Rules.SessionDay.Plan != screening.AsPlanned {
				t.Errorf("%s, %s: the published checks of the day have no lower edge, and say %v", tt.name, when, o.Rules.SessionDay)
			}
			again := misses(o, "blood_pressure_again") || misses(o, "resting_pulse_again")
			if again != (tt.meanwhile == screening.Nothing) {
				t.Errorf("%s, %s: a second reading asked for: %v", tt.name, when, again)
			}
		}
		if want := tt.meanwhile == screening.Nothing; (today.Plan == screening.SettleFirst) != want {
			t.Errorf("%s: plan %v", tt.name, today.Plan)
		}
		c.BPAgain, c.RestingPulseAgain = c.BP, c.RestingPulse
		if again := mustToday(t, c, assess(t, blank())); (again.Plan == screening.NotToday) != (tt.meanwhile == screening.Nothing) {
			t.Errorf("%s, measured again: plan %v", tt.name, again.Plan)
		}
	}
}

// TestLowReadingsKnown holds what is known of the edges: none is better than
// what was read.
func TestLowReadingsKnown(t *testing.T) {
	l := ledger(t)
	for _, tt := range lowRows {
		if tt.code == "" {
			continue
		}
		known := "memory" // as weak as design at best
		if slices.Contains([]screening.Code{"systolic_le_70", "hr_le_40"}, tt.code) {
			known = "secondary"
		}
		term, ok := screening.LookUp(tt.code)
		if !ok {
			t.Fatalf("%s is not known", tt.code)
		}
		notRaised(t, l, term.Fact, known)
	}
}

// TestLowerEdgeAlone holds that nobody who may faint stands alone.
func TestLowerEdgeAlone(t *testing.T) {
	p := blank()
	p.BP, p.RestingPulse, p.Setting = pressure(95, 60), 64, screening.Alone
	if o := assess(t, p); !o.Limits.Support || o.Limits.Avoid == 0 {
		t.Errorf("limits %+v, want support and no lone standing", o.Limits)
	}
}
