package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Trend is how pain went from week to week.
type Trend uint8

// Trends.
const (
	_           Trend = iota // not known
	FallingPain              // "falling"
	StablePain               // "stable"
	RisingPain               // "rising"
)

var trends = field.NewVocabulary[Trend]("trend", "", "falling", "stable", "rising")

// Trends yields every trend.
func Trends() iter.Seq[Trend] { return trends.All() }

// String returns "falling", "stable" or "rising", and "" for not known.
func (t Trend) String() string { return trends.Text(t) }

// MarshalText writes what String returns.
func (t Trend) MarshalText() ([]byte, error) { return trends.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Trend) UnmarshalText(text []byte) error { return trends.Unmarshal(text, t) }

// PainKind is what kind of pain it is. The pain model is for ordinary pain of
// joints, tendons and muscles alone.
type PainKind uint8

// Kinds of pain.
const (
	_                 PainKind = iota // not given
	OrdinaryPain                      // "ordinary": of a joint, tendon or muscle, where it is usual
	ChestPain                         // "chest": around the chest
	SpreadingPain                     // "spreading": spreading, as into an arm or leg
	SpinePain                         // "spinal fracture": as from a fracture of the spine
	BonePain                          // "bone metastasis": where bone metastases are
	HotJointPain                      // "hot joint": of a hot or swollen joint
	PostOperativePain                 // "early post-operative": early after an operation
)

var painKinds = field.NewVocabulary[PainKind]("kind of pain", "", "ordinary", "chest", "spreading", "spinal fracture", "bone metastasis", "hot joint", "early post-operative")

// PainKinds yields every kind of pain.
func PainKinds() iter.Seq[PainKind] { return painKinds.All() }

// String returns the kind's name, such as "ordinary", and "" for not given.
func (k PainKind) String() string { return painKinds.Text(k) }

// MarshalText writes what String returns.
func (k PainKind) MarshalText() ([]byte, error) { return painKinds.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *PainKind) UnmarshalText(text []byte) error { return painKinds.Unmarshal(text, k) }

// Pain is the record of the last session's pain, on a scale from 0 to 10.
type Pain struct {
	Kind               PainKind    `json:"kind,omitzero"`
	Site               body.Region `json:"site,omitzero"`
	Side               body.Side   `json:"side,omitzero"`                 // not given is either side
	Usual              *float64    `json:"usual,omitempty"`               // before the session, as on most days
	During             *float64    `json:"during,omitempty"`              // peak during the session
	After              *float64    `json:"after,omitempty"`               // right after it
	NextMorning        *float64    `json:"next_morning,omitempty"`        // on the morning after
	SettledNextMorning Answer      `json:"settled_next_morning,omitzero"` // back to usual; told by the scores where both are given
	WeeklyTrend        Trend       `json:"weekly_trend,omitzero"`         // of pain and stiffness
	Osteoarthritis     Answer      `json:"osteoarthritis,omitzero"`       // of the joint that hurts
}

// settled says whether pain was back to usual by the next morning. Where the
// scores and the answer differ the graver counts.
func (p Pain) settled() Answer {
	if p.Usual != nil && p.NextMorning != nil && *p.NextMorning > *p.Usual {
		return No
	}
	if p.SettledNextMorning == Unknown && p.Usual != nil && p.NextMorning != nil {
		return Yes
	}
	return p.SettledNextMorning
}

// peak is the worst pain during or right after, false unless one is given.
func (p Pain) peak() (float64, bool) {
	worst, known := 0.0, false
	for _, score := range [...]*float64{p.During, p.After} {
		if score != nil {
			worst, known = max(worst, *score), true
		}
	}
	return worst, known
}

// PainZone is a zone of the pain model, with our own names.
type PainZone uint8

// Zones, rising.
const (
	_              PainZone = iota // no score
	ZoneUpTo2                      // "pain_0_2": 0 to 2
	ZoneOver2UpTo5                 // "pain_over_2_to_5": above 2, to 5
	ZoneOver5                      // "pain_over_5": above 5
)

var zones = field.NewVocabulary[PainZone]("zone of pain", "", "pain_0_2", "pain_over_2_to_5", "pain_over_5")

// PainZones yields every zone of pain.
func PainZones() iter.Seq[PainZone] { return zones.All() }

// String returns the zone's code, such as "pain_0_2", and "" for no score.
func (z PainZone) String() string { return zones.Text(z) }

// MarshalText writes what String returns.
func (z PainZone) MarshalText() ([]byte, error) { return zones.Marshal(z) }

// UnmarshalText reads what MarshalText writes.
func (z *PainZone) UnmarshalText(text []byte) error { return zones.Unmarshal(text, z) }

func zoneOf(score, low float64) PainZone {
	switch {
	case score <= low:
		return ZoneUpTo2
	case score <= painLimit:
		return ZoneOver2UpTo5
	}
	return ZoneOver5 // a value that is no number too
}

