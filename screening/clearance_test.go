package screening_test

import (
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

func TestClearanceVoid(t *testing.T) {
	for why, change := range map[string]func(*screening.Profile, *screening.Clearance){
		"no clinician is named":              func(_ *screening.Profile, c *screening.Clearance) { c.Who = " " },
		"its day is not given":               func(_ *screening.Profile, c *screening.Clearance) { c.Day = 0 },
		"its day lies after the visit":       func(_ *screening.Profile, c *screening.Clearance) { c.Day = visit + 1 },
		"it has expired":                     func(_ *screening.Profile, c *screening.Clearance) { c.Expires = visit - 1 },
		"it does not say what it speaks for": func(_ *screening.Profile, c *screening.Clearance) { c.Scope = nil },
		"something has happened since": func(p *screening.Profile, c *screening.Clearance) {
			p.Events = []screening.Event{{Code: "hospital_stay", Day: c.Day + 1}}
		},
	} {
		p := blank()
		p.Conditions = screening.AskedFor("pacemaker")
		c := clearance("pacemaker")
		change(&p, &c)
		p.Clearances = []screening.Clearance{c}
		o := assess(t, p)
		expect(t, o, screening.AskFirst, screening.UnloadedPractice)
		f, ok := finding(o, "screening.clearance-not-counted")
		if said := screening.Words().Clinician(f.Reason); !ok || !strings.Contains(said, why) {
			t.Errorf("%s: said %q", why, said)
		}
	}
}

func TestClearanceCounts(t *testing.T) {
	p := blank()
	p.Conditions = screening.AskedFor("pacemaker")
	c := clearance("pacemaker", "operation")
	p.Events = []screening.Event{{Code: "operation", Day: c.Day}} // what was cleared after
	c.Expires = visit
	p.Clearances = []screening.Clearance{c}
	o := assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if _, ok := finding(o, "screening.clearance-counted"); !ok || o.ReviewBy != visit {
		t.Errorf("review by %v, findings %+v", o.ReviewBy, o.Findings)
	}
	c.Intensity = 0
	p.Clearances = []screening.Clearance{c}
	if o = assess(t, p); o.Limits.MaxIntensity != screening.Moderate {
		t.Errorf("a clearance without effort allows %v", o.Limits.MaxIntensity)
	}
	c.Scope = []screening.Code{"icd"}
	p.Clearances = []screening.Clearance{c}
	expect(t, assess(t, p), screening.AskFirst, screening.UnloadedPractice)
	p.Events[0].Day = 0 // an event without a day counts as recent
	c.Scope = []screening.Code{"pacemaker"}
	p.Clearances = []screening.Clearance{c}
	expect(t, assess(t, p), screening.AskFirst, screening.UnloadedPractice)
}

// TestClearanceLimits holds what no clearance lifts.
func TestClearanceLimits(t *testing.T) {
	for _, code := range []screening.Code{"unstable_chd", "marfan", "decompensated_hf", "aortic_or_cerebral_aneurysm"} {
		p := blank()
		p.Conditions = screening.AskedFor(code)
		p.Clearances = []screening.Clearance{clearance(code)}
		if o := assess(t, p); o.Meanwhile != screening.Nothing {
			t.Errorf("%s: %v, want nothing", code, o.Meanwhile)
		}
	}
	p := blank()
	p.Symptoms = screening.AskedFor("ischaemic_chest_neck_jaw_arm_pain")
	p.Clearances = []screening.Clearance{clearance("ischaemic_chest_neck_jaw_arm_pain")}
	expect(t, assess(t, p), screening.SameDay, screening.Nothing)
	p.Symptoms = screening.AskedFor("known_heart_murmur")
	p.Clearances = []screening.Clearance{clearance("known_heart_murmur")}
	expect(t, assess(t, p), screening.Tell, screening.WithinLimits)
	p.BP = pressure(170, 95)
	p.Clearances = []screening.Clearance{clearance("known_heart_murmur", "hypertension_gt_160_100")}
	o := assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	p.BP = pressure(170, 100) // the day's own finding stays
	expect(t, assess(t, p), screening.AskFirst, screening.Nothing)
}

func TestReplacements(t *testing.T) {
	for _, code := range []screening.Code{"total_knee_replacement", "total_hip_replacement", "shoulder_replacement"} {
		p := blank()
		p.Conditions = screening.AskedFor(code)
		o := assess(t, p)
		expect(t, o, screening.AskFirst, screening.LightSupervised)
		if !misses(o, code+"_day") {
			t.Errorf("%s: its day is not asked for", code)
		}
		p.Events = []screening.Event{{Code: code, Day: visit - 3000}}
		// Long ago nobody asks about a hip or knee; a shoulder always asks.
		later, long := screening.PhysioLooks, screening.Tell
		if code == "shoulder_replacement" {
			later, long = screening.AskFirst, screening.AskFirst
		}
		expect(t, assess(t, p), long, screening.WithinLimits)
		for days, want := range map[units.Day]screening.Meanwhile{83: screening.LightSupervised, 84: screening.WithinLimits} {
			p.Events[0].Day = visit - days
			route := later
			if want > screening.WithinLimits {
				route = screening.AskFirst
			}
			expect(t, assess(t, p), route, want)
		}
		p.Events[0].Day = visit - 3000
		p.Clearances = []screening.Clearance{clearance(code)}
		expect(t, assess(t, p), screening.Tell, screening.WithinLimits)
		p.Events = append(p.Events, screening.Event{Code: code}) // another, undated
		expect(t, assess(t, p), screening.AskFirst, screening.LightSupervised)
	}
}

// A clearance for less effort than could go on without it answers the surgeon's
// question and lifts no limit; one for all effort lifts them (this module's
// design; found by the law of monotone safety).
func TestClearanceForLessEffort(t *testing.T) {
	for effort, keeps := range map[screening.Intensity]bool{screening.Light: true, screening.Moderate: true, screening.Vigorous: false} {
		p := blank()
		p.Conditions = screening.AskedFor("shoulder_replacement")
		p.Events = []screening.Event{{Code: "shoulder_replacement", Day: visit - 3000}}
		c := clearance("shoulder_replacement")
		c.Intensity = effort
		p.Clearances = []screening.Clearance{c}
		o := assess(t, p)
		expect(t, o, screening.Tell, screening.WithinLimits)
		if o.Limits.MaxIntensity != 0 || o.Limits.Avoid.Has(body.Overhead) != keeps {
			t.Errorf("up to %v: %+v, want no cap on effort, and overhead avoided: %v", effort, o.Limits, keeps)
		}
		p.Events[0].Day = visit - 30 // early: the clearance is what lets effort go on, up to its own
		if o := assess(t, p); o.Limits.MaxIntensity != effort {
			t.Errorf("early, up to %v: %+v", effort, o.Limits)
		}
		hip := assess(t, made(has("total_hip_replacement"), no("replacement_limited"), func(p *screening.Profile) {
			p.Clearances = []screening.Clearance{clearance("total_hip_replacement")}
			p.Clearances[0].Intensity = effort
		}))
		if hip.Limits.Avoid.Has(body.DeepKneeBend) != keeps {
			t.Errorf("a hip, up to %v: %v", effort, hip.Limits.Avoid)
		}
	}
}

func TestRestriction(t *testing.T) {
	two := 2 * units.Kilogram
	r := screening.Restriction{Author: "surgeon B", Region: body.Shoulder, MaxMass: &two, Avoid: body.DemandSet(body.Overhead), Until: visit, Note: "to shoulder height"}
	p := blank()
	p.Conditions = screening.AskedFor("musculoskeletal_limitation")
	if o := assess(t, p); !misses(o, "restriction") {
		t.Errorf("no restriction is asked for: %v", o.Missing)
	}
	p.Restrictions = []screening.Restriction{r}
	o := assess(t, p)
	want := []screening.MassLimit{{Region: body.Shoulder, Side: body.Both, Max: two, Author: "surgeon B"}}
	if len(o.Limits.Masses) != 1 || o.Limits.Masses[0] != want[0] || !o.Limits.Avoid.Has(body.Overhead) || misses(o, "restriction") {
		t.Errorf("limits %+v, missing %v", o.Limits, o.Missing)
	}
	p.Restrictions[0].Until = visit - 1
	if o = assess(t, p); !o.Limits.IsZero() {
		t.Errorf("a restriction past its day binds: %+v", o.Limits)
	}
	if f, told := finding(o, "screening.restriction-ended"); !told || f.Route != screening.Tell || !misses(o, "restriction") {
		t.Errorf("nothing says that it has ended: %+v", o.Findings)
	}
	p.Restrictions = []screening.Restriction{{Region: body.AnkleFoot, NonWeightBearing: true, Day: visit + 3}}
	if o = assess(t, p); !o.Limits.Avoid.Has(body.FreeStanding) || !o.Limits.Avoid.Has(body.AnkleResisted) {
		t.Errorf("without weight-bearing: avoid %v", o.Limits.Avoid)
	}
	// With a hand on something firm a calf raise stands on the leg nevertheless.
	p.Restrictions[0].Region = body.Knee
	if o = assess(t, p); !o.Limits.Avoid.Has(body.AnkleResisted) || !o.Limits.Avoid.Has(body.HipResisted) {
		t.Errorf("without weight on a knee: avoid %v", o.Limits.Avoid)
	}
	p.Restrictions[0].Region = body.WristHand
	if o = assess(t, p); o.Limits.Avoid.Has(body.KneeResisted) {
		t.Errorf("without weight on a hand: avoid %v", o.Limits.Avoid)
	}
}

// TestEndOfCalendar holds that days beyond the calendar neither extend a
// clearance nor end a wait.
func TestEndOfCalendar(t *testing.T) {
	p := blank()
	p.Day = units.Must(units.ParseDay("9999-12-20"))
	p.Conditions = screening.AskedFor("pacemaker", "rotator_cuff_repair")
	c := clearance("pacemaker")
	c.Day = p.Day - 1
	p.Clearances = []screening.Clearance{c}
	p.Events = []screening.Event{{Code: "rotator_cuff_repair", Day: p.Day - 2}}
	o := assess(t, p)
	expect(t, o, screening.AskFirst, screening.UnloadedPractice)
	if !o.Limits.Avoid.Has(body.ShoulderResisted) {
		t.Error("the shoulder is not spared")
	}
}

// TestBranchClearance holds that a branch is released only for everything that
// it rests on, and up to the least effort that was agreed for any of it.
func TestBranchClearance(t *testing.T) {
	p := blank()
	p.BP = pressure(130, 80)
	p.Diseases = screening.AskedFor("renal", "peripheral_vascular")
	least := clearance("peripheral_vascular")
	least.Intensity = screening.Light
	p.Clearances = []screening.Clearance{clearance("renal"), least}
	o := assess(t, p)
	expect(t, o, screening.Tell, screening.WithinLimits)
	if o.Limits.MaxIntensity != screening.Light {
		t.Errorf("effort up to %v, want light", o.Limits.MaxIntensity)
	}
	p.Symptoms = screening.Checklist{}
	if _, ok := finding(assess(t, p), "screening.branch.N3.unsure"); !ok {
		t.Error("a branch is released without asking for symptoms")
	}
	p.Symptoms = screening.AskedFor()
	p.Clearances = p.Clearances[:1]
	expect(t, assess(t, p), screening.AskFirst, screening.UnloadedPractice)
	p.Diseases = screening.Checklist{Asked: true, Unsure: []screening.Code{"renal"}}
	p.Clearances = nil
	if _, ok := finding(assess(t, p), "screening.branch.N2.unsure"); !ok {
		t.Error("an unsure disease is not counted in the branch")
	}
	p.Symptoms = screening.Checklist{Asked: true, Unsure: []screening.Code{"orthopnoea_or_pnd"}}
	if _, ok := finding(assess(t, p), "screening.branch.N3.unsure"); !ok {
		t.Error("an unsure symptom is not counted in the branch")
	}
}
