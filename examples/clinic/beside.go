package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose/beside"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/programme"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

const besideHint = `such as "4 days, least 10": on how many days, and the least of any of them (seconds held, movements, minutes); behind that what happened: "more hands", %s; "0 days, missed 20"; nothing where it is not known`

// troubles are what may have happened, as it is typed.
func troubles() string {
	var names []string
	for trouble := range beside.Troubles() {
		names = append(names, strconv.Quote(trouble.String()))
	}
	return strings.Join(names, ", ")
}

// besides asks what came of the work beside lifting since it was last looked at, and goes
// on with its steps. Of what nothing is known stays as it is.
func (s *session) besides() error {
	if err := s.looks(); err != nil {
		return err
	}
	situation, err := s.situation()
	if err != nil {
		return err
	}
	items, _, err := beside.Start(situation) // what they are called, and their dose now
	if err != nil {
		return err
	}
	fell, dizzy := []programme.HappeningKind(nil), false
	moved := map[int]beside.Item{}
	for _, item := range items {
		at := slices.IndexFunc(s.r.Beside.InForce, func(k beside.Item) bool { return k.Track == item.Track })
		if at < 0 {
			continue
		}
		most := s.daysSince(s.r.Beside.InForce[at])
		err := s.Ask("beside_"+string(item.Track), "What came of this: "+page.BesideText(item)+"?", fmt.Sprintf(besideHint, troubles()), func(answer string) error {
			if answer == "" {
				return nil
			}
			h, err := happened(answer, s.day-lastDecision(s))
			switch {
			case err != nil:
				return err
			case h.Days > most:
				return fmt.Errorf("%d days since it was looked at last are too many: %d at most", h.Days, most)
			}
			next, err := beside.Next(item, h, situation)
			if err != nil {
				return err
			}
			if dizzy = dizzy || slices.Contains(h.Troubles, beside.Dizzied); slices.Contains(h.Troubles, beside.Tumbled) {
				fell = append(fell, programme.Fall)
			}
			next = next.Place()
			if next.Last = s.day; len(h.Troubles) > 0 { // for letters
				what := evidence.Text(papers.ToldBeside, strings.Trim(fmt.Sprint(h.Troubles), "[]"))
				next.Reasons = []evidence.Reason{evidence.Because("beside.easier").With(what)}
			}
			moved[at] = next
			return nil
		})
		if err != nil {
			return err
		}
	}
	if dizzy {
		s.keepSigns(screening.Check{}, "dizziness_or_syncope")
	}
	if err := s.keepHappened(fell...); err != nil {
		return err
	}
	s.moveOn(moved)
	return nil
}

// moveOn keeps the steps that were reached, none of them harder while something stands or all is held.
func (s *session) moveOn(moved map[int]beside.Item) {
	held, kept := s.stand() != "" || idle(*s.r, s.day), slices.Clone(s.r.Beside.InForce) // a decision rests on the old ones
	for at, next := range moved {
		if was := kept[at]; held && !next.Paused && (next.Step > was.Step || next.Step == was.Step && next.Met > was.Met) {
			next.Step, next.Met = was.Step, was.Met
		}
		kept[at] = next
	}
	s.r.Beside.InForce = kept
}

// lastDecision is the day of the decision that is in force.
func lastDecision(s *session) units.Day {
	if n := len(s.r.Entries); n > 0 {
		return min(s.r.Entries[n-1].Day, s.day)
	}
	return s.day
}

// daysSince is how many days there were of what goes on, this one too, that were not told: from
// the last visit that the decision in force knew, or the day of the first plan, on.
func (s *session) daysSince(going beside.Item) int {
	n := len(s.r.Entries)
	if n == 0 {
		return 0
	}
	from := s.r.Entries[n-1].Day
	if visits := s.r.Entries[n-1].Rests.Visits; visits > 0 {
		from = s.r.Visits[visits-1].Day
	}
	return int(s.day-max(from, going.Last+1)) + 1
}

// happened reads an answer; who did nothing has missed all days since the last decision.
func happened(answer string, since units.Day) (h beside.Happened, err error) {
	for i, part := range strings.Split(strings.ToLower(answer), ",") {
		switch part = strings.TrimSpace(part); {
		case i == 0:
			if _, err = fmt.Sscanf(part, "%d day", &h.Days); err != nil {
				return h, fmt.Errorf("%q says not on how many days", part)
			}
		case strings.HasPrefix(part, "least "), strings.HasPrefix(part, "missed "):
			word, number, _ := strings.Cut(part, " ")
			n, err := strconv.Atoi(number)
			if err != nil {
				return h, fmt.Errorf("%q is no number", number)
			}
			*map[string]*int{"least": &h.Least, "missed": &h.Missed}[word] = n
		case part == "more hands":
			h.MoreHands = true
		default:
			var trouble beside.Trouble
			if err = trouble.UnmarshalText([]byte(part)); err != nil {
				return h, err
			}
			h.Troubles = append(h.Troubles, trouble)
		}
	}
	if h.Days == 0 {
		h.Missed = max(h.Missed, int(since))
	}
	return h, nil
}

// keepBeside keeps the steps of what is asked for beside lifting, and up to when it was told. What cannot be done
// for now keeps its own: a pause is not forgotten.
func (s *session) keepBeside(items []beside.Item) {
	kept := slices.Clone(s.r.Beside.InForce) // a decision rests on the old ones
	for _, item := range items {
		at := slices.IndexFunc(kept, func(k beside.Item) bool { return k.Track == item.Track })
		switch {
		case item.Track == "":
		case at < 0:
			kept = append(kept, item.Place())
		case item.Step < kept[at].Step && s.ofToday() != nil: // a day's check lowers nothing for good
		default:
			item.Last = max(item.Last, kept[at].Last)
			kept[at] = item.Place()
		}
	}
	s.r.Beside.InForce = kept
}
