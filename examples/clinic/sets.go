package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

const setsHint = `"all@3" for all that was asked, with 3 left; or such as "6 kg 10@3 9@2": the weight of one dumbbell where it is another than asked for, and of each set how many and how many were left; "left 8@2 right 8@2"; "none"`

// heldHint is that of what is held or walked: nobody counts what was left of it.
const heldHint = `"all" or, rated as 6 of 10 for how hard it was, "all@6/10"; or such as "6 kg 30@6/10 25@7/10", each set in %s; "left 20 right 20"; "none"`

// hintOf says how the sets of an exercise are written.
func hintOf(ex exercise.Exercise) string {
	if ex.Measure == exercise.Repetitions {
		return setsHint
	}
	return fmt.Sprintf(heldHint, ex.Measure)
}

// effortOf reads what stands behind a set: how many were left or, where nobody counts
// that, how hard it was. The one is not taken for the other: 0 left is all, 0 of 10 none.
func effortOf(word, told string, ex exercise.Exercise) (e units.Effort, err error) {
	rating, rated := strings.CutSuffix(told, "/10")
	switch counted := ex.Measure == exercise.Repetitions; {
	case counted && e.UnmarshalText([]byte("rir "+told)) != nil:
		return e, fmt.Errorf("%q: %q says not how many were left, 0 to 10", word, told)
	case !counted && (!rated || e.UnmarshalText([]byte("omni "+rating)) != nil):
		return e, fmt.Errorf("%q: %q says not how hard it was, such as 6/10; of %s nobody counts how many were left", word, told, ex.Measure)
	}
	return e, nil
}

// spelled writes out "all@3": every set and side as asked for.
func spelled(answer string, a record.Asked, ex exercise.Exercise) string {
	left, all := strings.CutPrefix(strings.ToLower(answer), "all")
	if !all || a.Sets == 0 || left != "" && !strings.ContainsRune("@!", rune(left[0])) {
		return answer
	}
	sets := strings.Repeat(fmt.Sprintf(" %d%s", a.Count, left), a.Sets)
	if ex.OneSided && (a.Side == 0 || a.Side == body.Both) {
		return "left" + sets + " right" + sets
	}
	return sets[1:]
}

// readSets reads sets as they are typed: "6 kg 10@3 9@2", "left 8 right 8". What begin says of exercise,
// day, side and weight holds until another is named, a weight behind a side for that side alone.
func readSets(text string, begin setlog.Set, ex exercise.Exercise) (sets []setlog.Set, err error) {
	if text == "" || strings.EqualFold(text, "none") {
		return nil, nil
	}
	text = strings.Join(strings.Fields(strings.ToLower(text)), " ") + " "
	set, hanging := begin, "" // a side or weight without a set behind it yet
	for word := range strings.FieldsSeq(strings.NewReplacer(", ", " ", ";", " ", " kg", "kg", " lb", "lb").Replace(text)) {
		switch side, isSide := sides[word]; {
		case isSide && !ex.OneSided && side != body.Both:
			return nil, fmt.Errorf("%s is done with both sides: leave out %s", ex.ID, word)
		case isSide:
			if hanging == "" && begin.Load > 0 { // no weight of the other side
				set.Load = begin.Load
			}
			set.Side, hanging = side, word
			continue
		case strings.HasSuffix(word, "kg") || strings.HasSuffix(word, "lb"):
			if set.Load, err = units.ParseMass(word); err != nil {
				return nil, fmt.Errorf("%q is no weight", word)
			}
			if hanging = word; len(sets) == 0 && set.Side == begin.Side { // before a side: of both
				begin.Load = set.Load
			}
			continue
		}
		if strings.Contains(word, ",") { // is "10@3,9" one set or two?
			return nil, fmt.Errorf("%q may be one set or several: between sets stands a space, and half of one left is 2.5", word)
		}
		reps, left, told := strings.Cut(word, "@")
		if set.Reps, err = strconv.Atoi(reps); err != nil {
			return nil, fmt.Errorf("%q is no set: it is written %s", word, hintOf(ex))
		}
		set.Effort = units.Effort{}
		if told {
			if set.Effort, err = effortOf(word, left, ex); err != nil {
				return nil, err
			}
		}
		if ex.OneSided && set.Side == body.Both {
			return nil, errors.New(`which side? such as "left 8@2 right 8@2"`)
		}
		if err = set.Validate(); err != nil {
			return nil, err
		}
		sets, hanging = append(sets, set), ""
	}
	if hanging != "" {
		return nil, fmt.Errorf("behind %q no set is told: it is written %s", hanging, hintOf(ex))
	}
	return sets, nil
}

