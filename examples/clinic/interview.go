package main

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"example.org/posology/dose/choice"
	"example.org/posology/dose/guideline"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// begin asks who somebody is, what for, and the interview.
func begin(s *session) (err error) {
	r, need := s.r, func(key, text, hint string, needed bool) (words string) {
		if err == nil {
			words, err = s.Text(key, text, hint, needed)
		}
		return words
	}
	r.Client = need("client", "How are the papers to call this person?", "such as Client A, 67, a woman", true)
	r.Note = need("note", "Is there a note for every page, such as that the person is invented?", "a line, or nothing", false)
	r.Task = need("task", "What do they want to be able to do, in their own words?", "a line", true)
	if err != nil {
		return err
	}
	if r.Tasks, _, err = asking.SeveralOf(s.Desk, "tasks", "What does that come to, the most wanted first?", choice.Tasks()); err != nil {
		return err
	}
	if r.Goal, err = asking.OneOf(s.Desk, "goal", "What is the training for?", guideline.Goals(), true); err != nil {
		return err
	}
	if r.Profile.Sex, err = asking.OneOf(s.Desk, "sex", "Is it a woman or a man? Some limits differ.", body.Sexes(), false); err != nil {
		return err
	}
	if r.Profile.Training, err = asking.OneOf(s.Desk, "training", "How far have they come with strength training?", body.Trainings(), true); err != nil {
		return err
	}
	return s.interview()
}

// ofTheDay are the questions whose answers of another day say nothing: how somebody is, and what was measured.
var ofTheDay = []string{
	"signs", "symptoms", "more_signs", "blood_pressure", "blood_pressure_again", "pulse", "resting_pulse_again", "today", "setting_today", "unwell", "hurt", "pain_kind", "pain_site", "pain_side", "pain_during", "pain_after",
	"pain_settled", "pain_trend", "febrile", "hf_worsening",
}

// ofTheHour are those that are asked again on the same day, too: sugar, ketones and oxygen
// move within hours, and count as they are right before the session; of a low the last 24
// hours are others by then.
var ofTheHour = []string{"glucose", "ketones", "blood_ketones", "oxygen_saturation", "oxygen_saturation_again", "severe_low_24h"}

// dayKey is the line of the day on which the others were answered.
const dayKey = "day"

// known is what is known before somebody is asked: what was answered last time and still stands,
// what stands if it was on this day and no session came in between, and what stood in the last
// assessment.
func (s *session) known() (known asking.Known, err error) {
	was, err := asking.Parse("what was answered before", s.person.Interview)
	if err != nil {
		return known, err
	}
	settled, today := was.All(), map[string]string{}
	isToday := settled[dayKey] == s.day.String() && lastVisit(*s.r) < s.day
	for _, key := range ofTheDay {
		if answer := settled[key]; answer != "" && isToday {
			today[key] = answer
		}
		delete(settled, key)
	}
	for _, key := range append(ofTheHour, dayKey) {
		delete(settled, key)
	}
	if s.day >= s.r.Profile.Day+365 {
		delete(settled, "age")
	}
	return asking.Known{Answers: today, Settled: settled, Was: s.r.Profile}, nil
}

// interview asks, puts the answers in the place of those from before, and tells what comes of them.
func (s *session) interview() error {
	if last := s.r.Profile.Day; s.day < last {
		return fmt.Errorf("the last assessment is of %s, and one of %s would take its place: nothing is written", last, s.day)
	}
	known, err := s.known()
	if err != nil {
		return err
	}
	maps.Copy(known.Settled, known.Answers)
	known.Answers, known.Settled = known.Settled, nil
	kept := s.ofToday()
	if kept != nil {
		known.Settled = map[string]string{"today": "no"} // the check says how they are today
	}
	talk, err := s.Interview(s.day, known)
	if err != nil {
		return err
	}
	p := talk.Since(s.r.Profile)
	if p.Age == 0 {
		return errors.New("we begin with the age: nothing is written")
	}
	var told []screening.Event // and what was told in between
	for _, c := range s.r.Checks {
		told = append(told, c.Events...)
	}
	for _, h := range s.r.Happened {
		if e, ok := h.Event(); ok {
			told = append(told, e)
		}
	}
	for _, e := range told {
		if e.Day <= p.Day && !slices.Contains(p.Events, e) {
			p.Events = append(p.Events, e)
		}
	}
	s.r.Profile = p
	if err := s.stillHeld(); err != nil {
		return err
	}
	left := s.keepInterview(talk, known.Was.Day)
	signs, err := s.graveSigns()
	if err != nil {
		return err
	}
	if talk.Trains() == screening.Yes && kept == nil && len(signs) == 0 {
		c := talk.Check()
		return s.tell(&c, left)
	}
	if s.keepSigns(talk.Check(), signs...); kept != nil {
		s.within(*kept)
		left = strings.TrimSpace(fmt.Sprintf("The check of %s stays as it is: what it found holds for that day, and nothing of the day was asked again. %s", s.day, left))
	}
	return s.tell(nil, left)
}

