package main

import (
	"errors"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/command"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// logDiary logs the days of a diary that was typed in, of the exercises that were decided
// on last, and asks what a diary does not say of a pain.
func (s *session) logDiary() error {
	from, v, err := s.decided()
	if err != nil {
		return err
	}
	file, err := os.Open(s.diary)
	if err != nil {
		return err
	}
	defer file.Close()
	sets, days, err := v.ReadDiary(file)
	if err != nil {
		return fmt.Errorf("%s:\n%w", s.diary, err)
	}
	if err := s.rightly(sets); err != nil {
		return err
	}
	for i := range days {
		d := &days[i]
		if d.Day < from || d.Day > s.day || d.Day <= lastVisit(*s.r) {
			return fmt.Errorf("%s: %s is no day of this sheet: it is for days from %s to %s that were not logged yet", s.diary, d.Day, max(from, lastVisit(*s.r)+1), s.day)
		}
		err := s.showed(d, "On "+d.Day.String()+": ") // a sheet has no row for it
		if err == nil && d.Pain != nil {
			err = s.ofPain(d.Pain, d.Day)
		}
		if err != nil {
			return err
		}
	}
	if len(sets) == 0 {
		return errNothing
	}
	s.r.Done, s.r.Visits = append(s.r.Done, sets...), append(s.r.Visits, days...)
	return s.logged()
}

// rightly asks about each set that is likely to be a slip of the pen, and goes on where it was so.
func (s *session) rightly(sets []setlog.Set) error {
	for _, set := range sets {
		ex, err := s.lookUp(string(set.Exercise))
		if err != nil {
			return err
		}
		for _, a := range inForce(*s.r, set.Day) {
			slip := likelySlip(set, ex, s.r.Kit, a)
			if a.Exercise != set.Exercise || slip == "" {
				continue
			}
			slip = fmt.Sprintf("%s, %s: %s", set.Day, ex.Name, slip)
			if so, err := s.YesNo("diary_right", slip+". Was it so?"); err != nil || so != screening.Yes {
				return errors.Join(err, fmt.Errorf("%s: %s", s.diary, slip))
			}
		}
	}
	return nil
}

// decided is the day from which the last decision holds, and what its papers are made of.
func (s *session) decided() (units.Day, papers.Visit, error) {
	if len(s.r.Entries) == 0 {
		return 0, papers.Visit{}, errors.New("nothing was decided yet, so that there is no diary: visit comes first")
	}
	last := s.r.Entries[len(s.r.Entries)-1]
	if last.Plan != nil {
		return s.r.Began, papers.OfPlan(*last.Plan), nil
	}
	re, err := command.Kept(*s.r, last)
	if err != nil {
		return last.Day, papers.Visit{}, err
	}
	also, err := s.also(last)
	return last.Day, papers.OfReview(re, also...), err
}

// limbs are the regions of which there are two.
var limbs = []body.Region{body.Shoulder, body.Elbow, body.WristHand, body.Hip, body.Knee, body.AnkleFoot}

// ofPain asks what a pain was, where and, if nobody told, how much.
func (s *session) ofPain(pain *screening.Pain, day units.Day) (err error) {
	if pain.Kind, err = asking.OneOf(s.Desk, "pain_kind", "Of which kind was the pain of "+day.String()+"? \"don't know\" where nobody can tell: somebody then looks at it first.", screening.PainKinds(), false); err != nil {
		return err
	}
	if worst := max(*field.OrZero(pain.During), *field.OrZero(pain.NextMorning)); pain.Kind == 0 && (worst > 0 || pain.During == nil) { // it may be of any
		s.r.Happened = append(s.r.Happened, programme.Happening{Kind: programme.PainFlare, Day: day, Note: "of which kind the pain was nobody could tell"})
	}
	pain.Site, err = asking.OneOf(s.Desk, "pain_site", "Where?", body.Regions(), false)
	if err == nil && slices.Contains(limbs, pain.Site) {
		pain.Side, err = asking.OneOf(s.Desk, "pain_side", "On which side?", body.Sides(), false)
	}
	if err != nil || pain.During != nil || pain.NextMorning != nil {
		return err
	}
	for _, one := range []struct {
		key, text string
		score     **float64
	}{
		{"pain_usual", "How much does it hurt on most days, before training?", &pain.Usual}, {"pain_during", "At its worst during the sets?", &pain.During},
		{"pain_after", "Right after them?", &pain.After}, {"pain_next_morning", "The next morning?", &pain.NextMorning},
	} {
		err := s.Ask(one.key, one.text, "0 to 10; nothing where it is not known", func(answer string) error {
			if answer == "" {
				return nil
			}
			n, err := strconv.ParseFloat(strings.Replace(answer, ",", ".", 1), 64)
			if err != nil || !(n >= 0 && n <= 10) {
				return fmt.Errorf("%q is no number from 0 to 10", answer)
			}
			*one.score = &n
			return nil
		})
		if err != nil {
			return err
		}
	}
	return nil
}
