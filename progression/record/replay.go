package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"maps"
	"reflect"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// ErrEdition: an entry of another edition than the present one.
var ErrEdition = errors.New("another edition")

// ErrAnswer: an entry that is worked out again otherwise than it stands there.
var ErrAnswer = errors.New("another answer")

// An Entry is what was decided on a day, and what it rests on: what held then,
// and how long the lists of the record were.
type Entry struct {
	Day     units.Day `json:"day"`
	Decided units.Day `json:"decided,omitzero"` // on which it was, where that was kept and before Day
	Edition string    `json:"edition"`
	Given   Given     `json:"given"`
	Rests   Lengths   `json:"rests_on"`
	// One of these: the plan of a first visit, or the decisions on the exercises,
	// without their logs.
	Plan  *Plan     `json:"plan,omitempty"`
	Items []Decided `json:"items,omitempty"`
}

// Lengths are how long the lists of a record were.
type Lengths struct {
	Checks int `json:"checks,omitzero"`
	Tests  int `json:"tests,omitzero"`
	Seen   int `json:"seen,omitzero"`
	Asked  int `json:"asked,omitzero"`
	Visits int `json:"visits,omitzero"`
	Done   int `json:"done,omitzero"`
	// Function: none for an entry from before there were such tests.
	Function int `json:"function,omitzero"`
	// Practised: likewise.
	Practised int `json:"practised,omitzero"`
	// Happened and Looked: likewise.
	Happened int `json:"happened,omitzero"`
	Looked   int `json:"looked,omitzero"`
}

func (r Record) lengths() Lengths {
	return Lengths{len(r.Checks), len(r.Tests), len(r.Seen), len(r.Asked), len(r.Visits), len(r.Done), len(r.Function), len(r.Practised), len(r.Happened), len(r.Looked)}
}

// Decide works out what is to be kept of a day: [Record.Start] before the first
// visit, [Record.Next] from then on. The record is left as it is; the caller adds
// the entry to it.
func (r Record) Decide(day units.Day) (Entry, error) {
	e := Entry{Day: day, Edition: Edition(), Given: r.Given, Rests: r.lengths()}
	if len(r.Visits) == 0 {
		plan, err := r.Start(day)
		if err != nil {
			return Entry{}, err
		}
		e.Plan = &plan
		return e, nil
	}
	var err error
	if e.Items, err = r.Next(day); err != nil {
		return Entry{}, err
	}
	for i := range e.Items {
		e.Items[i].Log = nil
	}
	return e, nil
}

// A Replayed is an entry worked out again.
type Replayed struct {
	Stored, Now Entry
	// Err is nil where the edition and the answer are the same. Else it is an
	// [ErrEdition] or [ErrAnswer], or both, at the entry's place; or says why no
	// answer follows any more.
	Err error
}

// Replay works every entry out again from what it rests on. The record is taken
// to be valid.
func (r Record) Replay() []Replayed {
	list := make([]Replayed, 0, len(r.Entries))
	for i, stored := range r.Entries {
		one := Replayed{Stored: stored}
		var bad field.Errors
		var err error
		if one.Now, err = r.AsOf(stored).Decide(stored.Day); err != nil {
			bad.Add(path("entries", i), err)
		}
		if stored.Edition != Edition() {
			bad.Add(path("entries", i)+"/edition", field.Bad(stored.Edition, Edition(), ErrEdition))
		}
		if err == nil && !sameAnswer(stored, one.Now) {
			bad.Add(path("entries", i), field.Bad(nil, "the answer that stands there: what it rests on was changed since, or the packages answer otherwise", ErrAnswer))
		}
		one.Err = bad.Err()
		list = append(list, one)
	}
	return list
}

// AsOf returns the record as it was for an entry, with the entries before it: to print
// again what was said then. The record is taken to be valid, and the entry to be one of its own.
func (r Record) AsOf(e Entry) Record {
	n := e.Rests
	// A day may be decided on twice; an entry that the caller changed is known by its day and lengths.
	place := slices.IndexFunc(r.Entries, func(other Entry) bool { return reflect.DeepEqual(other, e) })
	if place < 0 {
		place = slices.IndexFunc(r.Entries, func(other Entry) bool { return other.Day == e.Day && other.Rests == n })
	}
	r.Given, r.Entries = e.Given, upTo(r.Entries, place)
	r.Checks, r.Tests, r.Seen = upTo(r.Checks, n.Checks), upTo(r.Tests, n.Tests), upTo(r.Seen, n.Seen)
	r.Function, r.Practised = upTo(r.Function, n.Function), upTo(r.Practised, n.Practised)
	r.Happened, r.Looked = upTo(r.Happened, n.Happened), upTo(r.Looked, n.Looked)
	r.Asked, r.Visits, r.Done = e.asked(upTo(r.Asked, n.Asked)), upTo(r.Visits, n.Visits), upTo(r.Done, n.Done)
	return r
}

