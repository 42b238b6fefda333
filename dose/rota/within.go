package rota

import (
	"cmp"
	"math"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Fitted is a class within its minutes, and what gave for it.
type Fitted struct {
	Class     Class     `json:"class"`     // with the sets and exercises that are left
	Timetable Timetable `json:"timetable"` // of that class
	Sets      int       `json:"sets"`      // so many sets of an exercise at most
	Whole     int       `json:"whole"`     // most sets of an exercise as prescribed
	// LeftOut are the exercises left out, of those clients of whom there are
	// any; Item counts in the class as it was given, and Slot is 0.
	LeftOut []ClientTurns     `json:"left_out,omitempty"`
	Proven  bool              `json:"proven"` // no choice is better, by what Within says
	Reasons []evidence.Reason `json:"reasons"`
}

// Within makes a class fit minutes, without its warm-up, by what it does less: no more
// than so many sets of any exercise, the same number for all, and exercises left out,
// of each client one at least is kept. The best choice has, in this order of
// importance:
//
//  1. the fewest slots spent waiting
//  2. the fewest exercises left out, all clients together
//  3. the most sets
//
// What is left out comes from the end of a client's usual order where there is a
// choice. Small classes are searched through; for others a bounded search returns what
// it met first. Its bound is a count of steps, not of seconds, so that every machine gives
// the same; where it is reached before anything was met, one exercise of each client is
// kept, the shortest. No dose is made harder. The order of importance is this module's design.
//
// Errors are those of [Schedule], and a [field.ErrOutOfRange] at "/minutes" for
// minutes in which not one exercise of each client can be done, or no rota of those is met
// within the bound, below 1, or above a day.
func Within(c Class, minutes int) (Fitted, error) {
	const most = 24 * 60
	if _, err := newRotaProblem(c); err != nil {
		return Fitted{}, err
	}
	if minutes < 1 || minutes > most {
		return Fitted{}, field.New("/minutes", minutes, "1 to 1440 minutes", field.ErrOutOfRange)
	}
	whole := c.mostSets()
	var best *choice
	var all []*fitting
	work := withinEffort
	for sets := whole; sets > 0 && (best == nil || best.gave != gave{}); sets-- {
		f := &fitting{class: c.capped(sets), minutes: minutes, sets: sets, open: never, work: &work}
		if got := f.fewest(best); got != nil {
			best = got
		}
		all = append(all, f)
	}
	if best == nil && work <= 0 {
		best = all[len(all)-1].shortestOnly()
	}
	if best == nil {
		return Fitted{}, field.New("/minutes", minutes, "enough for an exercise of each client", field.ErrOutOfRange)
	}
	return best.fitted(c, minutes, whole, best.proven(all)), nil
}

// items counts the exercises of all clients.
func (c Class) items() int {
	n := 0
	for _, client := range c.Clients {
		n += len(client.Items)
	}
	return n
}

func (c Class) mostSets() int {
	most := 0
	for _, client := range c.Clients {
		for _, item := range client.Items {
			most = max(most, item.Sets)
		}
	}
	return most
}

// capped returns the class with so many sets of any exercise at most.
func (c Class) capped(sets int) Class {
	c.Clients = slices.Clone(c.Clients)
	for i := range c.Clients {
		items := slices.Clone(c.Clients[i].Items)
		for j := range items {
			items[j].Sets = min(items[j].Sets, sets)
		}
		c.Clients[i].Items = items
	}
	return c
}

// A spot is one exercise of one client.
type spot struct{ client, item int }

// without returns the class without some exercises.
func (c Class) without(out []spot) Class {
	clients := slices.Clone(c.Clients)
	for i := range clients {
		var kept []dose.Prescription
		for j, item := range clients[i].Items {
			if !slices.Contains(out, spot{i, j}) {
				kept = append(kept, item)
			}
		}
		clients[i].Items = kept
	}
	c.Clients = clients
	return c
}

// What gave, beside sets: slots spent waiting, exercises left out.
type gave struct{ waiting, out int }

var never = gave{math.MaxInt, 0}

func (a gave) compare(b gave) int {
	return cmp.Or(cmp.Compare(a.waiting, b.waiting), cmp.Compare(a.out, b.out))
}

// A choice is a class that fits.
type choice struct {
	class Class
	rows  grid
	out   []spot
	gave  gave
	sets  int
	slots int // that fit
}

// proven reports whether with more sets nothing as good was left open, and with as
// many or fewer nothing better.
func (b *choice) proven(all []*fitting) bool {
	return !slices.ContainsFunc(all, func(f *fitting) bool {
		order := f.open.compare(b.gave)
		return order < 0 || order == 0 && f.sets > b.sets
	})
}

const (
	fitTries = 1000 // choices of what is left out that are looked at one by one
	// withinEffort is what all of Within may spend, in looks at a need or at an exercise.
	withinEffort = 1_000_000_000
	buildEffort  = 100 // for each exercise of a class that is made anew
)

// A fitting looks for what to leave out of a class with one number of sets.
type fitting struct {
	class         Class
	minutes, sets int
	tries         int
	open          gave // the least that was not ruled out
	work          *int // what may still be spent; 0 or less: the search gave up
	path          []dropped
	outlines      outlines
}

// leave notes that something was not ruled out.
func (f *fitting) leave(g gave) {
	if g.compare(f.open) < 0 {
		f.open = g
	}
}

// fewest returns the best choice that is better than what there is, nil if none is met.
func (f *fitting) fewest(than *choice) *choice {
	slots := f.slots(int(math.Ceil(f.shortest())))
	if slots < 1 {
		return nil
	}
	spots := f.spots()
	mostWaiting := len(f.class.Clients) * (slots - 1) // nobody is waited for longer
	if than != nil {
		mostWaiting = than.gave.waiting
	}
	for waiting := 0; waiting <= mostWaiting; waiting++ {
		if *f.work <= 0 {
			f.leave(gave{waiting, 0})
			return nil
		}
		mostOut := len(spots) - len(f.class.Clients)
		if than != nil && waiting == than.gave.waiting {
			mostOut = len(than.out) - 1
		}
		f.tries = fitTries
		for n := 0; n <= mostOut && f.tries > 0; n++ {
			if got := f.choose(spots, nil, n, waiting); got != nil {
				return got
			}
			if f.tries <= 0 {
				f.leave(gave{waiting, n})
			}
		}
		if f.tries > 0 {
			continue
		}
		if got := f.greedy(spots, mostOut, waiting); got != nil {
			return got
		}
	}
	return nil
}

// shortest is the length of the shortest exercise of whoever has only longer ones.
func (f *fitting) shortest() float64 {
	longest := 0.0
	for _, client := range f.class.Clients {
		least := slices.MinFunc(client.Items, func(a, b dose.Prescription) int { return cmp.Compare(f.class.length(a), f.class.length(b)) })
		longest = math.Max(longest, f.class.length(least))
	}
	return longest
}

// spots lists all exercises, those that usually come last first.
func (f *fitting) spots() []spot {
	var list []spot
	for i, client := range f.class.Clients {
		for j := range client.Items {
			list = append(list, spot{i, j})
		}
	}
	left := func(s spot) int { return len(f.class.Clients[s.client].Items) - s.item }
	slices.SortStableFunc(list, func(a, b spot) int { return cmp.Compare(left(a), left(b)) })
	return list
}

// choose leaves out n more of the spots in every way, until one fits.
func (f *fitting) choose(spots, out []spot, n, waiting int) *choice {
	if n == 0 {
		if f.tries--; *f.work <= 0 {
			f.tries = 0
			return nil
		}
		return f.try(out, waiting)
	}
	for i := range spots[:max(0, len(spots)-n+1)] {
		if got := f.choose(spots[i+1:], append(slices.Clip(out), spots[i]), n-1, waiting); got != nil || f.tries <= 0 {
			return got
		}
	}
	return nil
}

// try looks for a rota within the minutes without some exercises.
func (f *fitting) try(out []spot, waiting int) *choice {
	p, slots := f.problem(out)
	if p == nil || slots < 1 {
		return nil
	}
	search := p.search(false, price{waiting, math.MaxInt, math.MaxInt}, false, provingEffort)
	search.first, search.most = true, slots
	ended := search.run()
	*f.work -= provingEffort - search.effort
	if search.best == nil {
		if !ended || p.partial {
			f.leave(gave{waiting, len(out)})
		}
		return nil
	}
	return &choice{class: f.class.without(out), rows: search.best, out: slices.Clone(out), gave: gave{search.got.waiting, len(out)}, sets: f.sets, slots: slots}
}

// problem returns the class without some exercises and how many slots fit; nil where
// somebody would have nothing left.
func (f *fitting) problem(out []spot) (*problem, int) {
	*f.work -= buildEffort * f.class.items()
	p, err := newRotaProblem(f.class.without(out))
	if err != nil {
		return nil, 0
	}
	seconds, _, _ := p.slotSeconds()
	return p, f.slots(seconds)
}

// fitted tells the choice of a class.
func (b *choice) fitted(c Class, minutes, whole int, proven bool) Fitted {
	f := Fitted{Class: b.class, Sets: b.sets, Whole: whole, Proven: proven}
	p, _ := newRotaProblem(b.class) // it was solved before
	s := p.solve(b.rows)
	if s.cost.slots > b.slots { // less waiting in more slots than there is time for
		s.rows, s.cost, s.proof = b.rows, p.cost(b.rows), BestFound
		s.least.waiting, s.least.slots = p.bound(p.all())
	}
	f.Timetable = p.timetable(s)
	for i, client := range c.Clients {
		left := ClientTurns{Name: client.Name}
		for j, item := range client.Items {
			if slices.Contains(b.out, spot{i, j}) {
				left.Turns = append(left.Turns, Turn{Item: j, Exercise: item.Exercise})
			}
		}
		if len(left.Turns) > 0 {
			f.LeftOut = append(f.LeftOut, left)
		}
	}
	proof := evidence.Because("rota.fewest-found", factGives)
	if proven {
		proof = evidence.Because("rota.fewest", factGives)
	}
	f.Reasons = []evidence.Reason{
		evidence.Because("rota.fitted", factGives, factSlots, factPace).With(evidence.Minutes("minutes", minutes), evidence.Count("sets", f.Sets), evidence.Count("whole", whole), evidence.Count("left", len(b.out))),
		proof,
	}
	return f
}
