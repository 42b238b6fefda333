package screening

import "slices"

// active reports whether a counts as regularly active. Not known is not active.
func (a *Activity) active() bool {
	return a != nil && a.DaysPerWeek >= activeDays && a.Minutes >= activeMinutes &&
		a.Intensity >= Moderate && a.Months >= activeMonths
}

// branchOf is the table of the rule (Riebe 2015).
func branchOf(active, disease, symptoms bool) Branch {
	branch := N1
	switch {
	case symptoms:
		branch = N3
	case disease:
		branch = N2
	}
	if active {
		branch += A1 - N1
	}
	return branch
}

// needOf is the clearance that a branch asks for.
func needOf(b Branch, wanted Intensity, clearedVigorous bool) Need {
	switch b {
	case N2, N3:
		return BeforeAny
	case A3:
		return StopFirst
	case A2:
		switch {
		case clearedVigorous || wanted == Light || wanted == Moderate:
			return NotNeeded
		case wanted == Vigorous:
			return BeforeVigorous
		}
		return 0
	}
	return NotNeeded
}

// Preparticipation answers by the preparticipation rule of ACSM 2015 (Riebe
// 2015): branch and clearance. A disease counts whichever list it was told in:
// heart failure is known heart disease. Activity that is not given counts as none. Items
// that the person is unsure of are not counted here. The answer is zero where a
// list that was not asked would decide; its clearance is zero in branch A2 when
// the wanted intensity would decide.
//
// A clearance counts before vigorous exercise for 12 months to the day, if it is
// in force, speaks for every known disease and for vigorous effort.
func Preparticipation(p Profile) PreparticipationAnswer {
	return p.preparticipation(p.found(), p.inForce())
}

func (p *Profile) preparticipation(items []item, inForce []Clearance) PreparticipationAnswer {
	diseases := knownIn(items, Yes, false)
	symptoms, disease := len(p.Symptoms.Present) > 0, count(diseases) > 0
	if !symptoms && (!p.Symptoms.Asked || !disease && !p.Diseases.Asked) {
		return PreparticipationAnswer{}
	}
	b := branchOf(p.Activity.active(), disease, symptoms)
	_, cleared := vigorousClearance(inForce, p.Day, diseases)
	return PreparticipationAnswer{b, needOf(b, p.Wanted, cleared)}
}

// diabetesStart answers by the position of ADA 2016 (Colberg 2016, as told by
// Colberg 2017), which disagrees with branch N2 of ACSM 2015: people with
// diabetes and no other known disease or symptom, not regularly active, who
// start with light or moderate effort need no clearance. Where it does not
// speak the answer is zero. "Moderate" here is no harder than brisk walking.
func (p *Profile) diabetesStart(items []item) Need {
	diseases := knownIn(items, Yes, true)
	if count(diseases) == 0 || !p.Diseases.Asked || !p.Symptoms.Asked || len(p.Symptoms.Present) > 0 || p.Activity.active() {
		return 0
	}
	for it := range diseases {
		if !slices.Contains(diabetesCodes, it.code) || it.by != nil {
			return 0
		}
	}
	if p.Wanted != Light && p.Wanted != Moderate {
		return 0
	}
	return NotNeeded
}
