package setlog

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// slow reads the texts of a row field by field, and says all that is wrong with them.
// It is what [parser.quick] must agree with.
func (p *parser) slow() (Set, field.Errors) {
	var bad field.Errors
	s := Set{Key: body.Key(p.texts[ofPerson])}
	take := func(i int, err error) { bad.Add("/"+fieldNames[i], err) }
	var err error
	s.Day, err = p.days.read(string(p.texts[ofDay]))
	take(ofDay, err)
	is := p.exercise(p.texts[ofExercise])
	take(ofExercise, is.err)
	s.Exercise, s.Side, s.Hold = is.id, is.side, is.hold
	if text := p.texts[ofSide]; len(text) > 0 {
		s.Side, err = p.side(string(text))
		take(ofSide, err)
	}
	if text := p.texts[ofHold]; len(text) > 0 {
		s.Hold, err = parse[body.Hold](strings.ToLower(string(text)))
		take(ofHold, err)
	}
	s.Stated = p.stated(s.Hold)
	if text := p.texts[ofStated]; len(text) > 0 {
		s.Stated, err = parse[body.Stated](strings.ToLower(string(text)))
		take(ofStated, err)
	}
	s.Load, err = p.load(&bad)
	take(ofLoad, err)
	s.Reps, err = parseReps(string(p.texts[ofReps]))
	take(ofReps, err)
	s.Effort, err = p.effort(&bad)
	take(ofEffort, err)
	s.RepSeconds, err = parseSeconds(strings.Replace(string(p.texts[ofSeconds]), ",", ".", 1))
	take(ofSeconds, err)
	if p.numbered {
		take(ofSet, checkNumber(string(p.texts[ofSet])))
	}
	bad = check(s, len(p.texts[ofLoad]) > 0, bad)
	for i, f := range bad {
		if f.Path == "/load" && s.Load != 0 { // in the words of the log
			as := *f
			as.Got = shortText(p.texts[ofLoad])
			bad[i] = &as
		}
	}
	if has(bad, "/exercise") { // which would have said side and hold
		bad = slices.DeleteFunc(bad, func(f *field.Error) bool {
			return f.Path == "/side" && len(p.texts[ofSide]) == 0 || f.Path == "/hold" && len(p.texts[ofHold]) == 0
		})
	}
	return s, bad
}

// exercise looks a name up, and what goes where a row does not say side and hold.
func (p *parser) exercise(name []byte) *listed {
	is, _ := p.named.get(name, func(name string) (*listed, error) { return p.lookUp(name), nil })
	return is
}

func (p *parser) lookUp(name string) *listed {
	is := &listed{name: name, side: p.rd.Side, hold: p.rd.Hold}
	if name == "" {
		is.err = field.Bad(nil, "the name of an exercise", field.ErrMissing)
		return is
	}
	if id, named := p.exercises[folded(name)]; named {
		name = string(id)
	}
	if p.rd.Catalogue.Len() == 0 {
		is.id, _ = asID(name)
		return is
	}
	e, err := p.rd.Catalogue.Lookup(name)
	if err != nil {
		is.err = err
		return is
	}
	is.id = e.ID
	if is.hold == 0 {
		is.hold = e.Hold
	}
	if is.side == 0 && !e.OneSided {
		is.side = body.Both
	}
	return is
}

// stated is what a load counts where its row does not say: two weights need it.
func (p *parser) stated(h body.Hold) body.Stated {
	if h == body.OneEachHand {
		return p.rd.Stated
	}
	return 0
}

// load reads the load with its unit, from its own cell, the cell of the unit or the
// reader. What is wrong with the unit's cell goes to bad.
func (p *parser) load(bad *field.Errors) (units.Mass, error) {
	var given units.MassUnit
	if text := p.texts[ofUnit]; len(text) > 0 {
		var err error
		if given, err = units.ParseMassUnit(string(text)); err != nil {
			bad.Add("/unit", err)
			return 0, nil
		}
	}
	text := string(p.texts[ofLoad])
	if text == "" {
		return 0, nil // judged with the hold
	}
	number := strings.TrimRight(text, "[]_abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ")
	u := given
	if own := text[len(number):]; own != "" {
		var err error
		switch u, err = units.ParseMassUnit(own); {
		case err != nil:
			_, err = units.ParseMass(text)
			return 0, err
		case given != 0 && given != u:
			return 0, field.Bad(fmt.Sprintf("%.40q", text), "the unit beside it, "+given.String(), field.ErrConflict)
		}
	}
	if u == 0 {
		u = p.rd.Unit
	}
	if number = strings.TrimSpace(number); u == 0 {
		m, err := units.ParseMass(number + " kg")
		if err != nil || m != 0 {
			_, err = units.ParseMass(number) // says that there is no unit
		}
		return 0, err
	}
	return units.ParseMass(number + " " + u.String())
}

// maxSetNumber is the highest number of a set.
const maxSetNumber = 999

func checkNumber(text string) error {
	if text == "" {
		return field.Bad(nil, "1 to 999", field.ErrMissing)
	}
	n, err := strconv.Atoi(wholeNumber(text))
	switch {
	case err != nil:
		return field.Bad(fmt.Sprintf("%.40q", text), "a whole number, 1 to 999", field.ErrSyntax)
	case n < 1 || n > maxSetNumber:
		return field.Bad(n, "1 to 999", field.ErrOutOfRange)
	}
	return nil
}
