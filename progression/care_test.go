package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A doubtful log is of no use later either: after a visit logged with the double
// weight, two quiet visits do not make that weight a known one.
func TestNextForgetsDoubtfulSets(t *testing.T) {
	c := rowCourse(t, 2, 4, 6)
	c.Request.Kit = dumbbells(2, 4, 6)
	done(&c, 2*kilo, 12, 3)
	doubtful := pastVisit(c, 6, 2*kilo, 12, 3)
	for i := range doubtful.Sets {
		doubtful.Sets[i].Load = 4 * kilo
	}
	c.Log = []progression.Visit{doubtful, pastVisit(c, 3, 2*kilo, 12, 3), *last(&c)}
	if d := nextOf(t, c); d.Change == progression.MoreLoad || hasReason(d, "progression.done-before") {
		t.Errorf("%v, %v, %+v", d.Change, d.Next.Load.Each(), d.Reasons)
	}
	// While the query is open the dose stays as it was, repetitions too.
	c.Log = []progression.Visit{doubtful}
	c.Day = doubtful.Day + 3
	c.Request.Screening.Day, c.Request.Technique.Day = doubtful.Day-1, doubtful.Day
	if d := nextOf(t, c); d.Action != progression.HoldDose || d.Next.Count != doubtful.Plan.Count || len(d.Queries) != 6 {
		t.Errorf("%v, %d, %d queries", d.Action, d.Next.Count, len(d.Queries))
	}
}

// What cannot be lifted six times, even to failure, is lightened at once; with the
// lightest weight three are enough, of which the count leaves the reserve asked, and
// below that the variant changes. What could not be lifted at all is no missing record.
// Seven and eight to failure, seen once, leave no three with the reserve asked either.
func TestNextTooMuch(t *testing.T) {
	for _, tt := range []struct {
		name   string
		each   units.Mass
		reps   int
		left   float64
		unable bool
		action progression.Action
		load   units.Mass
	}{
		{"five to failure", 4 * kilo, 3, 2, false, progression.EaseOff, 2 * kilo},
		{"seven to failure", 4 * kilo, 5, 2, false, progression.EaseOff, 2 * kilo},
		{"eight to failure", 4 * kilo, 6, 2, false, progression.EaseOff, 2 * kilo},
		{"ten to failure", 4 * kilo, 8, 2, false, progression.HoldDose, 4 * kilo},
		{"seven with the lightest", 2 * kilo, 5, 2, false, progression.HoldDose, 2 * kilo},
		{"four with the lightest", 2 * kilo, 3, 1, false, progression.HoldDose, 2 * kilo},
		{"three with the lightest", 2 * kilo, 3, 0, false, progression.ChangeVariant, 0},
		{"two with the lightest", 2 * kilo, 2, 0, false, progression.ChangeVariant, 0},
		{"not once", 4 * kilo, 0, 0, true, progression.EaseOff, 2 * kilo},
		{"not once with the lightest", 2 * kilo, 0, 0, true, progression.ChangeVariant, 0},
	} {
		c := rowCourse(t, 2, 4, 6)
		last(&c).Plan.Load = held(tt.each)
		if tt.unable {
			last(&c).Sets, last(&c).Unable = nil, screening.Yes
		} else {
			done(&c, tt.each, tt.reps, tt.left)
		}
		d := nextOf(t, c)
		if d.Action != tt.action || (d.Action != progression.HoldDose) != (hasReason(d, "progression.too-much") || hasReason(d, "progression.too-few") || hasReason(d, "progression.lighter-for-reserve")) {
			t.Errorf("%s: %v, %+v", tt.name, d.Action, d.Reasons)
			continue
		}
		if tt.load > 0 && d.Next.Load.Each() != tt.load {
			t.Errorf("%s: %v", tt.name, d.Next.Load.Each())
		}
	}
}

// Pain that comes back within three visits changes the variant, which is learnt
// again with less than the last dose.
func TestNextRecurringPain(t *testing.T) {
	for between := range 4 {
		c := rowCourse(t, 2, 4, 6)
		hurt := *last(&c).Pain
		hurt.During = score(7)
		first := pastVisit(c, 3*(between+1), 4*kilo, 10, 3)
		first.Pain = &hurt
		log := []progression.Visit{first}
		for i := between; i > 0; i-- {
			log = append(log, pastVisit(c, 3*i, 4*kilo, 10, 3))
		}
		last(&c).Pain = &hurt
		c.Log = append(log, c.Log...)
		d := nextOf(t, c)
		if recurs := between < 3; recurs != (d.Action == progression.ChangeVariant) || recurs != hasReason(d, "progression.recurring") {
			t.Errorf("%d calm visits between: %v, %+v", between, d.Action, d.Reasons)
		}
		if d.Action == progression.ChangeVariant && (d.Next.Sets != 1 || d.Next.Reserve.Least < 5 || d.Next.Phase != dose.Familiarise) {
			t.Errorf("the variant begins with %d sets, reserve %v, phase %v", d.Next.Sets, d.Next.Reserve, d.Next.Phase)
		}
	}
}

