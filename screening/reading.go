package screening

import (
	"fmt"
	"iter"
	"strconv"
	"strings"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A BloodPressure is a reading at rest, in mmHg.
type BloodPressure struct {
	Systolic  int `json:"systolic"`  // 50 to 300
	Diastolic int `json:"diastolic"` // 20 to 200, below the systolic
}

// String prints the reading, such as "130/80 mmHg", and "" for none.
func (b *BloodPressure) String() string {
	if b == nil {
		return ""
	}
	return fmt.Sprintf("%d/%d mmHg", b.Systolic, b.Diastolic)
}

// taken prints a pulse or a saturation, "" for none.
func taken(n int, unit string) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprint(n, unit)
}

// Posture is the posture from which the person stood up.
type Posture uint8

// Postures.
const (
	_       Posture = iota // not given
	Lying                  // "lying"
	Sitting                // "sitting"
)

var postures = field.NewVocabulary[Posture]("posture", "", "lying", "sitting")

// Postures yields every posture.
func Postures() iter.Seq[Posture] { return postures.All() }

// String returns "lying" or "sitting", and "" for not given.
func (p Posture) String() string { return postures.Text(p) }

// MarshalText writes what String returns.
func (p Posture) MarshalText() ([]byte, error) { return postures.Marshal(p) }

// UnmarshalText reads what MarshalText writes.
func (p *Posture) UnmarshalText(text []byte) error { return postures.Unmarshal(text, p) }

// An OrthostaticDrop is the fall in blood pressure on standing, in mmHg; a rise
// is negative.
type OrthostaticDrop struct {
	From      Posture `json:"from"`
	Systolic  int     `json:"systolic"`  // -150 to 200
	Diastolic int     `json:"diastolic"` // -100 to 150
	// HighLying says that the pressure lying down is known to be high, for
	// which a greater fall of the systolic pressure is asked.
	HighLying bool `json:"high_lying,omitzero"`
}

// WeightGain is how much body mass rose over some days; a loss is negative.
type WeightGain struct {
	Mass units.Mass `json:"mass"` // -20 kg to 20 kg
	Days int        `json:"days"` // 1 to 31
}

// BloodCounts are the latest counts of the blood.
type BloodCounts struct {
	Platelets   int `json:"platelets,omitzero"`   // 1 to 2000 × 10⁹/L; 0 is not counted
	Haemoglobin int `json:"haemoglobin,omitzero"` // 20 to 250 g/L; 0 is not measured
}

// Ketones is the result of a ketone test.
type Ketones uint8

// Results of a ketone test, rising.
const (
	_               Ketones = iota // not tested
	NoKetones                      // "none"
	SmallKetones                   // "small"
	ModerateKetones                // "moderate"
	LargeKetones                   // "large"
)

var ketones = field.NewVocabulary[Ketones]("ketones", "", "none", "small", "moderate", "large")

// EveryKetones yields every band of ketones.
func EveryKetones() iter.Seq[Ketones] { return ketones.All() }

// String returns "none", "small", "moderate" or "large", and "" for not tested.
func (k Ketones) String() string { return ketones.Text(k) }

// MarshalText writes what String returns.
func (k Ketones) MarshalText() ([]byte, error) { return ketones.Marshal(k) }

// UnmarshalText reads what MarshalText writes.
func (k *Ketones) UnmarshalText(text []byte) error { return ketones.Unmarshal(text, k) }

// glucoseUnit is a unit of blood glucose. It is never guessed.
type glucoseUnit uint8

const (
	_     glucoseUnit = iota // not given
	mgDL                     // milligrams per decilitre
	mmolL                    // millimoles per litre
)

var glucoseUnits = [...]string{mgDL: "mg/dL", mmolL: "mmol/L"}

// Glucose is a reading of blood glucose in the unit that the meter showed. It is
// held exactly, to two decimals, and is compared with the thresholds as printed
// in that very unit, so that it never crosses one by conversion. The zero value
// is not measured. Its text is "82 mg/dL" or "4.6 mmol/L".
type Glucose struct {
	hundredths int32
	unit       glucoseUnit
}

// glucoseEnds are the plausible readings, in hundredths; a check against slips.
var glucoseEnds = [...]struct{ min, max int32 }{mgDL: {1000, 200000}, mmolL: {50, 11100}}

const glucoseForm = `a reading with its unit, such as "82 mg/dL" (10 to 2000) or "4.6 mmol/L" (0.5 to 111), to two decimals at most`

// ParseGlucose reads "82 mg/dL", "4.6 mmol/L" or "4,6 mmol/L": digits, two
// decimals at most, and a unit in small or capital letters. A reading without a unit is an
// [field.ErrMissing], one from 10 to 2000 mg/dL or 0.5 to 111 mmol/L is
// accepted, and any other a [field.ErrOutOfRange] or [field.ErrSyntax].
func ParseGlucose(s string) (Glucose, error) {
	refuse := func(category error) (Glucose, error) {
		return Glucose{}, field.Bad(fmt.Sprintf("%.40q", s), glucoseForm, category)
	}
	number, unit, _ := strings.Cut(s, " ")
	whole, decimals, pointed := strings.Cut(strings.Replace(number, ",", ".", 1), ".")
	hundredths, err := strconv.ParseUint(whole+(decimals + "00")[:2], 10, 24)
	if err != nil || whole == "" || len(decimals) > 2 || pointed && decimals == "" {
		return refuse(field.ErrSyntax)
	}
	if unit == "" {
		return refuse(field.ErrMissing)
	}
	u := parseGlucoseUnit(unit)
	if u == 0 {
		return refuse(field.ErrUnknown)
	}
	g := Glucose{int32(hundredths), u}
	if ends := glucoseEnds[u]; g.hundredths < ends.min || g.hundredths > ends.max {
		return refuse(field.ErrOutOfRange)
	}
	return g, nil
}

// parseGlucoseUnit reads a unit in any letters, which tell the two apart; 0 is neither.
func parseGlucoseUnit(text string) glucoseUnit {
	for u, name := range glucoseUnits {
		if u > 0 && strings.EqualFold(text, name) {
			return glucoseUnit(u)
		}
	}
	return 0
}

// IsZero reports whether glucose was not measured.
func (g Glucose) IsZero() bool { return g == Glucose{} }

// String prints the reading with its unit, "" if there is none.
func (g Glucose) String() string {
	if g.IsZero() {
		return ""
	}
	text := fmt.Sprintf("%d.%02d", g.hundredths/100, g.hundredths%100)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " " + glucoseUnits[g.unit]
}

// MarshalText writes what String returns.
func (g Glucose) MarshalText() ([]byte, error) { return []byte(g.String()), nil }

// UnmarshalText reads what [ParseGlucose] reads, and nothing as not measured.
func (g *Glucose) UnmarshalText(text []byte) error { return field.AssignText(g, text, ParseGlucose) }

// below reports whether g lies under the threshold as printed in g's unit.
func (g Glucose) below(t glucoseThreshold) bool {
	if g.unit == mgDL {
		return g.hundredths < t.mgDL*100
	}
	return g.hundredths < t.tenthsMmolL*10
}
