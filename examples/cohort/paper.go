package main

import (
	"crypto/sha256"
	"fmt"
	"io"
	"math/rand/v2"
	"slices"
	"text/tabwriter"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/examples/internal/cohorts"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Our choices (Design): how often people are drawn anew for an interval, and how few people
// have none.
const (
	draws      = 2000
	fewestDraw = 10
)

// held counts one person's muscle-weeks against a bound.
type held struct{ short, met, over int }

func (h held) all() int { return h.short + h.met + h.over }

// paper prints how many weeks meet a recommendation on weekly sets. What counts is a muscle's
// whole week, so that one low set makes none short.
func (j *job) paper(w io.Writer, s cohorts.Sums) error {
	r, err := guideline.Get(guideline.ID(j.guideline))
	if err != nil {
		return err
	}
	stated, ok := r.Stated(guideline.FieldWeeklySets)
	source, known := evidence.LookUp(r.Source)
	if !ok || !known {
		return fmt.Errorf("%s states no weekly sets", r.ID)
	}
	fmt.Fprintf(w, "Weeks that meet %s: %s.\n%s\n", r.ID, stated, j.note())
	fmt.Fprintf(w, "It speaks of %s. Whether it fits these people this program does not know, and nothing here is advice to anybody.\n\n", r.Population)
	out := tabwriter.NewWriter(w, 0, 0, 2, ' ', 0)
	fmt.Fprintf(out, "convention\tpeople\tmuscle-weeks\t%s\t%s\t%s\tshare %s\t95 %% interval\n", guideline.Met, guideline.Short, guideline.Over, guideline.Met)
	for c := range volume.Conventions() {
		people, err := counted(s, r.WeeklySets, c)
		if err != nil {
			return err
		}
		var sum held
		for _, p := range people {
			sum = held{sum.short + p.short, sum.met + p.met, sum.over + p.over}
		}
		fmt.Fprintf(out, "%s\t%d\t%d\t%d\t%d\t%d\t%s\t%s\n", c, len(people), sum.all(), sum.met, sum.short, sum.over, share(sum), j.interval(people))
	}
	if err := out.Flush(); err != nil {
		return err
	}
	digest := sha256.New()
	if err := s.Cohort.Encode(digest); err != nil {
		return err
	}
	fmt.Fprintf(w, `
A muscle-week is a muscle in a week with a set that counts for it, directly or not; of two sides the lesser counts. Weeks without
one are not in the table. The source does not say how indirect sets count, so that each convention is an assumption. An
interval is the middle 95 %% of the shares of %d draws of as many people, each with all their weeks, with replacement (percentile
bootstrap; the draws are our choice), and none is given for fewer than %d people.

To cite: %s
  %s; the bound is known from: %s.
To repeat: seed %d, counted sets: %s, rows not read or doubtful: %d, sums SHA-256
  %x
`, draws, fewestDraw, source.Citation, doi(source), r.BasisOf(guideline.FieldWeeklySets), j.seed, j.counting(), len(s.Rejects), digest.Sum(nil))
	return nil
}

// counted holds every muscle's week against the bound, person by person.
func counted(s cohorts.Sums, bound units.Range[int], c volume.Convention) (people []held, err error) {
	var last body.Key
	for w := range s.Cohort.Weeks() {
		if len(people) == 0 || w.Person != last {
			people, last = append(people, held{}), w.Person
		}
		p := &people[len(people)-1]
		for _, sets := range w.Muscles(c) {
			at, err := sets.Against(real(bound), c)
			switch {
			case err != nil:
				return nil, err
			case at < 0:
				p.short++
			case at > 0:
				p.over++
			default:
				p.met++
			}
		}
	}
	return people, nil
}

func share(h held) string {
	if h.all() == 0 {
		return "-"
	}
	return units.Fraction(float64(h.met) / float64(h.all())).String()
}

func (j *job) interval(people []held) string {
	if len(people) < fewestDraw {
		return "-"
	}
	low, high := drawn(people, rand.New(rand.NewPCG(j.seed, 0)))
	return fmt.Sprintf("%v to %v", units.Fraction(low), units.Fraction(high))
}

// drawn returns the 2.5th and the 97.5th of 100 parts of what draws of people come to.
func drawn(people []held, chance *rand.Rand) (low, high float64) {
	shares := make([]float64, 0, draws)
	for range draws {
		met, all := 0, 0
		for range people {
			p := people[chance.IntN(len(people))]
			met, all = met+p.met, all+p.all()
		}
		if all > 0 {
			shares = append(shares, float64(met)/float64(all))
		}
	}
	if len(shares) == 0 {
		return 0, 1
	}
	slices.Sort(shares)
	return shares[len(shares)*25/1000], shares[(len(shares)-1)*975/1000]
}

func real(r units.Range[int]) units.Range[float64] {
	low, floor := r.Min()
	high, ceiling := r.Max()
	switch {
	case !ceiling:
		return units.AtLeast(float64(low))
	case !floor:
		return units.AtMost(float64(high))
	}
	return units.Must(units.Between(float64(low), float64(high)))
}

// doi names a source's DOI, and how it is known.
func doi(s evidence.Source) string {
	switch {
	case s.DOI == "":
		return "No DOI is known here"
	case s.DOISeen:
		return "DOI " + s.DOI + ", as printed there"
	}
	return "DOI " + s.DOI + ", from memory: check it"
}

// counting says which sets count.
func (j *job) counting() string {
	if j.most < 0 {
		return "all"
	}
	return fmt.Sprintf("up to %v in reserve", j.most)
}
