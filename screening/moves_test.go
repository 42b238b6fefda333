package screening_test

import (
	"maps"
	"math/rand/v2"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A move makes one thing of a profile worse; false if there is nothing to do.
type move struct {
	name  string
	worse func(*rand.Rand, *screening.Profile) bool
}

// pick returns one of the four lists and the codes that it may hold.
func pick(r *rand.Rand, p *screening.Profile) (*screening.Checklist, screening.Code) {
	switch r.IntN(4) {
	case 0:
		return &p.Diseases, one(r, diseaseCodes)
	case 1:
		return &p.Symptoms, one(r, symptomCodes)
	case 2:
		return &p.RedFlags, one(r, redFlagCodes)
	}
	return &p.Conditions, one(r, conditionCodes)
}

var moves = slices.Concat(listMoves, readingMoves, recordMoves)

var listMoves = []move{
	{"no to unsure", func(r *rand.Rand, p *screening.Profile) bool {
		list, code := pick(r, p)
		if list.Of(code) != screening.No {
			return false
		}
		list.Unsure = append(slices.Clone(list.Unsure), code)
		return true
	}},
	{"no to present", func(r *rand.Rand, p *screening.Profile) bool {
		list, code := pick(r, p)
		if list.Of(code) != screening.No {
			return false
		}
		list.Present = append(slices.Clone(list.Present), code)
		return true
	}},
	{"unsure to present", func(r *rand.Rand, p *screening.Profile) bool {
		list, _ := pick(r, p)
		if len(list.Unsure) == 0 {
			return false
		}
		list.Present = append(slices.Clone(list.Present), list.Unsure[0])
		list.Unsure = list.Unsure[1:]
		return true
	}},
	{"list not asked", func(r *rand.Rand, p *screening.Profile) bool {
		list, _ := pick(r, p)
		was := list.Asked
		*list = screening.Checklist{}
		return was
	}},
	{"answer", func(r *rand.Rand, p *screening.Profile) bool {
		code := one(r, yesNoCodes)
		to, ok := nextAnswer(p.Answers[code])
		if code == "floor_and_up" { // of which a yes is the better answer
			to, ok = nextAnswer(opposite(p.Answers[code]))
			to = opposite(to)
		}
		p.Answers = maps.Clone(p.Answers)
		p.Answers[code] = to
		return ok
	}},
	{"falls", func(r *rand.Rand, p *screening.Profile) bool {
		if p.Falls == nil {
			return false
		}
		falls, ok := *p.Falls, false
		falls.Unsteady, ok = nextAnswer(falls.Unsteady)
		p.Falls = &falls
		return ok
	}},
	{"less company", func(_ *rand.Rand, p *screening.Profile) bool {
		was := p.Setting
		p.Setting = max(p.Setting, 1) - 1
		return was > 0
	}},
	{"less active", func(_ *rand.Rand, p *screening.Profile) bool {
		was := p.Activity
		p.Activity = nil
		return was != nil
	}},
	{"harder wish", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.Wanted == 0 || p.Wanted == screening.Vigorous {
			return false
		}
		p.Wanted++
		return true
	}},
	{"heavier plan", func(_ *rand.Rand, p *screening.Profile) bool { p.PlannedFraction = 1; return true }},
}

// opposite turns yes into no and back.
func opposite(a screening.Answer) screening.Answer {
	switch a {
	case screening.No:
		return screening.Yes
	case screening.Yes:
		return screening.No
	}
	return a
}

// nextAnswer is the answer next worse than a, false if there is none.
func nextAnswer(a screening.Answer) (screening.Answer, bool) {
	switch a {
	case screening.No:
		return screening.Unknown, true
	case screening.Unknown:
		return screening.Yes, true
	}
	return a, false
}

// inBand reports whether neither pressure lies at the lower edge, from which
// higher is not worse.
func inBand(b *screening.BloodPressure) bool { return b.Systolic >= 100 && b.Diastolic >= 50 }

// lowered is a reading further below the band, false unless it lies below it.
func lowered(r *rand.Rand, b *screening.BloodPressure) (*screening.BloodPressure, bool) {
	if b == nil || b.Systolic > 105 {
		return b, false
	}
	systolic := max(50, b.Systolic-r.IntN(20))
	return pressure(systolic, min(systolic-1, max(20, b.Diastolic-r.IntN(15)))), true
}

// raised is a higher reading, with its systolic pressure above the diastolic.
func raised(r *rand.Rand, b *screening.BloodPressure) *screening.BloodPressure {
	systolic, diastolic := b.Systolic+r.IntN(61), b.Diastolic+r.IntN(21)
	return pressure(max(systolic, diastolic+1), diastolic)
}

