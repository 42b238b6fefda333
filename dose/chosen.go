package dose

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/internal/tested"
)

// choose takes the estimate that the dose rests on, made out for the side asked
// for, and lists those that cannot be used. NewFrame says which it is.
func (f *Frame) choose() {
	mine := tested.Lists{Estimates: f.r.Estimates}
	if len(mine.Estimates) > 1 {
		mine = mine.For(f.r.Exercise)
	}
	if len(mine.Estimates) > 1 { // else the day was looked at
		mine, f.g.Unused = mine.Usable(f.r.Day, f.r.Screening.TestsFrom, equipment.Kit{})
	}
	f.estimate, f.note = mine.Test(f.r.Exercise, f.r.Side)
}
