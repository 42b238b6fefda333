package main

import (
	_ "embed"
	"encoding/json"

	"example.org/posology/screening"
)

// A rate is the invented share of people with a code, at 55 and at 85 years;
// in between, and a little beyond, it goes in a straight line.
type rate struct {
	Code     screening.Code `json:"code"`
	At55     float64        `json:"at55"`
	At85     float64        `json:"at85"`
	Women    float64        `json:"women"` // factor for women; 0 is 1
	Men      float64        `json:"men"`   // factor for men; 0 is 1
	NotInMen bool           `json:"not_in_men"`
}

//go:embed rates.json
var invented []byte

// rates are those of the lists, of conditions met daily and of red flags beside the others;
// with how a code is split, and how long ago something was.
var rates = func() (all struct {
	Lists         map[screening.Kind][]rate
	Finer, Alarms []rate
	Splits        []split
	Agos          []ago
}) {
	if err := json.Unmarshal(invented, &all); err != nil {
		panic(err)
	}
	return all
}()

// burdens spread illness unevenly over people: a factor on every rate, and the
// share of people who have it. Invented; the mean is 1.
var burdens = []struct{ factor, share float64 }{{0.4, 0.4}, {1, 0.4}, {2.2, 0.2}}

// Further invented numbers.
const (
	youngest, oldest = 50, 90 // years

	systolicAt55, systolicSlope   = 128.0, 0.35 // mmHg, and a year
	systolicSpread                = 15.0
	diastolicAt55, diastolicSlope = 80.0, -0.12
	diastolicSpread               = 9.0
	pulseMean, pulseSpread        = 70.0, 10.0

	measured       = 0.92 // whose pressure and pulse were taken
	takenAgain     = 0.95 // whose high pressure or quick pulse was taken again after a rest
	settling       = 8.0  // mmHg, or beats, by which it is then lower
	settlingSpread = 8.0
	activeAt55     = 0.35 // regularly active
	activeAt85     = 0.15
	offTheFloor    = 75   // years, from which nobody gets up from the floor alone
	oneUnsure      = 0.04 // unsure of one thing on the lists
	insulinKnown   = 0.97 // of people with diabetes
	insulinTaken   = 0.35 // of those
	eyesKnown      = 0.75
	eyesChanged    = 0.08
	spineKnown     = 0.34 // of people with osteoporosis: few have had a picture taken, and many fractures are silent
	spineBroken    = 0.08
	herniaKnown    = 0.95
	herniaTroubles = 0.15
	clearanceGiven = 0.35 // of people with a known disease or a sign
	dayKnown       = 0.90 // of an operation or spine fracture
	regionKnown    = 0.95 // of a fracture
	restricted     = 0.10 // of people with joints or muscles that limit them
	longAgo        = 3650 // days since an operation, at most
	clearanceDays  = 540  // days since a clearance, at most
)

// wants are the shares of wanted effort; the rest does not say.
var wants = []struct {
	effort screening.Intensity
	share  float64
}{{screening.Light, 0.35}, {screening.Moderate, 0.50}, {screening.Vigorous, 0.10}}
