package programme_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/week"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// readyState is an invented person with nothing against leaving the phase on
// the day of its first review.
func readyState(p dose.Phase) programme.PhaseState {
	today := learningDay + 42
	if p == dose.Familiarise {
		today = learningDay + 14
	}
	return programme.PhaseState{
		Phase: p, First: learningDay, Today: today, Planned: 8, Done: 6,
		Technique: dose.Observation{Who: "a colleague", Day: learningDay},
		Visits:    []rule.LoadAdvice{rule.Ease, rule.Keep, rule.Raise},
		Goal:      guideline.Power, Reached: screening.Yes, Referral: screening.No, Standing: programme.PlanStands,
	}
}

func phaseOf(t failer, s programme.PhaseState) programme.PhaseReport {
	t.Helper()
	r, err := programme.PhaseExits(s)
	if err != nil {
		t.Fatalf("PhaseExits: %v", err)
	}
	return r
}

// heldBack prints each exit with the criteria that are not met, "?" behind those
// not known.
func heldBack(r programme.PhaseReport) string {
	var all []string
	for _, e := range r.Exits {
		text := e.Exit.String() + ":"
		for _, c := range e.Criteria {
			switch c.Holds {
			case programme.CriterionNotMet:
				text += " " + c.Criterion.String()
			case programme.CriterionNotKnown:
				text += " " + c.Criterion.String() + "?"
			}
		}
		all = append(all, text)
	}
	return strings.Join(all, " | ")
}

// Which phase leads where, and by which criteria: this module's design.
func TestPhaseExitsAreOpen(t *testing.T) {
	for phase, want := range map[dose.Phase]string{
		dose.Familiarise: "build [happened referral plan time sessions technique visits]",
		dose.Build:       "power [happened referral plan time sessions technique visits power] maintain [happened referral plan visits goal]",
		dose.Power:       "maintain [happened referral plan visits goal]",
		dose.Maintain:    "discharge [happened referral plan time sessions visits goal]",
	} {
		r := phaseOf(t, readyState(phase))
		var got []string
		for i, e := range r.Exits {
			var names []programme.Criterion
			for _, c := range e.Criteria {
				names = append(names, c.Criterion)
			}
			got = append(got, fmt.Sprint(e.Exit, " ", names))
			if !e.May || r.Open[i] != e.Exit {
				t.Errorf("%v: %+v", phase, e)
			}
		}
		if text := strings.Join(got, " "); text != want || r.Phase != phase {
			t.Errorf("%v leads to %s, want %s", r.Phase, text, want)
		}
		if r.Reasons[0].Code != "progression.phase-may-be-left" {
			t.Errorf("%v: %v", phase, r.Reasons[0])
		}
	}
	for exit, want := range map[programme.Exit]dose.Phase{0: 0, programme.ToBuild: dose.Build, programme.ToPower: dose.Power,
		programme.ToMaintain: dose.Maintain, programme.ToDischarge: 0, 9: 0} {
		if p, ok := exit.Phase(); p != want || ok != (want != 0) {
			t.Errorf("%v: %v, %v", exit, p, ok)
		}
	}
}

