package dose

import (
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/onerm"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	startRow  guideline.ID = "acsm2011-older-start" // where a novice from 50 years on begins, whatever the goal
	nscaStart guideline.ID = "nsca2019-older-start" // begins with one set too
)

// aims are the rows that a goal leads to, from 50 years on.
var aims = map[guideline.Goal]guideline.ID{
	guideline.Strength:    "acsm2009-older-strength",
	guideline.Hypertrophy: "acsm2009-older-hypertrophy",
	guideline.Power:       "acsm2009-older-power",
	guideline.Function:    "acsm2009-older-strength",
	guideline.Bone:        "brookewavell2022-osteoporosis",
	guideline.Health:      "acsmaha2007-older-strengthening",
	guideline.Endurance:   "acsm2011-older-start",
}

// youngRows are followed below 50 years, by training status.
var youngRows = map[body.Training]guideline.ID{
	body.Novice:       "acsm2009-strength-novice",
	body.Intermediate: "acsm2009-strength-intermediate",
	body.Advanced:     "acsm2009-strength-advanced",
}

// A guide is what the guideline says for one request, with what it leaves
// open filled in from the usual numbers or the starting row, each with its reason.
type guide struct {
	Prescription // without a load

	row     *tableRow
	aim     *tableRow
	band    units.Range[units.Fraction] // of 1RM; not stated if the row speaks in RM
	rm      units.Range[int]            // load in repetition maxima
	reserve Reserve
	load    evidence.Reason   // for doses that follow the band
	facts   []evidence.FactID // room for those of the reasons, in one piece
	args    []evidence.Arg    // likewise, for their values
}

// Reasons for the number of sets, and of days.
const (
	setsCode evidence.ReasonCode = "dose.sets"
	daysCode evidence.ReasonCode = "dose.days"
)

// Room for the reasons of an outline, those of a dose or of a step beyond them, and the
// facts and values of a guide; more are taken as they come.
const (
	fewReasons = 10
	fewOfDose  = 6
	fewOfStep  = 3
	fewFacts   = 10
	fewArgs    = 7
)

func (g *guide) because(why ...evidence.Reason) { g.Reasons = append(g.Reasons, why...) }

// rests returns the facts that there are, nil for none, in room that no other reason
// writes to.
func (g *guide) rests(facts ...evidence.FactID) []evidence.FactID {
	from := len(g.facts)
	for _, id := range facts {
		if id != "" {
			g.facts = append(g.facts, id)
		}
	}
	if len(g.facts) == from {
		return nil
	}
	return slices.Clip(g.facts[from:])
}

// with returns a reason with values, in room that no other reason writes to.
func (g *guide) with(why evidence.Reason, args ...evidence.Arg) evidence.Reason {
	from := len(g.args)
	g.args = append(g.args, args...)
	return why.With(g.args[from:]...)
}

// fill chooses the row and fills the guide of a valid request, with room for so many
// reasons.
func (g *guide) fill(r *Request, reasons int) {
	ex, aim := &r.Exercise, aimOf(r)
	id, code, chosen := r.Guideline, evidence.ReasonCode("dose.guideline"), []evidence.FactID(nil)
	if id == "" {
		id, chosen = usualRow(r, aim)
		code = "dose.guideline-assumed"
	}
	g.row, g.facts, g.args = rowOf(id), make([]evidence.FactID, 0, fewFacts), make([]evidence.Arg, 0, fewArgs)
	g.Prescription = Prescription{
		Exercise: ex.ID, Name: ex.Name, Hold: ex.Hold, Side: r.Side, OneSided: ex.OneSided, Phase: r.phase(), Measure: ex.Measure,
		Rest: g.row.rest, Days: g.row.days, Guideline: id, Assumed: r.Guideline == "",
		Cautions: ex.Warnings, Reasons: make([]evidence.Reason, 0, reasons),
	}
	if g.aim = g.row; aim != id {
		g.aim, g.Aim = rowOf(aim), aim
	}
	if r.Screening.Waived != "" {
		g.because(g.with(evidence.Because("dose.waived"), evidence.Text("why", r.Screening.Waived)))
	}
	g.because(g.with(evidence.Because(r.phaseCode()), evidence.Term("phase", g.Phase.String())), evidence.Because(code, chosen...).With(g.row.named...))
	g.because(g.row.superseded...)
	g.fillLoad(r)
	g.fillCount(r)
	if ex.Measure == exercise.Repetitions {
		g.raiseCount(r.Screening.Limits.LeastCount)
	}
	g.fillSets(r)
	g.because(g.row.times[:]...)
	g.fillReserve(r)
	g.brief(r)
	if ex.Measure == exercise.Repetitions {
		g.fillTempo(r)
	}
}

