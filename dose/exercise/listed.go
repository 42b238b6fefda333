package exercise

import (
	"iter"
	"slices"
	"strings"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A listing says which muscles work in an exercise, by its name in the
// evidence collection.
type listing struct {
	name    string
	muscles []listedMuscle
}

// A listedMuscle rests on the study or review source, which was seen to report
// the muscle in the exercise; with no source it rests on the textbooks, which
// were not opened.
type listedMuscle struct {
	muscle body.Muscle
	role   Role
	source evidence.SourceID
}

const textbooks evidence.SourceID = "neumann2017"

var listings = slices.Concat(listedLegs, listedHips, listedKnees, listedPush, listedPull, listedSmall)

// slug turns a listed name into the middle of a fact's ID.
func slug(name string) string {
	return strings.NewReplacer(" ", "-", "'", "", ",", "", "(", "", ")", "").Replace(strings.ToLower(name))
}

// listedFact names the fact that m works in the listed exercise.
func listedFact(name string, m body.Muscle) evidence.FactID {
	return evidence.FactID("exercise.listed." + slug(name) + "." + m.String())
}

// find returns the muscles of the listed exercise; the standard table names
// listed ones only, which its test holds.
func find(name string) []listedMuscle {
	i := slices.IndexFunc(listings, func(l listing) bool { return l.name == name })
	if i < 0 {
		return nil
	}
	return listings[i].muscles
}

func (m listedMuscle) fact(name string) evidence.Fact {
	f := evidence.Fact{
		ID:     listedFact(name, m.muscle),
		Value:  m.muscle.String() + " works in the " + name + " as " + m.role.String(),
		Source: textbooks,
		Basis:  evidence.FromMemory,
	}
	if m.source != "" {
		f.Source, f.Basis = m.source, evidence.Published
		f.Value += "; the muscle is reported, its role follows the ranking or usual kinesiology and stays a judgement"
	}
	return f
}

// listedFacts yields a fact for each muscle of each listed exercise.
func listedFacts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, l := range listings {
			for _, m := range l.muscles {
				if !yield(m.fact(l.name)) {
					return
				}
			}
		}
	}
}
