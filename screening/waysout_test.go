package screening_test

import (
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// over answers a code with no, in every list, event and question: it was not so, was seen or
// was treated.
func over(p *screening.Profile, code screening.Code) {
	gone := func(c screening.Code) bool { return c == code }
	for _, list := range []*screening.Checklist{&p.Diseases, &p.Symptoms, &p.RedFlags, &p.Conditions} {
		list.Asked = true
		list.Present, list.Unsure = slices.DeleteFunc(slices.Clone(list.Present), gone), slices.DeleteFunc(slices.Clone(list.Unsure), gone)
	}
	p.Events = slices.DeleteFunc(slices.Clone(p.Events), func(e screening.Event) bool { return e.Code == code })
	if slices.Contains(yesNoCodes, code) {
		p.Answers[code] = screening.No
	}
}

// takes gives a person what the way out of a finding names.
func takes(p *screening.Profile, o screening.Outcome, f screening.Finding) {
	switch f.Exit.With {
	case screening.AClearance:
		p.Clearances = append(slices.Clone(p.Clearances), paper(p, o, f))
		for i, e := range p.Events { // of which who gave it knows
			p.Events[i].Day = max(e.Day, 1)
		}
	case screening.ADate:
		p.Events = append(p.Events, screening.Event{Code: f.Code})
		for i := range p.Events {
			p.Events[i].Day = p.Day - 3000
		}
	case screening.TheirLimits:
		for _, r := range []body.Region{body.Knee, body.Hip} {
			p.Restrictions = append(slices.Clone(p.Restrictions), screening.Restriction{Author: "surgeon B", Day: p.Day, Region: r, Avoid: body.DemandSet(body.Impact)})
		}
	case screening.AReading:
		reread(p)
	default: // an answer, a look, or being settled
		over(p, f.Exit.Ask)
		if f.Exit.Ask == "" {
			settled(p, f.Code)
		}
	}
}

// paper is the clearance that a finding waits for; of a branch it names the diseases and signs.
func paper(p *screening.Profile, o screening.Outcome, f screening.Finding) screening.Clearance {
	scope := []screening.Code{f.Code}
	if f.Branch() != 0 {
		scope = slices.Concat(diseaseCodes, p.Symptoms.Present, p.Symptoms.Unsure, p.Conditions.Present, p.Conditions.Unsure)
		for _, g := range o.Findings {
			if term, ok := screening.LookUp(g.Code); ok && term.Kind == screening.Condition {
				scope = append(scope, g.Code)
			}
		}
	}
	c := clearance(scope...)
	c.Day = p.Day
	return c
}

func reread(p *screening.Profile) {
	p.HbA1c, p.Counts, p.MeanPAP = score(7), &screening.BloodCounts{Platelets: 200, Haemoglobin: 130}, nil
	p.BP, p.BPAgain, p.RestingPulse, p.RestingPulseAgain = pressure(130, 80), nil, 64, 0
}

// settled is over with what stands for it.
func settled(p *screening.Profile, code screening.Code) {
	over(p, code)
	switch term, _ := screening.LookUp(code); {
	case term.Kind == screening.Reading || code == "severe_pulmonary_hypertension":
		reread(p)
	case strings.HasPrefix(string(code), "flags"):
		p.RedFlags = screening.AskedFor()
	case code == "mi_within_3_weeks":
		over(p, "heart_attack")
	}
}

func copied(p screening.Profile) screening.Profile {
	p.Answers, p.Events = maps.Clone(p.Answers), slices.Clone(p.Events)
	return p
}

// TestEveryWayOutLeadsOut holds what a way out promises: of random people each takes, step by
// step, what would free most. No step holds anybody harder, none leaves the same finding as it
// was, and in the end everybody trains and is sent to nobody.
func TestEveryWayOutLeadsOut(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 77))
	for n := range usualCases / 2 {
		p := randomProfile(r)
		if chance(r, 3) {
			p.Clearances = nil
		}
		o := assess(t, p)
		for steps := 0; o.Route >= screening.PhysioLooks || o.Meanwhile > screening.WithinLimits; steps++ {
			if o.Frees.Who == 0 || steps == 40 {
				t.Fatalf("case %d: no way out of %+v after %d steps: %v", n, o.Findings, steps, o.Frees)
			}
			q := copied(p)
			for _, f := range o.Findings {
				if way := f.Exit; way.Who == o.Frees.Who && way.With == o.Frees.With && way.Ask == o.Frees.Ask {
					takes(&q, o, f)
				}
			}
			after := assess(t, q)
			if after.Meanwhile > o.Meanwhile || after.Route > o.Route {
				t.Fatalf("case %d: %v made it graver: %v, %v\n%+v\n%+v", n, o.Frees, after.Route, after.Meanwhile, o.Findings, after.Findings)
			}
			kept(t, o, after)
			p, o = q, after
		}
	}
}

