package progression_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// While the load is looked for: on from the heaviest weight that ended as it
// should, on looking while it is clearly easy, and back from one that was too much.
func TestNextFinds(t *testing.T) {
	c := rowCourse(t, 2, 3, 4, 5, 6)
	v := last(&c)
	v.Plan.Finding, v.Plan.Sets, v.Plan.Count = &dose.Search{MaxSteps: 2}, 1, 10
	trial := func(reps int, four, five float64) progression.Decision {
		v.Sets = nil
		for _, s := range goodVisit().Sets[1:3] {
			for i, left := range []float64{8, four, five} {
				s.Load, s.Reps, s.Effort = units.Mass(3+i)*kilo, reps, units.Must(units.InReserve(left))
				v.Sets = append(v.Sets, s)
			}
		}
		v.Plan.Load = held(3 * kilo)
		return nextOf(t, c)
	}
	for _, tt := range []struct {
		reps       int
		four, five float64
		load       units.Mass
		finding    bool
	}{
		{10, 8, 7, 5 * kilo, true}, {10, 8, 4, 5 * kilo, false}, {10, 4, 4, 5 * kilo, false},
		{10, 8, 2, 5 * kilo, false}, // twelve to failure: six in reserve
		{6, 8, 2, 4 * kilo, false}, {6, 2, 2, 3 * kilo, false},
	} {
		d := trial(tt.reps, tt.four, tt.five)
		if d.Next.Load.Each() != tt.load || (d.Next.Finding != nil) != tt.finding {
			t.Errorf("%d, left %v with 4 kg, %v with 5 kg: %v, %+v, %v", tt.reps, tt.four, tt.five, d.Next.Load.Each(), d.Next.Finding, d.Change)
		}
	}
	v.FormLost = screening.Yes
	if d := trial(10, 8, 7); d.Next.Load.Each() != 3*kilo {
		t.Errorf("with technique lost: %v", d.Next.Load.Each())
	}
}

// A person of 70 kg moves at least 56 kg of their own in a squat: from 4 to 6 kg is
// 50 % more in the hands and 3 % more to lift.
func TestNextCountsTheBody(t *testing.T) {
	ex, err := exercise.Standard().Lookup("goblet-squat")
	if err != nil {
		t.Fatal(err)
	}
	c := rowCourse(t, 4, 6)
	c.Request.Exercise = ex
	v := last(&c)
	v.Plan.Exercise, v.Plan.Hold, v.Plan.OneSided = ex.ID, ex.Hold, false
	v.Sets = v.Sets[:3]
	for i := range v.Sets {
		v.Sets[i].Exercise, v.Sets[i].Hold, v.Sets[i].Side = ex.ID, ex.Hold, body.Both
	}
	if d := nextOf(t, c); d.Change == progression.MoreLoad || d.Jump.Moved != 0 {
		t.Errorf("body mass not known: %v, %+v", d.Change, d.Jump)
	}
	c.BodyMass = 70 * kilo
	done(&c, 4*kilo, 12, 5) // 12 with 3 left, seen once, allow 7 of 62 kg, one too few
	d := nextOf(t, c)
	if d.Change != progression.MoreLoad || d.Rise.External != 0.5 || math.Abs(float64(d.Rise.Moved)-2.0/60) > 1e-9 || !hasReason(d, "progression.step-in-hand") {
		t.Errorf("%v, %+v", d.Change, d.Rise)
	}
}

func TestNextByRule(t *testing.T) {
	omni := func(v float64) units.Effort { return units.Must(units.OMNI(v)) }
	for _, tt := range []struct {
		rule   rule.Name
		reps   int
		effort units.Effort
		before int // repetitions of the visit before
		rises  bool
	}{
		{rule.NameOverTarget, 13, units.Must(units.InReserve(3)), 0, true},
		{rule.NameOverTarget, 12, units.Must(units.InReserve(3)), 0, false},
		{rule.NameRepsThenLoad, 13, units.Must(units.InReserve(3)), 0, true},
		{rule.NameRepsThenLoad, 12, units.Must(units.InReserve(3)), 0, false},
		{rule.NameTwoForTwo, 14, units.Must(units.InReserve(3)), 14, true},
		{rule.NameTwoForTwo, 14, units.Must(units.InReserve(3)), 13, false},
		{rule.NameTopOfRange, 12, units.Must(units.InReserve(3)), 0, true},
		{rule.NameTopOfRange, 11, units.Must(units.InReserve(3)), 0, false},
		{rule.NameOMNIBelow8, 14, omni(7), 0, true},
		{rule.NameOMNIBelow8, 12, omni(7), 0, true}, // read as the reserve asked, which the rule vouches for
		{rule.NameOMNIBelow8, 10, omni(7), 0, false},
		{rule.NameOMNIBelow8, 12, omni(8), 0, false},
		{rule.NameOMNIBelow8, 12, units.Must(units.InReserve(3)), 0, false},
	} {
		c := rowCourse(t, 4, 4.25)
		c.Policy.Rule = tt.rule
		v := last(&c)
		v.Plan.Span = units.Must(units.Between(8, 14))
		done(&c, 4*kilo, tt.reps, 3)
		for i := range v.Sets {
			v.Sets[i].Effort = tt.effort
		}
		if tt.before > 0 {
			earlier := *v
			earlier.Day -= 3
			earlier.Observer.Day = earlier.Day
			earlier.Sets = slices.Clone(v.Sets)
			for i := range earlier.Sets {
				earlier.Sets[i].Reps = tt.before
			}
			c.Log = []progression.Visit{earlier, *v}
		}
		d := nextOf(t, c)
		if (d.Change == progression.MoreLoad) != tt.rises {
			t.Errorf("%v, %d, %v: %v, %+v", tt.rule, tt.reps, tt.effort, d.Change, d.Gates)
		}
	}
}