var readingMoves = []move{
	{"pressure", func(r *rand.Rand, p *screening.Profile) bool {
		if p.BP == nil || !inBand(p.BP) {
			return false
		}
		p.BP = raised(r, p.BP)
		if p.BPAgain != nil {
			p.BPAgain = raised(r, p.BPAgain)
		}
		return true
	}},
	{"low pressure", func(r *rand.Rand, p *screening.Profile) bool {
		lower, ok := lowered(r, p.BP)
		p.BP = lower
		return ok && p.BPAgain == nil
	}},
	{"second pressure lost", func(r *rand.Rand, p *screening.Profile) bool {
		if p.BPAgain == nil || p.BP.Systolic < p.BPAgain.Systolic || p.BP.Diastolic < p.BPAgain.Diastolic || !inBand(p.BPAgain) {
			return false
		}
		p.BPAgain = nil
		return true
	}},
	{"pressure asked for and not taken", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.BP == nil || p.Diseases.Of("renal") == screening.No && p.Conditions.Of("uncontrolled_hypertension") == screening.No && p.Conditions.Of("hypertension") == screening.No {
			return false
		}
		// An untaken pressure lets no more go on than one above 160/100 mmHg.
		last := p.BP
		if p.BPAgain != nil {
			last = p.BPAgain
		}
		p.BP, p.BPAgain = nil, nil
		return inBand(last) && last.Systolic <= 170 && last.Diastolic < 100
	}},
	{"low pulse", func(_ *rand.Rand, p *screening.Profile) bool {
		was := p.RestingPulse
		p.RestingPulse = max(20, was-8)
		return was > 0 && was <= 60 && p.RestingPulseAgain == 0
	}},
	{"pulse", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.RestingPulse > 0 && p.RestingPulse <= 50 {
			return false
		}
		p.RestingPulse = max(p.RestingPulse, 80) + 40
		if p.RestingPulseAgain > 0 {
			p.RestingPulseAgain += 40
		}
		return true
	}},
	{"capacity", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.CapacityMETs == nil {
			return false
		}
		p.CapacityMETs = score(*p.CapacityMETs * 0.7)
		return true
	}},
	{"pulmonary pressure", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.MeanPAP == nil {
			return false
		}
		v := *p.MeanPAP + 5
		p.MeanPAP = &v
		return true
	}},
	{"long-term sugar", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.HbA1c == nil {
			return false
		}
		p.HbA1c = score(*p.HbA1c + 2)
		return true
	}},
	{"counts", func(_ *rand.Rand, p *screening.Profile) bool {
		if p.Counts == nil || p.Counts.Platelets < 2 {
			return false
		}
		counts := *p.Counts
		counts.Platelets /= 2
		p.Counts = &counts
		return true
	}},
}

var recordMoves = []move{
	{"clearance gone", func(_ *rand.Rand, p *screening.Profile) bool {
		if len(p.Clearances) == 0 {
			return false
		}
		p.Clearances = p.Clearances[1:]
		return true
	}},
	{"clearance older", func(r *rand.Rand, p *screening.Profile) bool {
		if len(p.Clearances) == 0 {
			return false
		}
		p.Clearances = slices.Clone(p.Clearances)
		c := &p.Clearances[0]
		switch r.IntN(4) {
		case 0:
			c.Expires = visit - 1
		case 1:
			c.Day -= 200
		case 2:
			c.Who = " "
		case 3:
			if c.Intensity > screening.Light {
				c.Intensity--
			}
		}
		return true
	}},
	{"something happened", func(r *rand.Rand, p *screening.Profile) bool {
		code := one(r, []screening.Code{"fall", "operation", "hospital_stay", "new_diagnosis", "heart_attack", "stroke"})
		p.Events = append(slices.Clone(p.Events), screening.Event{Code: code, Day: visit - units.Day(r.IntN(200))})
		return true
	}},
	{"day forgotten", func(_ *rand.Rand, p *screening.Profile) bool {
		i := slices.IndexFunc(p.Events, func(e screening.Event) bool { return !e.Day.IsZero() })
		if i < 0 {
			return false
		}
		p.Events = slices.Clone(p.Events)
		p.Events[i].Day = 0
		return true
	}},
	{"side forgotten", func(r *rand.Rand, p *screening.Profile) bool {
		p.Events, p.Sites, p.Restrictions = slices.Clone(p.Events), slices.Clone(p.Sites), slices.Clone(p.Restrictions)
		var sides []*body.Side
		for i := range p.Events {
			sides = append(sides, &p.Events[i].Side)
		}
		for i := range p.Sites {
			sides = append(sides, &p.Sites[i].Side)
		}
		for i := range p.Restrictions {
			sides = append(sides, &p.Restrictions[i].Side)
		}
		if len(sides) == 0 {
			return false
		}
		*one(r, sides) = one(r, []body.Side{0, body.Both})
		return true
	}},
	{"another place", func(r *rand.Rand, p *screening.Profile) bool {
		was := len(p.Sites)
		if was > 0 {
			p.Sites = append(slices.Clone(p.Sites), screening.Site{Code: one(r, sitedCodes), Region: body.Region(1 + r.IntN(10)), Side: body.Side(r.IntN(4))})
		}
		return was > 0 && !slices.ContainsFunc(p.Sites, func(s screening.Site) bool { return s.Region == body.WholeBody })
	}},
	{"home reading asked for", func(r *rand.Rand, p *screening.Profile) bool {
		p.HomeReadings = append(slices.Clone(p.HomeReadings), one(r, readingsAtHome))
		return true
	}},
	{"restriction", func(r *rand.Rand, p *screening.Profile) bool {
		mass := 3 * units.Kilogram
		p.Restrictions = append(slices.Clone(p.Restrictions), screening.Restriction{
			Region: body.Region(1 + r.IntN(11)), MaxMass: &mass, NonWeightBearing: chance(r, 2), Avoid: body.DemandSet(body.Overhead),
		})
		return true
	}},
}