// stillHeld says what holds a condition that is answered with no, as the day of a fracture does, and asks for
// the letter that would free it.
func (s *session) stillHeld() error {
	p := &s.r.Profile
	o, err := s.r.Screening(s.day)
	for _, f := range o.Findings {
		term, _ := screening.LookUp(f.Code)
		if err != nil || term.Kind != screening.Condition || p.Conditions.Of(f.Code) != screening.No || f.Exit.With != screening.AClearance || f.Route < screening.AskFirst {
			continue
		}
		page.Wrap(s.said, "", fmt.Sprintf("It is answered with no: %s. What happened holds it all the same. What frees it: %s.", screening.Option(f.Code), f.Exit))
		who, stop := s.who("letter_"+string(f.Code), "Who has written that training may go on with it?", "a name; nothing: nobody has")
		if err = stop; who != "" {
			p.Clearances = append(slices.Clip(p.Clearances), screening.Clearance{Who: who, Day: s.day, Scope: []screening.Code{f.Code}})
		}
	}
	return err
}

// ofToday is the last check of this day, nil where there is none.
func (s *session) ofToday() *screening.Check {
	if n := len(s.r.Checks); n > 0 && s.r.Checks[n-1].Day == s.day {
		return &s.r.Checks[n-1]
	}
	return nil
}

// graveSigns are those that the assessment heard of and that send to help now or today.
func (s *session) graveSigns() (list []screening.Code, err error) {
	o, err := s.r.Screening(s.day)
	for _, code := range slices.Concat(s.r.Profile.Symptoms.Present, s.r.Profile.RedFlags.Present) {
		if slices.ContainsFunc(o.Findings, func(f screening.Finding) bool { return f.Code == code && f.Route >= screening.SameDay }) {
			list = append(list, code)
		}
	}
	return list, err
}

// keepSigns keeps such signs in a check of the day or, where one is kept already, beside it:
// the next assessment takes the place of this one, and nobody would have looked.
func (s *session) keepSigns(c screening.Check, signs ...screening.Code) {
	switch kept := s.ofToday(); {
	case len(signs) == 0:
	case kept == nil:
		c.Day, c.Setting, c.New = s.day, s.r.Profile.Setting, screening.AskedFor(signs...)
		s.r.Checks = append(s.r.Checks, c)
	case slices.ContainsFunc(signs, func(c screening.Code) bool { return !slices.Contains(kept.New.Present, c) }):
		s.r.Happened = append(s.r.Happened, programme.Happening{Kind: programme.NewSymptom, Day: s.day, Unassessed: screening.No})
	}
}

// within holds the assessment to no more company than a check of the day has.
func (s *session) within(c screening.Check) {
	if least := max(c.Setting, screening.Alone); least < s.r.Profile.Setting {
		page.Wrap(s.said, "", fmt.Sprintf("\nThe assessment was for training %s. From today on it is for %s, until ask says otherwise.", s.r.Profile.Setting, least))
		s.r.Profile.Setting = least
	}
}

// check asks what is asked on the day of a session: how somebody is now, and readings.
func check(s *session) error {
	if c := s.ofToday(); c != nil {
		return s.measureAgain(*c)
	}
	known, err := s.known()
	if err != nil {
		return err
	}
	known.Settled["today"], known.Was.Symptoms = "yes", screening.Checklist{} // which today's check takes from no profile
	talk, err := s.Interview(s.day, known)
	if err != nil {
		return err
	}
	c := talk.CheckSince(s.r.Profile)
	if o, err := talk.Outcome(); talk.Trains() != screening.Yes && (err != nil || o.Route != screening.Emergency) {
		return errors.New("the check ended before it was through, and nothing is written: check comes again; ask comes first where there was no interview yet")
	}
	s.within(c)
	return s.tell(&c, s.keepInterview(talk, known.Was.Day))
}

