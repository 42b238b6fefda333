package main

import (
	"cmp"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var errNothing = errors.New("nothing was done: no visit is written")

// logVisit asks what was done of what was asked for, and what was noted.
func logVisit(s *session) error {
	asked, paused := s.r.AskedOn(s.day)
	if len(asked) == 0 {
		return fmt.Errorf("nothing is asked for on %s. %s", s.day, s.due())
	}
	s.warn()
	if s.diary != "" { // of days that are over
		return s.logDiary()
	}
	if err := s.checkHeard(); err != nil {
		return err
	}
	if last := lastVisit(*s.r); last >= s.day {
		return fmt.Errorf("the visit of %s is logged already: one is logged once, and in the order of the days.%s", last, s.wayBack(s.day))
	}
	var done []setlog.Set
	said := map[string]bool{}
	for _, a := range asked {
		ex, err := s.lookUp(string(a.Exercise))
		if err != nil {
			return err
		}
		begin := blank(ex, s.day)
		begin.Load, begin.Side = a.Load, cmp.Or(a.Side, begin.Side)
		what := wanted(a, ex) + asWell(a, ex)
		if paused[ex.ID] || s.stand() != "" {
			what = "nothing is asked for until it is decided again"
		}
		hint := hintOf(ex)
		if said[hint] {
			hint = "likewise"
		}
		said[hintOf(ex)] = true
		var sets []setlog.Set
		err = s.Ask(string(ex.ID), ex.Name+": "+what+".", hint, func(answer string) (err error) {
			sets, err = likelySets(answer, begin, ex, s.r.Kit, a)
			return err
		})
		if err != nil {
			return err
		}
		done = append(done, sets...)
	}
	if len(done) == 0 {
		return fmt.Errorf("%w. %s", errNothing, s.due())
	}
	visit := record.TrainingDay{Day: s.day}
	if err := s.note(&visit, asked); err != nil {
		return err
	}
	s.r.Done, s.r.Visits = append(s.r.Done, done...), append(s.r.Visits, visit)
	for _, set := range done {
		s.see(set.Exercise, visit.Observer)
	}
	return s.logged()
}

// wayBack says how a visit that was logged wrongly is logged again: from the record before it.
func (s *session) wayBack(day units.Day) string {
	older, err := s.folder.Older(s.person.Name)
	for n, r := range slices.Backward(older) {
		if lastVisit(r) < day && err == nil {
			return fmt.Sprintf(" Where it was logged wrongly, gunzip -c %s/older/%s.%04d.json.gz is the record before it, which in the place of %s takes back all since.", s.folder, s.person.Name, n+1, s.folder.File(s.person.Name))
		}
	}
	return ""
}

// logged keeps what was logged, and says what comes next.
func (s *session) logged() error {
	if day := lastVisit(*s.r); needsCheck(*s.r, day) {
		page.Wrap(s.said, "", fmt.Sprintf("Each day of training needs a check, and of %s none is kept: the visit is kept all the same.", page.Day(day)))
	}
	return inTurn(s.keep, func() error { page.Wrap(s.said, "", s.due()); return nil })
}

// stand says what stands against training, "" where nothing does.
func (s *session) stand() string {
	list, err := s.r.Alarms(s.day)
	if err != nil {
		return untold(err)
	}
	return papers.Alarms(list)
}

// stricter is the assessment or today's check that lets less go on than the last decision knew of; "" if none does.
func (s *session) stricter() (what string, now screening.Outcome, err error) {
	now, err = s.r.Screening(s.day)
	what = "The assessment of " + now.Day.String()
	if c := s.unheard(); err == nil && c != nil {
		what = "The check of " + c.Day.String()
		now, err = screening.Today(*c, now)
	}
	n := len(s.r.Entries)
	if err != nil || n == 0 {
		return "", now, err
	}
	last := s.r.Entries[n-1]
	then, err := s.r.AsOf(last).Screening(last.Day)
	if err != nil {
		return "", now, err
	}
	if now.Meanwhile <= then.Meanwhile && reflect.DeepEqual(then.Limits.Join(now.Limits), then.Limits.Join(then.Limits)) {
		what = ""
	}
	return what, now, nil
}

// checkHeard refuses to go on with what was decided before what is stricter.
func (s *session) checkHeard() error {
	what, now, err := s.stricter()
	switch {
	case err != nil || what == "":
		return err
	case s.stand() != "":
		return errors.New(s.due())
	}
	return fmt.Errorf("%s says: meanwhile %s; what was decided before does not know of it. %s", what, now.Meanwhile, s.due())
}

// warn says it before anything else, and that what was decided is not for this day.
func (s *session) warn() {
	for _, text := range []string{s.stand(), stale(*s.r, s.day)} {
		if text != "" {
			page.Wrap(s.said, "", text)
		}
	}
}

// wanted says what was asked for, such as "asked for 2 × 10 with 6 kg, 3 left".
func wanted(a record.Asked, ex exercise.Exercise) string {
	text := fmt.Sprintf("asked for %d × %d", a.Sets, a.Count)
	if ex.Measure != exercise.Repetitions {
		text += " " + ex.Measure.String()
	}
	if a.Load > 0 {
		text += " with " + a.Load.String()
	}
	if ex.Hold == body.OneEachHand {
		text += " in each hand"
	}
	if a.Reserve != nil {
		text += fmt.Sprintf(", %s%v left", map[bool]string{true: "more than "}[a.Uncounted], *a.Reserve)
	}
	return text
}

// asWell says what else the client reads of it: the sides, and which other weight belongs to it.
func asWell(a record.Asked, ex exercise.Exercise) string {
	side := map[body.Side]string{body.Left: ", left side only", body.Right: ", right side only"}[a.Side]
	text := map[bool]string{true: cmp.Or(side, ", on each side")}[ex.OneSided]
	if a.Feel != nil {
		text += fmt.Sprintf("; the last set at most %d with %s", a.Feel.Count, a.Feel.Load)
	}
	return text + map[bool]string{true: "; where a set ends clearly easy, another with the next weight"}[a.Finding != nil && a.Finding.MaxSteps > 0]
}

// A sign is a code of what shows during a set, in words.
type sign screening.Code

func (s sign) String() string { return strings.ReplaceAll(string(s), "_", " ") }

func signs(yield func(sign) bool) {
	for t := range screening.Codes() {
		if t.Kind == screening.Sign && !yield(sign(t.Code)) {
			return
		}
	}
}

// showed asks what showed or was lost at a visit, which is of a day where it says so.
func (s *session) showed(v *record.TrainingDay, of string) error {
	showed, known, err := asking.SeveralOf(s.Desk, "showed", of+"Did any of these show?", signs)
	if err != nil {
		return err
	}
	if known {
		v.Moment = &screening.Moment{}
		for _, one := range showed {
			v.Moment.Signs = append(v.Moment.Signs, screening.Code(one))
		}
		seen := session{r: &record.Record{Given: s.r.Given, Version: record.Version, Visits: []record.TrainingDay{{Day: v.Day, Noted: v.Noted}}}, day: v.Day, said: s.said}
		seen.warn() // at once
	}
	return inTurn(s.told("range_lost", of+"Was range of movement lost?", &v.RangeLost), s.told("form_lost", of+"Did the technique give way?", &v.FormLost))
}

// note asks what was noted of a visit beside its sets.
func (s *session) note(v *record.TrainingDay, asked []record.Asked) error {
	err := s.showed(v, "")
	if err != nil {
		return err
	}
	if v.Observer, err = s.who("observer", "Who watched the technique?", "a name, or nothing"); err != nil {
		return err
	}
	hurt, err := s.YesNo("pain", "Did anything hurt, during or after the sets, or the next morning?")
	if err != nil || hurt == screening.Unknown {
		return err
	}
	if hurt == screening.No {
		v.PainFree = true
		return nil
	}
	return s.hurts(v, asked)
}

// hurts asks what hurt, how much, and in which exercise.
func (s *session) hurts(v *record.TrainingDay, asked []record.Asked) (err error) {
	pain := &screening.Pain{}
	if err = s.ofPain(pain, v.Day); err != nil {
		return err
	}
	if pain.WeeklyTrend, err = asking.OneOf(s.Desk, "pain_trend", "From week to week, which way does it go?", screening.Trends(), false); err != nil {
		return err
	}
	return s.Ask("pain_in", "In which exercises?", "their names, with commas between them; nothing: in all, or outside of them", func(answer string) error {
		v.But = nil
		for one := range strings.SplitSeq(answer, ",") {
			ex, err := s.lookUp(strings.TrimSpace(one))
			switch {
			case answer == "":
				v.Pain = pain
				return nil
			case err != nil || !slices.ContainsFunc(asked, func(a record.Asked) bool { return a.Exercise == ex.ID }):
				return fmt.Errorf("%q was not asked for on that day", one)
			case slices.ContainsFunc(v.But, func(b record.Exception) bool { return b.Exercise == ex.ID }):
				return fmt.Errorf("%q stands there twice", one)
			}
			v.But = append(v.But, record.Exception{Exercise: ex.ID, Noted: record.Noted{Pain: pain}})
		}
		v.PainFree = true // in the others
		return nil
	})
}
