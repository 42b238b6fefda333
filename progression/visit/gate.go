package visit

import (
	"iter"

	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
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
