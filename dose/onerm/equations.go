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
	// reynoldsRange lies between the 5 and the 10RM that were measured: at 1 the
	// curves fall a little below the load itself.
	reynoldsRange = units.Must(units.Between(5.0, 10.0))
	// kemmler2024Range was tested in zones from 5 to 16RM.
	kemmler2024Range = units.Must(units.Between(5.0, 16.0))
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
	0: {},
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
		known:   evidence.Fact{Source: "roberts2024", Basis: evidence.Published, Locator: "abstract, which gives the form without the name", From: []evidence.FactID{factLombardiName}},
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
		domain: rising(kemmler1, kemmler2, kemmler3), studied: kemmlerRange,
		known:   evidence.Fact{Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		advised: evidence.Fact{Value: "tested in zones from 3 to 20 repetitions to failure", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "70 trained women after the menopause, 57.4 ± 3.1 years; machine leg press, bench press, rowing, leg adduction", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
	}, Kemmler2024LatPulls: kemmler2024("lat pulls", 9.87542505e-1, 1.52700149e-2, 2.78487038e-3, -1.15638888e-4),
	Kemmler2024TricepsDips:    kemmler2024("triceps dips", 9.73559954e-1, 2.71642658e-2, 9.30880743e-4, -4.77453474e-5),
	Kemmler2024TrunkExtension: kemmler2024("trunk extension", 1.01565994, -1.30808261e-2, 6.01883266e-3, -2.28623800e-4),
	Kemmler2024TrunkFlexion:   kemmler2024("trunk flexion", 9.94961852e-1, 7.31240752e-3, 2.93967456e-3, -1.05109010e-4),
	Kemmler2024LegExtension:   kemmler2024("leg extension", 9.99714613e-1, 1.84050532e-3, 3.90281962e-3, -1.28405344e-4),
	Kemmler2024LegFlexion:     kemmler2024("leg flexion", 9.94637813e-1, 7.15193846e-3, 3.33621122e-3, -1.09143358e-4),
	Reynolds2006ChestPress:    reynolds2006(48.47, 55.51, 0.0723),
	Reynolds2006LegPress:      reynolds2006(26.41, 78.17, 0.0569),
	BaechleGroves: {
		shape: slope, a: 0.033,
		domain: above0, studied: sharedRange,
		known:   evidence.Fact{Source: "baechle2000", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
}

// kemmler2024 is a row of the cubics of 2024. Only the coefficients were read:
// that they make a cubic in this order, and which exercise each belongs to, is
// inferred, and so the equation rests on that reading.
func kemmler2024(exercise string, a, b, c, d float64) equation {
	const source = "kemmler2024"
	return equation{
		shape: cubic, a: a, b: b, c: c, d: d,
		domain: rising(b, c, d), studied: kemmler2024Range,
		known:   evidence.Fact{Source: source, Basis: evidence.Computed, Locator: "regression coefficients", From: []evidence.FactID{factCubics, factCubicForm}},
		advised: evidence.Fact{Value: "tested in zones from 5 to 16 repetitions to failure", Source: source, Basis: evidence.Published},
		people:  evidence.Fact{Value: "40 well-trained women and men of 73 ± 8 years with osteopenia or osteoporosis; machine " + exercise + " (the exercise is inferred)", Source: source, Basis: evidence.Published},
	}
}

// reynolds2006 is a row of the exponentials of 2006.
func reynolds2006(a, b, c float64) equation {
	const source = "reynolds2006"
	return equation{
		shape: exponential, a: a, b: b, c: c,
		domain: above0, studied: reynoldsRange,
		known:   evidence.Fact{Source: source, Basis: evidence.FromMemory, Locator: "the form was read, the coefficients were not"},
		advised: evidence.Fact{Value: "made from 1, 5, 10 and 20 repetitions to failure; relied on from 5 to 10", Source: source, Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "34 men and 36 women of 18 to 69 years; flat barbell bench press and plate-loaded leg press", Source: source, Basis: evidence.Published, Locator: "abstract"},
	}
}
