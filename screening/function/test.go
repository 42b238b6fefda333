package function

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// Test is a functional test, or a questionnaire of which only the total is kept.
type Test uint8

// Tests. The three walks are kept apart: their limits differ, and one published
// table prints those of 3 m under the heading of 4 m.
const (
	_                    Test = iota // not given
	ChairStand30                     // "30-s chair stand": stands from a chair in 30 s
	FiveSitToStands                  // "five sit-to-stands": time to stand up five times
	TimedUpAndGo                     // "timed up and go": time to rise, walk 3 m, turn, come back and sit
	FourStageBalance                 // "four-stage balance": seconds of the tandem stand, the third of four
	Walk4m                           // "4-m walk": usual walk over 4 m
	Walk3m                           // "3-m walk": usual walk over 3 m
	Walk8ft                          // "8-ft walk": usual walk over 8 ft (2.4384 m)
	PhysicalPerformance              // "short physical performance battery": total of the short physical performance battery
	Grip                             // "grip": hand grip on a dynamometer
	ArmCurl30                        // "30-s arm curl": arm curls in 30 s
	SarcopeniaSelfReport             // "sarcopenia self-report": total only
	FallsSelfScore                   // "falls self-score": total of 12 questions only
	FrailtyLevel                     // "frailty level": number only, 1 to 9
	numTests
)

var testTexts = field.NewVocabulary[Test]("test", "", "30-s chair stand", "five sit-to-stands", "timed up and go",
	"four-stage balance", "4-m walk", "3-m walk", "8-ft walk", "short physical performance battery", "grip",
	"30-s arm curl", "sarcopenia self-report", "falls self-score", "frailty level")

// Tests yields every test.
func Tests() iter.Seq[Test] { return testTexts.All() }

// String returns the test's name, such as "timed up and go".
func (t Test) String() string { return testTexts.Text(t) }

// check returns nil if t is given.
func (t Test) check() error { return testTexts.Check("", t) }

// MarshalText writes what String returns.
func (t Test) MarshalText() ([]byte, error) { return testTexts.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Test) UnmarshalText(text []byte) error { return testTexts.Unmarshal(text, t) }

// A protocol is what is known of a test apart from its norms.
type protocol struct {
	measure   Measure
	unit      Unit          // of the score
	less      bool          // that less is better
	low, high float64       // plausible, in the unit of the score
	known     evidence.Fact // how the plausible range is known
	course    int64         // of a walk, in micrometres
	arms      bool          // somebody may use the arms where they should not
	hands     bool          // done by one hand or the other
	best      bool          // the best of several trials counts
}

// slip marks a range that only catches slips of the keyboard.
var slip = evidence.Fact{Basis: evidence.Design}

var protocols = [numTests]protocol{
	ChairStand30:     {measure: chairStands, unit: Reps, high: 60, known: slip, arms: true},
	FiveSitToStands:  {measure: fiveStandsTime, unit: Seconds, less: true, low: 2, high: 300, known: slip, arms: true},
	TimedUpAndGo:     {measure: upAndGoTime, unit: Seconds, less: true, low: 2, high: 300, known: slip, arms: true},
	FourStageBalance: {measure: balanceStages, unit: Seconds, high: 60, known: slip},
	Walk4m:           {measure: usualGait, unit: MetresPerSecond, low: 0.02, high: 4, known: slip, course: 4_000_000, best: true},
	Walk3m:           {measure: usualGait, unit: MetresPerSecond, low: 0.02, high: 4, known: slip, course: 3_000_000, best: true},
	Walk8ft:          {measure: usualGait, unit: MetresPerSecond, low: 0.02, high: 4, known: slip, course: 2_438_400, best: true},
	PhysicalPerformance: {measure: batteryTotal, unit: Points, high: 12,
		known: evidence.Fact{Source: "guralnik1994", Via: "reports of the battery; the place was not recorded", Basis: evidence.Secondary}},
	Grip:      {measure: gripForce, unit: Kilograms, high: 150, known: slip, hands: true, best: true},
	ArmCurl30: {measure: armCurls, unit: Reps, high: 100, known: slip},
	SarcopeniaSelfReport: {measure: sarcopeniaTotal, unit: Points, less: true, high: 10,
		known: evidence.Fact{Source: "malmstrom2013", Basis: evidence.FromMemory}},
	FallsSelfScore: {measure: fallsTotal, unit: Points, less: true, high: 14,
		known: evidence.Fact{Source: "cdc2019", Basis: evidence.FromMemory}},
	FrailtyLevel: {measure: frailtyNumber, unit: Level, less: true, low: 1, high: 9,
		known: evidence.Fact{Source: "rockwood2020", Via: "summaries of the scale", Basis: evidence.Secondary}},
}

// protocol returns what is known of t, the zero protocol for no test.
func (t Test) protocol() protocol {
	if t < numTests {
		return protocols[t]
	}
	return protocol{}
}

// Unit returns the unit that t is scored in: metres a second for walks.
func (t Test) Unit() Unit { return t.protocol().unit }

// LessIsBetter reports whether a lower score of t is better, as of times and risks.
func (t Test) LessIsBetter() bool { return t.protocol().less }

// Measure returns what the score of t is a measure of.
func (t Test) Measure() Measure { return t.protocol().measure }

// Plausible returns the least and the greatest score that is taken for no slip;
// both not given for no test.
func (t Test) Plausible() (low, high Amount) {
	p := t.protocol()
	if p.unit == 0 {
		return Amount{}, Amount{}
	}
	return p.amount(p.low), p.amount(p.high)
}

// amount returns v, a number of the table above, in the unit of the score.
func (p protocol) amount(v float64) Amount { return units.Must(NewAmount(v, p.unit)) }

// counted reports whether scores are whole numbers.
func (p protocol) counted() bool { return p.unit == Reps || p.unit == Points || p.unit == Level }

// score returns a recorded amount in the unit of the score. A speed from a time
// is rounded down, so that one below a threshold stays below it.
func (p protocol) score(a Amount) Amount {
	if p.course == 0 || a.unit != Seconds {
		return a
	}
	return Amount{p.course * perUnit / a.millionths, MetresPerSecond}
}

// checkAmount returns nil if a may be a recorded amount of t.
func (t Test) checkAmount(a Amount) error {
	p := t.protocol()
	recorded := []Unit{p.unit}
	if p.course != 0 {
		recorded = append(recorded, Seconds)
	}
	low, high := t.Plausible()
	allowed := fmt.Sprintf("%s to %s", low, high)
	switch {
	case a.IsZero():
		return field.Bad(nil, allowed, field.ErrMissing)
	case !slices.Contains(recorded, a.unit):
		return field.Bad(a, fmt.Sprintf("an amount in %v", recorded), field.ErrConflict)
	case a.unit == Seconds && a.millionths <= 0 && p.course != 0:
		return field.Bad(a, "a time above 0 s", field.ErrOutOfRange)
	case p.counted() && !a.whole():
		return field.Bad(a, allowed+" in whole numbers", field.ErrOutOfRange)
	}
	if s := p.score(a).millionths; s < low.millionths || s > high.millionths {
		return field.Bad(a, allowed, field.ErrOutOfRange)
	}
	return nil
}

// measures returns the measures that a result is one of.
func (r Result) measures() []Measure {
	own := []Measure{r.Test.Measure()}
	if r.Side == body.Left || r.Side == body.Right {
		switch r.Hand {
		case Dominant:
			own = append(own, gripDominant)
		case NonDominant:
			own = append(own, gripNonDominant)
		}
	}
	return own
}