// measureAgain asks what the meter shows after a low was treated, and what is read after a rest
// where a first reading asks for a second, before the session. All readings are kept.
func (s *session) measureAgain(c screening.Check) error {
	o, err := s.r.Screening(s.day)
	if err == nil {
		o, err = screening.Today(c, o)
	}
	was := c
	for _, one := range []struct{ key, text, hint string }{
		{"glucose_again", "The sugar was low. What does the meter show now, a quarter of an hour after something sweet?", `with its unit, such as "98 mg/dL" or "5.4 mmol/L"`},
		{"blood_pressure_again", "What is the blood pressure after a few quiet minutes?", "both numbers, such as 138/82"},
		{"resting_pulse_again", "What is the pulse after a few quiet minutes?", "beats a minute"},
		{"oxygen_saturation_again", "The oxygen was low. What does the clip on the finger show after a few quiet minutes?", "per cent, such as 95"},
	} {
		asks := slices.ContainsFunc(o.Missing, func(q screening.Question) bool { return string(q.Code) == one.key })
		low := one.key == "glucose_again" && slices.Contains(screening.SessionDay(c, screening.Profile{}).Reasons, "glucose_52_69_treat_first")
		if err != nil || !asks && !low || lastVisit(*s.r) >= s.day {
			continue
		}
		err = s.Ask(one.key, one.text, one.hint+"; nothing where it was not measured", func(answer string) (err error) {
			more := c
			switch {
			case answer == "":
			case low:
				more.GlucoseAgain, err = screening.ParseGlucose(answer)
			case one.key == "blood_pressure_again":
				more.BPAgain = new(screening.BloodPressure)
				_, err = fmt.Sscanf(answer, "%d/%d", &more.BPAgain.Systolic, &more.BPAgain.Diastolic)
			case one.key == "resting_pulse_again":
				err = whole(answer, 20, 250, &more.RestingPulseAgain)
			default:
				err = whole(strings.TrimRight(answer, " %"), 50, 100, &more.SpO2Again)
			}
			return put(&c)(more, cmp.Or(err, more.Validate()))
		})
	}
	if err != nil || reflect.DeepEqual(was, c) {
		return cmp.Or(err, fmt.Errorf("a check of %s is kept already: a record keeps one a day, and what was found holds for that day; only sugar that is treated, and once what was to be read again after a rest, are measured again, with check", s.day))
	}
	return s.tell(&c, "")
}

// tell says what comes of the assessment and of the check of the day, which it keeps, if there is one; and what nobody came to.
func (s *session) tell(c *screening.Check, left string) error {
	o, err := s.r.Screening(s.day)
	if err != nil {
		return err
	}
	if c != nil {
		s.r.Checks = append(s.r.Checks, *c)
	}
	var pain *screening.Pain
	if c = s.ofToday(); c != nil {
		pain = c.Pain
		if o, err = screening.Today(*c, o); err != nil {
			return err
		}
	}
	if s.wanted.Reader == "client" {
		asking.TellClient(s.said, o)
	} else {
		asking.TellClinician(s.said, o, asking.Sided(s.r.Profile, pain)...)
	}
	if left != "" {
		fmt.Fprintln(s.said)
		page.Wrap(s.said, "", left)
	}
	return s.keep()
}

// keepInterview keeps an interview as a file of answers, and of which day they are. What it
// did not come to is kept as it stood, with the day of then; it returns a text of it.
func (s *session) keepInterview(talk interview.Interview, last units.Day) string {
	var lines, left, said []string
	given := map[string]bool{dayKey: true}
	for _, g := range talk.Given() {
		given[g.Key] = true
		lines = append(lines, g.Key+": "+asking.Written(g.Reply))
	}
	day := dayKey + ": " + s.day.String()
	for line := range strings.Lines(s.person.Interview) {
		key, _, _ := strings.Cut(line, ":")
		switch {
		case given["today"]:
		case key == dayKey:
			day = strings.TrimSpace(line)
		case !given[key]:
			if left = append(left, strings.TrimSpace(line)); !slices.Contains(ofTheDay, key) && !slices.Contains(ofTheHour, key) {
				said = append(said, strings.TrimSpace(line))
			}
		}
	}
	s.person.Interview = strings.Join(slices.Concat([]string{day}, lines, left), "\n") + "\n"
	if len(left) == 0 {
		return ""
	}
	return fmt.Sprintf("Nobody came to these questions. They stay as answered, and so does all else that stood in the assessment of %s: %s.", last, strings.Join(said, "; "))
}
