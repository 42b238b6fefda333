package simulate

import (
	"math"
	"math/rand/v2"

	"example.org/posology/dose/onerm"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Trainee is what is true of a virtual person at one exercise.
type Trainee struct {
	OneRM units.Mass     `json:"one_rm"`        // at the start, of all that is lifted at once
	Gain  LogGain        `json:"gain,omitzero"` // of OneRM with the weeks at the reference dose, twice a week; zero: none
	Curve onerm.Relation `json:"-"`             // of load and repetitions; nil: Epley's equation

	DaySD   units.Fraction `json:"day_sd,omitzero"`  // SD of strength from day to day, up to 20 %
	Reserve Misjudged      `json:"reserve,omitzero"` // how reserve is told
	// Stubborn people do the count asked for, whatever they feel; others end a set
	// where what they feel is left is what is to be left.
	Stubborn bool `json:"stubborn,omitzero"`
	Early    int  `json:"early,omitzero"` // repetitions by which a set by feel ends earlier still, 0 to 10
	Tires    bool `json:"tires,omitzero"` // from set to set

	Missed   units.Fraction `json:"missed,omitzero"`    // chance that a visit is missed
	Slips    units.Fraction `json:"slips,omitzero"`     // chance that a set is logged with a slip of its load
	Pain     units.Fraction `json:"pain,omitzero"`      // chance that a visit hurts, above 5 of 10
	Signs    units.Fraction `json:"signs,omitzero"`     // chance of a sign that ends the session
	Unseen   units.Fraction `json:"unseen,omitzero"`    // chance that nobody watches the technique; who does is at hand that day
	FormLost units.Fraction `json:"form_lost,omitzero"` // chance that it gives way
}

// Bounds against slips; they say nothing about people.
const (
	mostDaySD = 0.2
	mostError = 5.0
	mostEarly = 10
)

// Typical returns a trainee of the given strength who is as published: half-way
// growth of the first year (Steele 2022) at the reference dose, 4.2 % from day to day
// (Grgic 2020), tiring from set to set, and a reserve told as [Facts] say: nobody has
// measured it at this age. Nothing goes amiss, and all such people grow alike.
func Typical(oneRM units.Mass) Trainee {
	return Trainee{OneRM: oneRM, Gain: FirstYear(), Curve: onerm.Epley, DaySD: typicalDaySD, Reserve: usualTelling, Tires: true}
}

// TrueTelling returns a typical trainee who tells the reserve true on average, with
// the same spread from set to set: closer to failure than others for the same words.
func TrueTelling(oneRM units.Mass) Trainee {
	t := Typical(oneRM)
	t.Reserve.Near.More, t.Reserve.Midway.More, t.Reserve.Far.More = 0, 0, 0
	return t
}

const typicalDaySD = 0.042

// Numbers of people who differ; the facts print them.
const (
	growthSpread  = 0.35 // SD of the gain, of its mean
	lowDaySD      = 0.02
	highDaySD     = 0.06
	tellingShift  = 1.0 // SD between people, in repetitions
	tellingNarrow = 0.7 // of the usual SD from set to set
	tellingWide   = 1.3
	missedTenth   = 0.1
)

// curves are those that people differ in.
var curves = [...]onerm.Relation{onerm.Epley, onerm.Brzycki, onerm.Lombardi, onerm.Mayhew, onerm.OConner}

// Mixed draws a trainee of the given strength from people who differ: in growth (SD
// 0.35 of the mean), from day to day (2 to 6 %), in how reserve is told, in the curve;
// a tenth of the visits is missed. Without a source it is the zero Trainee, which
// Validate refuses.
func Mixed(oneRM units.Mass, src rand.Source) Trainee {
	if src == nil {
		return Trainee{}
	}
	rng, t := rand.New(src), Typical(oneRM)
	s := math.Sqrt(math.Log1p(growthSpread * growthSpread))
	t.Gain = t.Gain.times(math.Exp(float64(s*rng.NormFloat64()) - float64(s*s/2)))
	t.DaySD = units.Fraction(lowDaySD + float64((highDaySD-lowDaySD)*rng.Float64()))
	shift := tellingShift * rng.NormFloat64()
	t.Reserve = t.Reserve.shifted(shift, tellingNarrow+float64((tellingWide-tellingNarrow)*rng.Float64()))
	t.Curve, t.Missed = curves[rng.IntN(len(curves))], missedTenth
	return t
}

// Numbers of training alone at home; the facts print them.
const (
	homeMissed   = 0.33
	homeMissedSD = 0.15
	homeLeast    = 0.03 // the range of the trials
	homeMost     = 0.53
	aloneEarly   = 2
)

// AtHome returns t alone at home: a third of the visits is missed, more or fewer from
// person to person, nobody watches, and a set by feel ends two repetitions earlier.
// Without a source it is the zero Trainee, as of [Mixed].
func AtHome(t Trainee, src rand.Source) Trainee {
	if src == nil {
		return Trainee{}
	}
	missed := homeMissed + float64(homeMissedSD*rand.New(src).NormFloat64())
	t.Missed, t.Unseen, t.Early = units.Fraction(min(max(missed, homeLeast), homeMost)), 1, aloneEarly
	return t
}

// Validate returns every bad field of t at once.
func (t Trainee) Validate() error {
	var bad field.Errors
	if t.OneRM <= 0 {
		bad.Add("/one_rm", field.Bad(t.OneRM, "a mass above 0 kg", field.ErrOutOfRange))
	}
	if t.Gain != (LogGain{}) {
		_, _, err := t.Gain.At(1)
		bad.Add("/gain", err)
		if err == nil && t.Gain.Percent <= -100 {
			bad.Add("/gain/percent", field.Bad(t.Gain.Percent, "above -100 %", field.ErrOutOfRange))
		}
	}
	within(&bad, "/day_sd", float64(t.DaySD), 0, mostDaySD, "0 to 0.2")
	bad.Add("/reserve", t.Reserve.validate())
	within(&bad, "/early", float64(t.Early), 0, mostEarly, "0 to 10 repetitions")
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
