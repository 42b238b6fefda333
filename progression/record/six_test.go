package record_test

import (
	"cmp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// six are invented people whom a colleague would plan for, from the first visit over twelve
// weeks; no such person exists.
var six = []string{"pressure", "spine", "hip", "insulin", "bone", "frail"}

// A lived course is what was planned for one of the six.
type livedCourse struct {
	start   record.Plan
	reviews []record.Review
	record  record.Record
}

// live takes a record through twelve weeks with a person who is arithmetic: who does what is
// asked for, tells the reserve that was asked for, and is looked at every fourth week.
func live(t *testing.T, r record.Record) livedCourse {
	t.Helper()
	c := livedCourse{}
	r.Absence = screening.No
	var err error
	if c.start, err = r.Start(r.LastDay()); err != nil || c.start.Week == nil {
		t.Fatalf("%v: %+v", err, c.start.Stop)
	}
	begun := map[exercise.ID]units.Mass{}
	for _, item := range c.start.Week.Sessions[0].Items {
		ask(&r, c.start.Week.Sessions[0].Day, item)
		r.Seen = append(r.Seen, week.Seen{Exercise: item.Exercise, Observation: dose.Observation{Who: "Physiotherapist E", Day: c.start.Week.Sessions[0].Day}})
		begun[item.Exercise] = item.Load.Each()
	}
	doses, other := c.start.Week.Sessions[0].Items, c.start.Week.Beside
	var days []units.Day
	for _, s := range c.start.Week.Sessions {
		days = append(days, s.Day)
	}
	for week := range 12 {
		for i, d := range days {
			day := d + units.Day(7*week)
			if week+i > 0 {
				doses = decided(t, &r, day)
			}
			visitDone(&r, day, doses, begun)
			practised(&r, day, other)
		}
		if week != 1 && week != 6 && week != 11 {
			continue
		}
		last := days[len(days)-1] + units.Day(7*week) + 1
		r.Profile.Day = last // asked anew, with the same answers
		re, err := r.Assess(last)
		if err != nil {
			t.Fatalf("week %d: %v", week+1, err)
		}
		c.reviews = append(c.reviews, re)
		r.Began, r.Phase, r.Beside, r.Review = last, dose.Build, re.Beside, last
		if re.Coming != nil {
			other = re.Coming.Beside
		}
	}
	c.record = r
	return c
}

// decided decides for the visit of a day, and adds what changes to the record.
func decided(t *testing.T, r *record.Record, day units.Day) (doses []dose.Prescription) {
	t.Helper()
	items, err := r.Next(day)
	if err != nil {
		t.Fatalf("%s: %v", day, err)
	}
	for _, d := range items {
		if d.Decision.Instead != "" {
			drop(r, d.Exercise, r.Visits[len(r.Visits)-1].Day)
		}
		if d.Decision.Next != nil {
			doses = append(doses, *d.Decision.Next)
			ask(r, day, *d.Decision.Next)
		}
	}
	return doses
}

// visitDone adds a visit of a person who is arithmetic: who could lift what was begun with some
// thirty times, gets a hundredth stronger with each visit, ends a set where the reserve
// asked for is left, and tells what is left.
func visitDone(r *record.Record, day units.Day, doses []dose.Prescription, begun map[exercise.ID]units.Mass) {
	gain := 1 + 0.01*float64(len(r.Visits))
	r.Visits = append(r.Visits, record.TrainingDay{Day: day, Noted: record.Noted{PainFree: true, Moment: &screening.Moment{}, RangeLost: screening.No, FormLost: screening.No, Observer: "Physiotherapist E"}})
	for _, p := range doses {
		sides := []body.Side{p.Side}
		if p.OneSided && p.Side == body.Both {
			sides = []body.Side{body.Left, body.Right}
		}
		loads := slices.Repeat([]units.Mass{p.Load.Each()}, p.Sets)
		switch {
		case p.Feel != nil:
			loads[len(loads)-1] = p.Feel.Load.Each()
		case p.Finding != nil && p.Finding.MaxSteps > 0 && p.Next != nil && (p.Finding.Ceiling == 0 || p.Next.To.Each() <= p.Finding.Ceiling):
			loads = append(loads, p.Next.To.Each())
		}
		for i, load := range loads {
			for _, side := range sides {
				s := setlog.Set{Day: day, Exercise: p.Exercise, Side: side, Hold: p.Hold, Load: load, Reps: p.Count}
				if p.Hold == body.OneEachHand {
					s.Stated = body.PerHand
				}
				if !p.Reserve.IsZero() {
					most := 30.0 * gain
					if load > 0 {
						most = 30 * (2*gain*float64(begun[p.Exercise])/float64(load) - 1) // Epley's equation, the other way round
					}
					if p.Feel != nil && i == len(loads)-1 {
						s.Reps = p.Feel.Count
					}
					s.Reps = max(1, min(s.Reps, int(most)-int(p.Reserve.Least)))
					s.Effort = units.Must(units.InReserve(float64(max(0, min(10, int(most)-s.Reps)))))
				}
				r.Done = append(r.Done, s)
			}
		}
	}
}

// practised adds what was done beside lifting on a day: all that was asked.
func practised(r *record.Record, day units.Day, list []beside.Item) {
	for _, i := range list {
		if i.Dosed() {
			r.Practised = append(r.Practised, beside.Practised{Day: day, Track: i.Track, Least: cmp.Or(i.Seconds+i.Count, i.Minutes)})
		}
	}
}

// checks of the six are what a colleague would look for in each plan, in its first week and
// after each review. Common practice.
var sixChecks = map[string]func(t *testing.T, where string, doses []dose.Prescription, other []beside.Item, c livedCourse){
	// No breath is held, and no set is so short that it is heavy.
	"pressure": func(t *testing.T, where string, doses []dose.Prescription, _ []beside.Item, c livedCourse) {
		if !c.start.Screening.Limits.NoBreathHolding {
			t.Error("nobody says not to hold the breath")
		}
		for _, p := range doses {
			if least := p.Reserve.Least; !p.Reserve.IsZero() && (p.Count < 8 || least < 1) {
				t.Errorf("%s: %s, %d lifts with %s left", where, p.Name, p.Count, p.Reserve)
			}
			if p.Load.Each() > 6*units.Kilogram {
				t.Errorf("%s: %s with %s of two pairs", where, p.Name, p.Load)
			}
		}
	},
	// No bending or turning under load, nothing on the floor, no impact.
	"spine": func(t *testing.T, where string, doses []dose.Prescription, other []beside.Item, _ livedCourse) {
		noDemand(t, where, doses, body.LoadedSpinalFlex, body.SpinalTwist, body.FloorTransfer, body.PickUpFromFloor)
		for _, i := range other {
			if i.Kind == beside.Impact || i.Move == "reach-low" || i.Move == "reach-across" {
				t.Errorf("%s: %s", where, i.Name)
			}
		}
		if !slices.ContainsFunc(doses, func(p dose.Prescription) bool { return p.Exercise == "back-extension" }) {
			t.Errorf("%s: the back is not made stronger", where)
		}
	},
	// The side of the hip and the thigh are trained; nothing lands.
	"hip": func(t *testing.T, where string, doses []dose.Prescription, other []beside.Item, _ livedCourse) {
		noDemand(t, where, doses, body.Impact)
		for _, id := range []exercise.ID{"standing-leg-out", "dumbbell-sit-to-stand"} {
			if !slices.ContainsFunc(doses, func(p dose.Prescription) bool { return p.Exercise == id }) {
				t.Errorf("%s: no %s", where, id)
			}
		}
		for _, i := range other {
			if i.Brisk*i.Minutes > 20 || i.Kind == beside.Impact {
				t.Errorf("%s: %d brisk minutes a day of %s", where, i.Brisk*i.Minutes, i.Name)
			}
		}
	},
	// A low is spoken of, and nobody is alone with it.
	"insulin": func(t *testing.T, where string, doses []dose.Prescription, _ []beside.Item, c livedCourse) {
		words, err := record.Words()
		if err != nil {
			t.Fatal(err)
		}
		said, twice := "", 0
		for _, f := range c.start.Screening.Findings {
			said += words.Client(f.Reason) + " "
		}
		twice = strings.Count(strings.ToLower(said), "please tell your doctor that you train")
		if !strings.Contains(said, "measure it right before you train") || !strings.Contains(said, "something sweet at hand") || twice > 1 {
			t.Errorf("the client reads %q", said)
		}
		if len(doses) == 0 {
			t.Errorf("%s: no dose", where)
		}
	},
	// Impact, harder with the weeks; hips and spine are loaded.
	"bone": func(t *testing.T, where string, doses []dose.Prescription, other []beside.Item, _ livedCourse) {
		if !slices.ContainsFunc(other, func(i beside.Item) bool { return i.Kind == beside.Impact && i.Dosed() }) {
			t.Errorf("%s: no impact", where)
		}
		for _, id := range []exercise.ID{"goblet-squat", "dumbbell-romanian-deadlift"} {
			if !slices.ContainsFunc(doses, func(p dose.Prescription) bool { return p.Exercise == id }) {
				t.Errorf("%s: no %s", where, id)
			}
		}
	},
	// Three items of balance with a hand on, a walk with the aid, nothing on the floor nor
	// bending over without a hold, and the floor as an aim.
	"frail": func(t *testing.T, where string, doses []dose.Prescription, other []beside.Item, c livedCourse) {
		noDemand(t, where, doses, body.FloorTransfer, body.PickUpFromFloor)
		balance := 0
		for _, i := range other {
			switch i.Kind {
			case beside.Balance:
				balance++
				if i.Hands == beside.HandsNear {
					t.Errorf("%s: %s without a hand", where, i.Name)
				}
			case beside.Aerobic:
				if i.Brisk > 0 || !slices.ContainsFunc(i.Reasons, func(r evidence.Reason) bool { return r.Code == "beside.hold-on" }) {
					t.Errorf("%s: %+v", where, i)
				}
			}
		}
		if balance < 3 {
			t.Errorf("%s: %d items of balance", where, balance)
		}
		for _, p := range doses {
			if p.Exercise == "hip-hinge-practice" || p.Exercise == "goblet-squat" {
				t.Errorf("%s: %s", where, p.Name)
			}
		}
		if !slices.ContainsFunc(c.start.Week.Reasons, func(r evidence.Reason) bool { return r.Code == "choice.floor-later" || r.Code == "choice.floor-aim" }) {
			t.Error("getting up from the floor is no aim")
		}
	},
}

// noWeight holds that nobody reads of a weight where none is lifted.
func noWeight(t *testing.T, d dose.Prescription, why []evidence.Reason) {
	t.Helper()
	words, err := record.Words()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range why {
		if said := words.Client(r); d.Hold == body.Unloaded && strings.Contains(said, "same weight") {
			t.Errorf("%s: the client reads %q", d.Name, said)
		}
	}
}

func noDemand(t *testing.T, where string, doses []dose.Prescription, demands ...body.Demand) {
	t.Helper()
	for _, p := range doses {
		ex, _ := exercise.Standard().Get(p.Exercise)
		if clash := ex.Demands.Both(body.DemandSet(demands...)); clash != 0 {
			t.Errorf("%s: %s asks for %s", where, p.Name, clash)
		}
	}
}

// Six people from the first visit over twelve weeks: each plan has what it must, pulls are no
// fewer than pushes, the work beside lifting goes on, and nothing is begun harder than it was
// left. The bones' impact and at least one stance come further.
func TestSixOverTwelveWeeks(t *testing.T) {
	for _, name := range six {
		t.Run(name, func(t *testing.T) {
			c := live(t, read(t, "six/"+name+".json"))
			sixChecks[name](t, "first week", c.start.Week.Sessions[0].Items, c.start.Week.Beside, c)
			was, changed := c.start.Week.Beside, false
			for _, re := range c.reviews {
				if re.Coming == nil || re.Expired {
					t.Fatalf("%s: %+v", re.Day, re.Overdue)
				}
				var doses []dose.Prescription
				push, pull := 0, 0
				for _, item := range re.Items {
					if d := item.Decision.Next; d != nil {
						doses = append(doses, *d)
						noWeight(t, *d, item.Decision.Reasons)
						if p := exercise.Standard().Pattern(d.Exercise); p.Pushes() {
							push += d.Sets
						} else if p.Pulls() {
							changed = changed || item.Decision.Action == progression.ChangeVariant
							pull += map[bool]int{false: d.Sets, true: d.BuildTo}[changed] // a new pull begins with fewer sets, and is built up
						}
					}
				}
				if len(doses) != len(re.Items) || push > pull {
					t.Errorf("%s: %d of %d exercises go on; %d sets of pushes, %d of pulls", re.Day, len(doses), len(re.Items), push, pull)
				}
				sixChecks[name](t, re.Day.String(), doses, re.Coming.Beside, c)
				rose := false
				for _, i := range re.Coming.Beside {
					if k := slices.IndexFunc(was, func(w beside.Item) bool { return w.Track == i.Track }); k >= 0 && i.Step != was[k].Step {
						rose = rose || i.Step > was[k].Step
						if i.Step < was[k].Step {
							t.Errorf("%s: %s falls from step %d to %d", re.Day, i.Track, was[k].Step, i.Step)
						}
					}
				}
				if !rose && name != "frail" {
					t.Errorf("%s: nothing beside lifting comes further", re.Day)
				}
				was = re.Coming.Beside
			}
			if err := c.record.Validate(); err != nil {
				t.Error(err)
			}
		})
	}
}

// The same twelve weeks of somebody in whom one thing more is found, or who falls or is alone:
// never a later step, less support or company, more pace, height or force.
func TestSixWithOneThingWorse(t *testing.T) {
	var worse []func(p *screening.Profile)
	for term := range screening.Codes() {
		if term.Kind == screening.Condition {
			worse = append(worse, func(p *screening.Profile) {
				if p.Conditions.Of(term.Code) == screening.No {
					p.Conditions = screening.AskedFor(append(slices.Clone(p.Conditions.Present), term.Code)...)
				}
			})
		}
	}
	worse = append(worse, func(p *screening.Profile) { p.Setting = screening.Alone }, func(p *screening.Profile) {
		p.Falls = &screening.FallsScreen{Afraid: screening.Yes, Fell: screening.Yes, Unsteady: screening.Yes}
	})
	supported := 0
	for _, name := range six {
		r := live(t, read(t, "six/"+name+".json")).record
		if name != "bone" { // all twelve weeks are taken in anew; hers from what was kept
			r.Beside.InForce, r.Beside.Since = nil, 0
		}
		better, err := r.Week(r.Review)
		if err != nil {
			t.Fatal(err)
		}
		for _, change := range worse {
			w := r
			change(&w.Profile)
			week, err := w.Week(r.Review)
			if err != nil {
				continue // held
			}
			for _, i := range week.Beside {
				k := slices.IndexFunc(better.Beside, func(b beside.Item) bool { return b.Track == i.Track })
				if k < 0 {
					t.Errorf("%s: %s is begun with %v", name, i.Track, w.Profile.Conditions.Present)
					continue
				}
				was := better.Beside[k]
				if !i.Dosed() {
					continue
				}
				if i.Hands > was.Hands {
					supported++
				}
				if !was.Dosed() || i.Step > was.Step || i.Hands < was.Hands || i.Hands == was.Hands && was.Company && !i.Company || i.BriskMinutes() > was.BriskMinutes() || i.Height > was.Height || i.Force > was.Force {
					t.Errorf("%s with %v: %+v, before %+v", name, w.Profile.Conditions.Present, i.Place(), was.Place())
				}
			}
		}
	}
	if supported == 0 {
		t.Error("nobody got more support: the law was not tried")
	}
}
