package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// know takes what is known of strength: what the request says, else what the chosen
// test shows, else the set that looking for a load begins from. Where the body is
// most of what is lifted, or no repetitions are counted, nothing is.
func (f *Frame) know() {
	r := f.r
	if f.chance = r.Chance; f.chance == (strength.Chance{}) {
		f.chance = strength.StandardChance()
	}
	switch {
	case !loaded(r) || r.Exercise.MovesBody || r.Exercise.Measure != exercise.Repetitions:
	case r.Ability.Known():
		f.ability = r.Ability
	case f.estimate != nil:
		f.ability = f.ability.Tested(*f.estimate)
	case r.Performed != nil:
		f.ability = f.ability.Seen(1, 0, *r.Performed)
	}
	f.oneRM, _ = f.ability.OneRM()
	f.top, f.light = f.bandTop()
}

// Chance returns the chance that counts are kept to.
func (f *Frame) Chance() strength.Chance { return field.OrZero(f).chance }

// Allows returns the most repetitions of a weight per implement that the chance allows
// with the reserve asked, within every limit: none above [Frame.Ceiling] or above the
// band of the goal's row (the lightest weight is never too heavy for a band, and is taken
// for 3 where 4 can be done), 25 at most, and what the package says of counts under 6.
// Of strength known as a lower bound alone a band's top forbids nothing. Nor does that of
// a light band, which few sets can show, take away what was asked for last: the reserve does.
// last is the weight that was asked for last, 0 kg for none: the farther from it, the
// less is known.
//
// It is false where nothing is known of strength. It never rises with each, nor as
// less is known to be lifted.
func (f *Frame) Allows(each, last units.Mass) (count int, ok bool) {
	if f == nil || !f.ability.Known() || each <= 0 {
		return 0, false
	}
	lightest := each <= f.table.Lightest().Each()
	if each > f.most || each > f.top && !lightest && (each > last || !f.light) {
		return 0, true
	}
	count, ok = f.byChance(each, last, f.g.Reserve.Least)
	if f.r.Screening.Limits.NoBreathHolding && count > longSet {
		far, _ := f.byChance(each, last, max(f.g.Reserve.Least, uncountable))
		count = max(longSet, far)
	}
	if (f.sparing() || f.learning() && !lightest) && (count < fewestSparing || each > share1RM(f.oneRM, mostSparing)) {
		count = 0
	}
	if f.fewDo(each) {
		count = max(count, leastAtLightest)
	}
	return min(count, mostBridged), ok
}

// fewDo reports whether a weight is taken for a few lifts though the chance allows
// fewer: the lightest, of somebody who is not spared, where what is known makes one more
// likely than not. They end by the reserve; else whoever owns one weight is sent away from it.
func (f *Frame) fewDo(each units.Mass) bool {
	return each <= f.table.Lightest().Each() && !f.sparing() && each <= share1RM(f.oneRM, mostForFew)
}

// byChance returns the most repetitions by the chance alone.
func (f *Frame) byChance(each, last units.Mass, reserve units.RIR) (int, bool) {
	return f.ability.Most(strength.Prospect{Load: each, Last: last, Reserve: min(reserve, mostReserve), Missed: f.r.Missed}, f.chance)
}

// bandTop returns the most per implement that the band of the goal's row allows on
// the best of what is known, [units.MaxMass] for a row that states no load in shares, or
// where nothing or only a lower bound is known: a share of that says what fits, and nothing of what
// is too much. A visit that went worse makes no bound of a value. It reports whether the
// band is a light one, with which more is left than can be counted.
func (f *Frame) bandTop() (most units.Mass, light bool) {
	row := f.g.row
	if f.g.Phase == Familiarise {
		row = f.g.aim
	}
	band := row.Load
	switch {
	case f.r.Exercise.Pattern.Legs() && !row.LoadLower.IsZero():
		band = row.LoadLower
	case !f.r.Exercise.Pattern.Legs() && !row.LoadUpper.IsZero():
		band = row.LoadUpper
	}
	top, ok := band.Max()
	if !ok || !f.ability.Known() || f.ability.AtLeast {
		return units.MaxMass, false
	}
	return share1RM(f.oneRM, top), top <= lightBand
}

var chanceFacts = []evidence.FactID{factReserveChance, factFinishChance, factEnds}

// chanceReason states the chance behind a count, for a weight that allows most.
func (f *Frame) chanceReason(each units.Mass, most int) evidence.Reason {
	return evidence.Because("dose.chance", chanceFacts...).With(
		evidence.Mass("load", each), evidence.Count("most", most), evidence.Share("below", f.chance.Reserve), evidence.Share("without", f.chance.Finish))
}
