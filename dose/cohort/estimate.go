package cohort

import (
	"cmp"
	"iter"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func compareKeys(a, b body.Key) int { return cmp.Compare(a, b) }

// A mark is what estimates a person has of an exercise.
type mark struct {
	best, latest     units.Mass // of one implement
	bestOn, latestOn units.Day  // 0 for none yet
	exercise         uint16
}

// note takes an estimate in. Of equal ones the earliest is the best; of one day the
// greatest is the latest.
func (m *mark) note(oneRM units.Mass, on units.Day) {
	m.join(&mark{best: oneRM, latest: oneRM, bestOn: on, latestOn: on})
}

func (m *mark) join(n *mark) {
	if m.bestOn == 0 || n.best > m.best || n.best == m.best && n.bestOn < m.bestOn {
		m.best, m.bestOn = n.best, n.bestOn
	}
	if n.latestOn > m.latestOn || n.latestOn == m.latestOn && n.latest > m.latest {
		m.latest, m.latestOn = n.latest, n.latestOn
	}
}

// mark returns the mark of an exercise, a new one if there is none.
func (p *person) mark(exercise uint16) *mark {
	at, known := slices.BinarySearchFunc(p.marks, exercise, func(m mark, e uint16) int { return cmp.Compare(m.exercise, e) })
	if !known {
		p.marks = slices.Insert(p.marks, at, mark{exercise: exercise})
	}
	return &p.marks[at]
}

// estimate takes the estimate of a set in, if it has one.
func (c *Cohort) estimate(e *counted, s *setlog.Set, each units.Mass) {
	if e.movesBody || each <= 0 || s.Reps < c.study.least || s.Reps > c.study.most {
		return
	}
	oneRM, err := c.study.options.Formula.OneRM(each, float64(s.Reps))
	if err != nil {
		return // beyond what a mass holds
	}
	if c.last.mark == nil {
		c.last.mark = c.people[c.last.person].mark(c.last.exercise)
	}
	c.last.mark.note(oneRM, s.Day)
}

// A PersonalBest is what the equation gives for a person and an exercise, of one implement.
type PersonalBest struct {
	Person   body.Key    `json:"person"`
	Exercise exercise.ID `json:"exercise"`
	Best     units.Mass  `json:"best"`    // the greatest of all sets
	BestOn   units.Day   `json:"best_on"` // the first day that gave it
	Latest   units.Mass  `json:"latest"`  // the greatest of the latest day that gave one
	LatestOn units.Day   `json:"latest_on"`
}

// Estimates yields the estimates of everybody, in order of person, then of the catalogue.
func (c *Cohort) Estimates() iter.Seq[PersonalBest] {
	c = field.OrZero(c)
	return func(yield func(PersonalBest) bool) {
		for _, i := range c.sorted() {
			p := &c.people[i]
			for _, m := range p.marks {
				id := c.study.exercises[m.exercise].id
				if m.bestOn > 0 && !yield(PersonalBest{p.key, id, m.best, m.bestOn, m.latest, m.latestOn}) {
					return
				}
			}
		}
	}
}
