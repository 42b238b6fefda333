package progression_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// asAsked is a visit at which all that was asked was done, so many were told left, and
// nothing was amiss.
func asAsked(p dose.Prescription, day units.Day, left float64) progression.Visit {
	pain := calmPain()
	v := progression.Visit{
		Day: day, Plan: p, Moment: &screening.Moment{}, Pain: &pain, RangeLost: screening.No, FormLost: screening.No,
		Observer: dose.Observation{Who: "a colleague", Day: day},
	}
	sides := []body.Side{p.Side}
	if p.OneSided && p.Side == body.Both {
		sides = []body.Side{body.Left, body.Right}
	}
	for range p.Sets {
		for _, side := range sides {
			s := setOf{Day: day, Exercise: p.Exercise, Side: side, Hold: p.Hold, Load: p.Load.Each(), Reps: p.Count, Effort: units.Must(units.InReserve(left))}
			if s.Hold == body.OneEachHand {
				s.Stated = body.PerHand
			}
			v.Sets = append(v.Sets, s)
		}
	}
	return v
}

// goesOn decides, and does what is asked, so many times with so many left, until the
// exercise changes or nothing is prescribed.
func goesOn(t failer, c *progression.Course, visits int, left float64) []progression.Decision {
	t.Helper()
	var list []progression.Decision
	for range visits {
		c.Request.Screening.Day, c.Request.Screening.ReviewBy = c.Day-1, c.Day+100
		d := nextOf(t, *c)
		if list = append(list, d); d.Next == nil || d.Instead != "" {
			break
		}
		c.Log = append(c.Log, asAsked(*d.Next, c.Day, left))
		c.Day += 3
	}
	return list
}

// mayStay are the reasons by which a dose goes up no more: of the phase or the kit.
var mayStay = []evidence.ReasonCode{"progression.familiarising", "progression.maintain", "progression.kit-ends", "progression.ladder-ends"}

const stuckRounds = 20 // of a hundred draws each

// fallsWhenEasy reports a decision that asks for fewer repetitions of the same weight after a
// visit that was done as asked with more left than can be counted: unless the weight is looked
// for, a pace or a set takes their place, or the range ends there.
func fallsWhenEasy(c progression.Course, d progression.Decision) bool {
	was, is := &last(&c).Plan, d.Next
	if is == nil || d.Instead != "" || toTry(d) || is.Load.Each() != was.Load.Each() || is.Phase != was.Phase || is.Reserve.Least > was.Reserve.Least {
		return false
	}
	top, _ := is.Span.Max()
	return is.Count < min(was.Count, top) && (d.Change < progression.SlowerLowering || d.Change > progression.ExtraSet)
}

// Whatever the course, with every visit done as asked, more left than can be counted,
// watched and without pain, and no trial ever taken up, something becomes harder within 16
// visits, unless the phase or the kit says why not, and no count falls.
func TestNothingIsStuck(t *testing.T) {
	for range stuckRounds {
		rapid.Check(t, func(t *rapid.T) {
			p := drawClient(t)
			p.profile = wellThen(p.profile)
			p.profile.Setting, p.share, p.course.Policy = screening.InClinic, 0, progression.Policy{}
			if !p.drawLog(t) {
				return
			}
			p.profile.Day = p.course.Day
			c, err := p.today()
			if err != nil {
				t.Fatalf("screening: %v", err)
			}
			c.Request.Estimates, c.Request.Performed, c.Sessions = nil, nil, nil // which grow old
			log, left := len(c.Log), between(t, "left", 6, 10)
			list := goesOn(t, &c, 16, float64(left))
			for i, d := range list[1:] {
				if before := c; before.Log[log+i].Plan.Reserve.Least <= units.RIR(left) {
					before.Log = c.Log[:log+i+1]
					if fallsWhenEasy(before, d) {
						t.Fatalf("%s, %v left, after %v × %d: %s", c.Request.Exercise.ID, left, last(&before).Plan.Load.Each(), last(&before).Plan.Count, tell(d))
					}
				}
			}
			d := list[len(list)-1]
			rose := d.Next == nil || d.Instead != "" || slices.ContainsFunc(list, func(d progression.Decision) bool { return d.Action == progression.Progress })
			if !rose && !slices.ContainsFunc(mayStay, func(code evidence.ReasonCode) bool { return hasReason(d, code) }) {
				t.Fatalf("%s, %v: stays at %s", c.Request.Exercise.ID, c.Request.Phase, tell(d))
			}
		})
	}
}

// beginner is somebody whose load is to be found, while movements are learnt.
func beginner(t failer, id exercise.ID, kg ...float64) progression.Course {
	t.Helper()
	c := rowCourse(t, kg...)
	c.Request.Exercise = units.Must(exercise.Standard().Lookup(string(id)))
	c.Request.Screening.Setting, c.Request.Phase, c.Request.Day = screening.InClinic, dose.Familiarise, firstDay
	p, err := dose.Prescribe(c.Request)
	if err != nil || p.Reserve.Countable {
		t.Fatalf("%v, %+v", err, p.Reserve)
	}
	c.Request.Day, c.Log = 0, []progression.Visit{asAsked(p, firstDay, 4)}
	return c
}