func TestOneCriterionHoldsBack(t *testing.T) {
	for _, tt := range []struct {
		name  string
		phase dose.Phase
		spoil func(s *programme.PhaseState)
		want  string
	}{
		{"nothing", dose.Familiarise, func(*programme.PhaseState) {}, "build:"},
		{"13 days", dose.Familiarise, func(s *programme.PhaseState) { s.Today-- }, "build: time"},
		{"13 days and a clearance until then", dose.Familiarise, func(s *programme.PhaseState) { s.Today--; s.ReviewBy = s.Today }, "build: time"},
		{"41 days", dose.Build, func(s *programme.PhaseState) { s.Today-- }, "power: time | maintain:"},
		{"41 days of keeping", dose.Maintain, func(s *programme.PhaseState) { s.Today-- }, "discharge: time"},
		{"four of four", dose.Familiarise, func(s *programme.PhaseState) { s.Planned, s.Done = 4, 4 }, "build:"},
		{"four of five", dose.Familiarise, func(s *programme.PhaseState) { s.Planned, s.Done = 5, 4 }, "build:"},
		{"three of four", dose.Familiarise, func(s *programme.PhaseState) { s.Planned, s.Done = 4, 3 }, "build: sessions"},
		{"three of three", dose.Familiarise, func(s *programme.PhaseState) { s.Planned, s.Done = 3, 3 }, "build: sessions?"},
		{"five of eight", dose.Familiarise, func(s *programme.PhaseState) { s.Done = 5 }, "build: sessions"},
		{"no sessions recorded", dose.Familiarise, func(s *programme.PhaseState) { s.Planned, s.Done = 0, 0 }, "build: sessions?"},
		{"nobody looked", dose.Familiarise, func(s *programme.PhaseState) { s.Technique = dose.Observation{} }, "build: technique?"},
		{"seen by nobody named", dose.Familiarise, func(s *programme.PhaseState) { s.Technique.Who = "" }, "build: technique?"},
		{"seen on no day", dose.Familiarise, func(s *programme.PhaseState) { s.Technique.Day = 0 }, "build: technique?"},
		{"seen before", dose.Build, func(s *programme.PhaseState) { s.Technique.Day-- }, "power: technique? | maintain:"},
		{"eased last", dose.Familiarise, func(s *programme.PhaseState) { s.Visits[2] = rule.Ease }, "build: visits"},
		{"referred before", dose.Power, func(s *programme.PhaseState) { s.Visits[1] = rule.Refer }, "maintain: visits"},
		{"one visit", dose.Familiarise, func(s *programme.PhaseState) { s.Visits = s.Visits[2:] }, "build: visits?"},
		{"one visit, eased", dose.Familiarise, func(s *programme.PhaseState) { s.Visits = s.Visits[:1] }, "build: visits"},
		{"no visit", dose.Familiarise, func(s *programme.PhaseState) { s.Visits = nil }, "build: visits?"},
		{"one not recorded", dose.Familiarise, func(s *programme.PhaseState) { s.Visits[1] = 0 }, "build: visits?"},
		{"eased, then not recorded", dose.Familiarise, func(s *programme.PhaseState) { s.Visits = []rule.LoadAdvice{rule.Ease, 0} }, "build: visits"},
		{"a referral", dose.Maintain, func(s *programme.PhaseState) { s.Referral = screening.Yes }, "discharge: referral"},
		{"a referral, not known", dose.Power, func(s *programme.PhaseState) { s.Referral = 0 }, "maintain: referral?"},
		{"strength is the goal", dose.Build, func(s *programme.PhaseState) { s.Goal = guideline.Strength }, "power: power | maintain:"},
		{"bone is the goal", dose.Build, func(s *programme.PhaseState) { s.Goal = guideline.Bone }, "power: power | maintain:"},
		{"no goal", dose.Build, func(s *programme.PhaseState) { s.Goal = 0 }, "power: power? | maintain:"},
		{"stairs not yet", dose.Build, func(s *programme.PhaseState) { s.Reached = screening.No }, "power: | maintain: goal"},
		{"stairs not tried", dose.Power, func(s *programme.PhaseState) { s.Reached = 0 }, "maintain: goal?"},
		{"stairs lost", dose.Maintain, func(s *programme.PhaseState) { s.Reached = screening.No }, "discharge: goal"},
		{"a review is open", dose.Power, func(s *programme.PhaseState) { s.Standing = programme.ReviewBefore }, "maintain: happened"},
		{"a fall", dose.Familiarise, func(s *programme.PhaseState) { s.Standing = programme.PlanEnded }, "build: happened"},
		{"not asked", dose.Familiarise, func(s *programme.PhaseState) { s.Standing = programme.AskWhatHappened }, "build: happened?"},
		{"not looked at", dose.Familiarise, func(s *programme.PhaseState) { s.Standing = 0 }, "build: happened?"},
		{"the last day of a plan", dose.Power, func(s *programme.PhaseState) { s.Today = learningDay + 56 }, "maintain:"},
		{"the day after", dose.Power, func(s *programme.PhaseState) { s.Today = learningDay + 57 }, "maintain: plan"},
		{"a later plan", dose.Power, func(s *programme.PhaseState) { s.Today, s.PlanFirst = learningDay+57, learningDay+1 }, "maintain:"},
		{"a clearance of today", dose.Power, func(s *programme.PhaseState) { s.ReviewBy = s.Today }, "maintain:"},
		{"a clearance that lapsed", dose.Power, func(s *programme.PhaseState) { s.ReviewBy = s.Today - 1 }, "maintain: plan"},
	} {
		s := readyState(tt.phase)
		tt.spoil(&s)
		r := phaseOf(t, s)
		if got := heldBack(r); got != tt.want {
			t.Errorf("%s: %s, want %s", tt.name, got, tt.want)
		}
		if len(r.Open) == 0 && r.Reasons[0].Code != "progression.phase-goes-on" {
			t.Errorf("%s: %v", tt.name, r.Reasons[0])
		}
		speaks(t, phaseReasons(r)...)
	}
}

