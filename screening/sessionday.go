package screening

import (
	"cmp"
	"slices"
)

// SessionDay answers by the checks on the day of a session: pressure, pulse,
// fever and instability after BACR 2006 and ACSM 2009 (HEIW); the fall of
// pressure on standing from lying (Freeman 2011) or sitting (Shaw 2017); glucose
// at the start (Colberg 2016, Turner 2019); pain (Thomee 1997, Silbernagel
// 2007); oxygen saturation (Garvey 2012) and blood counts. What was not asked or
// measured is not counted. Of two readings of pressure, pulse or saturation, the second
// after a rest, the second counts. Heart failure has an answer of its own: see
// [Rules].HeartFailure.
//
// Glucose of 52 to 69 mg/dL is treated and measured again (Turner 2019): a second reading
// of 70 or more lets a lighter session go on, never alone, and one below counts as the
// first would. Whatever a second one shows, a first below 52 and a low that needed help end
// the day, and what else a first one asks for stays.
//
// Glucose below 90 mg/dL counts for people on insulin or a secretagogue, whom
// the table is chiefly for; below 70 mg/dL, and from 250 mg/dL, for everyone.
// That a short or very intense bout, such as weights, may do without eating first
// is not used here. Moderate or large ketones, or 1.5 mmol/L in the blood, take
// the place of the band of high glucose.
//
// Diastolic pressure of 100 mmHg stops the day here, while the list of
// [Contraindications] calls it absolute only above 110: sources disagree.
func SessionDay(c Check, p Profile) SessionDayAnswer {
	answer := SessionDayAnswer{Plan: AsPlanned}
	meet := func(met bool, plan DayPlan, code Code) {
		if met {
			answer.Plan = max(answer.Plan, plan)
			answer.Reasons = append(answer.Reasons, code)
		}
	}
	meet(last(c.BP, c.BPAgain).stopsDay(), NotToday, pressureToday)
	meet(last(c.RestingPulse, c.RestingPulseAgain) > dayPulse, NotToday, pulseToday)
	meet(c.Febrile == Yes, NotToday, feverToday)
	meet(p.has("decompensated_hf"), NotToday, failingToday)
	meet(p.has("unstable_chd", "uncontrolled_arrhythmia"), NotToday, unstableToday)
	meet(c.Orthostatic.isHypotension(), Lighter, orthostatic)
	low, lowPlan := c.lowGlucose(p)
	meet(low != "", lowPlan, low)
	meet(c.ketonesHigh(), NotToday, ketonesHigh)
	high := c.highGlucose()
	meet(high != "", Lighter, high)
	meet(high != "" && c.BloodKetones != nil, Lighter, ketonesLight)
	spo2 := last(c.SpO2, c.SpO2Again)
	meet(spo2 > 0 && spo2 < spo2Severe, NotToday, saturationSevere)
	meet(spo2 >= spo2Severe && spo2 < spo2Floor, Lighter, saturationFloor)
	for _, code := range c.Counts.low() {
		meet(true, NotToday, code)
	}
	if c.Pain != nil {
		for _, code := range painReasons(*c.Pain) {
			meet(true, Lighter, code)
		}
	}
	return answer
}

// painReasons are the rules of the pain model that are met, where it applies.
func painReasons(p Pain) []Code {
	if a := PainModel(p); a.Applies {
		return a.Reasons
	}
	return nil
}

// last is the reading that counts of a first and one after a rest.
func last[T comparable](first, again T) T { return cmp.Or(again, first) }

func (b *BloodPressure) stopsDay() bool {
	return b != nil && (b.Systolic >= daySystolic || b.Diastolic >= dayDiastolic)
}

// low are the counts that are too low for exercise.
func (b *BloodCounts) low() []Code {
	var list []Code
	if b != nil && b.Platelets > 0 && b.Platelets < lowPlatelets {
		list = append(list, plateletsLow)
	}
	if b != nil && b.Haemoglobin > 0 && b.Haemoglobin < lowHaemoglobin {
		list = append(list, haemoglobinLow)
	}
	return list
}

func (p *Profile) has(codes ...Code) bool {
	return slices.ContainsFunc(p.Conditions.Present, func(c Code) bool { return slices.Contains(codes, c) })
}

func (o *OrthostaticDrop) isHypotension() bool {
	switch {
	case o == nil:
		return false
	case o.From == Sitting:
		return o.Systolic >= sittingSystolic || o.Diastolic >= sittingDiastolic
	}
	systolic := lyingSystolic
	if o.HighLying {
		systolic = lyingHighSystolic
	}
	return o.Systolic >= systolic || o.Diastolic >= lyingDiastolic
}

// ketonesHigh reports whether a test of urine or blood bars exercise.
func (c Check) ketonesHigh() bool {
	return c.Ketones >= ModerateKetones || c.BloodKetones != nil && *c.BloodKetones >= bloodKetones
}

// onInsulin reports whether medicines are known to be taken that can cause a low.
func (c Check) onInsulin(p Profile) bool {
	return c.InsulinOrSecretagogue == Yes || p.Answers[askInsulin] == Yes ||
		slices.Contains(p.Diseases.Present, "diabetes_t1")
}

// lows are what a low of glucose makes of the day, by how low it is.
var lows = [...]struct {
	code Code
	plan DayPlan
}{{}, {glucoseBelowEat, Lighter}, {glucoseLow, NotToday}, {glucoseVeryLow, NotToday}}

// treat is how low glucose is that is treated and then measured again.
const treat = 2

func (c Check) lowGlucose(p Profile) (Code, DayPlan) {
	first, again := c.Glucose.lowness(c.onInsulin(p)), c.GlucoseAgain.lowness(c.onInsulin(p))
	treated := first == treat && again < treat && !c.GlucoseAgain.IsZero()
	switch {
	case c.SevereLow == Yes:
		first = treat + 1
	case treated && again == 0:
		return glucoseTreated, Lighter
	case treated:
		first = again
	}
	low := lows[max(first, again)]
	return low.code, low.plan
}

// lowness is the place in lows of a reading, 0 of one that was not taken.
func (g Glucose) lowness(onInsulin bool) int {
	switch {
	case g.IsZero():
	case g.below(glucoseNone):
		return treat + 1
	case g.below(glucoseTreat):
		return treat
	case g.below(glucoseEat) && onInsulin:
		return treat - 1
	}
	return 0
}

// highGlucose goes by the higher of both readings.
func (c Check) highGlucose() Code {
	high := Code("")
	for _, g := range [...]Glucose{c.Glucose, c.GlucoseAgain} {
		switch {
		case g.IsZero() || g.below(glucoseKetones) || c.ketonesHigh():
		case !g.below(glucoseVeryHigh):
			return glucoseHighest
		default:
			high = glucoseHigh
		}
	}
	return high
}