// asked returns what was asked for without the ends that were set later: what was
// decided on was asked for on that day.
func (e Entry) asked(list []Asked) []Asked {
	list = slices.Clone(list)
	for _, item := range e.Items {
		for i := range slices.Backward(list) {
			if a := &list[i]; a.Exercise == item.Exercise {
				if a.Until < e.Day {
					a.Until = 0
				}
				break
			}
		}
	}
	return list
}

func upTo[T any](list []T, n int) []T { return list[:min(max(n, 0), len(list))] }

// sameAnswer compares what a and b say: values of reasons by their text, since
// entries of earlier days have no more of them, and not the facts, which may be found
// for what was said without. Editions are no answer.
func sameAnswer(a, b Entry) bool {
	was, errA := json.Marshal(a.unedited())
	is, errB := json.Marshal(b.unedited())
	if errA != nil || errB != nil {
		return false
	}
	return bytes.Equal(was, is) || reflect.DeepEqual(said(was), said(is))
}

// unedited returns e without its editions, and without the day on which it was decided.
func (e Entry) unedited() Entry {
	e.Edition, e.Given.Join.Edition, e.Decided = "", 0, 0
	if e.Plan != nil {
		plan := *e.Plan
		plan.Screening.Policy.Edition = 0
		e.Plan = &plan
	}
	return e
}

// said returns an entry that was written as JSON without the facts of reasons and with
// their values as texts alone.
func said(entry []byte) (v any) {
	json.Unmarshal(entry, &v) // what was written can be read
	bare(v, false)
	return v
}

// bare leaves code, names and values of each reason.
func bare(v any, isArg bool) {
	switch v := v.(type) {
	case []any:
		for _, e := range v {
			bare(e, isArg)
		}
	case map[string]any:
		if isArg {
			maps.DeleteFunc(v, func(name string, _ any) bool { return name != "name" && name != "value" })
		}
		if _, isReason := v["code"]; isReason {
			delete(v, "facts")
		}
		for name, e := range v {
			bare(e, name == "args")
		}
	}
}

// check asks for a day, an edition, an answer, and lists no longer than those of r.
func (e Entry) check(r Record) error {
	var bad field.Errors
	bad.Add("/day", e.Day.Check())
	bad.Add("/decided", given(e.Decided))
	if e.Decided > e.Day && e.Day.Check() == nil {
		bad.Add("/decided", field.Bad(e.Decided, e.Day.String()+" or before, the day that it is for", field.ErrConflict))
	}
	if e.Edition == "" {
		bad.Add("/edition", field.Bad(nil, "the edition that it was decided under", field.ErrMissing))
	}
	if (e.Plan == nil) == (len(e.Items) == 0) {
		bad.Add("/items", field.Bad(nil, "a plan, or the decisions on exercises, and not both", field.ErrConflict))
	}
	if e.Plan != nil {
		bad.Add("/plan", e.Plan.check())
	}
	most := r.lengths()
	for _, l := range []struct {
		name     string
		is, most int
	}{
		{"checks", e.Rests.Checks, most.Checks}, {"tests", e.Rests.Tests, most.Tests}, {"seen", e.Rests.Seen, most.Seen},
		{"asked", e.Rests.Asked, most.Asked}, {"visits", e.Rests.Visits, most.Visits}, {"done", e.Rests.Done, most.Done}, {"function", e.Rests.Function, most.Function},
		{"practised", e.Rests.Practised, most.Practised}, {"happened", e.Rests.Happened, most.Happened}, {"looked", e.Rests.Looked, most.Looked},
	} {
		if l.is < 0 || l.is > l.most {
			bad.Add("/rests_on/"+l.name, field.Bad(l.is, "0 up to the length of the record's list", field.ErrOutOfRange))
		}
	}
	return bad.Err()
}
