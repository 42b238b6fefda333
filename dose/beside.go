package dose

import (
	"iter"

	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// BesideKind is a kind of activity that belongs beside lifting.
type BesideKind uint8

// Kinds of activity beside lifting.
const (
	BesideUnknown BesideKind = iota // not given
	Balance                         // "balance"
	Aerobic                         // "aerobic": moving briskly, walking
	Impact                          // "impact": moderate impacts for bone
)

var besides = field.NewVocabulary[BesideKind]("activity", "", "balance", "aerobic", "impact")

// BesideKinds yields every activity.
func BesideKinds() iter.Seq[BesideKind] { return besides.All() }

// String returns "balance", "aerobic" or "impact".
func (k BesideKind) String() string { return besides.Text(k) }

// MarshalText writes what String returns.
func (k BesideKind) MarshalText() ([]byte, error) { return besides.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *BesideKind) UnmarshalText(text []byte) error { return besides.Unmarshal(text, k) }

// Beside is an activity that the guidelines ask for and lifting does not give.
type Beside struct {
	Kind    BesideKind        `json:"kind"`
	Days    units.Range[int]  `json:"days,omitzero"`   // a week
	Amount  units.Range[int]  `json:"amount,omitzero"` // impacts a session; nothing where no number is at hand
	Reasons []evidence.Reason `json:"reasons"`
}

// beside lists what belongs beside the week: balance and brisk movement from
// 50 years on, and impact where bone is the goal and nothing rules it out.
func (p *planner) beside() []Beside {
	var list []Beside
	if p.r.Screening.Who.Age >= older {
		row := must("ukcmo2019-older")
		list = append(list,
			Beside{Balance, row.BalanceDays, units.Range[int]{}, []evidence.Reason{evidence.Because("dose.beside-balance", factOf(&row, guideline.FieldBalanceDays), factOlder)}},
			Beside{Kind: Aerobic, Reasons: []evidence.Reason{evidence.Because("dose.beside-aerobic", factOlder)}})
	}
	o := p.r.Screening
	if p.r.Goal == guideline.Bone && !o.Limits.LowImpact && o.Meanwhile == screening.WithinLimits {
		row := must("brookewavell2022-osteoporosis")
		list = append(list, Beside{Impact, units.Range[int]{}, row.Impacts, []evidence.Reason{evidence.Because("dose.beside-impact", factOf(&row, guideline.FieldImpacts))}})
	}
	return list
}
