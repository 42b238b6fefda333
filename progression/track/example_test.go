package track_test

import (
	"fmt"
	"log"
	"math"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/track"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// An invented woman of 67 rows twice a week; the count is noted, with what was left. Five weeks
// say more than any two of the sets.
func Example() {
	row := units.Must(exercise.Standard().Lookup("one-arm-dumbbell-row"))
	who := body.Person{Age: 67, Sex: body.Female, Training: body.Novice}
	start := units.Must(units.NewDay(2026, 9, 1))
	var readings []track.Reading
	for i, reps := range []int{4, 4, 5, 4, 5, 6, 5, 6, 7, 7} {
		e, err := onerm.FromSet(setlog.Set{
			Day: start + units.Day(7*(i/2)+3*(i%2)), Exercise: row.ID, Side: body.Right, Hold: row.Hold,
			Load: 8 * units.Kilogram, Reps: reps, Effort: units.Must(units.InReserve(3)),
		}, row, who)
		if err != nil {
			log.Fatal(err)
		}
		r, err := track.FromEstimate(e, 9)
		if err != nil {
			log.Fatal(err)
		}
		readings = append(readings, r)
	}
	var t track.Track
	if err := t.Run(track.StrengthModel(), track.State{}, readings); err != nil {
		log.Fatal(err)
	}
	for _, i := range []int{0, t.Len() - 1} {
		best, within, err := t.Smoothed(i).OneRM(0.9, t.Width())
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(t.Smoothed(i).Day, best.Short(units.Nearest), "of", within)
	}
	odds, err := t.Since(start, 0.02, 0.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println(track.Words().Client(odds.Reasons[0]))
	fmt.Println(track.Words().Clinician(odds.Reasons[0]))
	// Output:
	// 2026-09-01 9.6 kg of 9.223 kg to 10.015 kg
	// 2026-10-02 10.5 kg of 10.087 kg to 10.924 kg
	// You are getting stronger.
	// From 2026-09-01 to 2026-10-02 the level changed by 9.2 % (2.6 % to 16.3 % at 90 %); with a probability of 96.2 % it rose, of 3.3 % it held and of 0.4 % it fell, each by a margin of 2 %: rising.
}

// One reading at a time, as a visit ends; what is known is small and can be stored.
func ExampleState_Seen() {
	m := track.StrengthModel()
	var s track.State
	for i, kg := range []float64{10, 10.5, 10.2, 11} {
		var err error
		r := track.Reading{Day: units.Must(units.NewDay(2026, 9, 1+7*i)), Value: math.Log(kg), Variance: 0.036 * 0.036}
		if s, err = s.Seen(m, r); err != nil {
			log.Fatal(err)
		}
	}
	w := s.Likelihood(m).Width(m)
	for _, day := range []int{22, 30} {
		f, err := s.Forecast(m, units.Must(units.NewDay(2026, 9, day)))
		if err != nil {
			log.Fatal(err)
		}
		best, within, err := f.OneRM(0.9, w)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(best.Short(units.Nearest), "of", within)
	}
	// Output:
	// 10.7 kg of 9.986 kg to 11.364 kg
	// 10.8 kg of 9.82 kg to 11.843 kg
}

// The Nile's level (Durbin and Koopman 2012, chapter 2) from its first eight years.
func ExampleMostLikely() {
	var readings []track.Reading
	for i, flow := range []float64{1120, 1160, 963, 1210, 1160, 1160, 813, 1230} {
		readings = append(readings, track.Reading{Day: units.Must(units.NewDay(1871, 1, 1+i)), Value: flow})
	}
	found, err := track.MostLikely(track.Model{Kind: track.LocalLevel}, track.Unknowns{Level: true, Noise: true}, readings)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("noise %.0f (%.0f), level %.0f\n", found.Model.Noise, found.Errors.Noise, found.Model.Level)
	// Output:
	// noise 20187 (10790), level 0
}

// Readings that swing to and fro about a line hang together: 10.0 lies beyond the 6.0
// that chi-squared with two degrees of freedom exceeds once in twenty.
func ExampleDiagnose() {
	m := track.Model{Kind: track.LinearTrend, Noise: 1}
	var readings []track.Reading
	for i, y := range []float64{1, 2.6, 2.9, 4.5, 4.4, 6.9, 6.8, 8.4} {
		readings = append(readings, track.Reading{Day: units.Must(units.NewDay(2026, 9, 1+i)), Value: y})
	}
	d, err := track.Diagnose(m, readings, 2)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%d days, normality %.2f, together %.2f over %d lags\n", d.Days, d.Normality, d.Together, d.Lags)
	// Output:
	// 6 days, normality 0.53, together 10.01 over 2 lags
}

// Twelve kilograms after ten: two tests of a beginner do not show it, the means of three
// after practice do.
func ExampleRealChange() {
	r := track.StandardReliability()
	for _, n := range []int{1, 3} {
		a, err := track.RealChange(
			track.MeanTest{Mean: 10 * units.Kilogram, Count: n, Novel: n == 1}, track.MeanTest{Mean: 12 * units.Kilogram, Count: n}, r, 0.95)
		if err != nil {
			log.Fatal(err)
		}
		fmt.Println(a.Shown, a.Change, "against", a.Detectable)
		fmt.Println(track.Words().Client(a.Reasons[0]))
	}
	// Output:
	// not shown 20 % against 17.5 %
	// No clear change yet.
	// real 20 % against 9.8 %
	// You have become stronger: more than a test varies by itself.
}

// Errors of two tests from what a reliability study prints.
func ExampleSEM() {
	sem, err := track.SEM(10, 0.9)
	if err != nil {
		log.Fatal(err)
	}
	for _, n := range []int{1, 3} {
		fmt.Printf("means of %d: %.2f\n", n, units.Must(track.MDC(sem, 0.95, n, n)))
	}
	fmt.Printf("from differences %.2f, worthwhile %.1f\n", units.Must(track.TypicalError(9)), units.Must(track.SmallestWorthwhile(16)))
	rise, fall, err := track.MDCShare(0.06, 0.95, 1, 1)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("at 6 %:", rise, "up,", fall, "down")
	// Output:
	// means of 1: 8.77
	// means of 3: 5.06
	// from differences 6.36, worthwhile 3.2
	// at 6 %: 17.5 % up, 14.9 % down
}

// The example of the US EPA's guide to data quality (QA/G-9S, 2006, page 109).
func ExampleMannKendall() {
	y := []float64{10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15}
	r, err := track.MannKendall(y)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("S %d, variance %.2f, Z %.3f, P %.3f\n", r.S, r.Variance, r.Z, r.P)
	x := []float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}
	slope, interval, err := track.Sen(x, y, 0.9)
	if err != nil {
		log.Fatal(err)
	}
	fmt.Println("slope", slope, "of", interval)
	// Output:
	// S 22, variance 155.33, Z 1.685, P 0.092
	// slope 1 of 0 to 2
}

func ExampleFromVisit() {
	day := units.Must(units.NewDay(2027, 2, 5))
	sets := []setlog.Set{
		{Day: day, Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand, Load: 6 * units.Kilogram, Reps: 10, Effort: units.Must(units.InReserve(4))},
		{Day: day, Exercise: "one-arm-dumbbell-row", Side: body.Right, Hold: body.OneHand, Load: 6 * units.Kilogram, Reps: 10, Effort: units.Must(units.InReserve(3))},
	}
	r, err := track.FromVisit(day, strength.Ability{}.Seen(2, 3, sets...))
	if err != nil {
		log.Fatal(err)
	}
	fmt.Printf("%s: %.1f kg\n", r.Day, math.Exp(r.Value))
	// Output: 2027-02-05: 9.0 kg
}
