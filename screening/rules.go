package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/field"
)

// Rules are the answers of the published rules, each by itself: they are never
// merged with one another, and where they disagree that stays visible. A rule
// counts only what was answered; a zero answer means that it could not say.
type Rules struct {
	Preparticipation PreparticipationAnswer `json:"preparticipation,omitzero"`
	// DiabetesStart is of ADA 2016, which disagrees with branch N2: people with diabetes
	// and no other known disease or symptom, not regularly active, who start with light
	// or moderate effort need no clearance. Zero where it does not speak.
	DiabetesStart     Need                   `json:"diabetes_start,omitzero"`
	Contraindications ContraindicationAnswer `json:"contraindications,omitzero"`
	// Wider is what is on the list of contraindications of Willey and Fiatarone Singh
	// 2003, which does not grade them.
	Wider        []Code                 `json:"wider,omitempty"`
	RedFlags     Referral               `json:"red_flags,omitzero"`
	SessionDay   SessionDayAnswer       `json:"session_day,omitzero"`
	HeartFailure ContraindicationAnswer `json:"heart_failure,omitzero"` // of the list for chronic heart failure; zero without anything of it given
	Falls        FallsAnswer            `json:"falls,omitzero"`         // zero unless screened for falls
	Pain         PainAnswer             `json:"pain,omitzero"`          // zero without a record of pain
	Cautions     []Code                 `json:"cautions,omitempty"`
}

// IsZero reports whether no rule was asked.
func (r Rules) IsZero() bool {
	return r.Preparticipation == PreparticipationAnswer{} && r.DiabetesStart == 0 &&
		r.Contraindications.Level == 0 && len(r.Contraindications.Reasons) == 0 &&
		len(r.Wider) == 0 && r.RedFlags == 0 &&
		r.HeartFailure.Level == 0 && len(r.HeartFailure.Reasons) == 0 &&
		r.Falls.isZero() && r.Pain.isZero() &&
		r.SessionDay.Plan == 0 && len(r.SessionDay.Reasons) == 0 && len(r.Cautions) == 0
}

// Branch is a branch of the preparticipation rule: N for people not regularly
// active, A for those who are.
type Branch uint8

// Branches.
const (
	_  Branch = iota // could not be told
	N1               // "N1": neither disease nor symptoms
	N2               // "N2": disease, no symptoms
	N3               // "N3": symptoms
	A1               // "A1": neither disease nor symptoms
	A2               // "A2": disease, no symptoms
	A3               // "A3": symptoms
)

var branches = field.NewVocabulary[Branch]("branch", "", "N1", "N2", "N3", "A1", "A2", "A3")

// Branches yields every branch.
func Branches() iter.Seq[Branch] { return branches.All() }

// String returns the branch's name, such as "N2".
func (b Branch) String() string { return branches.Text(b) }

// MarshalText writes what String returns.
func (b Branch) MarshalText() ([]byte, error) { return branches.Marshal(b) }

// UnmarshalText reads what MarshalText writes.
func (b *Branch) UnmarshalText(text []byte) error { return branches.Unmarshal(text, b) }

// Need is the medical clearance that a preparticipation rule asks for.
type Need uint8

// Needs, rising.
const (
	_              Need = iota // could not be told
	NotNeeded                  // "not_needed": none
	BeforeVigorous             // "clearance_before_vigorous": before vigorous exercise
	BeforeAny                  // "clearance_before_any": before any exercise
	StopFirst                  // "stop_and_clearance": stop, then clearance
)

var needs = field.NewVocabulary[Need]("need of clearance", "", "not_needed", "clearance_before_vigorous", "clearance_before_any", "stop_and_clearance")

// Needs yields every need of clearance.
func Needs() iter.Seq[Need] { return needs.All() }

// String returns the need's code, such as "clearance_before_any".
func (n Need) String() string { return needs.Text(n) }

// MarshalText writes what String returns.
func (n Need) MarshalText() ([]byte, error) { return needs.Marshal(n) }

// UnmarshalText reads what MarshalText writes.
func (n *Need) UnmarshalText(text []byte) error { return needs.Unmarshal(text, n) }

// A PreparticipationAnswer is what the preparticipation rule says.
type PreparticipationAnswer struct {
	Branch    Branch `json:"branch"`
	Clearance Need   `json:"clearance"`
}