// likelySets reads sets and asks back about what is likely to be a slip: a weight above the
// heaviest that is there, or ten times as many as were asked for, as with a digit too many.
// That is our own choice, and no clinical number. Sure behind them says that it was so.
func likelySets(answer string, begin setlog.Set, ex exercise.Exercise, kit equipment.Kit, a record.Asked) ([]setlog.Set, error) {
	text, sure := strings.CutSuffix(answer, " sure")
	sets, err := readSets(spelled(text, a, ex), begin, ex)
	if err != nil || sure {
		return sets, err
	}
	for _, set := range sets {
		if slip := likelySlip(set, ex, kit, a); slip != "" {
			return nil, errors.New(slip + ". If it is so, write sure behind it")
		}
	}
	return sets, nil
}

// likelySlip says why a set is likely to be one, "" where it is not.
func likelySlip(set setlog.Set, ex exercise.Exercise, kit equipment.Kit, a record.Asked) string {
	var most units.Mass
	if table, err := kit.CompileFor(ex); err == nil {
		for load := range table.Loads() {
			most = max(most, load.Each())
		}
	}
	switch {
	case set.Load > most && most > 0:
		return fmt.Sprintf("%s is heavier than what is there, %s at most", set.Load, most)
	case a.Count > 0 && set.Reps >= 10*a.Count:
		return fmt.Sprintf("%d is ten times as many as the %d that were asked for, or more", set.Reps, a.Count)
	}
	return ""
}

var sides = map[string]body.Side{"left": body.Left, "right": body.Right, "both": body.Both}

// blank is a set of an exercise without what was done.
func blank(ex exercise.Exercise, day units.Day) setlog.Set {
	s := setlog.Set{Day: day, Exercise: ex.ID, Side: body.Both, Hold: ex.Hold}
	if ex.Hold == body.OneEachHand {
		s.Stated = body.PerHand
	}
	return s
}

// lookUp is [exercise.Catalogue.Lookup] among those of the record.
func (s *session) lookUp(text string) (ex exercise.Exercise, err error) {
	catalogue, err := s.r.Catalogue()
	if err == nil {
		ex, err = catalogue.Lookup(text)
	}
	return ex, err
}

// tests asks for test sets, each exercise behind a semicolon.
func (s *session) tests() (list []setlog.Set, err error) {
	err = s.Ask("tests", "Which test sets were done?", `such as "seated-one-arm-row left 4 kg 8@2 right 4 kg 9@2; seated-hammer-curl 3 kg 7@2"; or nothing`, func(answer string) error {
		list = nil
		if answer == "" || strings.EqualFold(answer, "none") {
			return nil
		}
		for one := range strings.SplitSeq(answer, ";") {
			id, rest, _ := strings.Cut(strings.TrimSpace(one), " ")
			ex, err := s.lookUp(id)
			if err != nil {
				return err
			}
			sets, err := likelySets(rest, blank(ex, s.day), ex, s.r.Kit, record.Asked{})
			if err != nil {
				return fmt.Errorf("%s: %w", id, err)
			}
			if len(sets) == 0 {
				return fmt.Errorf("%s: no set is told", id)
			}
			list = append(list, sets...)
		}
		return nil
	})
	return list, err
}
