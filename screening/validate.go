package screening

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// given returns nil for a value of the vocabulary and for "not given".
func given[E ~uint8](v field.Vocabulary[E], e E) error {
	if e == 0 {
		return nil
	}
	return v.Check("", e)
}

// within returns nil for lo ≤ v ≤ hi, which NaN is not.
func within[T int | float64](v, lo, hi T, unit string) error {
	if v >= lo && v <= hi {
		return nil
	}
	return field.Bad(v, fmt.Sprintf("%v to %v%s", lo, hi, unit), field.ErrOutOfRange)
}

// withinIfAny is within for a reading that may be nil.
func withinIfAny[T int | float64](v *T, lo, hi T, unit string) error {
	if v == nil {
		return nil
	}
	return within(*v, lo, hi, unit)
}

// dayOrNone returns nil for a day and for none.
func dayOrNone(d units.Day) error {
	if d.IsZero() {
		return nil
	}
	return d.Check()
}

func (b *BloodPressure) check() error {
	if b == nil {
		return nil
	}
	var bad field.Errors
	bad.Add("/systolic", within(b.Systolic, 50, 300, " mmHg"))
	bad.Add("/diastolic", within(b.Diastolic, 20, 200, " mmHg"))
	bad.Refuse(len(bad) == 0 && b.Diastolic >= b.Systolic, "/diastolic", b.Diastolic, "below the systolic pressure", field.ErrConflict)
	return bad.Err()
}

func checkPulse(beats int) error { return givenWithin(beats, 20, 250, " beats a minute") }

func checkSaturation(percent int) error { return givenWithin(percent, 50, 100, " per cent") }

// givenWithin is within for a reading where 0 means that none was taken.
func givenWithin(v, lo, hi int, unit string) error {
	if v == 0 {
		return nil
	}
	return within(v, lo, hi, unit)
}

// checkTwice returns what is wrong with readings of pressure and pulse and with
// those after a rest.
func checkTwice(bp, again *BloodPressure, pulse, pulseAgain int) error {
	var bad field.Errors
	bad.Add("/bp", bp.check())
	bad.Add("/bp_again", again.check())
	bad.Refuse(again != nil && bp == nil, "/bp", nil, firstBeside, field.ErrMissing)
	bad.Add("/resting_pulse", checkPulse(pulse))
	bad.Add("/resting_pulse_again", checkPulse(pulseAgain))
	bad.Refuse(pulseAgain != 0 && pulse == 0, "/resting_pulse", nil, firstBeside, field.ErrMissing)
	return bad.Err()
}

const firstBeside = "the first reading beside the second"

func (w *WeightGain) check() error {
	if w == nil {
		return nil
	}
	var bad field.Errors
	bad.Refuse(w.Mass < -20*units.Kilogram || w.Mass > 20*units.Kilogram, "/mass", w.Mass, "-20 to 20 kg", field.ErrOutOfRange)
	bad.Add("/days", within(w.Days, 1, 31, " days"))
	return bad.Err()
}

func (b *BloodCounts) check() error {
	if b == nil {
		return nil
	}
	var bad field.Errors
	bad.Add("/platelets", givenWithin(b.Platelets, 1, 2000, " × 10⁹/L"))
	bad.Add("/haemoglobin", givenWithin(b.Haemoglobin, 20, 250, " g/L"))
	return bad.Err()
}

func (o OrthostaticDrop) check() error {
	var bad field.Errors
	bad.Add("/from", postures.Check("", o.From))
	bad.Add("/systolic", within(o.Systolic, -150, 200, " mmHg"))
	bad.Add("/diastolic", within(o.Diastolic, -100, 150, " mmHg"))
	return bad.Err()
}

func (a Activity) check() error {
	var bad field.Errors
	bad.Add("/days_per_week", within(a.DaysPerWeek, 0, 7, " days"))
	bad.Add("/minutes", within(a.Minutes, 0, 1440, " minutes a day"))
	bad.Add("/intensity", intensities.Check("", a.Intensity))
	bad.Add("/months", within(a.Months, 0, 1440, " months"))
	return bad.Err()
}

// Validate returns every bad field of p at once. Day and age are needed; the
// ranges of readings are checks against slips, not clinical limits.
func (p Profile) Validate() error {
	var bad field.Errors
	bad.Add("/day", p.Day.Check())
	bad.Add("/age", p.Age.Check())
	bad.Refuse(p.Sex > body.Male, "/sex", p.Sex, "female or male", field.ErrOutOfRange)
	if p.Training != 0 {
		bad.Add("/training", p.Training.Check())
	}
	if p.Activity != nil {
		bad.Add("/activity", p.Activity.check())
	}
	bad.Refuse(p.Wanted == Idle, "/wanted", p.Wanted, "light, moderate or vigorous", field.ErrOutOfRange)
	bad.Add("/wanted", given(intensities, p.Wanted))
	bad.Add("/diseases", p.Diseases.check(Disease))
	bad.Add("/symptoms", p.Symptoms.check(Symptom))
	bad.Add("/red_flags", p.RedFlags.check(RedFlag))
	bad.Add("/conditions", p.Conditions.check(Condition))
	bad.Add("/setting", given(settings, p.Setting))
	bad.Add("", p.checkReadings())
	bad.Add("", p.checkRecords())
	return bad.Err()
}