// ContraindicationLevel is the answer of a list of contraindications.
type ContraindicationLevel uint8

// Levels, rising.
const (
	_                  ContraindicationLevel = iota // not asked
	NoContraindication                              // "none": none on the list was answered with yes
	Relative                                        // "relative": a doctor decides first
	Absolute                                        // "absolute": no resistance exercise
)

var levels = field.NewVocabulary[ContraindicationLevel]("level", "", "none", "relative", "absolute")

// ContraindicationLevels yields every level.
func ContraindicationLevels() iter.Seq[ContraindicationLevel] { return levels.All() }

// String returns "none", "relative" or "absolute".
func (l ContraindicationLevel) String() string { return levels.Text(l) }

// MarshalText writes what String returns.
func (l ContraindicationLevel) MarshalText() ([]byte, error) { return levels.Marshal(l) }

// UnmarshalText reads what MarshalText writes.
func (l *ContraindicationLevel) UnmarshalText(text []byte) error { return levels.Unmarshal(text, l) }

// A ContraindicationAnswer is the gravest level on the list, with every entry
// that was met, relative ones too.
type ContraindicationAnswer struct {
	Level   ContraindicationLevel `json:"level"`
	Reasons []Code                `json:"reasons,omitempty"`
}

// join returns the graver of a and b with the reasons of both.
func (a ContraindicationAnswer) join(b ContraindicationAnswer) ContraindicationAnswer {
	return ContraindicationAnswer{max(a.Level, b.Level), joinCodes(a.Reasons, b.Reasons)}
}

// joinCodes returns a with the codes of b that it lacks.
func joinCodes(a, b []Code) []Code {
	all := slices.Clone(a)
	for _, code := range b {
		if !slices.Contains(all, code) {
			all = append(all, code)
		}
	}
	return all
}

// Referral is the answer of the red flags.
type Referral uint8

// Referrals, rising.
const (
	_                 Referral = iota // not asked
	NoReferral                        // "none"
	UrgentReferral                    // "urgent_referral"
	EmergencyReferral                 // "emergency"
)

var referrals = field.NewVocabulary[Referral]("referral", "", "none", "urgent_referral", "emergency")

// Referrals yields every referral.
func Referrals() iter.Seq[Referral] { return referrals.All() }

// String returns "none", "urgent_referral" or "emergency".
func (r Referral) String() string { return referrals.Text(r) }

// MarshalText writes what String returns.
func (r Referral) MarshalText() ([]byte, error) { return referrals.Marshal(r) }

// UnmarshalText reads what MarshalText writes.
func (r *Referral) UnmarshalText(text []byte) error { return referrals.Unmarshal(text, r) }

// DayPlan is what the day of a session is to be. The published session-day
// checks say only as planned, lighter and not today.
type DayPlan uint8

// Plans for the day, rising in severity.
const (
	_           DayPlan = iota // not checked
	AsPlanned                  // "as_planned"
	Lighter                    // "lighter": see [Lighten]
	SettleFirst                // "settle_first": measure again, or answer what is missing; only then a session
	NotToday                   // "not_today": no session
	HelpNow                    // "help_now": emergency services
)

var dayPlans = field.NewVocabulary[DayPlan]("plan for the day", "", "as_planned", "lighter", "settle_first", "not_today", "help_now")

// DayPlans yields every plan for the day.
func DayPlans() iter.Seq[DayPlan] { return dayPlans.All() }

// String returns the plan's code, such as "as_planned" or "not_today".
func (p DayPlan) String() string { return dayPlans.Text(p) }

// MarshalText writes what String returns.
func (p DayPlan) MarshalText() ([]byte, error) { return dayPlans.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *DayPlan) UnmarshalText(text []byte) error { return dayPlans.Unmarshal(text, p) }

// A SessionDayAnswer is the gravest plan of the session-day checks, with every
// check that was met.
type SessionDayAnswer struct {
	Plan    DayPlan `json:"plan"`
	Reasons []Code  `json:"reasons,omitempty"`
}

// join returns the graver of a and b with the reasons of both.
func (a SessionDayAnswer) join(b SessionDayAnswer) SessionDayAnswer {
	return SessionDayAnswer{max(a.Plan, b.Plan), joinCodes(a.Reasons, b.Reasons)}
}