// To tell four left where more than can be counted is asked is no failure: fewer
// repetitions, and the weight is kept.
func TestNextKeepsTheWeightWithFourLeft(t *testing.T) {
	for _, id := range []exercise.ID{"goblet-squat", "dumbbell-calf-raise", "one-arm-dumbbell-row"} {
		c := beginner(t, id, 1, 2, 3)
		list := goesOn(t, &c, 24, 4)
		if d := list[len(list)-1]; len(list) < 24 || d.Next.Load.Each() != kilo {
			t.Errorf("%s: after %d visits %s", id, len(list), tell(d))
		}
		c.Request.Phase = dose.Build
		heavier := func(d progression.Decision) bool { return d.Change == progression.FindLoad }
		if list = goesOn(t, &c, 20, 8); !slices.ContainsFunc(list, heavier) {
			t.Errorf("%s: no heavier weight is looked for: %s", id, trail(list))
		}
		c = beginner(t, id, 1, 2, 3) // but not with less than a novice begins with
		if list = goesOn(t, &c, 24, 2); id != "one-arm-dumbbell-row" && list[len(list)-1].Instead == "" {
			t.Errorf("%s: %s", id, trail(list))
		}
	}
}

// From the body alone the way back to a weight takes weeks, not months.
func TestNextComesBackFromTheBodyAlone(t *testing.T) {
	c := beginner(t, "dumbbell-sit-to-stand", 1, 2, 3)
	c.Request.Exercise, c.Request.Day = units.Must(exercise.Standard().Lookup("sit-to-stand")), firstDay
	c.Request.Phase = dose.Build
	p, err := dose.Prescribe(c.Request)
	if err != nil {
		t.Fatal(err)
	}
	c.Request.Day, c.Log = 0, []progression.Visit{asAsked(p, firstDay, 8)}
	list := goesOn(t, &c, 12, 8)
	if d := list[len(list)-1]; d.Change != progression.HarderVariant || d.Next.Load.Each() != kilo {
		t.Errorf("%s", trail(list))
	}
}

func trail(list []progression.Decision) string {
	var text strings.Builder
	for _, d := range list {
		if fmt.Fprintf(&text, "%v %v", d.Action, d.Change); d.Next != nil {
			fmt.Fprintf(&text, " %v × %d × %d", d.Next.Load.Each(), d.Next.Sets, d.Next.Count)
		}
		text.WriteString("; ")
	}
	return text.String()
}

// What was done as asked and clearly easy stays, whatever a far estimate of strength allows,
// and goes up without a trial: told ten left, which is ten or more, a trial that was not
// taken up brings no fewer either. Once seven came after ten, for good.
func TestNextKeepsWhatWasEasy(t *testing.T) {
	for _, id := range []exercise.ID{"one-arm-dumbbell-row", "seated-hammer-curl", "dumbbell-romanian-deadlift"} {
		c := beginner(t, id, 1, 2, 3)
		c.Log[0] = asAsked(c.Log[0].Plan, firstDay, 10)
		for i, d := range goesOn(t, &c, 16, 10) {
			if was := c.Log[i].Plan.Count; d.Next.Count < min(was, 10) || i == 15 && d.Next.Count < 15 {
				t.Errorf("%s, visit %d, after %d: %s", id, i, was, tell(d))
			}
		}
	}
	c := beginner(t, "one-arm-dumbbell-row", 6) // of which fifteen were done first, with three left
	set := setOf{Day: firstDay, Exercise: c.Request.Exercise.ID, Side: body.Both, Hold: body.OneHand, Load: 6 * kilo, Reps: 15, Effort: units.Must(units.InReserve(3))}
	c.Request.Performed = &set
	c.Log[0] = asAsked(c.Log[0].Plan, firstDay, 9)
	c.Log[0].Sets[1].Effort = units.Must(units.InReserve(8))
	if d := nextOf(t, c); d.Next.Count < c.Log[0].Plan.Count {
		t.Errorf("after %d with eight left: %s", c.Log[0].Plan.Count, tell(d))
	}
}

// A carry that stays clearly easy for eight visits takes the next weight, up to double, with
// somebody there and no trial, none of them left aside; alone, to more than double, or where one
// visit was not as easy, it does not.
func TestNextCarriesMoreWithoutATrial(t *testing.T) {
	for _, tt := range []struct {
		setting screening.Setting
		left    float64
		next    float64
		heavier bool
	}{{screening.InClinic, 6, 2, true}, {screening.Alone, 6, 2, false}, {screening.InClinic, 5, 2, false}, {screening.InClinic, 6, 2.5, false}} {
		c := beginner(t, "farmers-carry", 1, tt.next, 4)
		c.Request.Phase, c.Request.Screening.Setting = dose.Build, tt.setting
		list := goesOn(t, &c, 24, tt.left)
		rises := places(list, func(d progression.Decision) bool { return d.Change == progression.MoreLoad })
		if len(rises) > 0 != tt.heavier || tt.heavier && (rises[0] <= places(list, toTry)[0]+8 || list[rises[0]].Next.Load.Each() != 2*kilo) {
			t.Errorf("%v, %v left: %s", tt.setting, tt.left, trail(list))
		}
	}
}
