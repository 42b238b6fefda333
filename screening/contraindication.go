package screening

import "slices"

// Contraindications answers by the list of contraindications to resistance
// exercise of AHA 2007 (Williams 2007): the gravest level, with every entry
// that was met. Pressure is read strictly above its thresholds, and either
// pressure is enough. Retinopathy counts only against a planned load of 80 % of
// the one-repetition maximum or more. What was not asked or measured, or is
// unsure, is not counted.
func Contraindications(p Profile) ContraindicationAnswer {
	answer := ContraindicationAnswer{Level: NoContraindication}
	meet := func(level Level, code Code) {
		if level == LevelUnknown || slices.Contains(answer.Reasons, code) {
			return
		}
		answer.Level = max(answer.Level, level)
		answer.Reasons = append(answer.Reasons, code)
	}
	for _, it := range p.found() {
		if it.held == Yes {
			meet(p.contraindicationLevel(it.entry), it.listed())
		}
	}
	for _, e := range p.measured() {
		meet(e.level, e.listed())
	}
	return answer
}

// contraindicationLevel is the entry's level with what was measured or planned.
func (p Profile) contraindicationLevel(e *entry) Level {
	switch {
	case e.listed() == retinopathyHigh && p.PlannedFraction < highIntensity:
		return LevelUnknown
	case e.code == uncontrolled && p.BP != nil:
		return Relative // the reading says whether it is more
	}
	return e.level
}

const uncontrolled Code = "uncontrolled_hypertension"

// measured returns the entries that readings meet on the list of
// contraindications.
func (p Profile) measured() []*entry {
	var met []*entry
	if p.BP != nil {
		switch {
		case p.BP.above(absoluteSystolic, absoluteDiastolic):
			met = append(met, find(pressureAbsolute))
		case p.BP.above(relativeSystolic, relativeDiastolic):
			met = append(met, find(pressureRelative))
		}
	}
	if p.MeanPAP != nil && *p.MeanPAP > severePAP {
		met = append(met, find("severe_pulmonary_hypertension"))
	}
	if p.CapacityMETs != nil && *p.CapacityMETs < lowMETs {
		met = append(met, find(lowCapacity))
	}
	return met
}

func (b *BloodPressure) above(systolic, diastolic int) bool {
	return b.Systolic > systolic || b.Diastolic > diastolic
}

// WiderContraindications returns what was answered with yes on the wider list
// of contraindications to resistance training of Willey and Fiatarone Singh
// 2003, which does not grade its entries.
func WiderContraindications(p Profile) []Code {
	var met []Code
	for _, it := range p.found() {
		if it.held == Yes && it.wider {
			met = append(met, it.code)
		}
	}
	return met
}
