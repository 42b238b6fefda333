package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

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

// branch reports the branch of the preparticipation rule, as if all that is not
// known were yes, but for the signs that a look in the room settles.
func (a *assessment) branch() {
	p := &a.p
	diseases := knownIn(a.items, Unknown, true)
	signs := a.signs()
	symptoms, disease := signs != No, count(diseases) > 0 || !p.Diseases.Asked
	var few [8]item
	needing := appendTold(few[:0], diseases)
	until, cleared := vigorousClearance(a.inForce, p.Day, slices.Values(needing))
	wanted := p.Wanted
	if wanted == 0 {
		wanted = Vigorous
		a.out.ask(askFor(askWanted, ""))
	}
	if p.Activity == nil {
		a.out.ask(askFor(askActivity, ""))
	}
	b := branchOf(p.Activity.active(), disease, symptoms)
	need := needOf(b, wanted, cleared)
	if b == A2 && wanted == Vigorous && cleared {
		a.out.reviewBy(until)
		a.lift(needing)
	}
	follows, variant := branchEffect(b, need), plainly
	for _, it := range a.items {
		if it.kind == Symptom && !p.explains(it) && !it.looked() {
			needing = append(needing, it)
		}
	}
	hardest, ok := a.coveredAll(needing)
	if need >= BeforeAny && ok && p.Diseases.Asked && p.Symptoms.Asked {
		follows, variant = tellModerate.with(Limits{MaxIntensity: hardest}), withClearance
		a.lift(needing)
	}
	if b == N2 && a.policy.DiabetesStart == NewerList && a.startsWithDiabetes(diseases) {
		follows, variant = tellModerate, byNewerList
	}
	if variant == plainly && !symptoms && slices.ContainsFunc(a.items, p.explains) {
		variant = lookedAtOnce
	}
	if need == BeforeVigorous {
		variant = vigorously
	}
	reason := evidence.Because(branchPrefix+evidence.ReasonCode(b.String())+variant, branchFact(b), activeFact, branchMap).With(evidence.Term("need", need.String()))
	if need >= BeforeAny {
		reason.Facts = append(reason.Facts, referredFact)
	}
	reason.Facts = append(reason.Facts, knownFacts(diseases)...)
	f := finding(Code(b.String()), variant, reason)
	f.known(b == branchOf(p.Activity.active(), count(knownIn(a.items, Yes, true)) > 0, signs == Yes))
	if open := a.openOf(b); !f.Known && open != "" && follows.meanwhile > WithinLimits {
		f.Exit = WayOut{Who: ThePerson, With: AnAnswer, Ask: open}
	} else if i := slices.IndexFunc(needing, p.unliftable); symptoms && i >= 0 {
		f.Exit = p.settledFirst(needing[i])
	}
	a.out.add(f, follows)
	if p.diabetesStart(a.items) == NotNeeded {
		a.out.add(byRule(evidence.Because(adaCode, adaFact)), nothingFound)
	}
}

// settledFirst is the way out of a branch for a sign that no clearance lifts.
func (p *Profile) settledFirst(sign item) WayOut {
	if open := p.unanswered(sign); open != "" {
		return WayOut{Who: ThePerson, With: AnAnswer, Ask: open}
	}
	return WayOut{Who: TheDoctor, With: BeingSettled}
}

// known notes whether what is known makes a branch, in its reason too.
func (f *Finding) known(is bool) {
	if f.Known = is; !is {
		f.Reason.Code += unsurely
	}
}

// openOf is the first question whose answer may tell another branch than b, "" if what is
// known makes it.
func (a *assessment) openOf(b Branch) Code {
	kind, list := Disease, askDiseases
	asked := a.p.Diseases.Asked
	if b == N3 || b == A3 {
		kind, list, asked = Symptom, askSymptoms, a.p.Symptoms.Asked
	}
	if !asked {
		return list
	}
	for _, it := range a.items {
		if it.held != Yes && !it.looked() && (it.kind == kind || kind == Disease && it.isKnown(true)) {
			return a.missing(it).Code
		}
	}
	return ""
}

// appendTold adds the diseases that were told. What only a question leaves open is of one
// of them, and needs no clearance of its own.
func appendTold(list []item, diseases iter.Seq[item]) []item {
	for it := range diseases {
		if it.question == nil {
			list = append(list, it)
		}
	}
	return list
}

// branchEffect is what follows from a branch without a clearance that counts.
func branchEffect(b Branch, need Need) effect {
	switch {
	case b == N3 || b == A3:
		return askNothing
	case b == N2:
		return askNoLoad
	case need == BeforeVigorous:
		return ask.with(Limits{MaxIntensity: Moderate})
	case b == A2:
		return tell
	}
	return nothingFound
}

// startsWithDiabetes reports whether the position of ADA 2016 speaks for the person,
// with nothing that is not known.
func (a *assessment) startsWithDiabetes(diseases iter.Seq[item]) bool {
	return a.p.diabetesStart(a.items) == NotNeeded && a.p.Symptoms.any() == No && count(diseases) == count(knownIn(a.items, Yes, true))
}