// By Perry's gate, where the policy has it, ordinary pain below 5 that settles and
// does not rise permits more load; above 5, unsettled and rising it never does.
func TestNextByPainGate(t *testing.T) {
	for _, tt := range []struct {
		pain   screening.Pain
		gate   bool
		action progression.Action
	}{
		{ordinary(3, 4, 3, 3, screening.StablePain), true, progression.Progress},
		{ordinary(3, 4, 3, 3, screening.StablePain), false, progression.HoldDose},
		{ordinary(3, 5, 3, 3, screening.StablePain), true, progression.HoldDose},
		{ordinary(3, 4, 5, 3, screening.StablePain), true, progression.HoldDose},
		{ordinary(3, 6, 3, 3, screening.StablePain), true, progression.EaseOff},
		{ordinary(3, 4, 3, 4, screening.StablePain), true, progression.EaseOff},
		{ordinary(3, 4, 3, 3, screening.RisingPain), true, progression.EaseOff},
		{ordinary(3, 4, 3, 3, 0), true, progression.HoldDose},
	} {
		c := rowCourse(t, 4, 4.25)
		if tt.gate {
			c.Policy.Pain = rule.NamePainGate
		}
		last(&c).Pain = &tt.pain
		if d := nextOf(t, c); d.Action != tt.action || (d.Change == progression.MoreLoad) != (tt.action == progression.Progress) {
			t.Errorf("during %v, after %v, next morning %v, %v, gate %v: %v", *tt.pain.During, *tt.pain.After, *tt.pain.NextMorning, tt.pain.WeeklyTrend, tt.gate, d.Action)
		}
	}
}

func ordinary(usual, during, after, morning float64, trend screening.Trend) screening.Pain {
	return screening.Pain{Kind: screening.OrdinaryPain, Usual: &usual, During: &during, After: &after, NextMorning: &morning, WeeklyTrend: trend}
}

// One look at the technique holds for four weeks in which the person says that
// form was kept; then repetitions go on and the client is told what is missing.
func TestNextTechniqueHolds(t *testing.T) {
	for _, tt := range []struct {
		name     string
		seen     units.Day
		formLost screening.Answer
		rises    bool
	}{
		{"four weeks before", firstDay - 28, screening.No, true},
		{"a day more", firstDay - 29, screening.No, false},
		{"form lost", firstDay - 1, screening.Yes, false},
		{"nobody asked about form", firstDay - 1, screening.Unknown, false},
		{"a look after the visit", firstDay + 1, screening.No, false},
	} {
		c := rowCourse(t, 4, 4.25)
		c.Request.Screening.Who.Training = body.Intermediate
		c.Request.Technique = dose.Observation{Who: "a colleague", Day: tt.seen}
		last(&c).Observer, last(&c).FormLost = dose.Observation{}, tt.formLost
		d := nextOf(t, c)
		if (d.Change == progression.MoreLoad) != tt.rises {
			t.Errorf("%s: %v, %+v", tt.name, d.Change, d.Reasons)
		}
		if told := hasReason(d, "progression.show-technique"); told != (!tt.rises && tt.formLost != screening.Yes) {
			t.Errorf("%s: told to show the movement: %v", tt.name, told)
		}
	}
}

// Without a rating of effort the repetitions stay, since nothing shows that more would
// leave the reserve asked, and the client is asked for it; without pain recorded nothing
// rises.
func TestNextWithoutRecords(t *testing.T) {
	c := rowCourse(t, 4, 6)
	v := last(&c)
	v.Plan.Span = units.Must(units.Between(8, 20))
	for reps := 10; reps <= 12; reps++ {
		v.Plan.Count = reps
		done(&c, 4*kilo, reps, 3)
		for i := range v.Sets {
			v.Sets[i].Effort = units.Effort{}
		}
		d := nextOf(t, c)
		if d.Next.Count != reps || d.Next.Load.Each() != 4*kilo || !hasReason(d, "progression.note-effort") {
			t.Errorf("%d repetitions: %d, %+v", reps, d.Next.Count, d.Reasons)
		}
	}
	c = rowCourse(t, 4, 6)
	last(&c).Pain = nil
	if d := nextOf(t, c); d.Action != progression.HoldDose || !hasReason(d, "progression.note-pain") {
		t.Errorf("%v, %+v", d.Action, d.Reasons)
	}
}

