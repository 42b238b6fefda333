package main

import (
	"fmt"
	"io"
	"math/rand/v2"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/reviewpaper"
	"example.org/posology/progression"
	"example.org/posology/progression/simulate"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A virtual is a case of the simulation: what is true of a virtual person, which
// nobody knows of a real one, and under what she or he trains.
type virtual struct {
	Note      string             `json:"note"`
	Client    string             `json:"client"`
	Seed      uint64             `json:"seed"` // the same seed gives the same weeks
	Goal      guideline.Goal     `json:"goal"`
	Profile   screening.Profile  `json:"profile"`
	Technique dose.Observation   `json:"technique"`
	Kit       equipment.Kit      `json:"kit"`
	BodyMass  units.Mass         `json:"body_mass"`
	Start     units.Day          `json:"start"`
	Weeks     int                `json:"weeks"`
	Days      []int              `json:"days"` // of each week, 0 to 6
	Learning  int                `json:"familiarise"`
	Policy    progression.Policy `json:"policy,omitzero"`
	Missed    units.Fraction     `json:"missed,omitzero"` // chances at a visit
	Pain      units.Fraction     `json:"pain,omitzero"`
	Exercises []struct {
		Exercise exercise.ID `json:"exercise"`
		OneRM    units.Mass  `json:"one_rm"` // true, of all that is lifted at once
	} `json:"exercises"`
}

// weeks are what comes of the simulation.
type weeks struct {
	Note      string    `json:"note,omitzero"` // where the case comes from
	Client    string    `json:"client"`
	Simulated string    `json:"simulated"` // that nobody did any of it
	Exercises []trained `json:"exercises"`
}

// A trained exercise is one exercise of the simulation.
type trained struct {
	Exercise exercise.ID      `json:"exercise"`
	Name     string           `json:"name"`
	Trainee  simulate.Trainee `json:"trainee"`
	Visits   []simulate.Lived `json:"visits"`
}

// ahead simulates the weeks to come.
func ahead(o order, w io.Writer) error {
	data, err := command.Case(o.file, demo.Beginner())
	if err != nil {
		return err
	}
	var v virtual
	if err := field.Decode(data, &v, field.Strict); err != nil {
		return err
	}
	progress := command.NewProgress(o.progress, "exercises", len(v.Exercises))
	paths, err := v.run(progress)
	progress.End()
	if err != nil {
		return err
	}
	if o.JSON {
		return command.JSON(w, weeks{v.Note, v.Client, arithmetic, paths})
	}
	return printAhead(w, v, paths)
}

// run simulates every exercise by itself, each from the same seed.
func (v virtual) run(progress *command.Progress) ([]trained, error) {
	v.Profile.Training = body.Novice
	outcome, err := screening.Assess(v.Profile)
	if err != nil {
		return nil, field.At("/profile", err)
	}
	var paths []trained
	var bad field.Errors
	for i, e := range v.Exercises {
		at := fmt.Sprintf("/exercises/%d", i)
		ex, err := exercise.Standard().Lookup(string(e.Exercise))
		if err != nil {
			bad.Add(at+"/exercise", err)
			continue
		}
		t := simulate.Typical(e.OneRM)
		t.Missed, t.Pain = v.Missed, v.Pain
		s := simulate.Setup{
			Request: dose.Request{
				Screening: outcome, Exercise: ex, Side: body.Both, Goal: v.Goal, Technique: v.Technique, Kit: v.Kit,
			},
			Policy: v.Policy, BodyMass: v.BodyMass, Start: v.Start, Weeks: v.Weeks, Days: v.Days, Familiarise: v.Learning,
		}
		visits, err := simulate.Run(t, s, rand.NewPCG(v.Seed, uint64(i)))
		bad.Add(at, err)
		paths = append(paths, trained{ex.ID, ex.Name, t, visits})
		progress.Step()
	}
	return paths, bad.Err()
}

const arithmetic = "The weeks are simulated: the trainee is arithmetic, not a person, and nothing here tells how anybody will get on. Strength grows with the dose as it did on average in " +
	"many people, varies from day to day and falls from set to set, and what is left in reserve is told with an error."

func printAhead(w io.Writer, v virtual, paths []trained) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	p.Line("%d WEEKS OF A SIMULATED BEGINNER", v.Weeks)
	p.Note(v.Note)
	p.Para(v.Client + ". " + arithmetic + " What can be lifted once, of all that is lifted, is known here alone. Search: the weight is looked for; felt: the last set was of the next weight, a few lifts at most.")
	for _, one := range paths {
		p.Heading(one.Name)
		p.Line("week  day         weight      sets    lifts once  weakest      because")
		for _, day := range one.Visits {
			p.Line("%s", strings.TrimRight(row(day), " "))
		}
		end(p, one)
	}
	p.Line("")
	p.Para(page.NoDevice)
	return p.Close()
}

