package main

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/examples/internal/planpaper"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// tested asks for test sets, and who saw how they were done.
func (s *session) tested() error {
	_, now, err := s.stricter()
	if err != nil {
		return err
	}
	unloaded := now.Meanwhile >= screening.UnloadedPractice
	if unloaded && s.IsTyped() {
		page.Wrap(s.said, "", "Meanwhile "+now.Meanwhile.String()+": no test set is asked for.")
		return nil
	}
	sets, err := s.tests()
	if err != nil || len(sets) == 0 {
		return err
	}
	_, paused := s.r.AskedOn(s.day)
	for _, set := range sets {
		if unloaded && set.Load > 0 {
			return fmt.Errorf("%s with %s is not taken as a test: meanwhile %s", set.Exercise, set.Load, now.Meanwhile)
		}
		if paused[set.Exercise] {
			return fmt.Errorf("%s is stopped: nothing of it is tested", set.Exercise)
		}
	}
	s.r.Tests = append(s.r.Tests, sets...)
	who, err := s.who("seen_by", "Who saw how these were done?", "a name, or nothing")
	for _, set := range sets {
		s.see(set.Exercise, who)
	}
	return err
}

// see notes who saw the technique of an exercise first.
func (s *session) see(id exercise.ID, who string) {
	if who != "" && !slices.ContainsFunc(s.r.Seen, func(seen week.Seen) bool { return seen.Exercise == id }) {
		s.r.Seen = append(s.r.Seen, week.Seen{Exercise: id, Observation: dose.Observation{Who: who, Day: s.day}})
	}
}

var errNoTest = errors.New("no test was given")

// stops refuses tests while nothing may go on.
func (s *session) stops() error {
	outcome, err := s.r.Screening(s.day)
	if err == nil && (s.stand() != "" || outcome.Meanwhile == screening.Nothing) {
		err = fmt.Errorf("all is stopped, and nothing is tested. %s", s.due())
	}
	return err
}

// test asks for test sets and tests of function, and sets them beside the earlier ones.
func test(s *session) error {
	sets, tried := len(s.r.Tests), len(s.r.Function)
	if err := inTurn(s.stops, s.tested, s.functionTests); err != nil {
		return err
	}
	if len(s.r.Tests) == sets && len(s.r.Function) == tried {
		return errNoTest
	}
	chosen, err := s.chosen()
	if err != nil {
		return err
	}
	now := *s.r
	now.Days = []units.Day{s.day} // what follows from the tests, whatever the plan's days
	plan, err := now.Start(s.day)
	if err != nil {
		return err
	}
	p, err := page.New(s.out)
	if err != nil {
		return err
	}
	p.Line("TESTS: %s", s.r.Client)
	p.Note(s.r.Note)
	p.Tests(p.Clinicians, chosen.Tests, plan.Tested)
	planpaper.Estimates(p, plan)
	return inTurn(p.Close, s.keep)
}

// chosen are the tests of function that belong to the person and the tasks.
func (s *session) chosen() (choice.Chosen, error) {
	outcome, err := s.r.Screening(s.day)
	return choice.Choose(choice.Wish{Tasks: s.r.Tasks, Goal: s.r.Goal, Screening: outcome, Named: true}), err
}

const triedHint = `such as "12 reps, seat 45 cm": the result and, behind a comma, what has to be alike next time (as last time where it is not said); of a time "9.4 s"; or "unable", "used arms", "stopped", "refused"; of a side "right dominant 30 kg; left non-dominant 28 kg"; nothing where it was not tried`