// A carry goes up by five metres; one that was rated hard, or went to failure,
// stays; at the end of its range the next weight is tried.
func TestNextCarries(t *testing.T) {
	ex, err := exercise.Standard().Lookup("suitcase-carry")
	if err != nil {
		t.Fatal(err)
	}
	c := rowCourse(t, 4, 6)
	c.Request.Exercise = ex
	v := last(&c)
	v.Plan.Exercise, v.Plan.Hold, v.Plan.Measure, v.Plan.Reserve = ex.ID, ex.Hold, ex.Measure, dose.Reserve{}
	v.Plan.OneSided = ex.OneSided
	v.Plan.Span = units.Must(units.Between(10, 30))
	walk := func(metres int, e units.Effort) progression.Decision {
		v.Plan.Count = metres
		v.Sets = slices.Clone(v.Sets)
		for i := range v.Sets {
			v.Sets[i].Exercise, v.Sets[i].Reps, v.Sets[i].Effort = ex.ID, metres, e
		}
		return nextOf(t, c)
	}
	for _, tt := range []struct {
		effort units.Effort
		want   int
	}{{units.Effort{}, 15}, {units.Must(units.OMNI(7)), 15}, {units.Must(units.OMNI(8)), 10}, {units.Must(units.InReserve(0)), 10}, {units.Must(units.InReserve(2)), 15}} {
		if d := walk(10, tt.effort); d.Next.Count != tt.want {
			t.Errorf("%v: %d metres, want %d", tt.effort, d.Next.Count, tt.want)
		}
	}
	if d := walk(30, units.Effort{}); d.Action != progression.HoldDose || !hasReason(d, "progression.rate-effort") {
		t.Errorf("without a rating: %v, %+v", d.Change, d.Reasons)
	}
	if d := walk(30, units.Must(units.OMNI(5))); d.Change != progression.FindLoad || d.Next.Finding == nil {
		t.Errorf("%v, %+v", d.Change, d.Reasons)
	}
}

// After a trial that was too much the dose before it is taken up again, pace too, unless it was
// less than was done in the trial, or nothing was.
func TestNextAfterATrial(t *testing.T) {
	for _, tt := range []struct {
		before int
		tried  bool
		want   int
	}{{18, true, 18}, {6, true, 8 + 5}, {18, false, 8}} { // what was clearly easy rises by five
		c := rowCourse(t, 4, 6)
		before := pastVisit(c, 3, 4*kilo, tt.before, 6)
		before.Plan.Count, before.Plan.Span = tt.before, units.Must(units.Between(8, 20))
		before.Plan.Tempo = dose.Tempo{Lowering: 4, Pausing: 2, Lifting: 2}
		v := last(&c)
		v.Plan.Finding, v.Plan.Count = &dose.Search{MaxSteps: 1}, 8
		done(&c, 4*kilo, 8, 10)
		for i := range v.Sets {
			if i%3 > 0 { // the first set of each side with the known weight
				v.Sets[i].Load, v.Sets[i].Reps, v.Sets[i].Effort = 6*kilo, 4, units.Must(units.InReserve(2))
			}
		}
		if !tt.tried {
			v.Sets = nil
		}
		c.Log = []progression.Visit{before, *v}
		d := nextOf(t, c)
		if again := d.Next.Tempo.Lowering == 4 && d.Next.Tempo.Pausing == 2; d.Next.Load.Each() != 4*kilo || d.Next.Count != tt.want || again != (tt.want == 18) || (d.Action == progression.HoldDose) != (tt.before == 18) {
			t.Errorf("%+v: %v, %v × %d, %+v, %+v", tt, d.Action, d.Next.Load.Each(), d.Next.Count, d.Next.Tempo, d.Reasons)
		}
	}
}

// A variant that pain or too much weight led to begins with less and without a
// search for more; where there is none, the exercise is left out.
func TestNextEasierIsEasier(t *testing.T) {
	c := rowCourse(t, 2, 4, 6)
	done(&c, 2*kilo, 2, 0)
	d := nextOf(t, c)
	if d.Action != progression.ChangeVariant && d.Action != progression.StopExercise {
		t.Fatalf("%v", d.Action)
	}
	if d.Next != nil && (d.Next.Load.Each() >= 2*kilo || d.Next.Finding != nil) {
		t.Errorf("%v, %+v", d.Next.Load.Each(), d.Next.Finding)
	}
}

