package interview

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// What a text has to be, as a hint and in errors.
const (
	dayHint        = "a day such as 2026-03-14, or only the month: 2026-03"
	pressureHint   = "both numbers in mmHg, such as 146/84"
	glucoseAllowed = "what the meter shows, mg/dL or mmol/L"
)

// unreadable is the error for a text that cannot be read as allowed.
func unreadable(text, allowed string) error {
	return field.Bad(fmt.Sprintf("%.60q", text), allowed, field.ErrSyntax)
}

// readWhole reads a whole number within a range, with or without one of the units
// behind it: those that mean what the question asks for.
func readWhole(text string, least, most int, units ...string) (int, error) {
	digits := text
	for _, unit := range units {
		if before, found := strings.CutSuffix(strings.ToLower(text), unit); found {
			digits = strings.TrimSpace(before)
			break
		}
	}
	allowed := fmt.Sprintf("a whole number from %d to %d", least, most)
	n, err := strconv.Atoi(digits)
	switch {
	case err != nil:
		return 0, unreadable(text, allowed)
	case n < least || n > most:
		return 0, field.Bad(n, allowed, field.ErrOutOfRange)
	}
	return n, nil
}

// readDay reads a day, or a month for its last day: the later, the more careful.
// The month of the visit ends with the visit.
func readDay(text string, visit units.Day) (units.Day, error) {
	if day, err := units.ParseDay(text); err == nil {
		return day, nil
	}
	first, err := units.ParseDay(text + "-01")
	if err != nil {
		return 0, unreadable(text, dayHint)
	}
	last := first
	_, month, _ := first.Date()
	for next, err := first.Plus(1); err == nil; next, err = next.Plus(1) {
		if _, m, _ := next.Date(); m != month {
			break
		}
		last = next
	}
	if first <= visit {
		last = min(last, visit)
	}
	return last, nil
}

// readEarly reads a day, or a month for its first day: of a clearance the earlier
// is the more careful.
func readEarly(text string) (units.Day, error) {
	if first, err := units.ParseDay(text + "-01"); err == nil {
		return first, nil
	}
	return readDay(text, 0)
}

// readPressure reads "146/84", with or without mmHg, the unit of the question.
func readPressure(text string) (*screening.BloodPressure, error) {
	upper, lower, found := strings.Cut(strings.TrimSpace(strings.TrimSuffix(strings.ToLower(text), "mmhg")), "/")
	systolic, err1 := strconv.Atoi(strings.TrimSpace(upper))
	diastolic, err2 := strconv.Atoi(strings.TrimSpace(lower))
	switch {
	case !found || err1 != nil || err2 != nil:
		return nil, unreadable(text, pressureHint)
	case systolic <= diastolic:
		return nil, field.Bad(fmt.Sprintf("%.60q", text), "the first number is the larger one", field.ErrConflict)
	}
	return &screening.BloodPressure{Systolic: systolic, Diastolic: diastolic}, nil
}

// readGlucose reads a reading with its unit; one without is asked for again.
func readGlucose(text string) (screening.Glucose, error) {
	g, err := screening.ParseGlucose(text)
	switch {
	case errors.Is(err, field.ErrMissing):
		return g, field.Bad(fmt.Sprintf("%.60q", text), glucoseAllowed, field.ErrMissing)
	case err != nil:
		return g, field.At("/check/glucose", err)
	}
	return g, nil
}

// readHaemoglobin reads "135 g/L" or "13.5 g/dL" as whole grams a litre, a part
// of a gram left out: the lower, the more careful.
func readHaemoglobin(text string) (int, error) {
	digits, perLitre := strings.CutSuffix(strings.ToLower(text), "g/l")
	tenth, perDecilitre := strings.CutSuffix(strings.ToLower(text), "g/dl")
	factor := 1.0
	if perDecilitre {
		digits, factor = tenth, 10
	}
	v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(digits), ",", ".", 1), 64)
	if err != nil || !perLitre && !perDecilitre || !(v*factor >= 1 && v*factor <= 1000) {
		return 0, unreadable(text, "the number with its unit, g/L or g/dL")
	}
	return int(math.Floor(float64(v*factor) + 1e-9)), nil // 10.3 times ten is a trifle below 103
}

// readNumber reads a number; the record checks its range.
func readNumber(text, allowed string) (*float64, error) {
	v, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
	if err != nil {
		return nil, unreadable(text, allowed)
	}
	return &v, nil
}
