package equipment

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Guards against slips of the keyboard. Together they keep the heaviest load,
// about 5 million kg, within [units.MaxMass].
const (
	maxMass    = 1000 * units.Kilogram // of a dumbbell, handle, bar, pair of collars or pin position
	maxPlate   = 100 * units.Kilogram
	maxCount   = 500
	maxEntries = 100
	maxName    = 100
	minHeight  = 1
	maxHeight  = 100 // cm
)

// Validate returns every bad field of k at once, as [field.Errors]:
//
//   - a mass or count that is not given ([field.ErrMissing]) or outside what
//     its field's comment allows ([field.ErrOutOfRange])
//   - a kind of plate or add-on, a name of a handle, bar, stack or band, or a
//     thing, that stands twice in its list ([field.ErrDuplicate])
//   - a name with characters that do not print, or too long; of a band, with
//     others than lower-case letters, digits and dashes ([field.ErrSyntax])
//   - a stack without pins ([field.ErrMissing]), or with pins that do not rise
//     ([field.ErrOutOfRange])
//   - a height twice ([field.ErrDuplicate]), outside 1 to 100 cm ([field.ErrOutOfRange]),
//     or of what is not there ([field.ErrConflict])
//   - a list of over 100 entries ([field.ErrOutOfRange])
func (k Kit) Validate() error {
	var bad field.Errors
	bad.Add("/dumbbells", checkEach(k.Dumbbells, checkDumbbell))
	bad.Add("/kettlebells", checkEach(k.Kettlebells, checkDumbbell))
	bad.Add("/ankle_weights", checkEach(k.AnkleWeights, checkDumbbell))
	bad.Add("/handles", checkEach(k.Handles, checkHandle))
	bad.Add("/bars", checkEach(asHandles(k.Bars), checkHandle))
	bad.Add("/plates", checkEach(k.Plates, checkPlate))
	bad.Add("/stacks", checkEach(k.Stacks, checkStack))
	bad.Add("/bands", checkEach(k.Bands, checkBand))
	bad.Add("/things", checkEach(k.Things, checkThing))
	bad.Add("/seats_cm", k.checkHeights(k.Seats, exercise.Chair))
	bad.Add("/steps_cm", k.checkHeights(k.Steps, exercise.LowStep))
	return bad.Err()
}

// checkEach checks the entries of a list, each beside those before it. A list
// that is too long is not looked into: the checks compare all with all.
func checkEach[T any](list []T, check func(before []T, entry T) error) error {
	if len(list) > maxEntries {
		return field.Bad(fmt.Sprintf("%d entries", len(list)), fmt.Sprintf("at most %d entries", maxEntries), field.ErrOutOfRange)
	}
	var bad field.Errors
	for i, entry := range list {
		if err := check(list[:i], entry); err != nil {
			bad.Add("/"+strconv.Itoa(i), err)
		}
	}
	return bad.Err()
}

func checkDumbbell(_ []Dumbbell, d Dumbbell) error {
	var bad field.Errors
	bad.Add("/mass", checkMass(d.Mass, maxMass))
	bad.Add("/count", checkCount(d.Count))
	return bad.Err()
}

func checkHandle(before []Handle, h Handle) error {
	var bad field.Errors
	taken := slices.ContainsFunc(before, func(b Handle) bool { return b.Name == h.Name })
	bad.Add("/name", checkName(h.Name, taken))
	bad.Add("/mass", checkMass(h.Mass, maxMass))
	if h.Collars.Mass != 0 {
		bad.Add("/collars", checkMass(h.Collars, maxMass))
	}
	bad.Add("/count", checkCount(h.Count))
	if h.PlatesPerEnd < 0 || h.PlatesPerEnd > maxCount {
		bad.Add("/plates_per_end", field.Bad(h.PlatesPerEnd, fmt.Sprintf("0 (no limit stated) to %d", maxCount), field.ErrOutOfRange))
	}
	return bad.Err()
}

func checkPlate(before []Plate, p Plate) error {
	var bad field.Errors
	bad.Add("/mass", checkMass(p.Mass, maxPlate))
	if slices.ContainsFunc(before, func(b Plate) bool { return b.Mass.Mass == p.Mass.Mass }) {
		bad.Add("/mass", field.Bad(p.Mass, "each kind once, with its count", field.ErrDuplicate))
	}
	bad.Add("/count", checkCount(p.Count))
	return bad.Err()
}