// PainAnswer is what the pain model says of a record.
type PainAnswer struct {
	Applies bool     `json:"applies"`          // false: pain of a kind that the model is never used for, or not known
	Zone    PainZone `json:"zone,omitzero"`    // by the model's cuts, at 2 and 5
	Variant PainZone `json:"variant,omitzero"` // by the cuts at 3 and 5 that one page prints
	Plan    DayPlan  `json:"plan,omitzero"`    // as planned, or lighter: ease or stop the exercise, not merely hold it
	// MayProgress says that pain does not stand against more load: the lowest
	// zone, or osteoarthritis with the usual pain up to 5; settled and not rising.
	MayProgress bool `json:"may_progress,omitzero"`
	// Route is where pain goes that the model is never used for, wherever it is.
	Route   Route  `json:"route,omitzero"`
	Reasons []Code `json:"reasons,omitempty"`
}

func (a PainAnswer) isZero() bool {
	return !a.Applies && a.Route == 0 && a.Zone == 0 && a.Variant == 0 && a.Plan == 0 && !a.MayProgress && len(a.Reasons) == 0
}

// PainModel answers by the pain-monitoring model (Thomee 1997, Silbernagel
// 2007), studied in two conditions only: up to 5 of 10 is allowed during and
// right after, pain settles by the next morning, and no week is worse than the
// one before. It does not answer for pain of other kinds than ordinary; a kind
// that is not given counts as ordinary here and as a question in [Today]. That
// osteoarthritis with usual pain up to 5 may progress is this module's policy.
func PainModel(p Pain) PainAnswer {
	if p.Kind > OrdinaryPain {
		answer := PainAnswer{Plan: NotToday, Reasons: []Code{otherPain[p.Kind]}}
		if e := find(otherPain[p.Kind]); e != nil {
			answer.Route = e.effect.route
		}
		return answer
	}
	answer := PainAnswer{Applies: true, Plan: AsPlanned}
	peak, known := p.peak()
	if known {
		answer.Zone, answer.Variant = zoneOf(peak, painLow), zoneOf(peak, painLowVariant)
	}
	for _, rule := range [...]struct {
		met  bool
		code Code
	}{{answer.Zone == ZoneOver5, painHigh}, {p.settled() == No, painUnsettled}, {p.WeeklyTrend == RisingPain, painRising}} {
		if rule.met {
			answer.Plan = Lighter
			answer.Reasons = append(answer.Reasons, rule.code)
		}
	}
	usual := p.Osteoarthritis == Yes && p.Usual != nil && *p.Usual <= painLimit
	calm := p.settled() == Yes && p.WeeklyTrend != 0 && known && answer.Plan == AsPlanned
	answer.MayProgress = calm && (answer.Zone == ZoneUpTo2 || usual)
	return answer
}

// MayBeFracture reports whether a pain may come of a bone of the spine that broke: told
// as ordinary, at the back or at a place that was not told, of somebody whose bones are
// weak as far as is known, and in a higher zone of the pain model than the usual one.
// A score of during or after that is not given counts as the worst, a usual one as none.
func (o Outcome) MayBeFracture(p Pain) bool {
	back := p.Site == 0 || p.Site == body.WholeBody || p.Site == body.UpperBack || p.Site == body.LowerBack
	if p.Kind > OrdinaryPain || !back || !slices.ContainsFunc(o.Findings, func(f Finding) bool { return slices.Contains(weakBones, f.Code) }) {
		return false
	}
	p = p.worst()
	worst, _ := p.peak()
	if p.NextMorning != nil {
		worst = max(worst, *p.NextMorning)
	}
	return zoneOf(worst, painLow) > ZoneUpTo2 && (p.Usual == nil || zoneOf(worst, painLow) > zoneOf(*p.Usual, painLow))
}

// otherPain are the findings of pain that the model is never used for.
var otherPain = map[PainKind]Code{
	ChestPain: "pain_chest", SpreadingPain: "pain_spreading", SpinePain: "pain_spinal_fracture",
	BonePain: "pain_bone_metastasis", HotJointPain: "pain_hot_joint", PostOperativePain: "pain_early_post_operative",
}

// worst returns p with the worst answer to what was not given. Pain of a kind
// that is not given may be one that the model is never used for.
func (p Pain) worst() Pain {
	most := 10.0
	if p.During == nil {
		p.During = &most
	}
	if p.After == nil {
		p.After = &most
	}
	if p.settled() == Unknown {
		p.SettledNextMorning = No
	}
	if p.WeeklyTrend == 0 {
		p.WeeklyTrend = RisingPain
	}
	return p
}

func (p Pain) check() error {
	var bad field.Errors
	bad.Add("/kind", given(painKinds, p.Kind))
	bad.Add("/site", givenBy(p.Site != 0, p.Site.Check))
	bad.Add("/side", givenBy(p.Side != 0, p.Side.Check))
	bad.Add("/usual", withinIfAny(p.Usual, 0, 10, ""))
	bad.Add("/during", withinIfAny(p.During, 0, 10, ""))
	bad.Add("/after", withinIfAny(p.After, 0, 10, ""))
	bad.Add("/next_morning", withinIfAny(p.NextMorning, 0, 10, ""))
	bad.Add("/settled_next_morning", given(answers, p.SettledNextMorning))
	bad.Add("/weekly_trend", given(trends, p.WeeklyTrend))
	bad.Add("/osteoarthritis", given(answers, p.Osteoarthritis))
	return bad.Err()
}

// SorenessLasts reports whether soreness of the muscles has lasted so many days
// that it is past its peak and needs a lighter session; until then it needs
// nothing.
func SorenessLasts(days int) bool { return days > sorenessDays }