// fillTempo is of what is counted in repetitions, of which some are left.
func (g *guide) fillTempo(r *Request) {
	g.Reserve, g.Tempo = g.reserve, tempo
	code, facts := evidence.ReasonCode("dose.tempo"), g.rests(factTempo)
	if r.fast() {
		g.Tempo, code, facts = fastTempo, "dose.tempo-fast", g.rests(factFast, factSlower)
	}
	g.because(evidence.Because(code, facts...))
}

func aimOf(r *Request) guideline.ID {
	if r.Screening.Who.Age < given.Older {
		return youngRows[r.Screening.Who.Training]
	}
	return aims[r.Goal]
}

// startChosen is what the row to start with is chosen by.
var startChosen = []evidence.FactID{factOlder, factStart}

// usualRow returns the row that is followed where none was asked for, and the
// facts that it is chosen by.
func usualRow(r *Request, aim guideline.ID) (guideline.ID, []evidence.FactID) {
	switch {
	case r.Screening.Who.Age < given.Older:
	case r.phase() == Familiarise:
		return startRow, startChosen
	case r.phase() == Power:
		aim = aims[guideline.Power]
	}
	return aim, given.RowFacts(r.Screening.Who.Age)
}

// fillLoad takes the row's band: its starting band for a novice, the one for
// the arms or the legs where the row tells them apart.
func (g *guide) fillLoad(r *Request) {
	row, which := g.row, guideline.FieldLoad
	switch {
	case r.Screening.Who.Training == body.Novice && !row.LoadStart.IsZero():
		g.band, which = row.LoadStart, guideline.FieldLoadStart
	case r.Exercise.Pattern.Legs() && !row.LoadLower.IsZero():
		g.band, which = row.LoadLower, guideline.FieldLoadLower
	case !r.Exercise.Pattern.Legs() && !row.LoadUpper.IsZero():
		g.band, which = row.LoadUpper, guideline.FieldLoadUpper
	case !row.Load.IsZero():
		g.band = row.Load
	case !row.RM.IsZero():
		g.rm, which = row.RM, guideline.FieldRM
	default:
		row = rowOf(startRow)
		g.band = row.Load
		g.because(g.with(evidence.Because("dose.band-from-start-row", factStart), evidence.ID("row", startRow)))
	}
	row, which = g.withoutMemory(r, row, which)
	g.load = evidence.Because("dose.load", g.rests(row.fact(which))...)
	if g.rm.IsZero() {
		g.load = g.with(g.load, evidence.Share("load", g.band))
	} else {
		g.load = g.with(g.load, evidence.Text("load", g.rm.String()+" RM"))
	}
}

// withoutMemory keeps a load that is known from memory only from permitting
// more than the row that would have been chosen without it.
func (g *guide) withoutMemory(r *Request, row *tableRow, which guideline.Field) (*tableRow, guideline.Field) {
	if known := row.stated[which].basis; known != evidence.FromMemory && known != evidence.Design {
		return row, which
	}
	id, chosen := usualRow(r, aimOf(r))
	usual := rowOf(id)
	if usual.Load.IsZero() {
		return row, which
	}
	most, _ := usual.Load.Max()
	if top, ok := g.band.Max(); ok && top <= most {
		return row, which
	}
	g.band, g.rm = usual.Load, units.Range[int]{}
	g.because(g.with(evidence.Because("dose.memory-permits-nothing", append(g.rests(row.fact(which)), chosen...)...), evidence.ID("row", row.ID), evidence.ID("instead", usual.ID)))
	return usual, guideline.FieldLoad
}

// fillCount takes the row's repetitions, narrowed to what works for the
// exercise; where the two do not meet, the exercise's own range holds.
func (g *guide) fillCount(r *Request) {
	ex := &r.Exercise
	if ex.Measure != exercise.Repetitions {
		fact := ex.CountFact
		g.Span = ex.Count
		if g.Span.IsZero() {
			g.Span, fact = heldOrWalked, factHeld
		}
		g.Count, _ = g.Span.Min()
		g.because(g.with(evidence.Because("dose.count-of-exercise", g.rests(fact)...), evidence.Count("count", g.Span), evidence.Term("measure", ex.Measure.String())))
		return
	}
	if g.row.Reps.IsZero() {
		g.ownCount(ex)
		return
	}
	both, meet := g.row.Reps.Intersect(ex.Count)
	if !meet {
		both = ex.Count
	}
	g.Span = closed(both)
	g.Count, _ = g.Span.Min()
	g.because(g.with(evidence.Because("dose.count", g.rests(g.row.fact(guideline.FieldReps), ex.CountFact)...), evidence.Count("count", g.Span)))
}

// ownCount is for rows that state no repetitions.
func (g *guide) ownCount(ex *exercise.Exercise) {
	g.Span = workable
	if both, meet := workable.Intersect(ex.Count); meet {
		g.Span = both
	}
	g.Count = nearestIn(aboutTen, g.Span)
	g.because(g.with(evidence.Because("dose.count", exercise.FactCountSets), evidence.Count("count", g.Span)))
}

