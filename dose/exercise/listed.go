package exercise

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"iter"
	"slices"
	"strings"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// musclesCSV is the list itself. Nothing else holds these rows.
//
//go:embed muscles.csv
var musclesCSV string

// muscleColumns are those of the file. Patterns, implements and sides are held
// by the tests against the table; the citation says what source_id names.
const muscleColumns = "exercise,pattern,implement,sidedness,muscle,role,source,known,source_id"

// listed reads the list on first use. It cannot panic: the file is built into
// the program, and a test holds that it can be read.
var listed = sync.OnceValue(func() []listing { return units.Must(readListings(musclesCSV)) })

// A listing says which muscles work in an exercise, by its name in the
// evidence collection.
type listing struct {
	name    string
	muscles []listedMuscle
}

// A listedMuscle is published where the source was seen to report the muscle in
// the exercise; else it is from memory: the textbooks were not opened.
type listedMuscle struct {
	muscle body.Muscle
	role   Role
	source evidence.SourceID
	known  evidence.Basis
}

// knownAs are the marks of the file for how a row is known.
var knownAs = map[string]evidence.Basis{"text": evidence.Published, "memory": evidence.FromMemory}

// readListings reads the list, in its order; the rows of an exercise stand
// together, one for each muscle.
func readListings(data string) ([]listing, error) {
	r := csv.NewReader(strings.NewReader(data))
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(lines) == 0 || strings.Join(lines[0], ",") != muscleColumns {
		return nil, field.Bad("the first line", muscleColumns, field.ErrSyntax)
	}
	var all []listing
	for i, line := range lines[1:] {
		m, err := readMuscle(line)
		if err != nil {
			return nil, fmt.Errorf("row %d: %w", i+1, err)
		}
		if n := len(all); n == 0 || all[n-1].name != line[0] {
			all = append(all, listing{name: line[0]})
		}
		l := &all[len(all)-1]
		l.muscles = append(l.muscles, m)
	}
	return all, nil
}

func readMuscle(line []string) (listedMuscle, error) {
	m := listedMuscle{source: evidence.SourceID(line[8]), known: knownAs[line[7]]}
	var bad field.Errors
	bad.Add("/muscle", m.muscle.UnmarshalText([]byte(line[4])))
	bad.Add("/role", m.role.UnmarshalText([]byte(line[5])))
	bad.Add("/known", m.known.Check())
	return m, bad.Err()
}

// slug turns a listed name into the middle of a fact's ID.
func slug(name string) string { return slugs.Replace(strings.ToLower(name)) }

var slugs = strings.NewReplacer(" ", "-", "'", "", ",", "", "(", "", ")", "")

// listedFact names the fact that m works in the listed exercise.
func listedFact(name string, m body.Muscle) evidence.FactID {
	return evidence.FactID("exercise.listed." + slug(name) + "." + m.String())
}

// find returns the muscles of the listed exercise; the standard table names
// listed ones only, which its test holds.
func find(name string) []listedMuscle {
	all := listed()
	i := slices.IndexFunc(all, func(l listing) bool { return l.name == name })
	if i < 0 {
		return nil
	}
	return all[i].muscles
}

func (m listedMuscle) fact(name string) evidence.Fact {
	f := evidence.Fact{
		ID:     listedFact(name, m.muscle),
		Value:  m.muscle.String() + " works in the " + name + " as " + m.role.String(),
		Source: m.source,
		Basis:  m.known,
	}
	if m.known == evidence.Published {
		f.Value += "; the muscle is reported, its role follows the ranking or usual kinesiology and stays a judgement"
	}
	return f
}

// listedFacts yields a fact for each muscle of each listed exercise.
func listedFacts() iter.Seq[evidence.Fact] {
	return func(yield func(evidence.Fact) bool) {
		for _, l := range listed() {
			for _, m := range l.muscles {
				if !yield(m.fact(l.name)) {
					return
				}
			}
		}
	}
}
