package visit

import (
	"iter"
	"slices"
	"strings"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Gate is one of the things that must not stand against more load.
type Gate uint8

// Gates, in the order in which they are asked.
const (
	_             Gate = iota // not given
	GateEvents                // "events": signs and readings during the sets
	GatePain                  // "pain": by the pain-monitoring model
	GateRange                 // "range": of movement
	GateTechnique             // "technique": as somebody saw it
	GateEffort                // "effort": no set nearer to failure than planned
	GateReps                  // "repetitions": every set at the top of the planned range
)

var gates = field.NewVocabulary[Gate]("gate", "", "events", "pain", "range", "technique", "effort", "repetitions")

// EveryGate yields every gate.
func EveryGate() iter.Seq[Gate] { return gates.All() }

// String returns the gate's name, such as "technique", and "" for not given.
func (g Gate) String() string { return gates.Text(g) }

// MarshalText writes what String returns.
func (g Gate) MarshalText() ([]byte, error) { return gates.Marshal(g) }

// UnmarshalText reads what MarshalText writes.
func (g *Gate) UnmarshalText(text []byte) error { return gates.Unmarshal(text, g) }

// A GateAnswer is what one gate says. Its reasons may be those of a table: they are for
// reading. Decode into a fresh one, as [field.Decode] does.
type GateAnswer struct {
	Gate    Gate              `json:"gate"`
	Advice  rule.LoadAdvice   `json:"advice"`
	Reasons []evidence.Reason `json:"reasons,omitempty"`
}

// A GateReport is what all gates say of a visit.
type GateReport struct {
	// Advice is the most cautious of the gates'. Raise permits a look at the
	// next weight; it is no prescription.
	Advice rule.LoadAdvice `json:"advice"`
	Gates  []GateAnswer    `json:"gates"` // every one, in order
	// Aim is the count for the next visit with the same load, in the plan's
	// measure: one more than the weakest set where nothing but repetitions or an
	// unseen technique stands against more load, never below the plan's count,
	// which stands where the load is otherwise kept, and 0 where the dose is
	// eased or somebody else decides first.
	Aim     int               `json:"aim,omitzero"`
	Reasons []evidence.Reason `json:"reasons,omitempty"` // of the whole
}

// Gates asks of a visit, in one order, whether anything stands against more
// load: events, pain, range, technique, effort, repetitions. Any of them may
// keep the load, ease it or send the person on; only all together raise it. What
// was not recorded keeps the load. Order and joining are this module's design;
// Each gate has its own source. The errors are those of [Visit.Validate].
func Gates(v Visit) (GateReport, error) {
	if err := v.Check(); err != nil {
		return GateReport{}, err
	}
	return v.gates()
}

// gates is Gates of a visit that was checked.
func (v *Visit) gates() (GateReport, error) {
	events, err := v.events()
	if err != nil {
		return GateReport{}, field.At("/moment", err)
	}
	r := GateReport{Gates: []GateAnswer{events, v.pain(), v.rangeOfMovement(), v.Technique(), v.effort(), v.Repetitions()}}
	r.Join()
	r.Aim = v.aim(&r)
	r.Reasons = append(make([]evidence.Reason, 0, 2), joined[r.Advice])
	if r.Aim > v.Plan.Count {
		r.Reasons = append(r.Reasons, because("progression.one-more").With(evidence.Count("aim", r.Aim)))
	}
	return r, nil
}

// Join takes the most cautious of the gates' answers.
func (r *GateReport) Join() {
	if r == nil {
		return
	}
	r.Advice = 0
	for _, g := range r.Gates {
		r.Advice = max(r.Advice, g.Advice)
	}
}

// aim returns the count for the next visit with the same load.
func (v *Visit) aim(r *GateReport) int {
	if r.Advice > rule.Keep {
		return 0
	}
	for _, g := range r.Gates {
		unseen := g.Gate == GateTechnique && !given.Yes(v.FormLost)
		if g.Advice != rule.Raise && g.Gate != GateReps && !unseen {
			return v.Plan.Count
		}
	}
	if r.Gates[GateReps-1].Advice != rule.Raise && !v.Met() { // what passed that gate was met
		return v.Plan.Count
	}
	top, _ := v.Plan.Span.Max()
	return max(v.Plan.Count, min(top, v.fewest()+1))
}

// What most gates say, and what all say together, worked out once.
var (
	passes = eachGate(rule.Raise, "progression.gate-passed")
	lacks  = eachGate(rule.Keep, "progression.gate-not-known")
	joined = func() (list [rule.Refer + 1]evidence.Reason) {
		for a := range list {
			list[a] = because("progression.gates").With(evidence.Term("advice", rule.LoadAdvice(a).String()))
		}
		return list
	}()
)

func eachGate(a rule.LoadAdvice, code evidence.ReasonCode) (list [GateReps + 1]GateAnswer) {
	for g := range EveryGate() {
		list[g] = g.says(a, because(code).With(evidence.Term("gate", g.String())))
	}
	return list
}

// passed lets the load rise as far as this gate goes.
func (g Gate) passed() GateAnswer { return passes[g] }

// notKnown keeps the load.
func (g Gate) notKnown() GateAnswer { return lacks[g] }

func (g Gate) says(a rule.LoadAdvice, why evidence.Reason) GateAnswer {
	return GateAnswer{g, a, []evidence.Reason{why}}
}

// events answers by what ends a set: see [screening.During]. What ends the
// session is for somebody else to look at first.
func (v *Visit) events() (GateAnswer, error) {
	switch {
	case v.Moment == nil:
		return GateEvents.notKnown(), nil
	case quiet(v.Moment) && !given.Yes(v.Unwell): // nothing ends a set of it
		return GateEvents.passed(), nil
	}
	d, err := screening.During(*v.Moment)
	if err != nil {
		return GateAnswer{}, err
	}
	if d.Action == screening.CarryOn && !given.Yes(v.Unwell) {
		return GateEvents.passed(), nil
	}
	why := because("progression.event").With(evidence.Text("signs", shown(*v.Moment)), evidence.Term("action", d.Action.String()), evidence.Term("route", d.Route.String()))
	switch {
	case d.Action >= screening.EndSession:
		return GateEvents.says(rule.Refer, why), nil
	case d.Action != screening.CarryOn:
		return GateEvents.says(rule.Ease, why), nil
	}
	return GateEvents.says(rule.Keep, because("progression.unwell-then")), nil
}

// shown names the signs of a moment, or else what was measured.
func shown(m screening.Moment) string {
	if len(m.Signs) == 0 {
		return "a reading"
	}
	names := make([]string, len(m.Signs))
	for i, code := range m.Signs {
		names[i] = string(code)
		if term, ok := screening.LookUp(code); ok {
			names[i] = term.Meaning
		}
	}
	return strings.Join(names, "; ")
}

// pain keeps the load at most where an exercise of the same kind of movement hurt at the
// same visit.
func (v *Visit) pain() GateAnswer {
	own := v.ownPain()
	if len(v.HurtElsewhere) == 0 || own.Advice > rule.Keep {
		return own
	}
	answer := GatePain.says(rule.Keep, because("progression.hurt-in-another").With(evidence.Terms("exercise", v.HurtElsewhere...)))
	if own.Advice == rule.Keep {
		answer.Reasons = append(answer.Reasons, own.Reasons...)
	}
	return answer
}

// Hurt reports whether the exercise itself hurt so that it is eased or stopped.
func (v *Visit) Hurt() bool {
	v = field.OrZero(v)
	return v.ownPain().Advice >= rule.Ease
}

// ownPain answers by the pain model. Pain whose kind is not given may be one that
// the model is never used for.
func (v *Visit) ownPain() GateAnswer {
	if v.Pain == nil {
		return GatePain.notKnown()
	}
	model := screening.PainModel(*v.Pain)
	switch {
	case !model.Applies:
		return GatePain.says(rule.Refer, because("progression.pain-other").With(evidence.Term("kind", v.Pain.Kind.String())))
	case model.Plan == screening.Lighter:
		return GatePain.says(rule.Ease, saysZone(model))
	case screening.SorenessLasts(v.SorenessDays):
		return GatePain.says(rule.Keep, because("progression.sore").With(evidence.Days("days", v.SorenessDays)))
	case v.Pain.Kind != screening.OrdinaryPain && !painless(*v.Pain):
		return GatePain.notKnown()
	case model.MayProgress:
		return GatePain.passed()
	}
	return GatePain.says(rule.Keep, saysZone(model))
}

func saysZone(a screening.PainAnswer) evidence.Reason {
	return because("progression.pain").With(evidence.Term("zone", given.Zone(a.Zone)))
}

// painless reports that no score is above zero.
func painless(p screening.Pain) bool {
	return !slices.ContainsFunc([]*float64{p.Usual, p.During, p.After, p.NextMorning}, func(score *float64) bool { return score != nil && *score > 0 })
}

func (v *Visit) rangeOfMovement() GateAnswer {
	switch {
	case v.RangeLost == screening.No:
		return GateRange.passed()
	case given.Yes(v.RangeLost):
		return GateRange.says(rule.Ease, because("progression.range-lost"))
	}
	return GateRange.notKnown()
}

// Technique raises where form was kept and somebody saw it within four weeks, and
// keeps the load where it gave way or is not known.
func (v *Visit) Technique() GateAnswer {
	v = field.OrZero(v)
	switch {
	case given.Yes(v.FormLost):
		return GateTechnique.says(rule.Keep, because("progression.form-lost"))
	case v.FormLost == screening.No && v.Looked():
		return GateTechnique.passed()
	}
	return GateTechnique.notKnown()
}

// effort keeps the load while a set ends nearer to failure than the plan asks
// for. What is not counted in repetitions has no reserve to look at: there a set
// that was rated as hard, or went to failure, keeps it.
func (v *Visit) effort() GateAnswer {
	if !v.countsReserve() {
		return v.effortUncounted()
	}
	left, known := v.Reserve()
	switch {
	case !known:
		return GateEffort.notKnown()
	case left < v.Plan.Reserve.Least:
		return GateEffort.says(rule.Keep, because("progression.too-near-failure").With(evidence.Number("left", left), evidence.Number("asked", v.Plan.Reserve.Least)))
	}
	return GateEffort.passed()
}

func (v *Visit) effortUncounted() GateAnswer {
	for _, s := range v.Sets {
		if least, known := given.Told(s.Effort); known && least == 0 || s.Effort.Scale() == units.ScaleOMNI && s.Effort.Number() >= given.OMNILimit {
			return GateEffort.says(rule.Keep, because("progression.rated-hard").With(evidence.Effort("effort", s.Effort)))
		}
	}
	return GateEffort.passed()
}

// Repetitions asks for every planned set, on both sides alike, with the planned
// load and done as asked: see [Visit.Met]. Seconds and metres are worked through to
// the top of the range.
func (v *Visit) Repetitions() GateAnswer {
	v = field.OrZero(v)
	top, _ := v.Plan.Span.Max()
	each, other := v.OtherLoad()
	switch {
	case len(v.Sets) == 0:
		return GateReps.notKnown()
	case other:
		return GateReps.says(rule.Keep, because("progression.other-load").With(evidence.Mass("done", each), evidence.Mass("asked", v.Plan.Load.Each())))
	case !v.allAsAsked():
		return GateReps.says(rule.Keep, because("progression.below-dose").With(
			evidence.Count("sets", v.Done()), evidence.Count("planned", v.Plan.Sets), evidence.Count("fewest", v.fewest()), evidence.Count("count", v.Plan.Count)))
	case !v.countsReserve() && v.fewest() < top:
		return GateReps.says(rule.Keep, because("progression.below-top").With(evidence.Count("fewest", v.fewest()), evidence.Count("top", top)))
	}
	return GateReps.passed()
}
