package exercise

import (
	_ "embed"
	"fmt"
	"strings"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// laddersText is the table of exercises. Nothing else holds these rows.
//
//go:embed ladders.txt
var laddersText string

// ladders reads the table on first use. It cannot panic: the file is built into the
// program, and a test holds that it can be read.
var ladders = sync.OnceValue(func() []ladder { return units.Must(readLadders(laddersText)) })

// readLadders reads the table, in its order: a line for each ladder, and for each of its
// exercises one that names it and those that say the rest.
func readLadders(text string) ([]ladder, error) {
	var all []ladder
	var now *ladder
	n := 0
	for line := range strings.SplitSeq(text, "\n") {
		n++
		what, value, _ := strings.Cut(line, ": ")
		switch {
		case line == "" || line[0] == '#':
			continue
		case what == "ladder" || what == "ladder beyond":
			all = append(all, ladder{below: ID(value)})
			now = &all[len(all)-1]
		case what == "exercise" && now != nil:
			now.rungs = append(now.rungs, rung{id: ID(value)})
		case rungLines[what] == nil || now == nil || len(now.rungs) == 0:
			return nil, fmt.Errorf("line %d: %w", n, field.Bad(what, "a line of an exercise", field.ErrUnknown))
		default:
			if err := rungLines[what](&now.rungs[len(now.rungs)-1], value); err != nil {
				return nil, fmt.Errorf("line %d: %w", n, err)
			}
		}
	}
	return all, nil
}

// rungLines take what the lines of an exercise say.
var rungLines = map[string]func(*rung, string) error{
	"name":    func(r *rung, v string) error { r.name = v; return nil },
	"also":    func(r *rung, v string) error { r.aliases = strings.Split(v, "; "); return nil },
	"pattern": func(r *rung, v string) error { return r.pattern.UnmarshalText([]byte(v)) },
	"how":     func(r *rung, v string) error { r.how = v; return nil },
	"muscles": func(r *rung, v string) error { r.muscles = v; return nil },
	"hold":    func(r *rung, v string) error { return r.hold.UnmarshalText([]byte(v)) },

	"muscles like": func(r *rung, v string) error { r.muscles, r.nearest = v, true; return nil },
	"with": listOf(func(r *rung, v string) error {
		r.with = append(r.with, 0)
		return r.with[len(r.with)-1].UnmarshalText([]byte(v))
	}),
	"is": listOf(wordOf(map[string]func(*rung){
		"one-sided":   func(r *rung) { r.oneSided = true },
		"by turns":    func(r *rung) { r.turns = true },
		"lifting":     func(r *rung) { r.lifts = true },
		"at a seat":   func(r *rung) { r.seat = true },
		"hands busy":  func(r *rung) { r.handsBusy = true },
		"chosen":      func(r *rung) { r.chosen = true },
		"other rests": func(r *rung) { r.otherRests = true },
	}, func(r *rung, mark func(*rung)) { mark(r) })),
	"demands": listOf(func(r *rung, v string) error {
		var d body.Demand
		err := d.UnmarshalText([]byte(v))
		r.demands = r.demands.Union(body.DemandSet(d))
		return err
	}),
	"counts": wordOf(map[string]counting{"small raise": smallLift, "held": held, "marched": marched, "walked": walked},
		func(r *rung, c counting) { r.count = c }),
	"begins": wordOf(map[string]firstWeight{"small raise": raiseFirst, "hinge": hingeFirst, "hinge with one": hingeOneFirst},
		func(r *rung, f firstWeight) { r.first = f }),
	"warns": listOf(wordOf(map[string]warning{"hinge pain": hingePain, "hinge position": hingePosition, "help at the start": startHelp},
		func(r *rung, w warning) { r.warn = append(r.warn, w) })),
	"facts": listOf(wordOf(map[string]evidence.FactID{"borne": factBorne, "heaviest": factHeaviest, "straight back": factStraightBack},
		func(r *rung, f evidence.FactID) { r.facts = append(r.facts, f) })),
}

// listOf takes a list one by one.
func listOf(take func(*rung, string) error) func(*rung, string) error {
	return func(r *rung, list string) error {
		for v := range strings.SplitSeq(list, "; ") {
			if err := take(r, v); err != nil {
				return err
			}
		}
		return nil
	}
}

// wordOf takes one of some words for what it stands for.
func wordOf[T any](words map[string]T, take func(*rung, T)) func(*rung, string) error {
	return func(r *rung, v string) error {
		t, ok := words[v]
		if !ok {
			return field.Bad(v, "a word of that line", field.ErrUnknown)
		}
		take(r, t)
		return nil
	}
}
