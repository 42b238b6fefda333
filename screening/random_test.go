package screening_test

import (
	"math/rand/v2"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/testdata/screentest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var codesOf = screentest.Codes

// Codes by kind, gathered once: the generators draw from them a million times.
var (
	diseaseCodes   = codesOf(screening.Disease)
	symptomCodes   = codesOf(screening.Symptom)
	redFlagCodes   = codesOf(screening.RedFlag)
	conditionCodes = codesOf(screening.Condition)
	newCodes       = codesOf(screening.Symptom, screening.RedFlag)
	yesNoCodes     = yesNo()
	readingsAtHome = []screening.Code{"blood_pressure", "resting_pulse", "oxygen_saturation", "weight_gain"}
	datedCodes     = []screening.Code{"vertebral_fracture", "rotator_cuff_repair", "total_knee_replacement", "total_hip_replacement", "shoulder_replacement", "pacemaker", "icd", "after_mi_or_stroke", "recent_eye_operation", "hip_fracture", "fall", "fracture", "operation", "heart_attack", "stroke"}
	sitedCodes     = []screening.Code{"pain_made_worse_by_training", "unstable_or_injured_joint", "acute_joint_inflammation"}
	readable       = []string{"40 mg/dL", "60 mg/dL", "80 mg/dL", "120 mg/dL", "200 mg/dL", "300 mg/dL", "400 mg/dL", "4.6 mmol/L", "15 mmol/L"}
)

func yesNo() []screening.Code {
	var list []screening.Code
	for q := range screening.Prompts() {
		if q.YesNo {
			list = append(list, q.Code)
		}
	}
	return list
}

func chance(r *rand.Rand, oneIn int) bool { return r.IntN(oneIn) == 0 }

func one[T any](r *rand.Rand, from []T) T { return from[r.IntN(len(from))] }

func randomAnswer(r *rand.Rand) screening.Answer { return screening.Answer(r.IntN(3)) }

// randomList mostly finds little, so that most outcomes can become worse.
func randomList(r *rand.Rand, codes []screening.Code) screening.Checklist {
	most := one(r, []int{-1, 0, 0, 0, 0, 1, 1, 1, 3})
	if most < 0 {
		return screening.Checklist{}
	}
	c := screening.Checklist{Asked: true}
	for range r.IntN(most + 1) {
		code := one(r, codes)
		if c.Of(code) != screening.No {
			continue
		}
		if chance(r, 2) {
			c.Present = append(c.Present, code)
		} else {
			c.Unsure = append(c.Unsure, code)
		}
	}
	return c
}

func randomProfile(r *rand.Rand) screening.Profile {
	p := screening.Profile{
		Day: visit, Age: 70, Sex: body.Sex(r.IntN(3)),
		Wanted: screening.Intensity(one(r, []int{0, 2, 3, 4})), Setting: screening.Setting(r.IntN(5)),
		Diseases: randomList(r, diseaseCodes), Symptoms: randomList(r, symptomCodes),
		RedFlags: randomList(r, redFlagCodes), Conditions: randomList(r, conditionCodes),
		PlannedFraction: units.Fraction(one(r, []float64{0, 0.6, 0.79, 0.8, 1})),
		Answers:         make(map[screening.Code]screening.Answer, len(yesNoCodes)),
	}
	for _, code := range yesNoCodes {
		p.Answers[code] = one(r, []screening.Answer{screening.No, screening.No, screening.No, screening.Unknown, screening.Yes})
	}
	if chance(r, 2) {
		p.Activity = &screening.Activity{DaysPerWeek: 2 + r.IntN(3), Minutes: 30, Intensity: screening.Moderate, Months: 3}
	}
	randomReadings(r, &p)
	randomRecords(r, &p)
	return p
}

func randomReadings(r *rand.Rand, p *screening.Profile) {
	if chance(r, 2) {
		p.BP = pressure(140+r.IntN(61), 80+r.IntN(41))
		if chance(r, 3) {
			p.BPAgain = pressure(140+r.IntN(61), 80+r.IntN(41))
		}
	}
	if chance(r, 6) {
		p.BP, p.BPAgain = pressure(60+r.IntN(50), 25+r.IntN(30)), nil
	}
	if chance(r, 2) {
		v := one(r, []float64{3, 3.9, 4, 6})
		p.CapacityMETs = &v
	}
	if chance(r, 2) {
		v := 50 + r.IntN(11)
		p.MeanPAP = &v
	}
	p.RestingPulse = one(r, []int{0, 38, 41, 50, 60, 100, 101})
	if p.RestingPulse > 0 && chance(r, 3) {
		p.RestingPulseAgain = one(r, []int{60, 100, 101})
	}
	if chance(r, 3) {
		p.HbA1c = score(one(r, []float64{6, 10, 10.1}))
	}
	if chance(r, 3) {
		p.Counts = &screening.BloodCounts{Platelets: one(r, []int{0, 49, 50, 200}), Haemoglobin: one(r, []int{0, 99, 100, 140})}
	}
	if chance(r, 3) {
		p.Falls = &screening.FallsScreen{Fell: randomAnswer(r), Unsteady: randomAnswer(r), Afraid: randomAnswer(r)}
	}
	if chance(r, 5) {
		p.HomeReadings = []screening.Code{one(r, readingsAtHome)}
	}
}

func randomRecords(r *rand.Rand, p *screening.Profile) {
	if chance(r, 3) {
		for _, code := range sitedCodes {
			p.Sites = append(p.Sites, screening.Site{Code: code, Region: body.Region(1 + r.IntN(11)), Side: body.Side(r.IntN(4))})
		}
	}
	for range r.IntN(3) {
		e := screening.Event{Code: one(r, datedCodes), Day: visit - units.Day(r.IntN(501)), Side: body.Side(r.IntN(4))}
		if e.Code == "fracture" {
			e.Region = body.Region(1 + r.IntN(11))
		}
		p.Events = append(p.Events, e)
	}
	if chance(r, 4) {
		p.Restrictions = []screening.Restriction{{
			Region: body.Region(1 + r.IntN(11)), Side: body.Side(r.IntN(4)), NonWeightBearing: chance(r, 2), Avoid: body.Demands(r.Uint64()) & body.DemandSet(slices.Collect(body.EveryDemand())...),
		}}
	}
	scopes := slices.Concat(p.Diseases.Present, p.Diseases.Unsure, p.Symptoms.Present, p.Conditions.Present, p.Conditions.Unsure, []screening.Code{"hypertension_gt_160_100", "capacity_lt_4_mets"})
	for range r.IntN(3) {
		c := screening.Clearance{Who: "doctor A", Day: visit - units.Day(r.IntN(401)), Scope: scopes, Intensity: screening.Intensity(2 + r.IntN(3))}
		if chance(r, 2) {
			c.Scope = scopes[:r.IntN(len(scopes)+1)]
		}
		if chance(r, 2) {
			c.Expires = visit + units.Day(r.IntN(211)-10)
		}
		p.Clearances = append(p.Clearances, c)
	}
}

// checkFor is a random check with no less company than o was screened for.
func checkFor(r *rand.Rand, o screening.Outcome) screening.Check {
	c := randomCheck(r)
	c.Setting = max(c.Setting, o.Setting)
	return c
}

func randomCheck(r *rand.Rand) screening.Check {
	c := screening.Check{
		Day: visit, New: randomList(r, newCodes), Setting: screening.Setting(r.IntN(5)),
		Febrile: randomAnswer(r), Unwell: randomAnswer(r), InsulinOrSecretagogue: randomAnswer(r), SevereLow: randomAnswer(r),
		Worsening: randomAnswer(r), Ketones: screening.Ketones(r.IntN(5)), NoKetoneStrips: chance(r, 4),
		SpO2: one(r, []int{0, 0, 88, 89, 90, 97}), SupinePulse: one(r, []int{0, 0, 60, 99, 100}), SorenessDays: one(r, []int{0, 0, 2, 3, 4}),
		RestingPulse: one(r, []int{0, 38, 41, 50, 60, 100, 101}),
	}
	if c.SpO2 > 0 && chance(r, 3) {
		c.SpO2Again = one(r, []int{88, 89, 90, 97})
	}
	if chance(r, 2) {
		c.Glucose = glucose(one(r, readable))
		if chance(r, 3) {
			c.GlucoseAgain = glucose(one(r, readable))
		}
	}
	if chance(r, 4) {
		c.BloodKetones = score(one(r, []float64{0.1, 1.4, 1.5}))
	}
	if chance(r, 4) {
		c.Weight = &screening.WeightGain{Mass: one(r, []units.Mass{-units.Kilogram, units.Kilogram, 2 * units.Kilogram}), Days: 1 + r.IntN(4)}
	}
	if chance(r, 2) {
		c.Pain = randomPain(r)
	}
	if chance(r, 2) {
		c.BP = pressure(140+r.IntN(51), 80+r.IntN(26))
		if chance(r, 3) {
			c.BPAgain = pressure(140+r.IntN(51), 80+r.IntN(26))
		}
	}
	if chance(r, 6) {
		c.BP, c.BPAgain = pressure(60+r.IntN(50), 25+r.IntN(30)), nil
	}
	if chance(r, 4) {
		c.Orthostatic = &screening.OrthostaticDrop{From: screening.Posture(1 + r.IntN(2)), Systolic: r.IntN(40), Diastolic: r.IntN(15), HighLying: chance(r, 2)}
	}
	if chance(r, 6) {
		c.Events = []screening.Event{{Code: one(r, datedCodes), Day: visit}}
	}
	return c
}

func randomPain(r *rand.Rand) *screening.Pain {
	p := &screening.Pain{Kind: screening.PainKind(one(r, []int{0, 1, 1, 1, 1, 2, 3, 6, 7})), SettledNextMorning: randomAnswer(r), WeeklyTrend: screening.Trend(r.IntN(4)), Osteoarthritis: randomAnswer(r)}
	if chance(r, 2) {
		p.During, p.After = score(float64(r.IntN(11))), score(3)
	}
	if chance(r, 2) {
		p.Usual, p.NextMorning = score(float64(r.IntN(11))), score(float64(r.IntN(11)))
	}
	if chance(r, 2) {
		p.Site, p.Side = body.Region(1+r.IntN(11)), body.Side(r.IntN(4))
	}
	return p
}
