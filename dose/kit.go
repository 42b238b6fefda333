package dose

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/strength"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// sold are the sizes that dumbbells are sold in, in tenths of a kilogram.
var sold = [...]int{10, 20, 30, 40, 50, 60, 80, 100, 125, 150, 175, 200, 225, 250, 275, 300}

// KitFalls says what of the kit keeps a dose with a weight per implement, 0 kg for none,
// from working, and the one size of those that are sold that changes most: that all of it
// is lighter than the goal's row asks for, that no weight of it is both heavy enough and
// light enough to be lifted often enough, or that the next one is far and nobody is there
// with whom it could be tried. It is empty where neither is so, where limits and not the
// kit end a load, and where what is lifted is not counted in repetitions.
func (f *Frame) KitFalls(each units.Mass) []evidence.Reason {
	if f == nil || f.table == nil || f.r.Exercise.Measure != exercise.Repetitions || !inHand(f.r.Exercise.Hold) {
		return nil
	}
	why := f.kitByStrength()
	if alone, falls := f.farAlone(each); falls {
		why = append(why, alone)
	}
	return why
}

func inHand(h body.Hold) bool {
	return h == body.OneHand || h == body.OneEachHand || h == body.BothHandsOnOne
}

// kitByStrength looks whether any weight would work by what is known, once the movement
// is learnt.
func (f *Frame) kitByStrength() []evidence.Reason {
	floor, which, ok := floorOf(f.g.aim, f.relation())
	least := share1RM(f.oneRM, floor)
	if !ok || !f.ability.Known() || f.most < least || least == 0 {
		return nil
	}
	for load := range f.table.Loads() {
		if f.works(load.Each(), least, soonGained) { // what works now works then
			return nil
		}
	}
	code := evidence.ReasonCode("dose.kit-too-coarse")
	if f.table.Heaviest().Each() < least {
		code = "dose.kit-too-light"
	}
	why := []evidence.Reason{evidence.Because(code, f.g.aim.fact(which), factWorks).With(
		evidence.ID("exercise", f.r.Exercise.ID), evidence.Mass("least", least), evidence.NearMass("best", f.oneRM), evidence.Term("goal", f.r.Goal.String()))}
	for i := range sold {
		if size := sold[len(sold)-1-i]; f.works(kilos(size), least, 0) {
			return append(why, f.wouldHelp(size))
		}
	}
	return why
}

// works reports whether a weight would be heavy enough now and, with so much gained, could
// be lifted often enough.
func (f *Frame) works(each, least units.Mass, gained float64) bool {
	if each < least || each > f.most {
		return false
	}
	then := f.ability
	then.Log += gained
	reserve := max(startReserve[f.r.Screening.Who.Training], f.r.Screening.Limits.MinReserve)
	count, _ := then.Most(strength.Prospect{Load: each, Reserve: min(reserve, mostReserve)}, f.chance)
	return count >= fewestSparing
}

// farAlone says that somebody who is alone goes on only by repetitions, since the next
// weight is far.
func (f *Frame) farAlone(each units.Mass) (evidence.Reason, bool) {
	gap, ok := f.table.Next(each)
	if !ok || each <= 0 || f.r.Exercise.MovesBody || gap.Share <= farStep || gap.To.Each() > f.most || f.r.Screening.Setting > screening.Alone {
		return evidence.Reason{}, false
	}
	between := evidence.Text("size", "one between")
	for i := range sold {
		if size := kilos(sold[len(sold)-1-i]); size > each && size < gap.To.Each() && float64(size) <= float64(1+farStep)*float64(each) {
			between = evidence.Text("size", f.asSold(size))
			break
		}
	}
	return evidence.Because("dose.kit-far-alone", factFarAlone, factSold).With(
		evidence.ID("exercise", f.r.Exercise.ID), evidence.Mass("from", each), evidence.Mass("to", gap.To.Each()), between), true
}

func (f *Frame) wouldHelp(size int) evidence.Reason {
	return evidence.Because("dose.kit-would-help", factSold).With(evidence.ID("exercise", f.r.Exercise.ID), evidence.Text("size", f.asSold(kilos(size))))
}

// asSold says how many of a size to get.
func (f *Frame) asSold(size units.Mass) string {
	if f.r.Exercise.Hold == body.OneEachHand {
		return "a pair of " + size.Short(units.Down)
	}
	return "one of " + size.Short(units.Down)
}

func kilos(tenths int) units.Mass { return units.Mass(tenths) * units.Kilogram / 10 }
