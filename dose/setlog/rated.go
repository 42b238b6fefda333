package setlog

import (
	"errors"
	"fmt"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// effort reads the effort from its cell with its scale, and from those of rpe and rir. What
// is wrong with another cell than the effort's own goes to bad.
func (p *parser) effort(bad *field.Errors) (units.Effort, error) {
	e, err := p.ownEffort(bad)
	for _, other := range [...]struct {
		at    int
		scale units.Scale
	}{{ofRPE, units.ScaleRPE}, {ofRIR, units.ScaleRIR}} {
		text := p.texts[other.at]
		if len(text) == 0 {
			continue
		}
		more, wrong := rated(string(text), other.scale, 0)
		if wrong == nil {
			e, wrong = lessLeft(e, more)
		}
		if wrong != nil && bad == nil {
			return e, wrong
		}
		if wrong != nil {
			bad.Add("/"+fieldNames[other.at], wrong)
		}
	}
	return e, err
}

// ownEffort reads the cells of effort and scale.
func (p *parser) ownEffort(bad *field.Errors) (units.Effort, error) {
	var given units.Scale
	if text := p.texts[ofScale]; len(text) > 0 {
		var err error
		if given, err = parse[units.Scale](strings.ToLower(string(text))); err != nil {
			if bad != nil {
				bad.Add("/scale", err)
			}
			return units.Effort{}, nil
		}
	}
	return rated(string(p.texts[ofEffort]), given, p.rd.Scale)
}

// rated reads an effort that has its scale with it, or a number on the scale given beside
// it, or else on a third.
func rated(text string, given, otherwise units.Scale) (units.Effort, error) {
	text = strings.ToLower(text)
	number := strings.TrimLeft(text, "abcdefghijklmnopqrstuvwxyz")
	if number == text && text != "" {
		if given == 0 {
			given = otherwise
		}
		return onScale(given, text)
	}
	if own := text[:len(text)-len(number)]; own != "cr" && !strings.HasPrefix(number, " ") && number != "" {
		text = own + " " + number // such as RPE8; cr10 ends in digits
	}
	e, err := parse[units.Effort](text)
	if err == nil && given != 0 && !e.IsZero() && e.Scale() != given {
		err = field.Bad(fmt.Sprintf("%.40q", text), "the scale beside it, "+given.String(), field.ErrConflict)
	}
	return e, err
}

// onScale reads a number on a scale that stands elsewhere.
func onScale(scale units.Scale, number string) (units.Effort, error) {
	on := scale
	if scale == 0 {
		on = units.ScaleRIR // any: the number is looked at before
	}
	e, err := parse[units.Effort](on.String() + " " + number)
	switch {
	case errors.Is(err, field.ErrSyntax):
		return units.Effort{}, field.Bad(fmt.Sprintf("%.40q", number), `a number, or a scale and a number, such as "rir 2"`, field.ErrSyntax)
	case scale == 0:
		return units.Effort{}, field.Bad(fmt.Sprintf("%.40q", number), `a scale too, such as "rir 2"`, field.ErrMissing)
	}
	return e, err
}

// lessLeft returns that of two ratings of one set that leaves less in reserve, if both are
// given; those that no reserve fits are a conflict.
func lessLeft(a, b units.Effort) (units.Effort, error) {
	switch {
	case a.IsZero() || a == b:
		return b, nil
	case b.IsZero():
		return a, nil
	}
	of, errA := a.RIR()
	and, errB := b.RIR()
	least, _ := of.Min()
	most, _ := of.Max()
	low, _ := and.Min()
	high, _ := and.Max()
	if errA != nil || errB != nil || a.Scale() == b.Scale() || max(least, low) > min(most, high) {
		return a, field.Bad(b, "what agrees with "+a.String()+", which stands beside it", field.ErrConflict)
	}
	if low < least || low == least && high < most {
		return b, nil
	}
	return a, nil
}
