package record

import (
	"fmt"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/volume"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/protocol"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units/evidence"
)

// edition is raised by hand when what this package adds to the answers of those
// below it changes.
const edition = 1

// Edition names what the packages behind a decision answer, such as "screening.1
// dose.1 progression.1 record.1".
func Edition() string {
	return fmt.Sprintf("screening.%d dose.%d progression.%d record.%d", screening.Edition, dose.Edition, progression.Edition, edition)
}

// Ledger returns the facts of every package but dose/onerm/fit, which would bring
// gonum along; the reasons of a stored curve name them. It is made again each time, which takes some milliseconds: keep it.
func Ledger() (*evidence.Ledger, error) {
	return evidence.NewLedger(evidence.UnitFacts(), screening.Facts(), exercise.Facts(), onerm.Facts(),
		guideline.Facts(), dose.Facts(), rota.Facts(), rule.Facts(), visit.Facts(), progression.Facts(), programme.Facts(), volume.Facts(), function.Facts(), protocol.Facts())
}

// Words returns the wording of the reasons of the same packages, made again each time.
func Words() (evidence.Words, error) {
	return evidence.Join(screening.Words(), exercise.Words(), onerm.Words(), dose.Words(), rota.Words(), rule.Words(), visit.Words(), programme.Words(), progression.Words(),
		function.Words(), protocol.Words())
}
