package onerm

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// Facts behind the policy and the intervals.
const (
	factSharedRange    evidence.FactID = "onerm.studied.classical"
	factBeyondTen      evidence.FactID = "onerm.beyond-ten"
	factMeasured       evidence.FactID = "onerm.measured"
	factLower          evidence.FactID = "onerm.lower-of-two"
	factKemmlerChoice  evidence.FactID = "onerm.kemmler2006.choice"
	factKemmlerError   evidence.FactID = "onerm.kemmler2006.error"
	factToFailure      evidence.FactID = "onerm.to-failure"
	factReserveBias    evidence.FactID = "onerm.reserve.bias"
	factReserveNear    evidence.FactID = "onerm.reserve.near"
	factReserveFar     evidence.FactID = "onerm.reserve.far"
	factReserveLimit   evidence.FactID = "onerm.reserve.limit"
	factMovesBody      evidence.FactID = "onerm.moves-body"
	factWide           evidence.FactID = "onerm.reserve.wide"
	factHalfPoint      evidence.FactID = "onerm.reserve.half-point"
	factUntrained      evidence.FactID = "onerm.untrained.low"
	factUntrainedShare evidence.FactID = "onerm.untrained.share"
	factReestimate     evidence.FactID = "onerm.untrained.again"
	factNoDumbbells    evidence.FactID = "onerm.no-dumbbells"
	factColumns        evidence.FactID = "onerm.interval.columns"
	factOrder          evidence.FactID = "onerm.interval.order"
	factRelation       evidence.FactID = "onerm.measured.relation"
	factLombardiName   evidence.FactID = "onerm.lombardi.name"
	factCubics         evidence.FactID = "onerm.kemmler2024.coefficients"
	factCubicForm      evidence.FactID = "onerm.kemmler2024.form"
	factPractised      evidence.FactID = "onerm.practised"
	factMeneses        evidence.FactID = "onerm.practised.best"
	factOlderTrained   evidence.FactID = "onerm.practised.older"
)

func rangeFact(f Formula) evidence.FactID  { return f.Fact() + ".range" }
func peopleFact(f Formula) evidence.FactID { return f.Fact() + ".people" }

// fact names the fact behind a row of the interval table.
func (r row) fact() evidence.FactID { return evidence.FactID("onerm.interval." + r.String()) }

// anchors are the published errors that the interval table was chosen after.
var anchors = []evidence.Fact{
	{ID: "onerm.anchor.test", Value: "a measured 1RM varies by a median of 4.2 % from test to test (0.5 to 12.1 %)", Source: "grgic2020", Basis: evidence.Published},
	{ID: "onerm.anchor.test-older", Value: "a measured 1RM varies by 4.2 to 9.0 % in men of 60 to 87 years", Source: "schroeder2007", Basis: evidence.Published},
	{ID: "onerm.anchor.best", Value: "Brzycki's equation at 7 to 10RM: error of 3.4 % in young men's bench press after six practice sessions", Source: "nascimento2007", Basis: evidence.Published},
	{ID: "onerm.anchor.women", Value: "prediction from 5 to 10RM: error of 7.6 to 7.8 % in young women", Source: "abadie2000", Basis: evidence.Published},
	{ID: "onerm.anchor.legs", Value: "the best of eleven equations over ten lower-limb exercises: mean absolute error of 5.8 %", Source: "simonsen2024", Basis: evidence.Published},
	{ID: "onerm.anchor.curl", Value: "biceps curl at 85 %: prediction error of 5.3 to 6.9 kg on a mean of 49.4 kg in 27 young men", Source: "hutchins2010", Basis: evidence.Published},
	{ID: "onerm.anchor.trained", Value: "six equations in 31 trained men's bench press at 4 to 10RM: standard errors of 2.7 to 3.2 kg, no difference from the measured 1RM", Source: "lacio2010", Basis: evidence.Published},
	{ID: "onerm.anchor.older-r", Value: "adults of 70.7 years: correlation of six equations with the measured 1RM 0.77 to 0.9 in upper-body lifts, 0.60 to 0.8 in lower-body ones", Source: "knutzen1999", Basis: evidence.Published},
	{ID: "onerm.anchor.students", Value: "67 untrained students, bench press: group means of 137 lb measured, 131.9 lb by Brzycki, 135.1 lb by Epley", Source: "lesuer1997", Basis: evidence.Secondary, Via: "a student laboratory report"},
	{ID: "onerm.anchor.leg-extension", Value: "r^0.1 on leg extension before training, 9.8 ± 2.7 repetitions: total error of 3.9 kg, the least of eight equations; after training all did badly", Source: "roberts2024b", Basis: evidence.Published},
	{ID: "onerm.anchor.reserve", Value: "trained people on the bench press at 75 % called 1 and 3 in reserve with an error of −0.17 ± 1 repetitions", Source: "refalo2023", Basis: evidence.Published},
	{ID: "onerm.anchor.reserve-bias", Value: "reserve told too low by 0.95 repetitions over 12 studies, lower 95 % limit 0.17", Source: "halperin2022", Basis: evidence.Published},
	{ID: "onerm.anchor.icc", Value: "a measured 1RM agrees with a second one by a median intraclass correlation of 0.97", Source: "grgic2020", Basis: evidence.Published},
	{ID: "onerm.anchor.women-older", Value: "chest press of 23 older women: a measured 1RM varies by 5.28 %, a standard error of 0.97 kg and a real change from 2.69 kg on", Source: "infante2021", Basis: evidence.Published},
	{ID: "onerm.anchor.count", Value: "repetitions to failure at 90 % of the bench press vary by 0.7 from test to test", Source: "mitter2022", Basis: evidence.Published},
	{ID: "onerm.anchor.leg-press", Value: "leg press predicted 6 to 15 % too high by all of six equations in 16 trained men", Source: "meneses2013", Basis: evidence.Published},
}