// pastVisit is an earlier visit of a course: as the last one, with another weight.
func pastVisit(c progression.Course, daysBefore int, each units.Mass, reps int, left float64) progression.Visit {
	v := *last(&c)
	v.Day -= units.Day(daysBefore)
	v.Plan.Load = held(each)
	if v.Observer.Made() {
		v.Observer.Day = v.Day
	}
	v.Sets = slices.Clone(v.Sets)
	for i := range v.Sets {
		v.Sets[i].Load, v.Sets[i].Reps, v.Sets[i].Effort = each, reps, units.Must(units.InReserve(left))
	}
	return v
}

var lookedAt = dose.Observation{Who: "Doctor M", Day: firstDay}

// A visit that nobody has looked at stops all, however long ago it was.
func TestNextRefersForEver(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	v := *last(&c)
	c.Log, c.Day, c.Absence = nil, firstDay+400, screening.No
	for i := range 100 {
		v.Day = firstDay + units.Day(4*i)
		v.Observer.Day = v.Day
		c.Log = append(c.Log, v)
	}
	c.Request.Screening.Day, c.Request.Screening.ReviewBy = c.Day-10, c.Day+10
	if d := nextOf(t, c); d.Next == nil {
		t.Fatalf("%v", d.Action)
	}
	c.Log[1].Moment = &screening.Moment{Signs: []screening.Code{"chest_symptom"}}
	if d := nextOf(t, c); d.Action != progression.StopAndRefer || !hasReason(d, "progression.referred") {
		t.Errorf("%v, %+v", d.Action, d.Reasons)
	}
	c.Log[1].LookedAt = dose.Observation{Who: "Doctor M", Day: c.Log[1].Day}
	if d := nextOf(t, c); d.Next == nil {
		t.Errorf("%v, %+v", d.Action, d.Reasons)
	}
}

// What in one exercise is for somebody else first stops all of the visit.
func TestSessionRefersThePerson(t *testing.T) {
	a, b := rowCourse(t, 4, 4.25), rowCourse(t, 4, 4.25)
	for name, spoil := range map[string]func(*progression.Visit){
		"a sign":     func(v *progression.Visit) { v.Moment = &screening.Moment{Signs: []screening.Code{"feels_sick"}} },
		"chest pain": func(v *progression.Visit) { v.Pain = &screening.Pain{Kind: screening.ChestPain, During: score(2)} },
	} {
		b := b
		b.Log = slices.Clone(b.Log)
		spoil(last(&b))
		list, err := progression.NextAll([]progression.Course{a, b})
		if err != nil {
			t.Fatal(err)
		}
		for i, d := range list {
			if d.Action != progression.StopAndRefer || d.Next != nil || !hasReason(d, "progression.referred") {
				t.Errorf("%s: exercise %d: %v", name, i, d.Action)
			}
		}
		// Somebody has looked, and an assessment since: both go on, the one that ended so more gently.
		for i, tt := range []struct {
			assessed units.Day
			looked   dose.Observation
			says     evidence.ReasonCode // "" where both go on
		}{
			{firstDay + 1, dose.Observation{}, "progression.referred"}, {firstDay, lookedAt, "progression.looked-at"}, {firstDay + 1, lookedAt, ""},
			{firstDay + 1, dose.Observation{Who: "Doctor M", Day: firstDay - 1}, "an error"}, {firstDay + 1, dose.Observation{Day: firstDay}, "an error"},
		} {
			a, b := a, b
			a.Request.Screening.Day, b.Request.Screening.Day, last(&b).LookedAt = tt.assessed, tt.assessed, tt.looked
			list, err = progression.NextAll([]progression.Course{a, b})
			switch {
			case tt.says == "an error":
				if err == nil || !strings.Contains(err.Error(), "/1/log/0/looked_at/") {
					t.Errorf("%s, case %d: %v", name, i, err)
				}
			case err != nil:
				t.Fatal(err)
			case tt.says != "":
				if list[0].Action != progression.StopAndRefer || !hasReason(list[0], tt.says) || !hasReason(list[1], tt.says) {
					t.Errorf("%s, case %d: %v, %+v", name, i, list[0].Action, list[0].Reasons)
				}
			case list[0].Change != progression.MoreLoad || list[1].Action != progression.EaseOff:
				t.Errorf("%s, looked at and assessed since: %v, %v", name, list[0].Change, list[1].Action)
			}
		}
	}
}

// In maintenance nothing is made harder than it was; what was eased comes back.
func TestNextMaintains(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	c.Request.Phase = dose.Maintain
	if d := nextOf(t, c); d.Action != progression.HoldDose || d.Next.Sets != 2 {
		t.Errorf("%v, %d sets", d.Action, d.Next.Sets)
	}
	last(&c).Plan.Sets = 1
	last(&c).Sets = last(&c).Sets[1:3]
	if d := nextOf(t, c); d.Change != progression.MoreSets || d.Next.Sets != 2 {
		t.Errorf("%v, %d sets", d.Change, d.Next.Sets)
	}
	c = rowCourse(t, 4, 6)
	c.Request.Phase = dose.Maintain
	done(&c, 4*kilo, 10, 8) // of 4 kg more is left than of 6
	c.Log = []progression.Visit{pastVisit(c, 9, 6*kilo, 10, 3), pastVisit(c, 3, 4*kilo, 10, 8), *last(&c)}
	if d := nextOf(t, c); d.Change != progression.MoreLoad || d.Next.Load.Each() != 6*kilo {
		t.Errorf("%v, %v", d.Change, d.Next.Load.Each())
	}
}
