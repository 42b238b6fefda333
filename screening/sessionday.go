package screening

import "slices"

// SessionDay answers by the checks on the day of a session: pressure, pulse,
// fever and instability after BACR 2006 and ACSM 2009 (HEIW); the fall of
// pressure on standing from lying (Freeman 2011) or sitting (Shaw 2017); glucose
// at the start (Colberg 2016, Turner 2019); pain (Thomee 1997, Silbernagel
// 2007). What was not asked or measured is not counted.
//
// Glucose below 90 mg/dL counts for people on insulin or a secretagogue, whom
// the table is chiefly for; below 70 mg/dL, and from 250 mg/dL, for everyone.
// Moderate or large ketones take the place of the band of high glucose.
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
	meet(c.BP != nil && (c.BP.Systolic >= daySystolic || c.BP.Diastolic >= dayDiastolic), NotToday, pressureToday)
	meet(c.RestingPulse > dayPulse, NotToday, pulseToday)
	meet(c.Febrile == Yes, NotToday, feverToday)
	meet(p.has("decompensated_hf"), NotToday, failingToday)
	meet(p.has("unstable_chd", "uncontrolled_arrhythmia"), NotToday, unstableToday)
	meet(c.Orthostatic.isHypotension(), Lighter, orthostatic)
	low, lowPlan := c.lowGlucose(p)
	meet(low != "", lowPlan, low)
	meet(c.Ketones >= ModerateKetones, NotToday, ketonesHigh)
	high := c.highGlucose()
	meet(high != "", Lighter, high)
	if c.Pain != nil {
		meet(over(c.Pain.During) || over(c.Pain.After), Lighter, painHigh)
		meet(c.Pain.SettledNextMorning == No, Lighter, painUnsettled)
		meet(c.Pain.WeeklyTrend == RisingPain, Lighter, painRising)
	}
	return answer
}

func (p Profile) has(codes ...Code) bool {
	return slices.ContainsFunc(p.Conditions.Present, func(c Code) bool { return slices.Contains(codes, c) })
}

func (o *OrthostaticDrop) isHypotension() bool {
	switch {
	case o == nil:
		return false
	case o.From == Sitting:
		return o.Systolic >= sittingSystolic || o.Diastolic >= sittingDiastolic
	}
	return o.Systolic >= lyingSystolic || o.Diastolic >= lyingDiastolic
}

func over(score *float64) bool { return score != nil && *score > painLimit }

// onInsulin reports whether medicines are known to be taken that can cause a low.
func (c Check) onInsulin(p Profile) bool {
	return c.InsulinOrSecretagogue == Yes || p.Answers[askInsulin] == Yes ||
		slices.Contains(p.Diseases.Present, "diabetes_t1")
}

func (c Check) lowGlucose(p Profile) (Code, DayPlan) {
	measured := !c.Glucose.IsZero()
	switch {
	case c.SevereLow == Yes || measured && c.Glucose.below(glucoseNone):
		return glucoseVeryLow, NotToday
	case measured && c.Glucose.below(glucoseTreat):
		return glucoseLow, NotToday
	case measured && c.Glucose.below(glucoseEat) && c.onInsulin(p):
		return glucoseBelowEat, Lighter
	}
	return "", PlanUnknown
}

func (c Check) highGlucose() Code {
	switch {
	case c.Glucose.IsZero() || c.Glucose.below(glucoseKetones) || c.Ketones >= ModerateKetones:
		return ""
	case c.Glucose.below(glucoseVeryHigh):
		return glucoseHigh
	}
	return glucoseHighest
}
