package onerm

import (
	"math"

	"example.org/posology/dose/onerm/internal/shape"
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

// above0 has no upper end.
var above0 = units.AtLeast(shape.Tiny)

// upTo returns the float64s above 0 and below a pole.
func upTo(pole float64) units.Range[float64] {
	return units.Must(units.Between(shape.Tiny, math.Nextafter(pole, 0)))
}

// Coefficients of Kemmler 2006 (abstract), by power of the repetitions.
const kemmler0, kemmler1, kemmler2, kemmler3 = 0.988, 0.0104, 0.00190, -0.0000584

// unknownPeople is what is said where no description was found.
var unknownPeople = evidence.Fact{Value: "not known here"}

// An equation is a row of the table of equations.
type equation struct {
	shape.Shape
	studied units.Range[float64] // repetitions to failure
	known   evidence.Fact        // how the coefficients are known; ID and value are made
	advised evidence.Fact        // the range in use or tested; the ID is made
	people  evidence.Fact        // in whom it was made; no fact without a basis
}

// equations is the table of equations, with how each number is known.
var equations = [...]equation{
	0: {},
	Epley: {
		Shape:   shape.Shape{Kind: shape.Linear, A: 30, Domain: above0},
		studied: sharedRange,
		known:   evidence.Fact{Source: "epley1985", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "usually advised up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  evidence.Fact{Value: "nobody: a chart, published without a study or an error", Source: "epley1985", Basis: evidence.FromMemory},
	},
	Brzycki: {
		Shape:   shape.Shape{Kind: shape.Hyperbola, A: 36, B: 37, C: 1, Domain: upTo(37)},
		studied: sharedRange,
		known:   evidence.Fact{Source: "brzycki1993", Basis: evidence.FromMemory, Locator: "also printed with 1.0278 and 0.0278"},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  evidence.Fact{Value: "nobody: published without a sample that it was derived from", Source: "brzycki1993", Basis: evidence.FromMemory},
	},
	Lander: {
		Shape:   shape.Shape{Kind: shape.Hyperbola, A: 100, B: 101.3, C: 2.67123, Domain: upTo(101.3 / 2.67123)},
		studied: sharedRange,
		known:   evidence.Fact{Source: "lander1985", Basis: evidence.Secondary, Via: "a student laboratory report, which misprints two other equations"},
		advised: evidence.Fact{Value: "used up to 10 repetitions to failure", Basis: evidence.FromMemory},
		people:  unknownPeople,
	},
	Lombardi: {
		Shape:   shape.Shape{Kind: shape.Power, A: 0.1, Domain: units.AtLeast(1.0)},
		studied: sharedRange,
		known:   evidence.Fact{Source: "roberts2024", Basis: evidence.Published, Locator: "abstract, which gives the form without the name", From: []evidence.FactID{factLombardiName}},
		advised: evidence.Fact{Value: "tested at 4 to 10 repetitions to failure", Source: "roberts2024", Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "tested in active men of 20.6 years, bench press and leg extension; in whom it was made is not known here", Source: "roberts2024", Basis: evidence.Published, Locator: "abstract"},
	},
	Mayhew: {
		Shape:   shape.Shape{Kind: shape.Exponential, A: 52.2, B: 41.9, C: 0.055, Domain: above0},
		studied: sharedRange,
		known:   evidence.Fact{Source: "mayhew1992", Basis: evidence.FromMemory},
		advised: evidence.Fact{Value: "made from loads of 55 to 95 % of the 1RM", Source: "mayhew1992", Basis: evidence.Secondary, Via: "Reynolds, Gordon, Robergs. J Strength Cond Res 2006;20(3):584-592"},
		people:  evidence.Fact{Value: "college men and women, a minute of bench presses", Source: "mayhew1992", Basis: evidence.FromMemory},
	},
	OConner: remembered(shape.Shape{Kind: shape.Linear, A: 40, Domain: above0}, "oconner1989", "also printed with 0.025", "used up to 10 or 12 repetitions to failure"),
	Wathen:  remembered(shape.Shape{Kind: shape.Exponential, A: 48.8, B: 53.8, C: 0.075, Domain: above0}, "wathen1994", "435-446", "used up to 10 or 15 repetitions to failure"),
	Adams:   remembered(shape.Shape{Kind: shape.Hyperbola, A: 1, B: 1, C: 0.02, Domain: upTo(50)}, "adams1994", "", "used up to 10 repetitions to failure"),
	Kemmler2006: {
		Shape:   shape.Shape{Kind: shape.Cubic, A: kemmler0, B: kemmler1, C: kemmler2, D: kemmler3, Domain: shape.Rising(kemmler1, kemmler2, kemmler3)},
		studied: kemmlerRange,
		known:   evidence.Fact{Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		advised: evidence.Fact{Value: "tested in zones from 3 to 20 repetitions to failure", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "70 trained women after the menopause, 57.4 ± 3.1 years; machine leg press, bench press, rowing, leg adduction", Source: "kemmler2006", Basis: evidence.Published, Locator: "abstract"},
	},
	Kemmler2024LatPulls:       kemmler2024("lat pulls", 9.87542505e-1, 1.52700149e-2, 2.78487038e-3, -1.15638888e-4),
	Kemmler2024TricepsDips:    kemmler2024("triceps dips", 9.73559954e-1, 2.71642658e-2, 9.30880743e-4, -4.77453474e-5),
	Kemmler2024TrunkExtension: kemmler2024("trunk extension", 1.01565994, -1.30808261e-2, 6.01883266e-3, -2.28623800e-4),
	Kemmler2024TrunkFlexion:   kemmler2024("trunk flexion", 9.94961852e-1, 7.31240752e-3, 2.93967456e-3, -1.05109010e-4),
	Kemmler2024LegExtension:   kemmler2024("leg extension", 9.99714613e-1, 1.84050532e-3, 3.90281962e-3, -1.28405344e-4),
	Kemmler2024LegFlexion:     kemmler2024("leg flexion", 9.94637813e-1, 7.15193846e-3, 3.33621122e-3, -1.09143358e-4),
	Reynolds2006ChestPress:    reynolds2006("flat barbell bench press", 48.47, 55.51, 0.0723),
	Reynolds2006LegPress:      reynolds2006("plate-loaded leg press", 26.41, 78.17, 0.0569),
	BaechleGroves:             remembered(shape.Shape{Kind: shape.Slope, A: 0.033, Domain: above0}, "baechle2000", "", "used up to 10 repetitions to failure"),
}

// remembered is a row of which coefficients, place and advice are from memory, and the
// people not known here.
func remembered(s shape.Shape, source evidence.SourceID, locator, advised string) equation {
	return equation{
		Shape:   s,
		studied: sharedRange,
		known:   evidence.Fact{Source: source, Basis: evidence.FromMemory, Locator: locator},
		advised: evidence.Fact{Value: advised, Basis: evidence.FromMemory},
		people:  unknownPeople,
	}
}

// kemmler2024 is a row of the cubics of 2024. Only the coefficients were read:
// that they make a cubic in this order, and which exercise each belongs to, is
// inferred, and so the equation rests on that reading.
func kemmler2024(exercise string, a, b, c, d float64) equation {
	const source = "kemmler2024"
	return equation{
		Shape:   shape.Shape{Kind: shape.Cubic, A: a, B: b, C: c, D: d, Domain: shape.Rising(b, c, d)},
		studied: kemmler2024Range,
		known:   evidence.Fact{Source: source, Basis: evidence.Computed, Locator: "regression coefficients", From: []evidence.FactID{factCubics, factCubicForm}},
		advised: evidence.Fact{Value: "tested in zones from 5 to 16 repetitions to failure", Source: source, Basis: evidence.Published},
		people:  evidence.Fact{Value: "40 well-trained women and men of 73 ± 8 years with osteopenia or osteoporosis; machine " + exercise + " (the exercise is inferred)", Source: source, Basis: evidence.Published},
	}
}

// reynolds2006 is a row of the exponentials of 2006.
func reynolds2006(exercise string, a, b, c float64) equation {
	const source = "reynolds2006"
	return equation{
		Shape:   shape.Shape{Kind: shape.Exponential, A: a, B: b, C: c, Domain: above0},
		studied: reynoldsRange,
		known:   evidence.Fact{Source: source, Basis: evidence.FromMemory, Locator: "the form was read, the coefficients were not"},
		advised: evidence.Fact{Value: "made from 1, 5, 10 and 20 repetitions to failure; relied on from 5 to 10", Source: source, Basis: evidence.Published, Locator: "abstract"},
		people:  evidence.Fact{Value: "34 men and 36 women of 18 to 69 years; " + exercise, Source: source, Basis: evidence.Published, Locator: "abstract"},
	}
}
