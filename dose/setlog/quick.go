package setlog

import (
	"bytes"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
)

// quick reads the texts of a row as [parser.slow] does, if they are as most are; else it
// is false. It looks first whether a cell says what it said a row before.
func (p *parser) quick(s *Set) bool {
	if !p.quickRun(s) || !p.quickPlace(s) {
		return false
	}
	load, ok := p.quickLoad()
	if !ok {
		return false
	}
	reps, ok := digitsOf(p.texts[ofReps])
	if !ok {
		return false
	}
	if p.numbered {
		if n, ok := digitsOf(p.texts[ofSet]); !ok || n < 1 || n > maxSetNumber {
			return false
		}
	}
	s.Load, s.Reps = load, reps
	return p.quickEffort(s) && p.fine(s)
}

// quickRun reads what comes in runs: person, day and exercise.
func (p *parser) quickRun(s *Set) bool {
	l := &p.last
	if text := p.texts[ofPerson]; !bytes.Equal(text, l.person) {
		l.key, _ = p.memos.person.get(text, asKey)
		l.person = append(l.person[:0], text...)
	}
	if text := p.texts[ofDay]; !bytes.Equal(text, l.day) {
		on, err := p.memos.day.get(text, func(text string) (units.Day, error) { return p.days.read(text) })
		if err != nil {
			return false
		}
		l.on, l.day = on, append(l.day[:0], text...)
	}
	is := l.listed
	if text := p.texts[ofExercise]; string(text) != is.name {
		if is = is.next; is == nil || string(text) != is.name {
			if is = p.exercise(text); len(text) <= memoText { // else a chain of all would be kept
				l.listed.next = is
			}
		}
		l.listed = is
	}
	s.Key, s.Day = l.key, l.on
	s.Exercise, s.Side, s.Hold = is.id, is.side, is.hold
	return is.err == nil
}

// quickPlace reads side, hold and what the load counts.
func (p *parser) quickPlace(s *Set) bool {
	var err error
	if text := p.texts[ofSide]; len(text) > 0 {
		s.Side, err = p.memos.side.get(text, func(text string) (body.Side, error) { return p.side(text) })
	}
	if text := p.texts[ofHold]; err == nil && len(text) > 0 {
		s.Hold, err = p.memos.hold.get(text, parse[body.Hold])
	}
	s.Stated = p.stated(s.Hold)
	if text := p.texts[ofStated]; err == nil && len(text) > 0 {
		s.Stated, err = p.memos.stated.get(text, parse[body.Stated])
	}
	return err == nil
}

// quickLoad reads a load that is a plain number, or a text of load alone.
func (p *parser) quickLoad() (units.Mass, bool) {
	text := p.texts[ofUnit]
	u := p.rd.Unit
	switch {
	case len(text) == 0:
	case bytes.Equal(text, p.last.unit):
		u = p.last.of
	default:
		var err error
		if u, err = units.ParseMassUnit(string(text)); err != nil {
			return 0, false
		}
		p.last.of, p.last.unit = u, append(p.last.unit[:0], text...)
	}
	if u == units.KG || u == units.LB {
		if m, ok := decimal(p.texts[ofLoad], u); ok {
			return m, true
		}
	}
	if len(text) > 0 || len(p.texts[ofLoad]) == 0 {
		return 0, false
	}
	m, err := p.memos.load.get(p.texts[ofLoad], func(string) (units.Mass, error) { return p.load(nil) })
	return m, err == nil
}

// decimal reads up to six digits, of which up to four behind a sign, of a unit that ten
// thousand divide.
func decimal(text []byte, u units.MassUnit) (units.Mass, bool) {
	if len(text) == 0 || len(text) > 7 {
		return 0, false
	}
	n, sign := 0, -1
	for i, b := range text {
		switch {
		case b-'0' <= 9:
			n = n*10 + int(b-'0')
		case (b == '.' || b == ',') && sign < 0 && i > 0 && i < len(text)-1:
			sign = i
		default:
			return 0, false
		}
	}
	if sign < 0 {
		return units.Mass(n) * u.Mass(), n <= 999_999
	}
	part := u.Mass()
	for range len(text) - 1 - sign {
		part /= 10
	}
	return units.Mass(n) * part, len(text)-1-sign <= 4
}

// digitsOf reads a whole number of one to four digits.
func digitsOf(text []byte) (int, bool) {
	n := 0
	for _, b := range text {
		if b -= '0'; b > 9 {
			return 0, false
		}
		n = n*10 + int(b)
	}
	return n, len(text) >= 1 && len(text) <= 4
}

// quickEffort reads effort and seconds; the same cell says the same.
func (p *parser) quickEffort(s *Set) bool {
	if len(p.texts[ofScale])+len(p.texts[ofSeconds])+len(p.texts[ofRPE])+len(p.texts[ofRIR]) > 0 {
		return p.scaled(s)
	}
	text := p.texts[ofEffort]
	if len(text) == 0 {
		return true
	}
	if len(text) == 1 && !p.one[text[0]].IsZero() {
		s.Effort = p.one[text[0]]
		return true
	}
	e, err := p.memos.effort.get(text, func(string) (units.Effort, error) { return p.effort(nil) })
	if err == nil && len(text) == 1 {
		p.one[text[0]] = e
	}
	s.Effort = e
	return err == nil
}

// scaled reads an effort whose scale stands beside it or is its column's, and the seconds.
func (p *parser) scaled(s *Set) bool {
	var err error
	if text := p.texts[ofSeconds]; len(text) > 0 {
		s.RepSeconds, err = p.memos.seconds.get(text, func(text string) (float64, error) {
			return parseSeconds(strings.Replace(text, ",", ".", 1))
		})
	}
	if err != nil || !p.scaleReads() {
		return false
	}
	s.Effort, err = p.effort(nil)
	return err == nil
}

func (p *parser) scaleReads() bool {
	_, err := parse[units.Scale](strings.ToLower(string(p.texts[ofScale])))
	return err == nil
}

// fine reports whether s is valid. Of a set with a weight whose side, hold and
// statement were those of a valid one, only the numbers are looked at.
func (p *parser) fine(s *Set) bool {
	f := &p.last.fine
	known := f.Load > 0 && s.Side == f.Side && s.Hold == f.Hold && s.Stated == f.Stated && s.Stated != body.Total
	if known && s.Load > 0 && s.Load <= maxLoad && s.Reps >= 1 && s.Reps <= maxReps && s.RepSeconds == 0 {
		return true
	}
	if len(check(*s, len(p.texts[ofLoad]) > 0, nil)) > 0 {
		return false
	}
	if s.Load > 0 && s.Hold.Implements() > 0 {
		*f = *s
	}
	return true
}
