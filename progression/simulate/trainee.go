package simulate

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Trainee is what is true of a virtual person at one exercise.
type Trainee struct {
	OneRM units.Mass     `json:"one_rm"`        // at the start, of all that is lifted at once
	Gain  LogGain        `json:"gain,omitzero"` // of OneRM with the weeks of training; zero: none
	Curve onerm.Relation `json:"-"`             // of load and repetitions; nil: Epley's equation

	DaySD   units.Fraction `json:"day_sd,omitzero"`  // SD of strength from day to day, up to 20 %
	Reserve Misjudged      `json:"reserve,omitzero"` // how reserve is told

	Missed   units.Fraction `json:"missed,omitzero"`    // chance that a visit is missed
	Slips    units.Fraction `json:"slips,omitzero"`     // chance that a set is logged with a slip of its load
	Pain     units.Fraction `json:"pain,omitzero"`      // chance that a visit hurts, above 5 of 10
	Signs    units.Fraction `json:"signs,omitzero"`     // chance of a sign that ends the session
	Unseen   units.Fraction `json:"unseen,omitzero"`    // chance that nobody watches the technique
	FormLost units.Fraction `json:"form_lost,omitzero"` // chance that it gives way
}

// Misjudged is the error of telling one's reserve, told less true, in
// repetitions: its mean, from -5 to 5, and its SD, from 0 to 5.
type Misjudged struct {
	Mean float64 `json:"mean"`
	SD   float64 `json:"sd"`
}

// Bounds against slips; they say nothing about people.
const (
	mostDaySD = 0.2
	mostError = 5.0
)

// Typical returns a trainee of the given strength who is as published: half-way
// growth of the first year (Steele 2022), 4.2 % from day to day (Grgic 2020),
// reserve told 0.95 too low (Halperin 2022) with an SD of 1 (Refalo 2023, in
// trained people). Nothing goes amiss.
func Typical(oneRM units.Mass) Trainee {
	return Trainee{
		OneRM: oneRM, Gain: FirstYear(), Curve: onerm.Epley, DaySD: typicalDaySD,
		Reserve: Misjudged{Mean: typicalMean, SD: typicalSD},
	}
}

const (
	typicalDaySD = 0.042
	typicalMean  = -0.95
	typicalSD    = 1.0
)

// Validate returns every bad field of t at once.
func (t Trainee) Validate() error {
	var bad field.Errors
	if t.OneRM <= 0 {
		bad.Add("/one_rm", field.Bad(t.OneRM, "a mass above 0 kg", field.ErrOutOfRange))
	}
	if t.Gain != (LogGain{}) {
		_, _, err := t.Gain.At(1)
		bad.Add("/gain", err)
	}
	within(&bad, "/day_sd", float64(t.DaySD), 0, mostDaySD, "0 to 0.2")
	within(&bad, "/reserve/mean", t.Reserve.Mean, -mostError, mostError, "-5 to 5 repetitions")
	within(&bad, "/reserve/sd", t.Reserve.SD, 0, mostError, "0 to 5 repetitions")
	for _, chance := range [...]struct {
		path  string
		value units.Fraction
	}{{"/missed", t.Missed}, {"/slips", t.Slips}, {"/pain", t.Pain}, {"/signs", t.Signs}, {"/unseen", t.Unseen}, {"/form_lost", t.FormLost}} {
		within(&bad, chance.path, float64(chance.value), 0, 1, "a chance from 0 to 1")
	}
	return bad.Err()
}

func within(bad *field.Errors, path string, v, least, most float64, allowed string) {
	if !(v >= least && v <= most) {
		bad.Add(path, field.Bad(v, allowed, field.ErrOutOfRange))
	}
}

// strength returns the true 1RM after so many weeks of training, in kilograms.
func (t Trainee) strength(weeks float64) float64 {
	percent := 0.0
	if t.Gain != (LogGain{}) {
		percent, _, _ = t.Gain.At(weeks + 1) // validated; growth is counted from a first week
	}
	return t.OneRM.Kilograms() * (1 + percent/100)
}

// toFailure returns how often a load can be lifted, both in kilograms.
func (t Trainee) toFailure(load, oneRM float64) float64 {
	var curve onerm.Relation = onerm.Epley
	if t.Curve != nil {
		curve = t.Curve
	}
	share := load / oneRM
	if share > 1 {
		return 0
	}
	reps, err := curve.Reps(units.Fraction(share))
	switch bad := err != nil || math.IsNaN(reps); {
	case bad && share > heavy:
		return 1 // so near a single that the curve has no number for it
	case bad:
		return endless // so light
	}
	return min(max(reps, 1), endless)
}

// heavy parts the two ends of a curve: that of Mayhew has numbers for shares from
// 0.52 to 0.94.
const heavy = 0.7

// endless stands for more repetitions than any dose asks for.
const endless = 200
