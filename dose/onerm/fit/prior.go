package fit

import (
	"math"

	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/internal/bend"
)

// A normal is a normal distribution.
type normal struct{ mean, sd float64 }

// priorEquations are the equations whose falls the population prior is made of.
var priorEquations = [...]onerm.Formula{
	onerm.Epley, onerm.Brzycki, onerm.Lander, onerm.Lombardi, onerm.Mayhew,
	onerm.OConner, onerm.Wathen, onerm.Adams, onerm.Kemmler2006,
}

// Published errors, as shares of the load, that say how far people differ.
const (
	bestError  = 0.034 // Brzycki, 7 to 10RM, practised young men (nascimento2007)
	worstError = 0.078 // women, 5 to 10RM (abadie2000)
	errorReps  = 8     // the middle of their repetitions, rounded
	testCV     = 0.042 // a 1RM test against itself, median (grgic2020)
)

const (
	// setSD is the standard error of a set whose point does not state one: the
	// load that goes with its repetitions, as a share.
	setSD = testCV
	// setFreedom is how many sets the belief in setSD counts for.
	setFreedom = 4
	// sameDay is the share of a set's error variance that sets of one day share.
	sameDay = 0.5
	// floorSpread is the standard deviation of the logit of the floor: a floor
	// of a half has a middle 95 % from 0.12 to 0.88.
	floorSpread = 1.0
)

// population is the prior on the logarithm of the fall, and so on the shape of
// every form.
var population = func() normal {
	between := equationFalls()
	return normal{between.mean, math.Hypot(between.sd, personSpread(between))}
}()

// populationFloor is the prior on the logit of the floor.
var populationFloor = normal{(logit(mayhewFloor) + logit(wathenFloor)) / 2, floorSpread}

// equationFalls is the spread of the published equations: of the logarithm of
// their fall from one repetition to [bend.Pivot].
func equationFalls() normal {
	var falls [len(priorEquations)]float64
	for i, f := range priorEquations {
		falls[i] = math.Log(formulaFall(f))
	}
	return spread(falls[:])
}

// formulaFall is the fall of a published equation.
func formulaFall(f onerm.Formula) float64 {
	one, _ := f.Fraction(1)          // defined for every equation
	ten, _ := f.Fraction(bend.Pivot) // likewise
	return math.Log(float64(one / ten))
}

// personSpread is how far people differ from an equation: the published errors
// of prediction less the error of the test itself, over the fall at the
// repetitions they were found at.
func personSpread(between normal) float64 {
	both := (float64(bestError*bestError) + float64(worstError*worstError)) / 2
	people := math.Sqrt(both - float64(testCV*testCV))
	middle := bend.WithFall(bend.Hyperbola, math.Exp(between.mean), 0)
	return people / -middle.At(errorReps).Share
}

// spread returns the mean and the standard deviation of x.
func spread(x []float64) normal {
	n, sum := float64(len(x)), 0.0
	for _, v := range x {
		sum += v
	}
	mean, squares := sum/n, 0.0
	for _, v := range x {
		squares += float64((v - mean) * (v - mean))
	}
	return normal{mean, math.Sqrt(squares / (n - 1))}
}

func logit(a float64) float64 { return math.Log(a / (1 - a)) }

func logistic(x float64) float64 { return 1 / (1 + math.Exp(-x)) }

// A special is a published equation that a form contains.
type special struct {
	formula onerm.Formula
	form    bend.Form
	shape   float64
	floor   float64
}

// Floors of two published equations, whose loads begin above the floor by 41.9
// and 53.8 % of the 1RM at no repetitions.
var (
	mayhewFloor = 52.2 / (52.2 + float64(41.9*math.Exp(-0.055)))
	wathenFloor = 48.8 / (48.8 + float64(53.8*math.Exp(-0.075)))
)

// specials says with which numbers a form is which published equation.
var specials = [...]special{
	{onerm.Epley, bend.Hyperbola, 31, 0},
	{onerm.OConner, bend.Hyperbola, 41, 0},
	{onerm.Brzycki, bend.Line, 36, 0},
	{onerm.Lander, bend.Line, 101.3/2.67123 - 1, 0},
	{onerm.Adams, bend.Line, 49, 0},
	{onerm.Lombardi, bend.Power, 0.1, 0},
	{onerm.Mayhew, bend.ExponentialFloor, 0.055, mayhewFloor},
	{onerm.Wathen, bend.ExponentialFloor, 0.075, wathenFloor},
}
