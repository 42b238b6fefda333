package main

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/examples/internal/asking"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/units/evidence"
)

// situation is what the work beside lifting depends on.
func (s *session) situation() (beside.Situation, error) {
	outcome, err := s.r.Screening(max(s.day, s.r.Profile.Day))
	return beside.Situation{Day: s.day, Screening: outcome, Goal: s.r.Goal, Fast: s.r.Phase == dose.Power, Known: s.r.Beside}, err
}

// looks asks for what somebody has to look at before the work beside lifting begins or
// goes further; only where it waits for that. Nothing leaves it as it was.
func (s *session) looks() error {
	situation, err := s.situation()
	if err != nil {
		return err
	}
	items, barred, err := beside.Start(situation)
	if err != nil {
		return err
	}
	var waits []evidence.Reason
	for _, b := range barred {
		waits = append(waits, b.Reasons...)
	}
	for _, i := range items {
		waits = append(waits, i.Reasons...)
	}
	k := &s.r.Beside
	for _, one := range []struct {
		codes []evidence.ReasonCode
		ask   func() error
	}{
		{[]evidence.ReasonCode{"beside.look-first", "beside.no-brisk", "beside.unsteady"}, s.stancesToo},
		{[]evidence.ReasonCode{"beside.spine-first"}, s.told("spine_fracture", "Has a doctor looked at the spine, and is there a fracture? No: none was found.", &k.SpineFracture)},
		{[]evidence.ReasonCode{"beside.pelvic-floor"}, s.told("leak_on_landing", "Is there a leak or heaviness of the pelvic floor on landing?", &k.Leaks)},
	} {
		if slices.ContainsFunc(waits, func(r evidence.Reason) bool { return slices.Contains(one.codes, r.Code) }) {
			if err := one.ask(); err != nil {
				return err
			}
		}
	}
	return nil
}

// heldSeconds is for how long a stance of the four-stage balance test is held, as its sheet says.
const heldSeconds = 10

// byTest takes the stances held from a result of the four-stage balance test, whose score
// is the time of the third one. The next is tried only once the one before was held (its
// sheet, from memory): a time short of the full one says that two were, a full one that
// three were at least. Without a time it was not the third, and which of the others is not
// told, but no more than two; a refusal says nothing. It returns what the test says, 0 for
// nothing.
func (s *session) byTest(r function.Result) int {
	was := s.r.Beside.Stands
	switch done := r.How == function.Done; {
	case r.How == function.Refused:
	case done && r.Value.Number() >= heldSeconds:
		if was == nil || *was < 3 {
			s.r.Beside.Stands = new(3)
		}
		return 3
	case done && r.Value.Number() > 0:
		s.r.Beside.Stands = new(2)
		return 2
	case was != nil && *was > 2:
		s.r.Beside.Stands = nil
	}
	return 0
}

// stancesToo asks for them, unless that was done beside their test.
func (s *session) stancesToo() error {
	if s.balanced {
		return nil
	}
	return s.stances(0)
}

// stances asks how many were held; nothing leaves what the test of today says, or what was
// told before.
func (s *session) stances(byTest int) error {
	stands := "nothing where it is not known"
	if n := s.r.Beside.Stands; n != nil {
		stands = fmt.Sprintf("nothing: as before, %d", *n)
		if *n == byTest {
			stands = fmt.Sprintf("nothing: %d, as the test of today says", *n)
		}
	}
	return s.Ask("stances_held", "How many stances of the four-stage balance test were held for ten seconds?", "0 to 4, in its order: feet together, half-tandem, heel to toe, one leg; "+stands, func(answer string) error {
		n := -1
		err := whole(answer, 0, 4, &n)
		if n >= 0 {
			s.r.Beside.Stands = &n
		}
		return err
	})
}

// told asks with yes and no; who does not know leaves the answer as it was.
func (s *session) told(key, text string, answer *screening.Answer) func() error {
	return func() error {
		now, err := s.YesNo(key, text)
		if err == nil && now != screening.Unknown {
			*answer = now
		}
		return err
	}
}

// nobody are answers to the question who it was that name nobody, or the person alone; notNames
// are words with which no name begins.
var (
	nobody   = []string{"no one", "never", "nothing", "n/a", "yes", "me", "myself", "i", "self", "unknown"}
	notNames = []string{"no", "not", "none", "nobody", "noone", "don't", "don’t", "dont", "ask", "asked", "will", "later", "tomorrow", "soon", "client", "patient", "he", "she", "him", "her", "himself", "herself"}
)

// who asks for a name, and takes an answer that names nobody for none.
func (s *session) who(key, text, hint string) (string, error) {
	name, err := s.Text(key, text, hint, false)
	plain := strings.TrimSpace(strings.ToLower(strings.Trim(name, " .!")))
	first, _, _ := strings.Cut(strings.TrimPrefix(plain, "the "), " ")
	if slices.Contains(nobody, plain) || slices.Contains(notNames, strings.Trim(first, ",;.:")) || !strings.ContainsFunc(plain, unicode.IsLetter) {
		name = ""
	}
	return name, err
}

// looker asks whether somebody has looked, and then who; "" where nobody has, or nobody is
// named. In a file a name alone says that somebody has.
func (s *session) looker(key, text string) (string, error) {
	has, err := s.YesNo(key+"_at", text+" Has somebody looked at it since: a doctor, or whoever is responsible?")
	if err != nil || has == screening.No || has == screening.Unknown && s.IsTyped() {
		return "", err
	}
	return s.who(key, "Who was it?", "a name; without one it stands")
}

// lookedAt asks who has looked at what stands, and what they are, and keeps a look that counts for all that is
// open; else it says whose does.
func (s *session) lookedAt(stands []record.Alarm) error {
	who, err := s.looker("looked", papers.Alarms(stands))
	if err != nil || who == "" {
		return err
	}
	by, err := asking.OneOf(s.Desk, "looked_by", "What are they?", screening.Lifters(), false)
	if i := slices.IndexFunc(stands, func(a record.Alarm) bool { return a.Open && !a.Counts(by) }); i >= 0 {
		page.Wrap(s.said, "", fmt.Sprintf("The look of %s is not kept, and it stands: it takes %s.", who, stands[i].Who))
		return err
	}
	seen := dose.Observation{Who: who + ", " + by.String(), Day: s.day}
	page.Wrap(s.said, "", "What was told of is in no answer of the assessment yet: where it changes one, as a new medicine may, ask takes it in.")
	s.r.Looked = append(s.r.Looked, record.Look{Observation: seen, By: by, Visits: len(s.r.Visits), Happened: len(s.r.Happened), Practised: len(s.r.Practised), Checks: len(s.r.Checks)})
	return err
}