func checkStack(before []Stack, s Stack) error {
	var bad field.Errors
	taken := slices.ContainsFunc(before, func(b Stack) bool { return b.Name == s.Name })
	bad.Add("/name", checkName(s.Name, taken))
	bad.Refuse(len(s.Pins) == 0, "/pins", nil, "at least one pin position", field.ErrMissing)
	bad.Add("/pins", checkEach(s.Pins, checkPin))
	bad.Add("/add_ons", checkEach(s.AddOns, checkPlate))
	return bad.Err()
}

func checkPin(before []units.Marked, pin units.Marked) error {
	if err := checkMass(pin, maxMass); err != nil {
		return err
	}
	if n := len(before); n > 0 && pin.Mass <= before[n-1].Mass {
		return field.Bad(pin, fmt.Sprintf("more than the pin before, %s", before[n-1]), field.ErrOutOfRange)
	}
	return nil
}

// checkName lets a name be left out, as often as one likes.
func checkName(name string, taken bool) error {
	unprintable := func(r rune) bool { return !unicode.IsPrint(r) }
	switch {
	case name == "":
		return nil
	case len(name) > maxName || !utf8.ValidString(name) || strings.ContainsFunc(name, unprintable):
		return field.Bad(fmt.Sprintf("%.40q", name), fmt.Sprintf("at most %d bytes of characters that print", maxName), field.ErrSyntax)
	case taken:
		return field.Bad(fmt.Sprintf("%q", name), "a name of its own", field.ErrDuplicate)
	}
	return nil
}

func checkBand(before []string, name string) error {
	switch {
	case name == "":
		return field.Bad(nil, "a name", field.ErrMissing)
	case len(name) > maxName || strings.Trim(name, "abcdefghijklmnopqrstuvwxyz0123456789-") != "":
		return field.Bad(fmt.Sprintf("%.40q", name), fmt.Sprintf("at most %d lower-case letters, digits and dashes", maxName), field.ErrSyntax)
	case slices.Contains(before, name):
		return field.Bad(fmt.Sprintf("%q", name), "a name of its own", field.ErrDuplicate)
	}
	return nil
}

// checkHeights also asks that what was measured is there, where that was told.
func (k Kit) checkHeights(heights []int, of exercise.Thing) error {
	var bad field.Errors
	bad.Add("", checkEach(heights, func(before []int, cm int) error {
		switch {
		case cm < minHeight || cm > maxHeight:
			return field.Bad(cm, fmt.Sprintf("%d to %d cm", minHeight, maxHeight), field.ErrOutOfRange)
		case slices.Contains(before, cm):
			return field.Bad(cm, "each height once", field.ErrDuplicate)
		}
		return nil
	}))
	needs := exercise.Exercise{Needs: []exercise.Thing{of}}
	if k.Things != nil && len(heights) > 0 && len(needs.Lacks(k.Things...)) > 0 {
		bad.Add("", field.Bad(heights, "no height, since there is no "+of.String(), field.ErrConflict))
	}
	return bad.Err()
}

func checkThing(before []exercise.Thing, t exercise.Thing) error {
	if slices.Contains(before, t) {
		return field.Bad(t, "each thing once", field.ErrDuplicate)
	}
	if t == 0 {
		return field.Bad(nil, "a thing", field.ErrMissing)
	}
	_, err := t.MarshalText()
	return err
}

func checkMass(m units.Marked, most units.Mass) error {
	allowed := func() string { return fmt.Sprintf("above 0 kg, at most %s", most) }
	switch {
	case m == units.Marked{}:
		return field.Bad(nil, allowed(), field.ErrMissing)
	case m.Mass <= 0 || m.Mass > most:
		return field.Bad(m, allowed(), field.ErrOutOfRange)
	}
	return nil
}

func checkCount(n int) error {
	allowed := func() string { return fmt.Sprintf("1 to %d", maxCount) }
	switch {
	case n == 0:
		return field.Bad(nil, allowed(), field.ErrMissing)
	case n < 0 || n > maxCount:
		return field.Bad(n, allowed(), field.ErrOutOfRange)
	}
	return nil
}
