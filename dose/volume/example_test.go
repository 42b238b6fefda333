package volume_test

import (
	"fmt"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// What an invented week added up to: sets of a muscle in a stated convention, and the
// weight that was moved.
func ExampleNewCounter() {
	counter, err := volume.NewCounter(exercise.Standard(), volume.Options{Kind: volume.Performed})
	if err != nil {
		fmt.Println(err)
		return
	}
	day := units.Must(units.NewDay(2026, 11, 30))
	tally := counter.NewTally()
	for range 3 {
		err := tally.Add(setlog.Set{Day: day, Exercise: "goblet-squat", Side: body.Both, Hold: body.BothHandsOnOne, Load: 8 * units.Kilogram, Reps: 10})
		if err != nil {
			fmt.Println(err)
		}
	}
	week, err := volume.ISOWeekOf(day)
	if err != nil {
		fmt.Println(err)
	}
	for _, m := range tally.Totals(week).Muscles[:2] {
		fmt.Println(week, m.Muscle, m.Sets(volume.DirectSets), "–", m.Sets(volume.FractionalSets))
	}
	fmt.Println(tally.Totals(week).Exercises[0].Held, "moved")
	// Output:
	// 2026-W49 erector_spinae 0 direct – 1.5 fractional
	// 2026-W49 gluteus_maximus 3 direct – 3 fractional
	// 240 kg moved
}

// Numbers of a session: what was lifted, how hard it was, and how even a week.
func ExampleSessionLoad() {
	lifted, err := volume.Lifted(8*units.Kilogram, 30)
	fmt.Println(lifted, err)
	relative, err := volume.RelativeVolume(3, 10, 0.7)
	fmt.Println(relative, err)
	load, err := volume.SessionLoad(units.Must(units.NewEffort(units.ScaleCR10, 7)), 40)
	fmt.Println(load, err)
	spread, _, err := volume.SpreadOf([]float64{280, 0, 0, 300, 0, 0, 0}) // by the deviation of a sample
	fmt.Printf("monotony %.2f, strain %.0f %v\n", spread.Monotony, spread.Strain, err)
	// Output:
	// 240 kg <nil>
	// 21 <nil>
	// 280 <nil>
	// monotony 0.59, strain 339 <nil>
}
