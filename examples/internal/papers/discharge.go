package papers

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
)

// Discharge returns the papers of the last day, that of the review: what the client
// takes along, and the letter, with the tests that the record keeps. Its errors are those
// of [Strengths].
func Discharge(r record.Record, review record.Review) ([]Paper, error) {
	tracks, err := Strengths(review.Items, review.Screening.Who)
	if err != nil {
		return nil, err
	}
	e := ending{r: r, review: review, kept: keeps(review), beside: shown(r, review), tests: functionChanges(review.Tested), tracks: tracks}
	v := OfReview(review)
	e.r.Profile.Setting, v.profile.Setting = screening.Alone, screening.Alone // from now on
	s, err := newSheet(review.Day, r.Note, review.Profile)
	if err != nil {
		return nil, err
	}
	e.client(s)
	s.Say(asTold, noDevice)
	l := letterOf(review)
	l.Last, l.Tables = true, e.tables()
	l.Tests = results(slices.DeleteFunc(slices.Clone(review.Tested), func(t choice.Tested) bool { return t.Change != nil })) // the others are in the table
	for _, t := range e.tests {
		l.Said = append(l.Said, t.change.Reasons...)
	}
	l.Opening = fmt.Sprintf("The end of a programme of strength training: %s%s", visits(review), planned(review.Attended))
	if way := onTheWay(r, review); len(way) > 0 {
		l.Training = append(way, slices.DeleteFunc(l.Training, func(line string) bool { return line == nothingCame })...)
	}
	if alarm := Alarms(review.Alarms); alarm != "" {
		l.Opening = alarm + " " + l.Opening
	}
	written, err := l.Document()
	list := []Paper{{"discharge", s.Document}, {"discharge-letter", written}}
	if v.takesInsulin() {
		list = append(list, Paper{"glucose", v.glucose()})
	}
	return list, err
}

// planned says how many sessions there were to be. Of days before
// these that no decision was kept of nothing is known.
func planned(a record.AttendanceReport) string {
	n := len(a.Sessions) - len(a.Away)
	if n == 0 || a.Sessions[0].Day <= a.Done[0] {
		return fmt.Sprintf("; planned: %d.", n)
	}
	return fmt.Sprintf("; planned from %s on: %d, and done of these: %d.", page.Day(a.Sessions[0].Day), n, n-len(a.Missed))
}

// An ending is what both papers of the last day are made of.
type ending struct {
	r      record.Record // of who trains with nobody near
	review record.Review
	kept   []dose.Prescription // what goes on, nothing where somebody is to look first
	beside []beside.Item       // likewise
	tests  []tested
	tracks []Strength
}

// keeps returns what goes on alone: the dose that was done last, with the weight that a search found, where
// the next one would be harder, else the next; never a search, and never more sets than maintaining asks for.
func keeps(r record.Review) []dose.Prescription {
	if r.Coming == nil {
		return nil
	}
	most, _ := programme.TakeAlong().Maintain.Sets.Max()
	var list []dose.Prescription
	for _, item := range r.Items {
		if item.Decision.Next == nil || len(item.Log) == 0 {
			continue
		}
		keep, v := *item.Decision.Next, item.Log[len(item.Log)-1]
		if next := keep; item.Decision.Action == progression.Progress { // what nobody has seen yet is not for alone
			keep = v.Plan
			keep.Cautions, keep.Rest = next.Cautions, next.Rest
			if count := lifted(v, next); keep.Finding != nil && count > 0 {
				keep.Load, keep.Count, keep.Span, keep.Reserve, keep.Mode = next.Load, min(count, next.Count), next.Span, next.Reserve, dose.Continued
			}
		}
		keep.Finding, keep.Sets = nil, min(keep.Sets, v.Plan.Sets, most)
		list = append(list, keep)
	}
	return list
}

// lifted is how often every set of a visit with the weight of a dose was done, 0 where some came
// to less than its range or left less than it asks for.
func lifted(v visitLog, p dose.Prescription) int {
	part := v.With(v.SetsWith(func(each units.Mass) bool { return each == p.Load.Each() }))
	left, told := part.Reserve()
	least, _ := p.Span.Min()
	if part.Done() == 0 || p.Measure == exercise.Repetitions && !(told && left >= p.Reserve.Least) {
		return 0
	}
	if fewest := slices.MinFunc(part.Sets, func(a, b setlog.Set) int { return cmp.Compare(a.Reps, b.Reps) }).Reps; fewest >= least {
		return fewest
	}
	return 0
}

