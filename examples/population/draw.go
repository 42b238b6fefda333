package main

import (
	"math"
	"math/rand/v2"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// visit is the day on which everybody is screened.
var visit = units.Must(units.ParseDay("2026-11-25"))

// A drawing makes people by chance. What is finer than the lists is drawn from a
// stream of its own, so that it changes nobody's lists.
type drawing struct {
	*rand.Rand
	finer    *rand.Rand
	unknowns float64 // factor on the shares of what is not known
}

func draws(seed uint64, unknowns float64) drawing {
	return drawing{rand.New(rand.NewPCG(seed, 0)), rand.New(rand.NewPCG(seed, 1)), unknowns}
}

func (d drawing) chance(share float64) bool { return d.Float64() < share }

// known is a share of what is known, with the factor on the rest.
func (d drawing) known(share float64) float64 { return 1 - float64(d.unknowns*(1-share)) }

// yes is an answer that is known, and then yes, in the given shares.
func (d drawing) yes(known, share float64) screening.Answer {
	switch is, yes := d.chance(d.known(known)), d.chance(share); {
	case !is:
		return screening.Unknown
	case yes:
		return screening.Yes
	}
	return screening.No
}

// between goes in a straight line from 55 to 85 years, and on to 50 and 90.
func between(at55, at85, age float64) float64 {
	return at55 + float64((at85-at55)*(age-55)/30)
}

// person draws one.
func (d drawing) person() screening.Profile {
	age := youngest + d.IntN(oldest-youngest+1)
	p := screening.Profile{Day: visit, Age: body.Age(age), Sex: body.Female, Setting: screening.InGroup, Wanted: d.wanted()}
	if d.chance(0.5) {
		p.Sex = body.Male
	}
	years, burden := float64(age), d.burden()
	p.Diseases, p.Symptoms = d.list(screening.Disease, p.Sex, years, burden), d.list(screening.Symptom, p.Sex, years, burden)
	p.RedFlags, p.Conditions = d.list(screening.RedFlag, p.Sex, years, burden), d.list(screening.Condition, p.Sex, years, burden)
	d.unsure(&p)
	p.Activity = &screening.Activity{Intensity: screening.Idle}
	if d.chance(between(activeAt55, activeAt85, years)) {
		p.Activity = &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 12}
	}
	if d.chance(d.known(measured)) {
		p.BP, p.RestingPulse = d.pressure(years), whole(pulseMean+float64(pulseSpread*d.NormFloat64()), 40, 180)
	}
	d.answers(&p)
	d.days(&p)
	d.doctors(&p)
	d.finely(&p, years, burden)
	return p
}

// screened draws a person and screens them; where a reading is to be taken
// again after a rest, it is, for nearly everybody.
func (d drawing) screened(policy screening.JoinPolicy) (screening.Profile, screening.Outcome, error) {
	p := d.person()
	o, err := screening.Assess(p, policy)
	if err != nil || !d.chance(takenAgain) {
		return p, o, err
	}
	changed := false
	for _, q := range o.Missing {
		switch q.Code {
		case "blood_pressure_again":
			again := *p.BP
			again.Systolic = whole(float64(again.Systolic)-settling+float64(settlingSpread*d.NormFloat64()), 90, 230)
			again.Diastolic = min(whole(float64(again.Diastolic)-settling/2+float64(settlingSpread*d.NormFloat64()/2), 45, 130), again.Systolic-15)
			p.BPAgain, changed = &again, true
		case "resting_pulse_again":
			p.RestingPulseAgain, changed = whole(float64(p.RestingPulse)-settling+float64(settlingSpread*d.NormFloat64()), 40, 180), true
		}
	}
	if changed {
		o, err = screening.Assess(p, policy)
	}
	return p, o, err
}

func (d drawing) wanted() screening.Intensity {
	at := d.Float64()
	for _, w := range wants {
		if at -= w.share; at < 0 {
			return w.effort
		}
	}
	return 0
}

func (d drawing) burden() float64 {
	at := d.Float64()
	for _, b := range burdens {
		if at -= b.share; at < 0 {
			return b.factor
		}
	}
	return 1
}

func (d drawing) list(kind screening.Kind, sex body.Sex, age, burden float64) screening.Checklist {
	return screening.AskedFor(d.present(rates.Lists[kind], sex, age, burden)...)
}