// Facts yields every fact behind this package: for each formula its
// coefficients, its range and its people, then the policy's and the intervals'.
func Facts() iter.Seq[evidence.Fact] {
	return slices.Values(slices.Concat(equationFacts(), policyFacts(), anchors, intervalFacts(), measuredFacts()))
}

func equationFacts() []evidence.Fact {
	var list []evidence.Fact
	add := func(id evidence.FactID, f evidence.Fact) {
		f.ID = id
		list = append(list, f)
	}
	for f := range Formulas() {
		q := f.equation()
		add(f.Fact(), f.stated())
		add(rangeFact(f), q.advised)
		if q.people.Basis != 0 {
			add(peopleFact(f), q.people)
		}
	}
	return append(list,
		evidence.Fact{ID: factLombardiName, Value: "the equation r^0.1 is Lombardi's", Source: "lombardi1989", Basis: evidence.FromMemory},
		evidence.Fact{ID: factCubics, Value: "six rows of four regression coefficients, one for each exercise", Source: "kemmler2024", Basis: evidence.Published},
		evidence.Fact{ID: factCubicForm, Value: "the four coefficients are read as a cubic in the repetitions, in printed order, since the paper of 2006 has that form and each row gives 1.00 to 1.01 at 1 repetition; the exercise is the one named on the line that follows", Basis: evidence.Design, From: []evidence.FactID{factCubics, Kemmler2006.Fact()}},
		evidence.Fact{ID: factKemmlerError, Value: "mean absolute error of 1.5 to 3.1 % over four exercises, in the sample that made the equation; no dependence on exercise or repetitions", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"})
}

// classicalRanges names the range facts that the shared limit was drawn from.
func classicalRanges() []evidence.FactID {
	ids := []evidence.FactID{factBeyondTen}
	for f := range Formulas() {
		if f.Studied() == sharedRange {
			ids = append(ids, rangeFact(f))
		}
	}
	return ids
}

func policyFacts() []evidence.Fact {
	return []evidence.Fact{
		{ID: factBeyondTen, Value: "up to 10 repetitions Brzycki was the most accurate of six equations; above 10 all six were off", Source: "mayhew1995", Basis: evidence.Published},
		{ID: factSharedRange, Value: fmt.Sprintf("the classical equations are used at %v repetitions to failure", sharedRange), Basis: evidence.Computed, From: classicalRanges()},
		{ID: factMeasured, Value: "a load that can be lifted just once is, by definition, the 1RM", Basis: evidence.CommonPractice},
		{ID: factRelation, Value: "a measured 1RM is tied to repetitions by Epley, the lighter of Epley and Brzycki below 10 repetitions", Basis: evidence.Design, From: []evidence.FactID{Epley.Fact(), Brzycki.Fact()}},
		{ID: factLower, Value: "of the equations asked, the lowest answer is taken", Basis: evidence.Design, From: []evidence.FactID{Epley.Fact(), Brzycki.Fact()}},
		{ID: factKemmlerChoice, Value: fmt.Sprintf("Kemmler 2006 is asked for trained women from %d years, on a stack, at %v repetitions to failure; for a sex not given, up to 10", kemmlerAge, kemmlerRange), Basis: evidence.Design, From: []evidence.FactID{peopleFact(Kemmler2006), rangeFact(Kemmler2006)}},
		{ID: factToFailure, Value: "repetitions to failure are those done plus those in reserve; no study of this substitution was seen", Basis: evidence.Design, From: []evidence.FactID{factReserveBias}},
		{ID: factReserveBias, Value: "people have 0.95 repetitions more in reserve than they say, so that an estimate errs downwards; it is not corrected", Source: "halperin2022", Basis: evidence.Published},
		{ID: factReserveNear, Value: "the reserve is told to about 1 repetition when 0 to 5 are left, and missed by more than 2 when 7 to 10 are left", Source: "hackett2017", Basis: evidence.Published},
		{ID: factReserveFar, Value: "in sets of about 16 repetitions a call of 1 in reserve was out by 2.05 ± 1.73, a call of 5 by 5.15 ± 2.92", Source: "zourdos2021", Basis: evidence.Published},
		{ID: factMovesBody, Value: "where the body, or a long limb, is most of what is lifted, a 1RM of the held weight alone misleads", Basis: evidence.CommonPractice},
		{ID: factReserveLimit, Value: fmt.Sprintf("a reserve above %d is not used", maxReserve), Basis: evidence.Design, From: []evidence.FactID{factReserveNear, factReserveFar}},
		{ID: factWide, Value: fmt.Sprintf("with more than %d in reserve the next row's interval holds", wideReserve), Basis: evidence.Design, From: []evidence.FactID{factReserveFar}},
		{ID: factHalfPoint, Value: "a rating between two whole counts stands for both: the estimate is from the lower, the interval from both", Basis: evidence.Design, From: []evidence.FactID{factReserveNear}},
		{ID: factUntrained, Value: "in adults of 70.7 ± 6.1 years, tested at 7 to 10 repetitions, every one of six equations read low on every lift", Source: "knutzen1999", Basis: evidence.Published, Locator: "abstract"},
		{ID: factUntrainedShare, Value: "a 7 to 10RM was 68.4 % of the 1RM before training and a larger share after 18 weeks", Source: "braith1993", Basis: evidence.Published},
		{ID: factReestimate, Value: "a novice's estimate is likely low and is made anew after two to three weeks", Basis: evidence.Design, From: []evidence.FactID{factUntrained, factUntrainedShare}},
		{ID: factNoDumbbells, Value: "none of these equations is known to have been made with dumbbells or in people with pain", Basis: evidence.Computed, From: []evidence.FactID{peopleFact(Epley), peopleFact(Brzycki), peopleFact(Kemmler2006)}},
	}
}

func intervalFacts() []evidence.Fact {
	from := []evidence.FactID{factUntrained, factUntrainedShare, factReserveNear, factReserveFar, factKemmlerError}
	for _, a := range anchors {
		from = append(from, a.ID)
	}
	list := []evidence.Fact{
		{ID: factColumns, Value: "a novice's interval takes the wider margin of the columns that apply, on each side; it is widened to hold every equation's answer", Basis: evidence.Design, From: from},
		{ID: factOrder, Value: "the lower end counts a set with more in reserve no less than with less, and no set higher than one of more repetitions with the same reserve", Basis: evidence.Design},
	}
	for _, r := range intervalRows {
		list = append(list, evidence.Fact{
			ID: r.fact(), Basis: evidence.Design, From: from,
			Value: fmt.Sprintf("%s repetitions to failure: %s when done to failure, %s with 1 to 3 in reserve, %s for novices; %s", r, r.toFailure, r.reserve, r.novice, r.grade),
		})
	}
	return list
}
