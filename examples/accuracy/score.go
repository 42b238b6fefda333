package main

import (
	"io"
	"math"
	"slices"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/command"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A band of repetitions to failure.
type band struct {
	Name string `json:"name"`
	From int    `json:"from"`
	To   int    `json:"to"`
}

var bands = []band{{"to 5", 1, 5}, {"6 to 10", 6, 10}, {"to 10", 1, 10}, {"11 to 15", 11, 15}, {"16 to 20", 16, 20}, {"all", 1, 1000}}

func (b band) holds(s set) bool { return s.reps >= b.From && s.reps <= b.To }

// A score is how an equation did in a band, in percent of the measured 1RM.
type score struct {
	Band band    `json:"band"`
	Sets int     `json:"sets"`
	Bias float64 `json:"bias"`
	RMSE float64 `json:"rmse"`
	MAE  float64 `json:"mae"`
}

// A line is an equation with its scores, one for each band.
type line struct {
	Equation onerm.Formula `json:"equation"`
	Scores   []score       `json:"scores"`
}

// An own is how the library's own estimate did in a band.
type own struct {
	score
	Coverage float64 `json:"coverage"` // percent of intervals that hold the measured 1RM
	Width    float64 `json:"width"`    // mean width of the intervals, in percent of it
}

// A report is what the program finds.
type report struct {
	Note      string `json:"note,omitzero"` // what the table says of itself: whose data they are
	Sets      int    `json:"sets"`
	People    int    `json:"people"`
	Equations []line `json:"equations"`
	// Forward is how each classical equation tells the repetitions that a load allows.
	Forward []forward `json:"forward"`
	// LeftOut are estimates of people that the choice of equation and the widths
	// know nothing of; Default are those that FromSet gives without any option.
	Level   units.Fraction        `json:"level"`
	Choices map[onerm.Formula]int `json:"choices"` // how often each was chosen
	LeftOut []own                 `json:"left_out"`
	Default []own                 `json:"default"`
	// LeftOutNone and DefaultNone are the sets without an estimate.
	LeftOutNone int `json:"left_out_none"`
	DefaultNone int `json:"default_none"`
}

// tally turns errors, in shares of the 1RM, into a score.
func tally(b band, misses []float64) score {
	s := score{Band: b, Sets: len(misses)}
	if s.Sets == 0 {
		return s
	}
	for _, x := range misses {
		s.Bias += x
		s.RMSE += x * x
		s.MAE += math.Abs(x)
	}
	n := float64(s.Sets)
	s.Bias, s.RMSE, s.MAE = 100*s.Bias/n, 100*math.Sqrt(s.RMSE/n), 100*s.MAE/n
	return s
}

// misses are estimate/measured − 1 of the sets of a band that the equation can
// be evaluated for.
func misses(sets []set, b band, f onerm.Formula) []float64 {
	var list []float64
	for _, s := range sets {
		if !b.holds(s) {
			continue
		}
		if m, err := f.OneRM(s.load, float64(s.reps)); err == nil {
			list = append(list, float64(m)/float64(s.oneRM)-1)
		}
	}
	return list
}

func judge(sets []set, level units.Fraction, stderr io.Writer) report {
	r := report{Sets: len(sets), Level: level, Choices: map[onerm.Formula]int{}}
	for f := range onerm.Formulas() {
		l := line{Equation: f}
		for _, b := range bands {
			l.Scores = append(l.Scores, tally(b, misses(sets, b, f)))
		}
		r.Equations = append(r.Equations, l)
	}
	people := map[string]bool{}
	for _, s := range sets {
		people[s.body] = true
	}
	r.People = len(people)
	for f := onerm.Epley; f <= onerm.Kemmler2006; f++ {
		if w, ok := foretold(sets, f); ok {
			r.Forward = append(r.Forward, w)
		}
	}
	if len(people) > 2 { // errors of one alone tell nothing of others
		progress := command.NewProgress(stderr, "people left out", len(people))
		r.LeftOut, r.LeftOutNone = r.leaveOut(sets, progress)
		progress.End()
	}
	r.Default, r.DefaultNone = owns(sets, func(set) onerm.Options { return onerm.Options{} })
	return r
}

// leaveOut estimates each person's sets by what all others show.
func (r *report) leaveOut(sets []set, progress *command.Progress) ([]own, int) {
	learnt := map[string]onerm.Accuracy{}
	for _, s := range sets {
		if _, ok := learnt[s.body]; !ok {
			a := learn(slices.DeleteFunc(slices.Clone(sets), func(o set) bool { return o.body == s.body }))
			learnt[s.body] = a
			r.Choices[a.Formula]++
			progress.Step()
		}
	}
	return owns(sets, func(s set) onerm.Options { return onerm.Options{Level: r.Level, Accuracy: learnt[s.body]} })
}

// learn chooses, from the nine general equations, the one that goes best from load to
// repetitions, or, where each has one set, has the least error up to 10, and takes its errors
// by band, none below the band before. Ages are not asked for: who is left out must not be
// an exception.
func learn(sets []set) onerm.Accuracy {
	a := onerm.Accuracy{From: 1, People: len(byPerson(sets)), Hold: body.OnBar}
	least := math.Inf(1)
	near := bands[2]
	for f := onerm.Epley; f <= onerm.Kemmler2006; f++ {
		wrong := math.Inf(1)
		if w, ok := foretold(sets, f); ok {
			wrong = w.Total
		}
		if wrong < least {
			a.Formula, least = f, wrong
		}
	}
	for f := onerm.Epley; a.Formula == 0 && f <= onerm.Kemmler2006; f++ {
		if e := tally(near, misses(sets, near, f)); e.Sets > 0 && e.RMSE < least {
			a.Formula, least = f, e.RMSE
		}
	}
	spread := 0.0
	for _, b := range []band{near, bands[3], bands[4]} {
		if e := tally(b, misses(sets, b, a.Formula)); e.Sets > 1 {
			spread = max(spread, e.RMSE/100)
		}
		a.Bands = append(a.Bands, onerm.ErrorBand{UpTo: b.To, Error: units.Fraction(spread)})
	}
	return a
}

var bench = exercise.Exercise{
	ID: "bench-press", Name: "bench press", Pattern: exercise.HorizontalPush, Hold: body.OnBar, Measure: exercise.Repetitions,
	Muscles: []exercise.Work{{Muscle: body.PectoralisMajor, Role: exercise.Prime}},
}

// The data give no days; one estimate at a time, any will do.
var someDay = units.Must(units.NewDay(2024, 3, 23))

// owns scores the library's own estimates and counts the sets without one.
func owns(sets []set, options func(set) onerm.Options) ([]own, int) {
	type guess struct {
		set
		onerm.Estimate
	}
	var made []guess
	for _, s := range sets {
		done := setlog.Set{
			Day: someDay, Exercise: bench.ID, Side: body.Both, Hold: body.OnBar,
			Load: s.load, Reps: s.reps, Effort: units.Must(units.InReserve(0)),
		}
		if e, err := options(s).FromSet(done, bench, s.person); err == nil {
			made = append(made, guess{s, e})
		}
	}
	var list []own
	for _, b := range bands {
		var errors []float64
		inside, width := 0, 0.0
		for _, g := range made {
			if !b.holds(g.set) {
				continue
			}
			errors = append(errors, float64(g.OneRM)/float64(g.oneRM)-1)
			low, _ := g.Interval.Min()
			high, _ := g.Interval.Max()
			width += float64(high-low) / float64(g.oneRM)
			if g.Interval.Contains(g.oneRM) {
				inside++
			}
		}
		o := own{score: tally(b, errors)}
		if n := float64(o.Sets); n > 0 {
			o.Coverage, o.Width = 100*float64(inside)/n, 100*width/n
		}
		list = append(list, o)
	}
	return list, len(sets) - len(made)
}
