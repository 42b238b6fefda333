package record

import (
	"fmt"
	"sync"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/volume"
	"example.org/posology/dose/week"
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
const edition = 3

// Edition names what the packages behind a decision answer, such as "screening.1
// dose.1 progression.1 record.1".
func Edition() string {
	return fmt.Sprintf("screening.%d dose.%d progression.%d record.%d", screening.Edition, dose.Edition, progression.Edition, edition)
}

// Ledger returns the facts of every package but dose/onerm/fit, which would bring
// gonum along, and simulate, which decides nothing; the reasons of a fitted curve name
// those of fit. It is made once, which takes some milliseconds, and nobody can change
// it; [evidence.NewLedger] adds fit.Facts to its own where a program needs them.
func Ledger() (*evidence.Ledger, error) {
	l, err := ledger()
	own := *l // so that nobody overwrites it for all
	return &own, err
}

var ledger = sync.OnceValues(func() (*evidence.Ledger, error) {
	return evidence.NewLedger(evidence.UnitFacts(), screening.Facts(), exercise.Facts(), setlog.Facts(), onerm.Facts(), strength.Facts(), published.Facts(),
		guideline.Facts(), beside.Facts(), choice.Facts(), dose.Facts(), week.Facts(), rota.Facts(), rule.Facts(), visit.Facts(), progression.Facts(), programme.Facts(), volume.Facts(), function.Facts(), protocol.Facts())
})

// Words returns the wording of the reasons of the same packages. It is made once.
func Words() (evidence.Lexicon, error) { return words() }

var words = sync.OnceValues(func() (evidence.Lexicon, error) {
	var tables []evidence.Words
	for _, l := range []evidence.Lexicon{
		screening.Words(), exercise.Words(), setlog.Words(), onerm.Words(), strength.Words(), beside.Words(), choice.Words(), dose.Words(), week.Words(), rota.Words(), rule.Words(), visit.Words(), programme.Words(), progression.Words(),
		function.Words(), protocol.Words(),
	} {
		tables = append(tables, l.Copy())
	}
	return evidence.NewLexicon(tables...)
})
