package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// dailyEntries are conditions met daily. None of them holds anybody by itself; what
// they favour stands in favours.
var dailyEntries = []entry{
	{code: "osteoarthritis_knee", kind: Condition, meaning: "osteoarthritis of the knee", effect: tellImpact,
		from: said("raeular2018", evidence.Published, "general guidance for activity, strength with it, fits people with osteoarthritis of knee and hip"), also: []evidence.FactID{policyFact}},
	{code: "osteoarthritis_hip", kind: Condition, meaning: "osteoarthritis of the hip", effect: tellImpact,
		from: said("raeular2018", evidence.Published, "general guidance for activity, strength with it, fits people with osteoarthritis of knee and hip"), also: []evidence.FactID{policyFact}},
	{code: "osteoarthritis_hand", kind: Condition, meaning: "osteoarthritis of the hand", effect: tell,
		from: said("osteras2017", evidence.Published, "small gains in pain, function and stiffness from exercise, and few harms; no limit of grip found"), also: []evidence.FactID{policyFact}},
	{code: "shoulder_pain", kind: Condition, meaning: "shoulder pain of the rotator cuff", effect: tell,
		from: reported("desmeules2025", "guideline digest", "education and active exercise come first")},
	{code: "tendon_pain_hip", kind: Condition, meaning: "pain at the outside of the hip, from the gluteal tendons", effect: tell,
		from: said("mellor2018", evidence.Published, "advice on load with exercise did better than an injection or waiting")},
	{code: "tendon_pain_heel", kind: Condition, meaning: "pain of the Achilles tendon", effect: tellImpact,
		from: reported("chimenti2024", "guideline digest", "loading comes first, with any kind of contraction; irritable tendons lighter")},
	{code: "tendon_pain_elbow", kind: Condition, meaning: "pain at the outside of the elbow", effect: tell,
		from: reported("lucado2022", "guideline digest", "holding, lifting or lowering work of the wrist's extensors; no dose given")},
	{code: "hip_fracture", kind: Condition, meaning: "hip fracture", effect: askLight.with(Limits{LowImpact: true, Support: true}), balance: true,
		seen: &seen{hipUnseen, tellImpact.with(withSupport)}, also: []evidence.FactID{seenFact},
		dated: &dated{weeks: replacementWeeks, later: lookImpact.with(withSupport), next: &dated{months: replacementMonths, later: tellImpact}},
		from:  said("overgaard2013", evidence.Published, "strength work was begun 17.5 days on average after the operation, supervised, and pain fell")},
	{code: "arthritis_quiet", kind: Condition, meaning: "inflammatory arthritis, quiet now", effect: tell,
		from: said("cooney2011", evidence.Published, "training does not stir up the disease; function and muscle gain")},
	{code: "lymphoedema_stable", kind: Condition, meaning: "lymphoedema that is stable", effect: tell,
		from: said("cormie2013", evidence.Published, "heavy and light loads made no difference to the swelling")},
	{code: "high_weight", kind: Condition, meaning: "body weight that makes moving harder", effect: nothingFound,
		from: provenance{says: "weight is no known disease of the rule: risk factors were removed from it", source: "riebe2015", locator: "opening of chapter 2 of the guideline's 10th edition", basis: evidence.Published}},
	{code: "hard_of_hearing", kind: Condition, meaning: "weak hearing", effect: nothingFound,
		from: ours("instructions are shown, and given face to face; nothing is limited")},
	{code: "poor_sight", kind: Condition, meaning: "poor sight", effect: tell, balance: true,
		from: ours("somebody is within reach in standing work")},
}

// A Favour is what a condition speaks for, beside what it limits.
type Favour struct {
	Code  Code          `json:"code"`
	Train []body.Region `json:"train,omitempty"` // whose strength is worked on
	Tests []string      `json:"tests,omitempty"` // functional tests that follow it, by their names
	// PainBaseline: the usual pain is scored before the first training, and pain in
	// training is judged from there.
	PainBaseline bool `json:"pain_baseline,omitzero"`
	// Says is for the clinician, in our own words, with whose they are in Facts.
	Says  string            `json:"says"`
	Facts []evidence.FactID `json:"facts"`
}

// Names of functional tests, as package screening/function has them.
const (
	chairStand = "30-s chair stand"
	upAndGo    = "timed up and go"
	armCurl    = "30-s arm curl"
	grip       = "grip"
)