func phaseReasons(r programme.PhaseReport) []evidence.Reason {
	all := slices.Clone(r.Reasons)
	for _, e := range r.Exits {
		for _, c := range e.Criteria {
			all = append(all, c.Reasons...)
		}
	}
	return all
}

// Two weeks, six weeks, three and eight: the days of package dose.
func TestPhaseDates(t *testing.T) {
	for _, tt := range []struct {
		day      int
		reviewBy units.Day
		plan     units.Day
		want     string
	}{
		{13, 0, 0, "plan-dates"},
		{14, 0, 0, "plan-dates review-due"},
		{21, 0, 0, "plan-dates review-due retest-due"},
		{21, 0, learningDay + 1, "plan-dates review-due"},
		{56, 0, 0, "plan-dates review-due retest-due"},
		{57, 0, 0, "plan-dates review-due retest-due plan-expired"},
		{10, learningDay + 10, 0, "plan-dates review-due"},
		{11, learningDay + 10, 0, "plan-dates review-due plan-expired"},
	} {
		s := readyState(dose.Familiarise)
		s.Today, s.ReviewBy, s.PlanFirst = learningDay+units.Day(tt.day), tt.reviewBy, tt.plan
		r := phaseOf(t, s)
		var got []string
		for _, why := range r.Reasons[1:] {
			got = append(got, strings.TrimPrefix(string(why.Code), "progression."))
		}
		if text := strings.Join(got, " "); text != tt.want {
			t.Errorf("day %d: %s, want %s", tt.day, text, tt.want)
		}
		from := max(learningDay, tt.plan)
		if want := units.Must(week.DatesOf(dose.Familiarise, from, tt.reviewBy)); r.Dates != want {
			t.Errorf("day %d: %+v, want %+v", tt.day, r.Dates, want)
		}
	}
}

// worsens makes one thing worse, or no longer known.
var worsens = []func(t *rapid.T, s *programme.PhaseState){
	func(t *rapid.T, s *programme.PhaseState) { s.Done = rapid.IntRange(0, s.Done).Draw(t, "done") },
	func(t *rapid.T, s *programme.PhaseState) { s.Planned += rapid.IntRange(1, 9).Draw(t, "missed") },
	func(t *rapid.T, s *programme.PhaseState) { s.Planned, s.Done = 0, 0 },
	func(t *rapid.T, s *programme.PhaseState) { s.Technique.Who = "" },
	func(t *rapid.T, s *programme.PhaseState) { s.Technique = dose.Observation{} },
	func(t *rapid.T, s *programme.PhaseState) {
		if s.Technique.Day > 0 {
			s.Technique.Day -= units.Day(rapid.IntRange(1, 60).Draw(t, "earlier"))
		}
	},
	func(t *rapid.T, s *programme.PhaseState) { s.Visits = nil },
	func(t *rapid.T, s *programme.PhaseState) {
		if n := len(s.Visits); n > 0 {
			i := rapid.IntRange(0, n-1).Draw(t, "visit")
			worse := rapid.IntRange(0, 4).Draw(t, "advice")
			if worse == 0 || rule.LoadAdvice(worse) > s.Visits[i] && s.Visits[i] > 0 {
				s.Visits[i] = rule.LoadAdvice(worse)
			}
		}
	},
	func(t *rapid.T, s *programme.PhaseState) {
		s.Visits = append(s.Visits, rapid.SampledFrom([]rule.LoadAdvice{0, rule.Ease, rule.Refer}).Draw(t, "next"))
	},
	func(t *rapid.T, s *programme.PhaseState) { s.Goal = 0 },
	func(t *rapid.T, s *programme.PhaseState) {
		s.Reached = rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.No}).Draw(t, "reached")
	},
	func(t *rapid.T, s *programme.PhaseState) {
		s.Referral = rapid.SampledFrom([]screening.Answer{screening.Unknown, screening.Yes}).Draw(t, "referral")
	},
	func(t *rapid.T, s *programme.PhaseState) {
		if s.Standing = programme.Standing(rapid.IntRange(int(s.Standing), 4).Draw(t, "standing")); s.Standing == programme.PlanStands {
			s.Standing = 0
		}
	},
	func(t *rapid.T, s *programme.PhaseState) { s.PlanFirst = 0 },
	func(t *rapid.T, s *programme.PhaseState) {
		if s.ReviewBy == 0 {
			s.ReviewBy = s.Today + 100
		}
		s.ReviewBy -= units.Day(rapid.IntRange(0, 200).Draw(t, "lapses"))
	},
	func(t *rapid.T, s *programme.PhaseState) { // later begun, the plan as old as it is
		if s.PlanFirst > s.First {
			s.First = s.PlanFirst
		}
	},
}

