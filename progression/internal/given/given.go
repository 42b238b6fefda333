package given

import (
	"example.org/posology/dose"
	"example.org/posology/dose/setlog"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Week is so many days.
const Week = 7

// KnownDays are so many days for which what was seen or lifted counts as known.
const KnownDays = 4 * Week

// WorthASet are the fewest repetitions that a set is worth.
const WorthASet = 5

// Countable is the most in reserve that can be counted (Hackett 2017).
const Countable = 5

// OMNILimit is the rating, of 10 on the scale omni, below which the load rises
// (Buskard 2019).
const OMNILimit = 8.0

// UpTo takes a day that is not given, or one up to last, 0 for no end.
func UpTo(day, last units.Day) error {
	switch {
	case day.IsZero():
		return nil
	case day.Check() != nil:
		return day.Check()
	case last > 0 && day > last:
		return field.Bad(day, "today or before", field.ErrConflict)
	}
	return nil
}

// OrNone takes any value of an enumeration, not given among them.
func OrNone(v interface{ MarshalText() ([]byte, error) }) error {
	_, err := v.MarshalText()
	return err
}

// Yes reports an answer that is neither no nor not known: a value that is no answer
// counts as yes.
func Yes(a screening.Answer) bool { return a.Severity() > screening.Unknown.Severity() }

// Told returns the reserve told of a set, the lower of two counts, and false where none
// was or the scale has none. Most sets are told by the scale rir: that is asked first.
func Told(e units.Effort) (units.RIR, bool) {
	switch e.Scale() {
	case units.ScaleRIR:
		return units.RIR(e.Number()), true
	case units.ScaleRPE:
		left, err := e.RIR()
		told, _ := left.Min()
		return told, err == nil
	}
	return 0, false
}

const mostPain = 10.0

// Score takes a score of pain.
func Score(v float64) error {
	if !(v >= 0 && v <= mostPain) {
		return field.Bad(v, "0 to 10", field.ErrOutOfRange)
	}
	return nil
}

// Pain takes scores of pain, those that were given.
func Pain(p screening.Pain) error {
	var bad field.Errors
	for _, score := range [...]struct {
		path  string
		value *float64
	}{{"/usual", p.Usual}, {"/during", p.During}, {"/after", p.After}, {"/next_morning", p.NextMorning}} {
		if score.value != nil {
			bad.Add(score.path, Score(*score.value))
		}
	}
	return bad.Err()
}

// Zone is a zone of pain as reasons print it.
func Zone(z screening.PainZone) string {
	switch z {
	case 0:
		return "not known"
	case screening.ZoneUpTo2:
		return "up to 2 of 10"
	case screening.ZoneOver2UpTo5:
		return "above 2, up to 5 of 10"
	}
	return "above 5 of 10"
}

// PainTold reports whether all that the pain model asks for was recorded.
func PainTold(p *screening.Pain) bool {
	return p != nil && p.Kind != 0 && p.Usual != nil && p.During != nil && p.After != nil &&
		(p.NextMorning != nil || p.SettledNextMorning != screening.Unknown) && p.WeeklyTrend != 0
}

// Each is the mass of each implement of a set that is known to be valid.
func Each(s setlog.Set) units.Mass {
	m, _ := s.Hold.Each(s.Load, s.Stated)
	return m
}

// Searches reports whether the load was to be looked for.
func Searches(p *dose.Prescription) bool {
	return p != nil && p.Finding != nil && p.Finding.MaxSteps > 0
}

// Plus is m and the share of it on top, to the nearest nanogram: a tenth
// is no binary number.
func Plus(m units.Mass, share units.Fraction) (units.Mass, error) {
	more, err := m.Scale(share, units.Nearest)
	if err != nil {
		return 0, err
	}
	return m.Add(more)
}
