package say

import (
	"slices"

	"example.org/posology/units/evidence"
)

// A Row is all of one reason.
type Row struct {
	Code      evidence.ReasonCode
	Facts     []evidence.FactID
	Client    string // empty: nothing to say
	Clinician string
}

// Rests are the facts that a reason rests on.
type Rests = []evidence.FactID

// Reasons are all that a package says, by code.
type Reasons map[evidence.ReasonCode]Row

// All are the reasons of some tables.
func All(tables ...[]Row) Reasons {
	all := Reasons{}
	for _, row := range slices.Concat(tables...) {
		all[row.Code] = row
	}
	return all
}

// Because is the reason of a code with the facts that it rests on: those of the row,
// for reading.
func (r Reasons) Because(code evidence.ReasonCode) evidence.Reason {
	return evidence.Because(code, r[code].Facts...)
}

// Words returns a fresh table of what the reasons say.
func (r Reasons) Words() evidence.Words {
	w := evidence.Words{}
	for code, row := range r {
		w[code] = evidence.Wording{Client: row.Client, Clinician: row.Clinician}
	}
	return w
}

// That is a row, with what it rests on and what it says to client and clinician.
func That(code evidence.ReasonCode, facts []evidence.FactID, client, clinician string) Row {
	return Row{code, facts, client, clinician}
}