// shown are the items beside lifting that go on alone: of one that would begin now nobody
// has seen anything. Of a record that keeps none, all go on.
func shown(r record.Record, review record.Review) []beside.Item {
	switch {
	case review.Coming == nil:
		return nil
	case len(r.Beside.InForce) == 0:
		return review.Coming.Beside
	}
	return slices.DeleteFunc(slices.Clone(review.Coming.Beside), func(i beside.Item) bool {
		return !slices.ContainsFunc(r.Beside.InForce, func(k beside.Item) bool { return k.Track == i.Track })
	})
}

func (e ending) client(s *sheet) {
	r := e.review
	s.Title = "For you, at the end of the programme"
	if len(r.Alarms) > 0 {
		s.Say(s.texts(r.Alarms[0].Reasons[:1])...)
	}
	s.Say(page.Wanted("What you wanted to be able to do, in your own words", r.Task, nil), done(r, false))
	s.Section("What you have reached")
	s.Table(e.lifted())
	if len(e.kept) > 0 && len(e.tracks) > 0 { // no praise beside what holds
		s.Say("Your strength, by all that you lifted. " + followed(e.tracks))
	}
	var results []string
	for _, t := range e.tests {
		results = append(results, fmt.Sprintf("%s: %s at the start, %s now. %s", upper(t.name), t.before, t.after, strings.Join(s.texts(t.change.Reasons), " ")))
	}
	for _, t := range r.Tested {
		if t.Trial != 0 && t.Last == nil {
			results = append(results, "We have not tested this with you: "+t.Trial.String()+". Have somebody beside you when you try.")
		}
	}
	s.Points(results...)
	if len(e.kept) == 0 {
		s.Listed("First", first(s, r)...)
		s.Say("Please do not go on alone until this has been looked at. We then tell you how to go on.")
		return
	}
	along := programme.TakeAlong()
	s.Section("What to keep doing")
	how := s.texts(along.Reasons[:2])
	if least, _ := along.Maintain.Sets.Min(); slices.ContainsFunc(e.kept, func(d dose.Prescription) bool { return d.Sets < least }) {
		how[len(how)-1] = fmt.Sprintf("Keep the weights that you have now: %d days a week, with as many sets of each exercise as stand below it.", along.Maintain.Days)
	}
	s.Points(how...)
	mind := slices.DeleteFunc(slices.Clone(r.Screening.Findings), func(f screening.Finding) bool { return !f.Known || !slices.Contains(aloneToo, f.Code) })
	s.Listed("What to mind with your health", append(s.texts(page.ToClient(screening.Outcome{Findings: mind})), e.company()...)...)
	lasting, parts := r.Screening, partsOf(e.kept)
	lasting.Setting = screening.Alone
	said := s.once(parts)
	s.Part("For all exercises")
	s.Points(slices.Concat(said.all, limits(lasting, r.Profile, true), said.several)...)
	for i, p := range parts {
		s.item(i+1, p, said.of[i])
	}
	s.beside(e.beside, r.Coming.NotBeside)
	e.hurts(s)
	e.breaks(s)
	s.Section("When to come back")
	s.Points(append(s.texts(along.Reasons[3:]), "We go through the questions about your health again by "+page.Day(r.Screening.ReviewBy)+".")...)
}

// aloneToo are the findings of which what the client reads holds without us, too.
var aloneToo = []screening.Code{insulin, "anticoagulant", "hypertension_treated", "osteoporosis", "pelvic_organ_prolapse"}

// company says which exercises are not for somebody alone: those that the planner has no dose of then.
func (e ending) company() []string {
	var names []string
	for _, item := range e.kept {
		e.r.Exercises, e.r.Phase, e.r.Minutes = []exercise.ID{item.Exercise}, dose.Familiarise, 0
		if w, err := e.r.Week(e.review.Next); err != nil || !slices.ContainsFunc(w.Sessions, func(s week.Session) bool { return len(s.Items) > 0 && s.Items[0].Exercise == item.Exercise }) {
			names = append(names, item.Name)
		}
	}
	if len(names) > 0 {
		names = []string{"Only while somebody is near: " + strings.Join(names, ", ") + "."}
	}
	return names
}

