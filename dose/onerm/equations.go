package onerm

import (
	"math"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// The limits of repetitions to failure that the policy holds to.
var (
	// sharedRange is the shared limit of the classical equations: above 10 they
	// drift apart by a quarter at 15 and by half at 20.
	sharedRange = units.Must(units.Between(1.0, 10.0))
	// kemmlerRange was tested in zones from 3 to 20RM.
	kemmlerRange = units.Must(units.Between(3.0, 20.0))
)

// above0 has no upper end; tiny is the first float64 above 0.
var above0 = units.AtLeast(tiny)

const tiny = math.SmallestNonzeroFloat64

// upTo returns the float64s above 0 and below a pole.
func upTo(pole float64) units.Range[float64] {
	return units.Must(units.Between(tiny, math.Nextafter(pole, 0)))
}

// Coefficients of Kemmler 2006 (abstract), by power of the repetitions.
const kemmler0, kemmler1, kemmler2, kemmler3 = 0.988, 0.0104, 0.00190, -0.0000584

// unknownPeople is what is said where no description was found.
var unknownPeople = evidence.Fact{Value: "not known here"}

// equations is the table of equations, with how each number is known.
var equations = [...]equation{
	FormulaUnknown: {},
	Epley: {
		shape: linear, a: 30,
		domain: above0, studied: sharedRange,
		known:   evidence.Fact{Source: "epley1985", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "usually advised up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  evidence.Fact{Value: "nobody: a chart, published without a study or an error", Source: "epley1985", Basis: evidence.FromMemory},
	},
	Brzycki: {
		shape: hyperbola, a: 36, b: 37, c: 1,
		domain: upTo(37), studied: sharedRange,
		known:   evidence.Fact{Source: "brzycki1993", Basis: evidence.FromMemory, Locator: "also printed with 1.0278 and 0.0278"},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  evidence.Fact{Value: "nobody: published without a sample that it was derived from", Source: "brzycki1993", Basis: evidence.FromMemory},
	},
	Lander: {
		shape: hyperbola, a: 100, b: 101.3, c: 2.67123,
		domain: upTo(101.3 / 2.67123), studied: sharedRange,
		known:   evidence.Fact{Source: "lander1985", Basis: evidence.Secondary, Via: "a student laboratory report, which misprints two other equations"},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
	Lombardi: {
		shape: power, a: 0.1,
		domain: units.AtLeast(1.0), studied: sharedRange,
		known:   evidence.Fact{Source: "roberts2024", Basis: evidence.Published, Locator: "abstract, which gives the form without the name"},
		advised: evidence.Fact{Value: "tested at 4 to 10 repetitions to failure", Source: "roberts2024", Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "tested in active men of 20.6 years, bench press and leg extension; in whom it was made is not known here", Source: "roberts2024", Basis: evidence.Published, Locator: "abstract"},
	},
	Mayhew: {
		shape: exponential, a: 52.2, b: 41.9, c: 0.055,
		domain: above0, studied: sharedRange,
		known:   evidence.Fact{Source: "mayhew1992", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "made from loads of 55 to 95 % of the 1RM", Source: "mayhew1992", Basis: evidence.Secondary, Via: "Reynolds, Gordon, Robergs. J Strength Cond Res 2006;20(3):584-592"},
		people:  evidence.Fact{Value: "college men and women, a minute of bench presses", Source: "mayhew1992", Basis: evidence.FromMemory},
	},
	OConner: {
		shape: linear, a: 40,
		domain: above0, studied: sharedRange,
		known:   evidence.Fact{Source: "oconner1989", Basis: evidence.FromMemory, Locator: "also printed with 0.025"},
		advised: evidence.Fact{Value: "used up to 10 or 12 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
	Wathen: {
		shape: exponential, a: 48.8, b: 53.8, c: 0.075,
		domain: above0, studied: sharedRange,
		known:   evidence.Fact{Source: "wathen1994", Basis: evidence.FromMemory, Locator: "435-446"},
		advised: evidence.Fact{Value: "used up to 10 or 15 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
	Adams: {
		shape: hyperbola, a: 1, b: 1, c: 0.02,
		domain: upTo(50), studied: sharedRange,
		known:   evidence.Fact{Source: "adams1994", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
	Kemmler2006: {
		shape: cubic, a: kemmler0, b: kemmler1, c: kemmler2, d: kemmler3,
		domain: units.Must(units.Between(tiny, turn(kemmler1, kemmler2, kemmler3))), studied: kemmlerRange,
		known:   evidence.Fact{Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		advised: evidence.Fact{Value: "tested in zones from 3 to 20 repetitions to failure", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "70 trained women after the menopause, 57.4 ± 3.1 years; machine leg press, bench press, rowing, leg adduction", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
	},
}