// kept holds that nothing that was to be freed is as it was.
func kept(t *testing.T, before, after screening.Outcome) {
	t.Helper()
	for _, f := range before.Findings {
		if f.Exit.With != before.Frees.With || f.Exit.Who != before.Frees.Who || f.Exit.Ask != before.Frees.Ask || f.Branch() != 0 {
			continue
		}
		for _, g := range after.Findings {
			if g.Code == f.Code && g.Exit == f.Exit && g.Route >= f.Route && g.Meanwhile >= f.Meanwhile {
				t.Fatalf("%s: %v was given and it stands as before: %s", f.Reason.Code, f.Exit, g.Reason.Code)
			}
		}
	}
}

// barred is what a published list bars for good, or until it is treated: no paper lifts it.
var barred = []screening.Code{"marfan", "severe_pulmonary_hypertension", "aortic_or_cerebral_aneurysm", "severe_valve_disease"}

// TestLifelongHasAPaper holds that what never goes away has a way out other than going away,
// that the paper it names frees as much as an agreement of a doctor does, and that without one
// it holds as before.
func TestLifelongHasAPaper(t *testing.T) {
	for _, code := range []screening.Code{"oxygen_therapy", "foot_ulcer_neuropathy", "npdr_moderate_or_worse", "diabetic_retinopathy_severe", "retinopathy_high_intensity",
		"severe_cognitive_impairment", "end_stage_illness", "cfs_level_7", "cfs_level_8", "cfs_level_9", "chemotherapy", "pacemaker", "icd", "bone_metastases", "exertional_angina"} {
		p := made(has(code))
		p.Activity, p.Counts = busy(), &screening.BloodCounts{Platelets: 200, Haemoglobin: 130}
		o := assess(t, p)
		i := slices.IndexFunc(o.Findings, func(f screening.Finding) bool { return f.Code == code })
		if f := o.Findings[i]; f.Exit.With != screening.AClearance || o.Route < screening.AskFirst || !misses(o, "clearance") {
			t.Errorf("%s: %v, %v", code, f.Exit, o.Route)
		}
		p.Clearances = []screening.Clearance{clearance(code)}
		after := assess(t, p)
		tighter(t, string(code)+" without its clearance", 0, after, o)
		for _, f := range after.Findings {
			if f.Code == code && (f.Route > screening.Tell || f.Meanwhile > screening.WithinLimits) {
				t.Errorf("%s, agreed: %v, %v", code, f.Route, f.Meanwhile)
			}
		}
		if after.Rules.Strictest() != o.Rules.Strictest() && o.Rules.Strictest() == screening.ListedWider {
			t.Errorf("%s: a clearance changed what the list says", code)
		}
	}
	for _, code := range barred {
		if o := assess(t, made(has(code), agreed(code))); o.Meanwhile != screening.Nothing || o.Findings[0].Exit.Who != screening.TheTeam {
			t.Errorf("%s: %v, %v", code, o.Meanwhile, o.Findings[0].Exit)
		}
	}
	eyes := assess(t, made(has("npdr_moderate_or_worse"), agreed("npdr_moderate_or_worse"))).Limits
	if eyes.MaxFraction != 0.79 || !eyes.NoBreathHolding {
		t.Errorf("eyes, agreed: %+v", eyes)
	}
}

// TestUsualForTheDoctor holds that a low pulse or pressure that a doctor knows as usual holds
// nobody, at the screening and on the day, and that nothing lower is freed with it.
func TestUsualForTheDoctor(t *testing.T) {
	for _, tt := range []struct {
		code      screening.Code
		systolic  int
		pulse     int
		meanwhile screening.Meanwhile
	}{{"hr_le_40", 120, 38, screening.WithinLimits}, {"bp_lt_90_or_40", 86, 60, screening.WithinLimits}, {"bp_lt_90_or_40", 70, 60, screening.Nothing}, {"hr_le_40", 86, 38, screening.Nothing}} {
		p := made()
		p.BP, p.RestingPulse = pressure(tt.systolic, 50), tt.pulse
		p.BPAgain, p.RestingPulseAgain = p.BP, p.RestingPulse
		held := assess(t, p)
		p.Clearances = []screening.Clearance{clearance(tt.code)}
		o := assess(t, p)
		if held.Meanwhile != screening.Nothing || o.Meanwhile != tt.meanwhile || !o.Limits.Support {
			t.Errorf("%d mmHg, pulse %d: %v, agreed %v", tt.systolic, tt.pulse, held.Meanwhile, o.Meanwhile)
		}
		c := quiet()
		c.Day, c.BP, c.BPAgain, c.RestingPulse, c.RestingPulseAgain = visit+7, p.BP, p.BPAgain, p.RestingPulse, p.RestingPulseAgain
		if day := mustToday(t, c, o); day.Meanwhile != tt.meanwhile {
			t.Errorf("a week later, %d mmHg, pulse %d: %v", tt.systolic, tt.pulse, day.Meanwhile)
		}
	}
}