func (p *Profile) checkReadings() error {
	var bad field.Errors
	bad.Add("", checkTwice(p.BP, p.BPAgain, p.RestingPulse, p.RestingPulseAgain))
	bad.Add("/blood_counts", p.Counts.check())
	bad.Add("/hba1c", withinIfAny(p.HbA1c, 2, 25, " per cent"))
	bad.Add("/capacity_mets", withinIfAny(p.CapacityMETs, 0, 30, " METs"))
	bad.Add("/mean_pap", withinIfAny(p.MeanPAP, 1, 150, " mmHg"))
	bad.Add("/planned_fraction", within(float64(p.PlannedFraction), 0, 1, " of the one-repetition maximum"))
	return bad.Err()
}

// listed names codes in a sentence.
func listed(codes []Code) string {
	return strings.Trim(strings.ReplaceAll(fmt.Sprint(codes), " ", ", "), "[]")
}

// pointerEscape is for names in a JSON Pointer (RFC 6901).
var pointerEscape = strings.NewReplacer("~", "~0", "/", "~1")

func (p *Profile) checkRecords() error {
	var bad field.Errors
	bad.Add("/falls", p.Falls.check())
	for i, code := range p.HomeReadings {
		if !slices.Contains(homeReadings, code) {
			bad.Add(fmt.Sprintf("/home_readings/%d", i), field.Bad(fmt.Sprintf("%.60q", string(code)), listed(homeReadings), field.ErrUnknown))
		}
	}
	for i, s := range p.Sites {
		addAt(&bad, "/sites", i, s.check())
	}
	bad.Add("/events", checkEvents(p.Events, p.Day))
	for i, c := range p.Clearances {
		addAt(&bad, "/clearances", i, c.check())
	}
	for i, r := range p.Restrictions {
		addAt(&bad, "/restrictions", i, r.check())
	}
	for _, code := range slices.Sorted(maps.Keys(p.Answers)) {
		path := "/answers/" + pointerEscape.Replace(string(code))
		if q := findQuestion(code); q == nil || !q.yesNo {
			bad.Add(path, field.Bad(nil, "the code of a question with yes and no", field.ErrUnknown))
		}
		bad.Add(path, given(answers, p.Answers[code]))
	}
	return bad.Err()
}

// addAt adds what is wrong with an element of a list; its path is written only then.
func addAt(bad *field.Errors, list string, i int, err error) {
	if err != nil {
		bad.Add(fmt.Sprintf("%s/%d", list, i), err)
	}
}

func checkEvents(events []Event, visit units.Day) error {
	var bad field.Errors
	for i, e := range events {
		addAt(&bad, "", i, e.check(visit))
	}
	return bad.Err()
}

func (e Event) check(visit units.Day) error {
	var bad field.Errors
	if en := find(e.Code); en == nil || en.kind != Happening && en.dated == nil {
		bad.Add("/code", field.Bad(fmt.Sprintf("%.60q", string(e.Code)), "the code of a dated condition, or "+e.Code.allowed([]Kind{Happening}), field.ErrUnknown))
	}
	bad.Add("/day", dayOrNone(e.Day))
	bad.Refuse(e.Day > visit && visit.Check() == nil, "/day", e.Day, "the day of the screening or before", field.ErrConflict)
	bad.Add("/region", givenBy(e.Region != 0, e.Region.Check))
	bad.Add("/side", givenBy(e.Side != 0, e.Side.Check))
	return bad.Err()
}

func givenBy(isGiven bool, check func() error) error {
	if !isGiven {
		return nil
	}
	return check()
}

// check refuses what cannot be read. Who and the days decide whether the
// clearance counts, not whether it is well formed.
func (c Clearance) check() error {
	var bad field.Errors
	bad.Add("/day", dayOrNone(c.Day))
	bad.Add("/expires", dayOrNone(c.Expires))
	for i, code := range c.Scope {
		addAt(&bad, "/scope", i, code.check(Disease, Symptom, Condition, Happening, Reading, Topic))
	}
	bad.Refuse(c.Intensity == Idle, "/intensity", c.Intensity, "light, moderate or vigorous", field.ErrOutOfRange)
	bad.Add("/intensity", given(intensities, c.Intensity))
	return bad.Err()
}

func (r Restriction) check() error {
	var bad field.Errors
	bad.Add("/day", dayOrNone(r.Day))
	bad.Add("/until", dayOrNone(r.Until))
	bad.Refuse(!r.Day.IsZero() && !r.Until.IsZero() && r.Until < r.Day, "/until", r.Until, "the day on which it was set, or later", field.ErrConflict)
	bad.Add("/side", givenBy(r.Side != 0, r.Side.Check))
	bad.Add("/region", r.Region.Check())
	if r.MaxMass != nil && *r.MaxMass < 0 {
		bad.Add("/max_mass", field.Bad(*r.MaxMass, "0 kg or more", field.ErrOutOfRange))
	}
	return bad.Err()
}
