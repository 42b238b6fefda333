package main

import (
	"cmp"
	"errors"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// firstVisit asks for what a plan needs beside the interview, tests and plans.
func firstVisit(s *session) error {
	r := s.r
	if len(r.Visits) > 0 {
		return errors.New("the first visit is over: week, log and review go on")
	}
	if _, now, err := s.stricter(); err != nil || len(r.Asked) > 0 && s.unheard() != nil && now.Meanwhile == screening.Nothing {
		return cmp.Or(err, fmt.Errorf("nothing new is planned on a day whose check stops all: what was begun stays. %s", s.due()))
	}
	var asks []func() error
	if r.Kit.Equal(equipment.Kit{}) {
		asks = append(asks, func() error { return s.kit("Which weights are there?", true) })
	}
	if len(r.Days) == 0 || slices.Min(r.Days) < s.day {
		asks = append(asks, func() error { return s.days("On which days of the first week?", true) })
	}
	if r.BodyMass == 0 {
		asks = append(asks, s.weighed)
	}
	if len(r.Exercises) == 0 {
		asks = append(asks, func() error {
			return s.exercises("Are some exercises wanted by name?", "their names with commas between them; nothing: they are chosen for the task")
		})
	}
	if err := inTurn(asks...); err != nil {
		return err
	}
	if s.stand() != "" {
		return errors.New(s.due())
	}
	r.Asked = nil // what was planned before and never begun
	asks = []func() error{s.tested, s.functionTests, s.looks}
	if s.stops() != nil { // nobody is tested who is held
		asks = asks[2:]
	}
	if err := inTurn(asks...); err != nil {
		return err
	}
	entry, err := r.Decide(s.day)
	if err != nil {
		return err
	}
	r.Entries = append(r.Entries, entry)
	return inTurn(func() error { return s.planned(*entry.Plan, entry.Day) }, s.keep)
}

// inTurn asks one after the other, until one is stopped or fails.
func inTurn(all ...func() error) error {
	for _, ask := range all {
		if err := ask(); err != nil {
			return err
		}
	}
	return nil
}

// kit asks for the weights that are there. Where they are not needed, nothing means those from before.
func (s *session) kit(text string, needed bool) error {
	return s.Ask("kit", text, `dumbbells such as "2 x 1 kg, 2 x 2 kg, 1 x 8 kg"; the rest by name, "1 x 8 kg kettlebell, 2 x 1 kg ankle weight, 1 x 20 kg bar, 2 x 2 kg handle, 4 x 5 kg plate", "stack 5 10 15 kg" with what each pin lifts, "bands yellow red" with all of them, the weakest first; "+ 2 x 5 kg" beside those from before, "like NAME" who has the same, a FILE.json, or "none"`, func(answer string) error {
		if answer == "" && !needed {
			return nil
		}
		return put(&s.r.Kit)(s.readKit(answer))
	})
}

// put keeps what was read, if it could be: who corrects a slip, or then says nothing, has what was there before.
func put[T any](to *T) func(T, error) error {
	return func(v T, err error) error {
		if err == nil {
			*to = v
		}
		return err
	}
}

func (s *session) readKit(answer string) (kit equipment.Kit, err error) {
	if name, like := strings.CutPrefix(answer, "like "); like {
		other, err := s.folder.Read(name)
		if err == nil && other.IsNew() {
			err = fmt.Errorf("there is no %s", name)
		}
		return other.Record.Kit, err
	}
	if strings.HasSuffix(answer, ".json") {
		data, err := os.ReadFile(answer)
		err = cmp.Or(err, field.Decode(data, &kit, field.Strict))
		return kit, err
	}
	if strings.EqualFold(answer, "none") {
		return kit, nil
	}
	answer, more := strings.CutPrefix(answer, "+")
	if more {
		kit = s.r.Kit
	}
	for one := range strings.SplitSeq(decimalComma.ReplaceAllString(strings.ToLower(answer), "$1.$2"), ",") {
		if kit, err = withOne(kit, strings.TrimSpace(one)); err != nil {
			return kit, err
		}
	}
	return kit, kit.Validate()
}

// kindOf is how one kind of weight is typed: how many, what each weighs, and what it is.
var kindOf = regexp.MustCompile(`^(\d+) *x *(.+?)(?: +(dumbbell|kettlebell|ankle weight|bar|handle|plate)s?)?$`)

// decimalComma is a comma behind how many there are, which parts no kinds.
var decimalComma = regexp.MustCompile(`(x *\d+),(\d)`)

// withOne is a kit with one kind of weight more, or with all bands, since they have an order.
func withOne(kit equipment.Kit, text string) (_ equipment.Kit, err error) {
	words := strings.Fields(text)
	switch n := len(words) - 1; {
	case n > 0 && words[0] == "bands":
		kit.Bands = words[1:]
		return kit, nil
	case n > 1 && words[0] == "stack" && words[n] >= "a": // the unit is the last word
		pins := make([]units.Marked, n-1)
		for i, pin := range words[1:n] {
			mass, bad := units.ParseMarked(pin + " " + words[n])
			pins[i], err = mass, cmp.Or(err, bad)
		}
		kit.Stacks = append(slices.Clip(kit.Stacks), equipment.Stack{Pins: pins})
		return kit, err
	}
	typed := kindOf.FindStringSubmatch(text)
	if typed == nil || typed[3] == "bar" && typed[1] != "1" { // one is used at a time
		return kit, fmt.Errorf(`%q is not of the form "2 x 4 kg", "1 x 8 kg kettlebell", "1 x 20 kg bar", "stack 2.5 5 10 kg" or "bands yellow red"`, text)
	}
	n, _ := strconv.Atoi(typed[1]) // too many for an int are too many for a kit
	mass, err := units.ParseMarked(typed[2])
	one := equipment.Dumbbell{Mass: mass, Count: n}
	switch kind := typed[3]; {
	case err != nil:
	case kind == "kettlebell":
		kit.Kettlebells = append(slices.Clip(kit.Kettlebells), one)
	case kind == "ankle weight":
		kit.AnkleWeights = append(slices.Clip(kit.AnkleWeights), one)
	case kind == "bar":
		kit.Bars = append(slices.Clip(kit.Bars), equipment.Bar{Mass: mass})
	case kind == "handle":
		return kit.With(equipment.Purchase{Handle: equipment.Handle{Mass: mass, Count: n}})
	case kind == "plate":
		return kit.With(equipment.Purchase{Plate: equipment.Plate{Mass: mass, Count: n}})
	default:
		return kit.With(equipment.Purchase{Dumbbell: one})
	}
	return kit, err
}

// daysIn are the days of an answer, sorted.
func daysIn(answer string) (days []units.Day, err error) {
	for _, word := range strings.Fields(strings.ReplaceAll(answer, ",", " ")) {
		day, err := units.ParseDay(word)
		if err != nil {
			return nil, fmt.Errorf("%q is no day such as 2026-11-30", word)
		}
		days = append(days, day)
	}
	slices.Sort(days)
	return days, nil
}

// days asks for the days of the first week of a plan and the minutes of a session.
// Where they are not needed, nothing means the same days of the week, and the same
// minutes.
func (s *session) days(text string, needed bool) error {
	err := s.Ask("days", text, `such as "2026-11-30 2026-12-03"`, func(answer string) error {
		if answer == "" && !needed {
			return nil
		}
		days, err := daysIn(answer)
		n := len(days)
		switch {
		case err != nil:
			return err
		case n == 0:
			return errors.New("a day at least is needed")
		case days[0] < s.day:
			return fmt.Errorf("%s is over", days[0])
		case days[n-1] > days[0]+6:
			return fmt.Errorf("%s is not in one week with %s", days[n-1], days[0])
		case len(slices.Compact(slices.Clone(days))) < n:
			return errors.New("a day stands there twice")
		case !needed && !s.r.Brief && days[0]-lastVisit(*s.r) < week.DaysBetween:
			return errors.New("at least one day of rest comes after the last visit")
		}
		s.r.Days = days
		return nil
	})
	if err != nil {
		return err
	}
	return s.minutes()
}

func (s *session) minutes() error {
	return s.Ask("minutes", "How many minutes has a session?", "a number; nothing where it is not limited, or as before", func(answer string) error { return whole(answer, 0, 1440, &s.r.Minutes) })
}

// whole reads a number into n; nothing leaves it.
func whole(answer string, least, most int, n *int) error {
	is, err := strconv.Atoi(answer)
	switch {
	case answer == "":
	case err != nil || is < least || is > most:
		return fmt.Errorf("%q is no number from %d to %d", answer, least, most)
	default:
		*n = is
	}
	return nil
}

// away asks for days away, in place of those that were told and have not begun.
func (s *session) away() error {
	return s.Ask("away", "Will they be away, from which day to which?", `such as "2026-12-20 2027-01-03", or "none"; nothing: as told before`, func(answer string) error {
		days, err := daysIn(strings.TrimPrefix(answer, "none"))
		switch {
		case err != nil || answer == "":
			return err
		case len(days) > 0 && days[0] <= s.day || len(days) == 1 || len(days) > 2:
			return errors.New("the first and the last day are needed, both to come")
		}
		with := *s.r
		with.Away = slices.DeleteFunc(slices.Clone(s.r.Away), func(a record.Away) bool { return a.From > s.day })
		if len(days) > 0 {
			with.Away = append(with.Away, record.Away{From: days[0], Until: days[1]})
		}
		if err = with.Validate(); err == nil {
			s.changes, s.r.Away = true, with.Away
		}
		return err
	})
}

// exercises asks for those that are wanted by name; nothing leaves them as they are.
func (s *session) exercises(text, hint string) error {
	return s.Ask("exercises", text, hint, func(answer string) error {
		if answer == "" {
			return nil
		}
		var list []exercise.ID
		for one := range strings.SplitSeq(strings.TrimPrefix(answer, "none"), ",") {
			if one = strings.TrimSpace(one); one == "" {
				continue
			}
			ex, err := s.lookUp(one)
			if err != nil {
				return err
			}
			list = append(list, ex.ID)
		}
		s.r.Exercises = list
		return nil
	})
}

// weighed asks what somebody weighs.
func (s *session) weighed() error {
	before := s.r.BodyMass
	err := s.Ask("body_mass", "What do they weigh?", "such as 68 kg, or nothing", func(answer string) error {
		if answer == "" {
			return nil
		}
		return put(&s.r.BodyMass)(units.ParseMass(answer))
	})
	if err != nil || s.r.BodyMass == before {
		return err
	}
	return s.plausible(before)
}

// Masses of a body outside of which a slip is likelier than the person: our own choice, and no clinical number.
const leastBody, mostBody = 30 * units.Kilogram, 250 * units.Kilogram

// plausible asks about a body mass that is likely to be a slip, and goes back to the one before unless somebody says that it is right.
func (s *session) plausible(before units.Mass) error {
	m := s.r.BodyMass
	if m >= leastBody && m <= mostBody {
		return nil
	}
	right, err := s.YesNo("body_mass_right", fmt.Sprintf("%s is unusual for an adult. Were they weighed so?", m))
	if right != screening.Yes {
		s.r.BodyMass = before
		page.Wrap(s.said, "", fmt.Sprintf("The weight of %s is left out: nobody says that it is right.", m))
	}
	return err
}