// A failed lift counts against the weight later; it leaves no set to find. Who does
// eight with 5 kg leaves more of ten with 4 kg than can be counted.
func TestNextRemembersAFailedLift(t *testing.T) {
	for _, unable := range []bool{false, true} {
		c := rowCourse(t, 4, 5)
		done(&c, 4*kilo, 10, 8)
		good := pastVisit(c, 12, 5*kilo, 8, 4)
		tried := pastVisit(c, 9, 5*kilo, 8, 4)
		if unable {
			tried.Sets, tried.Unable = nil, screening.Yes
		}
		c.Log = []progression.Visit{good, tried, pastVisit(c, 3, 4*kilo, 10, 8), *last(&c)}
		if d := nextOf(t, c); (d.Change == progression.MoreLoad) == unable {
			t.Errorf("unable %v: %v, %+v", unable, d.Change, d.Reasons)
		}
	}
	c := rowCourse(t, 4, 5)
	last(&c).Unable = screening.Yes // beside sets that were done
	if _, err := progression.Next(c); err == nil {
		t.Error("sets that were done beside a lift that could not be")
	}
}

// An absence with a medical cause, or whatever sends the person on, holds for every
// exercise of the visit.
func TestSessionRefersForAbsence(t *testing.T) {
	a, b := rowCourse(t, 4, 4.25), rowCourse(t, 4, 4.25)
	a.Day, b.Day = firstDay+10, firstDay+10
	a.Absence = screening.Yes
	b.Log = []progression.Visit{pastVisit(b, -7, 4*kilo, 12, 3)}
	list, err := progression.NextAll([]progression.Course{a, b})
	if err != nil {
		t.Fatal(err)
	}
	for i, d := range list {
		if d.Action != progression.StopAndRefer || !hasReason(d, "progression.medical-absence") {
			t.Errorf("exercise %d: %v", i, d.Action)
		}
	}
}

// Fine steps taken together are one step within the published size, and say so.
func TestNextFineStepsAreWithin(t *testing.T) {
	c := rowCourse(t, 9, 10, 10.25, 10.5, 10.75, 11, 11.25)
	v := last(&c)
	v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 16)), 16
	done(&c, 10*kilo, 16, 5)
	d := nextOf(t, c)
	if d.Change != progression.MoreLoad || d.Next.Load.Each() != 11*kilo || !d.Rise.Within || len(d.Rise.Reasons) == 0 || hasReason(d, "progression.step-in-hand") {
		t.Errorf("%v, %+v, %+v", d.Change, d.Rise, d.Reasons)
	}
}

// Who lifted something was there, though the weight is doubtful: no days were missed.
func TestNextCountsDaysFromDoubtfulSets(t *testing.T) {
	c := rowCourse(t, 2, 4, 6)
	c.Log = []progression.Visit{pastVisit(c, 9, 4*kilo, 10, 3), *last(&c)}
	v := last(&c)
	v.Sets = slices.Clone(v.Sets)
	for i := range v.Sets {
		v.Sets[i].Load = 5 * kilo // not of the kit
	}
	c.Day, c.Request.Day = v.Day+3, 0
	if d, err := progression.Next(c); err != nil || len(d.Queries) != len(v.Sets) {
		t.Errorf("%v: %+v", err, d)
	}
}

// Alone, and beyond twice the weight held, no kit weight is passed over, small as the
// step may be in all that is moved.
func TestNextPassesNoWeightOver(t *testing.T) {
	for setting, most := range map[screening.Setting]units.Mass{screening.Alone: 2 * kilo, screening.WithHelper: 2 * kilo} {
		c := rowCourse(t, 1, 2, 4)
		as(t, &c, "goblet-squat")
		c.BodyMass, c.Request.Screening.Setting = 70*kilo, setting
		done(&c, kilo, 18, 6)
		if d := nextOf(t, c); d.Change != progression.MoreLoad || d.Next.Load.Each() != most {
			t.Errorf("%v: %s", setting, tell(d))
		}
	}
	c := rowCourse(t, 4, 4.05, 4.1, 4.2)
	c.Request.Screening.Setting = screening.Alone
	done(&c, 4*kilo, 12, 6)
	if d := nextOf(t, c); d.Change != progression.MoreLoad || d.Next.Load.Each() != 4050*units.Gram {
		t.Errorf("alone: %s", tell(d))
	}
}

// Of eight done with the reserve asked with the lightest weight at least three stay, and
// never more than five come at once.
func TestNextKeepsWhatWasDoneWell(t *testing.T) {
	for left := range 9 {
		for reps := 5; reps <= 12; reps++ {
			c := rowCourse(t, 4, 10)
			done(&c, 4*kilo, reps, float64(left))
			d := nextOf(t, c)
			if d.Instead != "" || d.Next == nil {
				if reps >= 6 && left >= 3 {
					t.Errorf("%d with %d left: %s", reps, left, tell(d))
				}
				continue
			}
			if n := d.Next.Count; d.Action != progression.EaseOff && (n < 3 || left >= 3 && n < 5 || n > max(10, reps)+5) {
				t.Errorf("%d with %d left: %s", reps, left, tell(d))
			}
		}
	}
}
