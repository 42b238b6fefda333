package screening

import (
	"cmp"
	"iter"

	"example.org/posology/units/field"
)

// ListChoice says which of two published lists the joined outcome follows where an
// older one is stricter than one that came after it. The other stays visible in
// [Rules].
type ListChoice uint8

// Choices.
const (
	_         ListChoice = iota // not given: the newer list
	NewerList                   // "newer list": what the newer list dropped is told and holds nobody
	OlderList                   // "older list": it holds as the older list has it
)

var listChoices = field.NewVocabulary[ListChoice]("choice of list", "", "newer list", "older list")

// ListChoices yields every choice.
func ListChoices() iter.Seq[ListChoice] { return listChoices.All() }

// String returns the choice's name, such as "newer list", and "" for not given.
func (c ListChoice) String() string { return listChoices.Text(c) }

// MarshalText writes what String returns.
func (c ListChoice) MarshalText() ([]byte, error) { return listChoices.Marshal(c) }

// UnmarshalText reads what MarshalText writes.
func (c *ListChoice) UnmarshalText(text []byte) error { return listChoices.Unmarshal(text, c) }

// A JoinPolicy says how the published rules are joined where they disagree. No rule's
// own answer depends on it. The zero value is this module's own choice.
type JoinPolicy struct {
	// Edition is that of the package the policy was followed by; Assess writes it.
	Edition int `json:"edition,omitzero"`
	// RiskFactors: major coronary risk factors and diabetes by themselves are relative
	// contraindications of AHA 2007 and none of ACSM 2015.
	RiskFactors ListChoice `json:"risk_factors,omitzero"`
	// DiabetesStart: people with diabetes alone, not active, who start with light or
	// moderate effort, need a clearance by ACSM 2015 (the list that is followed unless
	// this says otherwise) and none by ADA 2016, the newer list.
	DiabetesStart ListChoice `json:"diabetes_start,omitzero"`
}

// Validate returns what is wrong with p: a choice that there is not, or an edition
// above the present one. The zero value is right.
func (p JoinPolicy) Validate() error {
	var bad field.Errors
	bad.Add("/edition", within(p.Edition, 0, Edition, ""))
	bad.Add("/risk_factors", given(listChoices, p.RiskFactors))
	bad.Add("/diabetes_start", given(listChoices, p.DiabetesStart))
	return bad.Err()
}

// full returns p with what it leaves open.
func (p JoinPolicy) full() JoinPolicy {
	return JoinPolicy{Edition, cmp.Or(p.RiskFactors, NewerList), cmp.Or(p.DiabetesStart, OlderList)}
}

// chosen is the one policy that was given, or the module's own.
func chosen(by []JoinPolicy) (JoinPolicy, error) {
	switch len(by) {
	case 0:
		return JoinPolicy{}.full(), nil
	case 1:
		return by[0].full(), field.At("/policy", by[0].Validate())
	}
	return JoinPolicy{}, field.New("/policy", len(by), "one policy, or none", field.ErrConflict)
}
