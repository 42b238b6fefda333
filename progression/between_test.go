package progression_test

import (
	"testing"

	"example.org/posology/progression"
	"example.org/posology/units"
)

// Where the body moves too, or steps are fine, the furthest weight is taken that is
// shown and within ten per cent, not the next one alone.
func TestNextSkipsSmallSteps(t *testing.T) {
	c := rowCourse(t, 4, 4.05, 4.1, 4.2, 4.3, 4.4, 4.5)
	done(&c, 4*kilo, 12, 6)
	d := nextOf(t, c)
	if d.Change != progression.MoreLoad || d.Next.Load.Each() != 4400*units.Gram || d.Rise.External < 0.099 || d.Rise.External > 0.1001 {
		t.Errorf("%v, %v, %+v", d.Change, d.Next.Load.Each(), d.Rise)
	}
	done(&c, 4*kilo, 12, 3) // the bottom of the range, 8, is allowed with 4.05 kg, 7 with 4.1
	if d = nextOf(t, c); d.Next.Load.Each() != 4050*units.Gram {
		t.Errorf("%v", d.Next.Load.Each())
	}
}

// Where the body moves too the next weight of the kit comes, 3 kg after 2, however small the step is of
// all that is moved; 4 kg only where all that was done allows the whole range with 3, which is then said.
// By Epley 60 kg of body and weight, 12 times with 4 left, come to 92 kg, with 5 left to 94: of 61 kg 15 and 16 to
// failure, and three are to be left, the fewest that may be by chance.
func TestNextTakesTheNextOfTheKit(t *testing.T) {
	for _, tt := range []struct {
		left float64
		want units.Mass
		said string
	}{{4, 3 * kilo, "progression.jump"}, {5, 4 * kilo, "progression.passed-over"}} {
		c := squatCourse(t, 2, 3, 4)
		c.BodyMass = 72 * kilo
		done(&c, 2*kilo, 12, tt.left)
		for days := 9; days > 0; days -= 3 {
			c.Log = append([]progression.Visit{pastVisit(c, 12-days, 2*kilo, 12, tt.left)}, c.Log...)
		}
		d := nextOf(t, c)
		if d.Change != progression.MoreLoad || d.Next.Load.Each() != tt.want || string(d.Rise.Reasons[0].Code) != tt.said {
			t.Errorf("%v left: %v, %v, %+v", tt.left, d.Change, d.Next.Load.Each(), d.Rise)
		}
	}
}