// functionTests asks how each test went that belongs to the person, unless it was told today already.
func (s *session) functionTests() error {
	chosen, err := s.chosen()
	if err != nil {
		return err
	}
	for _, k := range chosen.Tests {
		blank := choice.Tried{Trial: k.Trial, Result: function.Result{Test: k.Test, Day: s.day}}
		name, was := k.Test.String()+k.Trial.String(), s.alike(blank)
		if len(was) > 0 && was[len(was)-1].Day == s.day {
			continue
		}
		key, _, _ := strings.Cut(strings.ReplaceAll(name, " ", "_"), ",")
		var tried []choice.Tried
		err := s.Ask(key, "How did it go: "+name+"?"+lastTime(was), triedHint, func(answer string) (err error) {
			tried, err = readTried(answer, blank, was)
			return err
		})
		if err != nil {
			return err
		}
		s.r.Function = append(s.r.Function, tried...)
		if k.Test == function.FourStageBalance && len(tried) > 0 {
			s.balanced = true
			if err := s.stances(s.byTest(tried[len(tried)-1].Result)); err != nil {
				return err
			}
		}
	}
	return nil
}

// alike are the results of a test or trial so far.
func (s *session) alike(t choice.Tried) []choice.Tried {
	return slices.DeleteFunc(slices.Clone(s.r.Function), func(o choice.Tried) bool { return o.Test != t.Test || o.Trial != t.Trial })
}

// lastTime says how a test went last, of each side, and what has to be alike.
func lastTime(was []choice.Tried) string {
	var said []string
	sides := map[body.Side]bool{}
	for _, t := range slices.Backward(was) {
		if sides[t.Side] {
			continue
		}
		sides[t.Side] = true
		text := fmt.Sprintf("on %s: ", t.Day)
		if t.Side != 0 {
			text += t.Side.String() + " "
		}
		said = append(said, text+papers.Went(t))
	}
	if len(said) == 0 {
		return ""
	}
	return " Last time, " + strings.Join(said, "; ") + "."
}

// ways are those in which a trial may go, as its name lists them behind a comma; none where any protocol may be told.
func ways(t choice.Tried) []string {
	_, list, some := strings.Cut(t.Trial.String(), ", ")
	if !some {
		return nil
	}
	return strings.Split(strings.ReplaceAll(list, " or ", ", "), ", ")
}

// wayOf takes one of the ways of a trial, where it has any, or none where it went as before
// or did not: a rise with help is compared with no other.
func wayOf(t choice.Tried, protocol string, asBefore bool) (string, error) {
	protocol = strings.TrimSpace(protocol)
	list := ways(t)
	if one := strings.ToLower(protocol); slices.Contains(list, one) {
		return one, nil
	}
	if len(list) > 0 && (protocol != "" || t.How == function.Done && !asBefore) {
		return "", fmt.Errorf("%q says not how they got up: one of %s behind a comma, such as \"9.4 s, %s\"", protocol, strings.Join(list, ", "), list[0])
	}
	return protocol, nil
}

// readTried reads results as they are typed. Tries are counted from the first that is
// kept here: whoever had some elsewhere has learnt less since than is taken off.
func readTried(text string, blank choice.Tried, was []choice.Tried) (list []choice.Tried, err error) {
	for one := range strings.SplitSeq(text, ";") {
		result, protocol, _ := strings.Cut(one, ",")
		t, words := blank, strings.Fields(strings.ToLower(result))
		if len(words) == 0 {
			continue
		}
		if t.Test == function.Grip {
			t.Side = body.Both
		}
		if side := sides[words[0]]; side != 0 {
			t.Side, words = side, words[1:]
		}
		if len(words) > 0 && t.Hand.UnmarshalText([]byte(words[0])) == nil {
			words = words[1:]
		}
		value := strings.Join(words, " ")
		if t.How.UnmarshalText([]byte(value)) != nil {
			t.How = function.Done
			if t.Value, err = function.ParseAmount(value); err != nil {
				return nil, err
			}
		}
		if protocol, err = wayOf(t, protocol, len(was) > 0); err != nil {
			return nil, err
		}
		t.Protocol, t.Try = protocol, 1
		for _, o := range was {
			if o.Side == t.Side {
				t.Try++
				if protocol == "" {
					t.Protocol = o.Protocol
				}
			}
		}
		if t.Trial != 0 {
			t.Try = 0
		}
		if err = t.Validate(); err != nil {
			return nil, err
		}
		list = append(list, t)
	}
	return list, nil
}
