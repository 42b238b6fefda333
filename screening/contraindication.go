package screening

import "slices"

// Contraindications answers by the list of contraindications to resistance
// exercise of AHA 2007 (Williams 2007): the gravest level, with every entry
// that was met. Pressure is read strictly above its thresholds, and either
// pressure is enough. Retinopathy counts only against a planned load of 80 % of
// the one-repetition maximum or more. What was not asked or measured, or is
// unsure, is not counted.
func Contraindications(p Profile) ContraindicationAnswer {
	return p.contraindications(p.found(), p.measured())
}

func (p *Profile) contraindications(items []item, met []*entry) ContraindicationAnswer {
	answer := ContraindicationAnswer{Level: NoContraindication}
	meet := func(level ContraindicationLevel, code Code) {
		if level == 0 || slices.Contains(answer.Reasons, code) {
			return
		}
		answer.Level = max(answer.Level, level)
		answer.Reasons = append(answer.Reasons, code)
	}
	for _, it := range items {
		if it.held == Yes {
			meet(p.contraindicationLevel(it.entry), it.listed())
		}
	}
	for _, e := range met {
		meet(e.level, e.listed()) // nothing where the list does not have it
	}
	return answer
}

// contraindicationLevel is the entry's level with what was measured or planned.
func (p *Profile) contraindicationLevel(e *entry) ContraindicationLevel {
	switch {
	case e.listed() == retinopathyHigh && p.PlannedFraction < highIntensity:
		return 0
	case e.code == uncontrolled && p.pressure() != nil:
		return Relative // the reading says whether it is more
	}
	return e.level
}

const uncontrolled Code = "uncontrolled_hypertension"

// pressure is the reading that counts, nil if there is none.
func (p *Profile) pressure() *BloodPressure { return last(p.BP, p.BPAgain) }

// visitCheck holds the readings of the visit.
func (p *Profile) visitCheck() Check {
	return Check{Setting: p.Setting, BP: p.BP, BPAgain: p.BPAgain, RestingPulse: p.RestingPulse, RestingPulseAgain: p.RestingPulseAgain, Counts: p.Counts}
}

// measured returns the entries that readings meet on the lists of
// contraindications.
func (p *Profile) measured() []*entry {
	var met []*entry
	meet := func(is bool, code Code) {
		if is {
			met = append(met, find(code))
		}
	}
	bp := p.pressure()
	high := bp.above(absoluteSystolic, absoluteDiastolic)
	meet(high, pressureAbsolute)
	meet(!high && bp.above(relativeSystolic, relativeDiastolic), pressureRelative)
	meet(p.MeanPAP != nil && *p.MeanPAP > severePAP, "severe_pulmonary_hypertension")
	meet(p.CapacityMETs != nil && *p.CapacityMETs < lowMETs, lowCapacity)
	meet(p.HbA1c != nil && *p.HbA1c > highHbA1c, hbA1cHigh)
	meet(bp != nil && bp.Systolic > untreatedSystolic, untreatedHigh)
	return met
}

func (b *BloodPressure) above(systolic, diastolic int) bool {
	return b != nil && (b.Systolic > systolic || b.Diastolic > diastolic)
}

// treated are the conditions that say that high pressure is treated.
var treated = []Code{"hypertension_treated", "hypertension_high_risk"}

// wider returns what was answered with yes on the wider list
// of contraindications to resistance training of Willey and Fiatarone Singh
// 2003, which does not grade its entries, and its examples of disease out of
// control that were measured: HbA1c above 10 %, and a systolic pressure above 170
// mmHg in a person who takes nothing for it.
func (p *Profile) wider(items []item, readings []*entry) []Code {
	var met []Code
	for _, it := range items {
		if it.held == Yes && it.wider {
			met = append(met, it.code)
		}
	}
	for _, e := range readings {
		if e.wider && (e.code != untreatedHigh || !p.has(treated...)) {
			met = append(met, e.code)
		}
	}
	return met
}