// drawState is mostly ready to leave.
func drawState(t *rapid.T) programme.PhaseState {
	s := readyState(dose.Phase(rapid.IntRange(1, 4).Draw(t, "phase")))
	s.Today += units.Day(rapid.IntRange(-1, 14).Draw(t, "day"))
	s.PlanFirst = s.First + units.Day(rapid.IntRange(0, 12).Draw(t, "plan"))
	s.Planned = rapid.IntRange(3, 8).Draw(t, "planned")
	s.Done = s.Planned - rapid.IntRange(0, 2).Draw(t, "missed so far")
	s.Technique.Day += units.Day(rapid.IntRange(-1, 12).Draw(t, "seen"))
	for range rapid.IntRange(0, 2).Draw(t, "more visits") {
		s.Visits = append(s.Visits, rapid.SampledFrom([]rule.LoadAdvice{rule.Raise, rule.Keep, rule.Ease, 0}).Draw(t, "said"))
	}
	s.Reached = rapid.SampledFrom([]screening.Answer{screening.Yes, screening.Yes, screening.No, screening.Unknown}).Draw(t, "task")
	s.Standing = rapid.SampledFrom([]programme.Standing{programme.PlanStands, programme.PlanStands, programme.AskWhatHappened, 0}).Draw(t, "stands")
	return s
}

// The law: one thing worse, or no longer known, opens no exit; and an exit is
// open only where every criterion is met.
func TestPhaseExitsMonotone(t *testing.T) {
	changed := 0
	law := func(t *rapid.T) {
		s := drawState(t)
		was := phaseOf(t, s)
		rapid.SampledFrom(worsens).Draw(t, "worse")(t, &s)
		is := phaseOf(t, s)
		for _, e := range is.Open {
			if !slices.Contains(was.Open, e) {
				t.Fatalf("%v opens: %s, before %s", e, heldBack(is), heldBack(was))
			}
		}
		for _, e := range is.Exits {
			all := !slices.ContainsFunc(e.Criteria, func(c programme.CriterionAnswer) bool { return c.Holds != programme.CriterionMet })
			if e.May != all || e.May != slices.Contains(is.Open, e.Exit) {
				t.Fatalf("%v: %+v, open %v", e.Exit, e.Criteria, is.Open)
			}
		}
		if len(is.Open) < len(was.Open) {
			changed++
		}
	}
	for try := 0; changed == 0 && try < 10; try++ { // a hundred states may happen to have no open exit
		rapid.Check(t, law)
	}
	if changed == 0 {
		t.Error("no exit was ever closed")
	}
}

// An invented person after two weeks of learning, whom nobody has watched yet.
func ExamplePhaseExits() {
	s := readyState(dose.Familiarise)
	s.Technique = dose.Observation{}
	r, err := programme.PhaseExits(s)
	if err != nil {
		fmt.Println(err)
		return
	}
	words := programme.Words()
	fmt.Println(words.Clinician(r.Reasons[0]))
	for _, c := range r.Exits[0].Criteria {
		fmt.Println("-", words.Clinician(c.Reasons[0]))
	}
	// Output:
	// The phase familiarise goes on: no exit has every criterion met. What is not known permits none.
	// - Nothing open that happened: met; the plan: stands.
	// - No open referral: met; open: no.
	// - The plan in force, until 2027-01-25: met.
	// - In the phase since 2026-11-30, until 2026-12-14 at least: met.
	// - At least 4 sessions and 75 % of those planned: met; 6 of 8.
	// - The technique seen in this phase: not known.
	// - The latest 2 visits neither eased nor referred: met; they said: keep, raise.
}