// present draws the codes that somebody has.
func (d drawing) present(rates []rate, sex body.Sex, age, burden float64) []screening.Code {
	var list []screening.Code
	for _, r := range rates {
		share := burden * max(0, between(r.At55, r.At85, age))
		switch {
		case sex == body.Female && r.Women > 0:
			share *= r.Women
		case sex == body.Male && r.Men > 0:
			share *= r.Men
		case sex == body.Male && r.NotInMen:
			share = 0
		}
		if d.chance(share) {
			list = append(list, r.Code)
		}
	}
	return list
}

// unsure makes some people unsure of one thing that they have not.
func (d drawing) unsure(p *screening.Profile) {
	if !d.chance(d.unknowns * oneUnsure) {
		return
	}
	list, kind := &p.Conditions, screening.Condition
	if d.chance(0.3) {
		list, kind = &p.Symptoms, screening.Symptom
	}
	code := rates.Lists[kind][d.IntN(len(rates.Lists[kind]))].Code
	if !slices.Contains(list.Present, code) {
		list.Unsure = []screening.Code{code}
	}
}

func (d drawing) pressure(age float64) *screening.BloodPressure {
	systolic := whole(systolicAt55+float64(systolicSlope*(age-55))+float64(systolicSpread*d.NormFloat64()), 90, 230)
	diastolic := whole(diastolicAt55+float64(diastolicSlope*(age-55))+float64(diastolicSpread*d.NormFloat64()), 45, 130)
	return &screening.BloodPressure{Systolic: systolic, Diastolic: min(diastolic, systolic-15)}
}

func whole(x float64, least, most int) int { return min(max(int(math.Round(x)), least), most) }

// answers draws the answers to the questions that something triggers.
func (d drawing) answers(p *screening.Profile) {
	p.Answers = map[screening.Code]screening.Answer{}
	if has(p.Diseases, "diabetes_t1", "diabetes_t2") {
		p.Answers["insulin_or_secretagogue"] = d.yes(insulinKnown, insulinTaken)
		p.Answers["retinopathy_moderate_or_worse"] = d.yes(eyesKnown, eyesChanged)
	}
	if has(p.Conditions, "osteoporosis") {
		p.Answers["vertebral_fracture"] = d.yes(spineKnown, spineBroken)
	}
	if has(p.Conditions, "hernia") {
		p.Answers["hernia_symptomatic_or_large"] = d.yes(herniaKnown, herniaTroubles)
	}
	p.Answers["clearance"], p.Answers["floor_and_up"], p.Answers["stroke_before"] = screening.No, screening.Yes, screening.No // a stroke is drawn by itself
	if p.Age >= offTheFloor {
		p.Answers["floor_and_up"] = screening.No
	}
	if !has(p.Conditions, "falls_risk") { // which the list has asked
		p.Falls = &screening.FallsScreen{Fell: screening.No, Unsteady: screening.No, Afraid: screening.No}
	}
}

func has(list screening.Checklist, codes ...screening.Code) bool {
	return slices.ContainsFunc(codes, func(code screening.Code) bool { return slices.Contains(list.Present, code) })
}

// days draws when operations and fractures were.
func (d drawing) days(p *screening.Profile) {
	for _, code := range []screening.Code{"total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "rotator_cuff_repair", "vertebral_fracture"} {
		ago, known := d.IntN(longAgo), d.chance(d.known(dayKnown))
		if known && has(p.Conditions, code) {
			p.Events = append(p.Events, screening.Event{Code: code, Day: visit - units.Day(ago)})
		}
	}
	if has(p.Conditions, "recent_fracture") && d.chance(d.known(regionKnown)) {
		regions := slices.Collect(body.Regions())
		p.Events = append(p.Events, screening.Event{Code: "fracture", Day: visit - units.Day(d.IntN(180)), Region: regions[1+d.IntN(len(regions)-1)]})
	}
}

// doctors draws clearances and restrictions.
func (d drawing) doctors(p *screening.Profile) {
	scope := slices.Concat(p.Diseases.Present, p.Symptoms.Present)
	if len(scope) > 0 && d.chance(clearanceGiven) {
		p.Clearances = []screening.Clearance{{Who: "a doctor", Day: visit - units.Day(d.IntN(clearanceDays)), Scope: slices.Concat(scope, p.Conditions.Present), Intensity: screening.Moderate}}
	}
	if has(p.Conditions, "musculoskeletal_limitation") && d.chance(restricted) {
		p.Restrictions = []screening.Restriction{{Author: "a surgeon", Day: visit - 100, Region: body.Shoulder, Avoid: body.DemandSet(body.Overhead)}}
	}
}
