package rota

import (
	"fmt"
	"iter"
	"slices"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Facts that a rota rests on; those of dose are named there.
const (
	factSlots  evidence.FactID = "rota.equal-slots"
	factChange evidence.FactID = "dose.change-between-exercises"
	factPace   evidence.FactID = "dose.walking-pace"
	factSteps  evidence.FactID = "dose.finding-steps"
	factShare  evidence.FactID = "rota.hand-over"
	factGives  evidence.FactID = "rota.what-gives"
)

var facts = []evidence.Fact{
	{ID: factSlots, Value: "in a class that shares weights all slots are as long as the longest exercise of anybody",
		Basis: evidence.Design, From: []evidence.FactID{factChange, factPace}},
	{ID: factShare, Value: fmt.Sprintf("%d seconds to hand a weight over, where two take turns with it within a slot; each rests as long as prescribed", handOverSeconds), Basis: evidence.Design},
	{ID: factGives, Value: "in a class that is too long sets give first, then exercises; nobody is to wait", Basis: evidence.Design},
}

// Facts yields the facts behind this package's own choices; they rest on those
// of package dose.
func Facts() iter.Seq[evidence.Fact] { return slices.Values(facts) }

// Words returns what this package's reasons say. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words)) })

var words = evidence.Words{
	"rota.slot": {Clinician: "Slots of {seconds} seconds, {rests}: {exercise} of {name} is the longest exercise of the class. {change} seconds from one slot to the next."},
	"rota.no-waiting": {
		Client:    "Nobody has to wait for a weight.",
		Clinician: "Nobody waits for a weight in use.",
	},
	"rota.waiting": {
		Client:    "In some turns a weight is still in use. Please rest until the next turn.",
		Clinician: "Slots spent waiting, all clients together: {waiting}.",
	},
	"rota.best":          {Clinician: "Every other rota was ruled out: by waiting, then slots, then the usual order, then the order of names."},
	"rota.least-waiting": {Clinician: "No rota has less waiting and, with as little, fewer slots. The search was bounded: another may keep more of the usual order."},
	"rota.best-found":    {Clinician: "The search was bounded. No rota has less than {waiting} slots of waiting or, with as little as here, fewer than {slots} slots; what lies between is not proven."},
	"rota.order":         {Clinician: "Pairs of exercises not in their usual order, large before small: {pairs}. Each turn lists what it comes ahead of."},
	"rota.shared": {
		Client:    "In some turns two of you share a weight: one lifts while the other rests.",
		Clinician: "Pairs who share one weight within a slot, one lifting while the other rests: {pairs}.",
	},
	"rota.fitted":       {Clinician: "To fit {minutes} minutes: sets of an exercise at most {sets}, of {whole}; exercises left out, all clients together: {left}."},
	"rota.fewest":       {Clinician: "No choice with as little waiting leaves out fewer, or has more sets with as few left out."},
	"rota.fewest-found": {Clinician: "The search was bounded: another choice may leave out fewer, or have more sets."},
	"rota.remade":       {Clinician: "Weights put together otherwise than prescribed, at the same mass: {turns}."},
	"rota.finding":      {Clinician: "The weights for steps up while a load is looked for are not kept free: see that one is before stepping up."},
}