// row is one planned day.
func row(v simulate.Lived) string {
	day := fmt.Sprintf("%4d  %s", v.Week, v.Day)
	if v.Missed {
		return day + "  missed"
	}
	plan := v.Done.Plan
	if plan.Sets == 0 {
		return day + "  " + because(v.Decision)
	}
	return fmt.Sprintf("%s  %-10s  %d × %-2d  %5.1f kg    %-11s  %s", day, weights(v.Done), plan.Sets, plan.Count, v.Strength.Kilograms(), weakest(v.Done), because(v.Decision))
}

// weights prints the weight, or those that were tried while the load was looked for.
func weights(v progression.Visit) string {
	least, most := v.Plan.Load.Each(), v.Plan.Load.Each()
	for _, s := range v.Sets {
		if each, err := s.Each(); err == nil {
			most = max(most, each)
		}
	}
	if most > least {
		return fmt.Sprintf("%s to %s", strings.TrimSuffix(least.String(), " kg"), most)
	}
	return least.String()
}

// weakest prints the fewest repetitions of any set and the least left, as told, of the
// sets that did not feel the next weight.
func weakest(v progression.Visit) string {
	sets := slices.Clone(v.Sets)
	if f := v.Plan.Feel; f != nil {
		sets = slices.DeleteFunc(sets, func(s setlog.Set) bool { return s.Load == f.Load.Each() })
	}
	if len(sets) == 0 {
		return "none"
	}
	reps, left := sets[0].Reps, sets[0].Effort.Number()
	for _, s := range sets {
		reps, left = min(reps, s.Reps), min(left, s.Effort.Number())
	}
	return fmt.Sprintf("%d, %v left", reps, left)
}

// short says a change in a word.
var short = map[progression.Change]string{
	progression.MoreSets: "more sets", progression.FindLoad: "search", progression.MoreLoad: "more load", progression.MoreReps: "more reps",
	progression.SlowerLowering: "slower", progression.LongerPause: "a pause", progression.ExtraSet: "extra set", progression.HarderVariant: "harder",
}

// because says in a word what led to the dose of a visit.
func because(d progression.Decision) string {
	switch {
	case d.Action == 0:
		return "first dose"
	case d.Next != nil && d.Next.Feel != nil:
		return fmt.Sprintf("%s felt", d.Next.Feel.Load.Each())
	case d.Action == progression.Progress:
		return short[d.Change]
	}
	return d.Action.String()
}

// end says how far it came, and what stands in the way of the next weight.
func end(p *page.Paper, one trained) {
	last := one.Visits[len(one.Visits)-1]
	d := last.Decision
	p.Line("")
	if d.Next == nil {
		p.Clinicians("- ", d.Reasons)
		return
	}
	if d.Jump == nil {
		p.Say("- ", "There is no heavier weight.")
	} else {
		p.Say("- ", "The next weight: "+reviewpaper.StepText(*d.Jump)+reviewpaper.BridgeText(d)+".")
	}
	p.Clinicians("- ", d.Reasons)
}