// hurts says what to do about pain, with the figures of the pain model's own rows.
func (e ending) hurts(s *sheet) {
	s.Section("When it hurts")
	s.Points(s.texts(programme.TakeAlong().Reasons[2:3])...)
	var rules []string
	for _, code := range []screening.Code{"pain_gt_5_reduce", "pain_not_settled_reduce", "pain_rising_week_on_week_reduce"} {
		term, _ := screening.LookUp(code)
		rules = append(rules, upper(term.Meaning)+".")
	}
	s.Say("Muscles may be sore for a day or two. Other pain, on a scale from 0 to 10:")
	s.Points(append(rules, "Ease means: a lighter weight, one set fewer, or a smaller movement. If that does not settle it, leave this exercise out and come to us.")...)
}

// breaks says with what to begin again after weeks away: the ladder of return, down to
// weights that are there.
func (e ending) breaks(s *sheet) {
	weeks := []int{1, 2, 4, 8}
	t := document.Table{Caption: "What to begin again with, if you were not ill", Head: []string{"Exercise"}}
	for _, w := range weeks {
		t.Head = append(t.Head, fmt.Sprintf("up to %s", page.Counted(w, "week")))
	}
	for _, item := range e.kept {
		row := []string{upper(item.Name)}
		for _, w := range weeks {
			row = append(row, e.again(item, w))
		}
		t.Rows = append(t.Rows, row)
	}
	s.Section("After a break")
	s.Table(t)
	s.Say("Then build up again over some weeks to what you did before. If you were ill, hurt or in hospital, come to us first.")
}

// again is what to begin with after so many weeks.
func (e ending) again(item dose.Prescription, weeks int) string {
	back, noRung := rule.ReturnAfter(weeks*7, screening.No)
	sets, noSets := back.Count(item.Sets)
	most, noLoad := back.Each(item.Load.Each())
	table, noTable := e.r.Kit.Compile(item.Hold)
	text := page.Counted(sets, "set")
	switch {
	case noRung != nil || noSets != nil: // nothing is known to begin with
	case back.Load == 1 && back.Sets == 1:
		return "as before"
	case item.Mode == dose.WithoutLoad:
		return text
	case noLoad == nil && noTable == nil:
		if load, err := table.Nearest(most, equipment.RoundingRule{}); err == nil {
			return load.Each().Short(units.Down) + ", " + text
		}
	}
	return "ask us"
}

// tables are start, end and change for the letter.
func (e ending) tables() []document.Table {
	list := []document.Table{e.lifted()}
	if len(e.tracks) > 0 {
		t := document.Table{Caption: fmt.Sprintf("Strength by all visits: change with its %v interval; rising and falling are changes of more than %v", StrengthLevel, StrengthMargin), Head: []string{"Exercise", "From", "To", "Change"}}
		for _, k := range e.tracks {
			t.Rows = append(t.Rows, []string{upper(k.Name), page.Day(k.Odds.From), page.Day(k.Odds.To), k.shown()})
		}
		list = append(list, t)
	}
	if len(e.tests) > 0 {
		t := document.Table{Caption: "Tests of function", Head: []string{"Test", "Start", "End", "Change"}}
		for _, one := range e.tests {
			t.Rows = append(t.Rows, []string{one.name, one.before, one.after, one.shown()})
		}
		list = append(list, t)
	}
	return list
}

// lifted is what was lifted at the first and at the last visit of each exercise.
func (e ending) lifted() document.Table {
	t := document.Table{Caption: "What was lifted", Head: []string{"Exercise", "First visit", "Last visit"}}
	for _, item := range slices.Concat(e.review.Items, e.review.Left) {
		logs := slices.DeleteFunc(slices.Clone(item.Log), func(v visitLog) bool { return len(v.Sets) == 0 })
		if len(logs) > 0 {
			t.Rows = append(t.Rows, []string{upper(item.Name), lifts(logs[0]), lifts(logs[len(logs)-1])})
		}
	}
	return t
}
