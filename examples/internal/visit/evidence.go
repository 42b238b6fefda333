package visit

import (
	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	visits "example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// Ledger returns the facts of every package.
func Ledger() (*evidence.Ledger, error) {
	return evidence.NewLedger(evidence.UnitFacts(), screening.Facts(), exercise.Facts(), onerm.Facts(),
		guideline.Facts(), dose.Facts(), rule.Facts(), programme.Facts(), visits.Facts(), progression.Facts())
}

// Words returns the wording of every package's reasons.
func Words() (evidence.Words, error) {
	return evidence.Join(screening.Words(), exercise.Words(), onerm.Words(), dose.Words(), rule.Words(), programme.Words(), visits.Words(), progression.Words())
}