var favours = []Favour{
	{Code: "osteoarthritis_knee", Train: []body.Region{body.Knee, body.Hip}, Tests: []string{chairStand, upAndGo}, PainBaseline: true,
		Says: "the thigh and hip are made stronger; pain is judged by the pain model and may rise a little at first", Facts: []evidence.FactID{favourFact, factPrefix + "osteoarthritis_knee"}},
	{Code: "osteoarthritis_hip", Train: []body.Region{body.Hip, body.Knee}, Tests: []string{chairStand, upAndGo}, PainBaseline: true,
		Says: "hip and thigh are made stronger; pain is judged by the pain model and may rise a little at first", Facts: []evidence.FactID{favourFact, factPrefix + "osteoarthritis_hip"}},
	{Code: "osteoarthritis_hand", Train: []body.Region{body.WristHand}, Tests: []string{grip}, PainBaseline: true,
		Says: "grip and wrist are made stronger; a wider handle, or a cuff where gripping hurts (common practice)", Facts: []evidence.FactID{factPrefix + "osteoarthritis_hand"}},
	{Code: "shoulder_pain", Train: []body.Region{body.Shoulder}, Tests: []string{armCurl}, PainBaseline: true,
		Says: "work of the shoulder within the pain model; no dose did better over the trials", Facts: []evidence.FactID{factPrefix + "shoulder_pain"}},
	{Code: "tendon_pain_hip", Train: []body.Region{body.Hip}, Tests: []string{chairStand}, PainBaseline: true,
		Says: "abductors without stretch; the leg does not cross the midline under load, nobody hangs on one hip or lies on it unpadded", Facts: []evidence.FactID{factPrefix + "tendon_pain_hip"}},
	{Code: "tendon_pain_heel", Train: []body.Region{body.AnkleFoot}, PainBaseline: true,
		Says: "the calf is loaded, lighter while it is irritable", Facts: []evidence.FactID{factPrefix + "tendon_pain_heel"}},
	{Code: "tendon_pain_elbow", Train: []body.Region{body.WristHand}, Tests: []string{grip}, PainBaseline: true,
		Says: "extensors of the wrist; gripping with the palm up while it is sore (common practice)", Facts: []evidence.FactID{factPrefix + "tendon_pain_elbow"}},
	{Code: "hip_fracture", Train: []body.Region{body.Hip, body.Knee}, Tests: []string{chairStand, upAndGo},
		Says: "hip and thigh are made stronger, step by step", Facts: []evidence.FactID{factPrefix + "hip_fracture"}},
	{Code: "back_pain_not_better_at_a_month", Train: []body.Region{body.LowerBack, body.Hip}, PainBaseline: true,
		Says: "in chronic low back pain resistance work is among the best kinds for function", Facts: []evidence.FactID{backFact}},
	{Code: afterAttackOrStroke, Tests: []string{chairStand, upAndGo},
		Says: "after a stroke 1 to 3 sets of 10 to 15 at 50 to 80 % of the 1RM, 2 to 3 days a week", Facts: []evidence.FactID{strokeFact}},
	{Code: "intermittent_claudication", Tests: []string{upAndGo},
		Says: "walking to the pain, rest, and again; strength beside it", Facts: []evidence.FactID{crampFact}},
	{Code: "lymphoedema_stable", Train: []body.Region{body.Shoulder, body.Elbow},
		Says: "the arm is trained, with the sleeve if one is worn; begun light, by the smallest steps", Facts: []evidence.FactID{factPrefix + "lymphoedema_stable"}},
	{Code: "arthritis_quiet", Train: []body.Region{body.WristHand, body.Knee}, Tests: []string{grip, chairStand}, PainBaseline: true,
		Says: "as everybody; in a flare lighter, and the hot joint is spared (common practice)", Facts: []evidence.FactID{factPrefix + "arthritis_quiet"}},
}

// Facts of what is favoured.
const (
	favourFact = factPrefix + "osteoarthritis-tests"
	backFact   = factPrefix + "back-pain-favours"
	strokeFact = factPrefix + "stroke-favours"
	crampFact  = factPrefix + "claudication-favours"
)

var favourFacts = []evidence.Fact{
	{ID: favourFact, Value: "in osteoarthritis of hip or knee and with a replaced one: stands from a chair in 30 s, walking, stairs, then timed up and go", Source: "dobson2013", Basis: evidence.Published},
	{ID: backFact, Value: "chronic low back pain: resistance work is among the best kinds for function", Source: "owen2020", Basis: evidence.Published},
	{ID: strokeFact, Value: "stroke in the past: 1 to 3 sets of 10 to 15, 8 to 10 exercises, 2 to 3 days a week, 50 to 80 % of the 1RM", Source: "billinger2014", Via: "guideline digest", Basis: evidence.Secondary},
	{ID: crampFact, Value: "claudication: walk to moderate or strongest leg pain, rest, repeat, 30 to 45 minutes, 3 days a week, 12 weeks or more", Source: "gerhardherman2017", Via: "guideline digest", Basis: evidence.Secondary},
}

// Favours yields what the findings of o that are known speak for.
func (o Outcome) Favours() iter.Seq[Favour] {
	var list []Favour
	for _, f := range favours {
		if slices.ContainsFunc(o.Findings, func(of Finding) bool { return of.Code == f.Code && of.Known }) {
			f.Train, f.Tests, f.Facts = slices.Clone(f.Train), slices.Clone(f.Tests), slices.Clone(f.Facts)
			list = append(list, f)
		}
	}
	return slices.Values(list)
}
