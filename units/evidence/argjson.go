package evidence

import (
	"cmp"
	"encoding/json"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// figure is one number of a as exactly as JSON has it.
func (a Arg) figure(n int64) string {
	switch {
	case a.kind == isMass:
		unit, _ := units.ParseMassUnit(a.text) // of a unit that is none: kg, which is what prints
		figure, _, _ := strings.Cut(units.Mass(n).Text(unit), " ")
		return figure
	case a.kind.whole():
		return strconv.FormatInt(n, 10)
	case a.kind == isQuantity:
		return strconv.FormatFloat(real(n), 'f', -1, 64)
	}
	return strconv.FormatFloat(real(n), 'g', -1, 64)
}

// parse is the inverse of figure.
func (a Arg) parse(figure string) (int64, error) {
	switch {
	case a.kind == isMass:
		m, err := units.ParseMass(figure + " " + a.text)
		return int64(m), err
	case a.kind.whole():
		return strconv.ParseInt(figure, 10, 64)
	}
	x, err := strconv.ParseFloat(figure, 64)
	return bits(x), err
}

// Value is what a prints in English.
func (a Arg) Value() string { return Locale{}.print(a) }

// String prints name and value.
func (a Arg) String() string { return a.Name + " " + a.Value() }

// Equal is ==, for packages that compare by it.
func (a Arg) Equal(b Arg) bool { return a == b }

// Kind says what a is, as its JSON does: "text"; "code", the same in every language;
// "term" or "terms" of a closed list; "day"; else a number or a range of them: "count",
// "change", "seconds", "minutes", "days", "mass", "number", "tenths", "share",
// "quantity", "reserve", "uncounted" or "effort".
func (a Arg) Kind() string { return kinds.Text(a.kind) }

// Unit is that of the numbers of a: of a mass or quantity the one that prints, of a
// span of time "s", "min" or "d", of an effort its scale; else empty.
func (a Arg) Unit() string {
	if a.kind < isCount {
		return ""
	}
	return cmp.Or(a.text, timeUnits[a.kind])
}

// Range is the number of a, or its range, in its unit; of a share the fraction. It
// is zero where a is none.
func (a Arg) Range() units.Range[float64] {
	var r units.Range[float64]
	low, _ := strconv.ParseFloat(a.figure(a.low), 64) // a number by its making
	high, _ := strconv.ParseFloat(a.figure(a.high), 64)
	if a.kind.counts() && a.ends&lowEnd != 0 {
		r = units.AtLeast(low)
	}
	if a.kind.counts() && a.ends&highEnd != 0 {
		r, _ = r.Intersect(units.AtMost(high))
	}
	return r
}

// argJSON is an Arg in JSON.
type argJSON struct {
	Name   string          `json:"name"`
	Value  string          `json:"value"`
	Kind   string          `json:"kind,omitempty"`
	Number json.RawMessage `json:"number,omitempty"`
	Low    json.RawMessage `json:"low,omitempty"`
	High   json.RawMessage `json:"high,omitempty"`
	Unit   string          `json:"unit,omitempty"`
}

// MarshalJSON writes name and text, and what else there is.
func (a Arg) MarshalJSON() ([]byte, error) {
	j := argJSON{Name: a.Name, Value: a.Value(), Unit: a.Unit()}
	if a.kind != isText {
		j.Kind = a.Kind()
	}
	switch {
	case !a.kind.counts():
	case a.ends == lowEnd|highEnd && a.low == a.high:
		j.Number = json.RawMessage(a.figure(a.low))
	default:
		if a.ends&lowEnd != 0 {
			j.Low = json.RawMessage(a.figure(a.low))
		}
		if a.ends&highEnd != 0 {
			j.High = json.RawMessage(a.figure(a.high))
		}
	}
	return json.Marshal(j)
}

// UnmarshalJSON reads what MarshalJSON writes, and a name and a value alone as text.
func (a *Arg) UnmarshalJSON(data []byte) error {
	var j argJSON
	if err := field.Decode(data, &j, field.Strict); err != nil {
		return err
	}
	kind, err := kinds.Parse(cmp.Or(j.Kind, kinds.Text(isText)))
	got := Arg{Name: j.Name, kind: kind}
	if err == nil {
		err = got.read(j)
	}
	if err != nil || got.Value() != j.Value {
		got = Text(j.Name, j.Value)
	}
	return field.Assign(a, got, nil)
}

// read puts in what stands beside name and kind.
func (a *Arg) read(j argJSON) (err error) {
	switch {
	case a.kind == isDay:
		var day units.Day
		err = day.UnmarshalText([]byte(j.Value))
		*a = Day(a.Name, day)
	case !a.kind.counts():
		a.text = j.Value
	default:
		if timeUnits[a.kind] == "" {
			a.text = j.Unit
		}
		for _, end := range [...]struct {
			figure json.RawMessage
			which  ends
		}{{j.Number, lowEnd | highEnd}, {j.Low, lowEnd}, {j.High, highEnd}} {
			if len(end.figure) > 0 && err == nil {
				err = a.put(end.which, string(end.figure))
			}
		}
	}
	return err
}

// put sets the ends that a figure stands for.
func (a *Arg) put(which ends, figure string) error {
	n, err := a.parse(figure)
	a.ends |= which
	if which&lowEnd != 0 {
		a.low = n
	}
	if which&highEnd != 0 {
		a.high = n
	}
	return err
}