// nearestIn returns v, or the end of r that lies nearest to it.
func nearestIn(v int, r units.Range[int]) int {
	if low, ok := r.Min(); ok {
		v = max(v, low)
	}
	if high, ok := r.Max(); ok {
		v = min(v, high)
	}
	return v
}

// closed gives a range that is open at one end the workable end there.
func closed(r units.Range[int]) units.Range[int] {
	both, meet := r.Intersect(workable)
	_, hasMin := r.Min()
	_, hasMax := r.Max()
	if hasMin && hasMax || !meet {
		return r
	}
	return both
}

// fillSets begins a familiarisation with the fewest sets that the row names, and
// one where it names none: early on, more bring no different response.
func (g *guide) fillSets(r *Request) {
	low, hasLow := g.row.Sets.Min()
	g.BuildTo = nearestIn(aboutThreeSets, g.row.Sets)
	var maintain, start evidence.FactID
	switch {
	case g.Phase == Maintain:
		g.Sets = min(g.BuildTo, maintainSets)
		maintain = factMaintain
	case g.Phase != Familiarise:
		g.Sets = g.BuildTo
	case hasLow:
		g.Sets = low
	default:
		g.Sets = 1
	}
	if g.Phase == Familiarise {
		start = rowOf(nscaStart).fact(guideline.FieldSets)
	}
	if r.Screening.Meanwhile >= screening.LightSupervised {
		g.Sets, g.BuildTo = 1, 1
	}
	g.lightenSets(r)
	g.because(g.with(evidence.Because(setsCode, g.rests(g.row.fact(guideline.FieldSets), exercise.FactCountSets, factFewerLater, maintain, start)...), evidence.Count("sets", g.Sets), evidence.Count("build to", g.BuildTo)))
}

// lightenSets leaves out the sets that a lighter day asks for, down to one.
func (g *guide) lightenSets(r *Request) {
	l := r.Screening.Limits.Lighten
	g.Sets = max(1, g.Sets-l.FewerSets)
	if l.AtMostLast {
		g.because(g.with(evidence.Because("dose.lighter-day", g.rests(factLimits, factLighter)...), evidence.Count("fewer", l.FewerSets), evidence.Number("more", l.MoreReserve)))
	}
}

// fillReserve sets the least reserve: more than can be counted at a start with
// light loads, else by training status; limits only ever raise it.
func (g *guide) fillReserve(r *Request) {
	g.reserve = Reserve{startReserve[r.Screening.Who.Training], true}
	fact, tellers := evidence.FactID(factReserve), evidence.FactID("")
	if top, ok := g.band.Max(); ok && top <= lightBand {
		g.reserve = Reserve{uncountable, false}
		fact, tellers = factUncountable, factHackett
	}
	limits := &r.Screening.Limits
	g.raiseReserve(g.reserve.Least + limits.Lighten.MoreReserve)
	if g.raiseReserve(limits.MinReserve) {
		g.because(g.with(evidence.Because("dose.reserve-limit", g.rests(factLimits)...), evidence.Number("reserve", limits.MinReserve)))
	}
	if limits.NoBreathHolding && g.raiseReserve(breathReserve) {
		g.because(g.with(evidence.Because("dose.breath-reserve", g.rests(factBreath)...), evidence.Number("reserve", breathReserve)))
	}
	if least := intensityReserve[limits.MaxIntensity]; g.raiseReserve(least) {
		g.because(g.with(evidence.Because("dose.intensity-limit", factIntensity), evidence.Term("intensity", limits.MaxIntensity.String()), evidence.Number("reserve", least)))
	}
	g.because(g.with(evidence.Because("dose.reserve", g.rests(fact, tellers)...), evidence.Reserve("reserve", g.reserve.Least, g.reserve.Countable)))
}

// raiseReserve raises the least reserve, and reports whether it did.
func (g *guide) raiseReserve(least units.RIR) bool {
	if least <= g.reserve.Least {
		return false
	}
	g.reserve = Reserve{least, least <= uncountable}
	return true
}

// top returns the end of the band, as a share of 1RM on the given relation: that of the
// row's own band, or its fewest repetition maxima read off the curve within its studied
// range.
func (g *guide) top(rel onerm.Relation) (units.Fraction, error) {
	if g.rm.IsZero() {
		high, ok := g.band.Max()
		if !ok {
			high, _ = g.band.Min()
		}
		return high, nil
	}
	low, _ := g.rm.Min()
	fewest := float64(low)
	if end, ok := rel.Studied().Max(); ok {
		fewest = min(fewest, end)
	}
	return rel.Fraction(fewest)
}
