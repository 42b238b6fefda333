package visit

import (
	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/rota"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// Ledger returns the facts of every package.
func Ledger() (*evidence.Ledger, error) {
	return evidence.NewLedger(evidence.UnitFacts(), screening.Facts(), exercise.Facts(), onerm.Facts(),
		guideline.Facts(), dose.Facts(), rota.Facts(), progression.Facts())
}

// Words returns the wording of every package's reasons.
func Words() (evidence.Words, error) {
	return evidence.Join(screening.Words(), exercise.Words(), onerm.Words(), dose.Words(), rota.Words(), progression.Words())
}
