package rota

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// Guards against slips of the keyboard.
const (
	maxClients     = 50
	maxItems       = 30
	maxClientName  = 100  // bytes
	maxItemSeconds = 3600 // of one exercise, rests included
)

// Validate returns every bad field of c at once, but for loads that the kit
// does not make, which [Schedule] reports.
func (c Class) Validate() error {
	var bad field.Errors
	bad.Add("/clients", checkClients(c.Clients))
	bad.Add("/kit", c.Kit.Validate())
	return bad.Err()
}

func checkClients(clients []Client) error {
	if len(clients) == 0 {
		return field.Bad(nil, "at least one client", field.ErrMissing)
	}
	if len(clients) > maxClients {
		return field.Bad(len(clients), fmt.Sprintf("at most %d clients", maxClients), field.ErrOutOfRange)
	}
	var bad field.Errors
	names := map[string]bool{}
	for i, client := range clients {
		at := "/" + strconv.Itoa(i)
		bad.Add(at+"/name", checkClientName(client.Name, names[client.Name]))
		bad.Add(at+"/items", checkItems(client.Items))
		names[client.Name] = true
	}
	return bad.Err()
}

func checkClientName(name string, taken bool) error {
	unprintable := func(r rune) bool { return !unicode.IsPrint(r) }
	switch {
	case name == "":
		return field.Bad(nil, "a name or number", field.ErrMissing)
	case len(name) > maxClientName || !utf8.ValidString(name) || strings.ContainsFunc(name, unprintable):
		return field.Bad(fmt.Sprintf("%.40q", name), fmt.Sprintf("at most %d bytes of characters that print", maxClientName), field.ErrSyntax)
	case taken:
		return field.Bad(fmt.Sprintf("%q", name), "a name of its own", field.ErrDuplicate)
	}
	return nil
}

func checkItems(items []dose.Prescription) error {
	if len(items) == 0 {
		return field.Bad(nil, "at least one exercise", field.ErrMissing)
	}
	if len(items) > maxItems {
		return field.Bad(len(items), fmt.Sprintf("at most %d exercises", maxItems), field.ErrOutOfRange)
	}
	var bad field.Errors
	for i, item := range items {
		bad.Add("/"+strconv.Itoa(i), checkTurn(item))
	}
	return bad.Err()
}

// checkTurn checks what a rota needs of a prescription: the weight to hold and
// what its length is worked out from.
func checkTurn(p dose.Prescription) error {
	var bad field.Errors
	bad.Refuse(p.Exercise == "", "/exercise", nil, "the ID of an exercise", field.ErrMissing)
	bad.Add("/hold", p.Hold.Check())
	if len(bad) == 0 && p.Hold != body.Unloaded {
		bad.Add("/load", checkHeld(p))
	}
	before := len(bad)
	bad.Add("/sets", checkPositive(p.Sets))
	bad.Add("/count", checkPositive(p.Count))
	if pace := p.Tempo.Seconds(); paced(p) && !(pace > 0) { // NaN too
		bad.Add("/tempo", field.Bad(pace, "above 0 seconds a repetition", field.ErrOutOfRange))
	}
	if length := p.Seconds(); len(bad) == before && !(length > 0 && length <= maxItemSeconds) {
		bad.Add("", field.Bad(length, fmt.Sprintf("above 0, at most %d seconds in all", maxItemSeconds), field.ErrOutOfRange))
	}
	return bad.Err()
}

// paced reports whether the length of a set follows from the tempo.
func paced(p dose.Prescription) bool {
	return p.Measure != exercise.Seconds && p.Measure != exercise.Metres
}

func checkHeld(p dose.Prescription) error {
	if p.Load.Hold() != p.Hold {
		return field.New("/hold", p.Load.Hold(), p.Hold.String()+", as the exercise is held", field.ErrConflict)
	}
	return p.Load.Validate()
}

func checkPositive(n int) error {
	if n < 1 {
		return field.Bad(n, "1 or more", field.ErrOutOfRange)
	}
	return nil
}

// workSeconds is the length without the rests between sets.
func workSeconds(p dose.Prescription) float64 {
	p.Rest = units.Range[int]{}
	return p.Seconds()
}

// length is how long an exercise takes at the station.
func (c Class) length(p dose.Prescription) float64 {
	if c.RestApart {
		return workSeconds(p)
	}
	return p.Seconds()
}

// slotSeconds returns the length of the longest exercise of the class, rounded
// up, and which it is.
func (p *problem) slotSeconds() (seconds int, name string, longest dose.Prescription) {
	for _, i := range p.order {
		for _, item := range p.class.Clients[i].Items {
			if s := int(math.Ceil(p.class.length(item))); s > seconds {
				seconds, name, longest = s, p.class.Clients[i].Name, item
			}
		}
	}
	return seconds, name, longest
}
