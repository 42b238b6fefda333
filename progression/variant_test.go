package progression_test

import (
	"errors"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/progression"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// twiceHurt is a course that changes to an easier variant.
func twiceHurt(t failer) progression.Course {
	c := rowCourse(t, 2, 4, 4.25)
	last(&c).Pain.During = score(7)
	second := *last(&c)
	second.Day += 3
	c.Log, c.Day = append(c.Log, second), second.Day+3
	return c
}

// bridged is a course at the end of the kit and of every bridge, which goes on
// with a harder variant, on the day of twiceHurt.
func bridged(t failer) progression.Course {
	c := rowCourse(t, 4)
	v := last(&c)
	v.Day, c.Day = firstDay+3, firstDay+6
	v.Plan.Span, v.Plan.Count = units.Must(units.Between(8, 20)), 20
	v.Plan.Tempo = dose.Tempo{Lowering: 4, Pausing: 2, Lifting: 2}
	done(&c, 4*kilo, 20, 3)
	return c
}

// What is new was seen by nobody: it begins with the lightest weight, and no other
// is looked for, whatever was seen and lifted with the exercise that it replaces.
func TestNextBeginsAVariantLightest(t *testing.T) {
	kit := dumbbells(.25, .5, 1, 2, 4)
	easier, hinge := twiceHurt(t), bridged(t) // a hinge has a usual first weight of 1 kg
	as(t, &hinge, "dumbbell-romanian-deadlift")
	hinge.Request.Kit = dumbbells(.5, 1, 4)
	for name, c := range map[string]progression.Course{"harder": bridged(t), "easier": easier, "a hinge": hinge} {
		if name == "easier" {
			c.Request.Kit = kit
			for i := range c.Log {
				c.Log[i].Plan.Load = held(4 * kilo)
			}
		}
		d := nextOf(t, c)
		if d.Action != progression.ChangeVariant {
			t.Errorf("%s: %v, %+v", name, d.Action, d.Reasons)
			continue
		}
		lightest := c.Request.Kit.Dumbbells[0].Mass.Mass
		if d.Next.Load.Each() != lightest && d.Next.Mode != dose.WithoutLoad || d.Next.Finding != nil && d.Next.Finding.MaxSteps > 0 {
			t.Errorf("%s: %s, %v, %+v", name, d.Instead, d.Next.Load.Each(), d.Next.Finding)
		}
		// Strength is of one exercise and hold: nothing of it is said, or counted by, in another.
		if d.Next.Mode != dose.WithoutLoad && (d.Next.Finding == nil || d.Next.Share != 0) {
			t.Errorf("%s: %s, with %v of a strength in another exercise: %+v", name, d.Instead, d.Next.Share, d.Next.Reasons)
		}
	}
}

// Of nine exercises that would change at one visit one does, what has to change
// before what may; two where a named person watches that very day.
func TestSessionBringsOneNewExercise(t *testing.T) {
	watched := dose.Observation{Who: "a colleague", Day: firstDay + 6}
	for _, tt := range []struct {
		name    string
		courses []progression.Course
		watch   []int // places of the courses that say so
		changed []int
	}{
		{"what may be harder", []progression.Course{bridged(t), bridged(t), bridged(t)}, nil, []int{0}},
		{"what has to change first", []progression.Course{bridged(t), twiceHurt(t), bridged(t), twiceHurt(t)}, nil, []int{1}},
		{"and two while somebody watches", []progression.Course{bridged(t), twiceHurt(t), bridged(t), twiceHurt(t)}, []int{0, 1, 2, 3}, []int{1, 3}},
		{"one of each while somebody watches", []progression.Course{bridged(t), bridged(t), twiceHurt(t)}, []int{0, 1, 2}, []int{0, 2}},
		{"one where not all courses say so", []progression.Course{bridged(t), bridged(t), twiceHurt(t)}, []int{0, 1}, []int{2}},
		{"nine", []progression.Course{bridged(t), bridged(t), bridged(t), bridged(t), bridged(t), rowCourse(t, 4, 4.25), rowCourse(t, 4, 4.25), rowCourse(t, 2, 4), rowCourse(t, 2, 4)}, nil, []int{0}},
	} {
		for _, i := range tt.watch {
			tt.courses[i].Watched = watched
		}
		list, err := progression.NextAll(tt.courses)
		if err != nil {
			t.Fatal(err)
		}
		var changed []int
		for i, d := range list {
			alone := nextOf(t, tt.courses[i])
			switch {
			case d.Action == progression.ChangeVariant:
				changed = append(changed, i)
			case alone.Change == progression.HarderVariant:
				if d.Action != progression.HoldDose || d.Next == nil || !hasReason(d, "progression.variant-waits") {
					t.Errorf("%s: %d: %v, %+v", tt.name, i, d.Action, d.Reasons)
				}
			case alone.Action == progression.ChangeVariant:
				if d.Action != progression.StopExercise || d.Next != nil || d.Instead != "" || !hasReason(d, "progression.instead-waits") || hasReason(d, "progression.left-out") {
					t.Errorf("%s: %d: %v, %+v", tt.name, i, d.Action, d.Reasons)
				}
			}
		}
		if !slices.Equal(changed, tt.changed) {
			t.Errorf("%s: %v change, want %v", tt.name, changed, tt.changed)
		}
	}
}

// Who will watch is named, for the day of the course.
func TestCourseWatched(t *testing.T) {
	for _, tt := range []struct {
		watched dose.Observation
		err     error
	}{
		{dose.Observation{}, nil}, {dose.Observation{Who: "a colleague", Day: firstDay + 3}, nil},
		{dose.Observation{Day: firstDay + 3}, field.ErrMissing}, {dose.Observation{Who: "a colleague"}, field.ErrConflict},
		{dose.Observation{Who: "a colleague", Day: firstDay + 2}, field.ErrConflict}, {dose.Observation{Who: "a colleague", Day: firstDay + 4}, field.ErrConflict},
	} {
		c := rowCourse(t, 4, 4.25)
		c.Watched = tt.watched
		if _, err := progression.Next(c); !errors.Is(err, tt.err) || (err == nil) != (tt.err == nil) {
			t.Errorf("%+v: %v", tt.watched, err)
		}
	}
}

// Whatever the exercises of a visit: two loads rise at most and one exercise is new,
// two while somebody watches; whatever does not wait is as Next decides it.
// learnt reports whether a decision brings something new to learn: an easier
// movement without weight does not.
func learnt(d progression.Decision) bool {
	easy := d.Change != progression.HarderVariant && d.Next != nil && d.Next.Mode == dose.WithoutLoad
	return d.Action == progression.ChangeVariant && !easy
}

// Somebody who may only practise without weights keeps all that can be practised so.
func TestSessionKeepsUnloadedMovements(t *testing.T) {
	var courses []progression.Course
	for range 4 {
		c := rowCourse(t, 2, 4)
		c.Request.Screening.Meanwhile = screening.UnloadedPractice
		courses = append(courses, c)
	}
	list, err := progression.NextAll(courses)
	if err != nil {
		t.Fatal(err)
	}
	for i, d := range list {
		if d.Action != progression.ChangeVariant || d.Next == nil || d.Next.Mode != dose.WithoutLoad {
			t.Errorf("%d: %s", i, tell(d))
		}
	}
}

func TestSessionKeepsItsCounts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		watched := rapid.Bool().Draw(t, "watched")
		most := 1
		if watched {
			most = 2
		}
		var courses []progression.Course
		for range between(t, "courses", 2, 5) {
			p := drawClient(t)
			if !p.drawLog(t) {
				continue
			}
			c, err := p.today()
			if err != nil {
				t.Fatalf("screening: %v", err)
			}
			if watched {
				c.Watched = dose.Observation{Who: "a colleague", Day: c.Day}
			}
			if _, err := progression.Next(c); err == nil {
				courses = append(courses, c)
			}
		}
		list, err := progression.NextAll(courses)
		if err != nil {
			t.Fatalf("Session: %v", err)
		}
		rising, changed, stopped := 0, 0, false
		for i, d := range list {
			alone := nextOf(t, courses[i])
			stopped = stopped || alone.Action == progression.StopAndRefer
			if d.Change == progression.MoreLoad {
				rising++
			}
			if learnt(d) {
				changed++
			}
			if takenBeside(courses, list, i, d.Instead) {
				t.Fatalf("%d: %s is there already", i, d.Instead)
			}
			waits := alone.Change == progression.MoreLoad || learnt(alone) || takenBeside(courses, list, i, alone.Instead) || takenBeside(courses, list, i, courses[i].Request.Exercise.Harder)
			if !waits && !stopped && d.Action != progression.StopAndRefer && text(t, d) != text(t, alone) {
				t.Fatalf("%d waits for nothing: %s\nalone %s", i, tell(d), tell(alone))
			}
		}
		if rising > 2 || changed > most {
			t.Fatalf("%d rise, %d are new", rising, changed)
		}
	})
}

// takenBeside reports whether another exercise of the visit is the one, or leads to it.
func takenBeside(courses []progression.Course, list []progression.Decision, i int, id exercise.ID) bool {
	for j, c := range courses {
		if other := c.Request.Exercise.ID; other != courses[i].Request.Exercise.ID && id != "" && (other == id || list[j].Instead == id) {
			return true
		}
	}
	return false
}

// Two loads are looked for at a visit; a third waits, and goes on as it was.
func TestNextAllLooksForTwoLoads(t *testing.T) {
	c := rowCourse(t, 4, 6)
	done(&c, 4*kilo, 15, 8)
	repeat(&c, 3)
	list, err := progression.NextAll([]progression.Course{c, c, c})
	if err != nil || list[0].Next.Feel == nil || list[1].Next.Feel == nil || list[2].Next.Feel != nil || list[2].Next.Load.Each() != 4*kilo {
		t.Errorf("%v: %s; %s; %s", err, tell(list[0]), tell(list[1]), tell(list[2]))
	}
}

// Where what was asked for was done and nothing comes of it, the decision says what of
// the kit keeps it from working, and which size would help.
func TestNextSaysThatTheKitFalls(t *testing.T) {
	c := rowCourse(t, 3)
	done(&c, 3*kilo, 20, 6)
	last(&c).Plan.Count, last(&c).Plan.Span = 20, units.Must(units.Between(8, 20))
	c.Policy.KeepExercise = true
	repeat(&c, 4)
	if d := nextOf(t, c); !hasReason(d, "dose.kit-too-light") || !hasReason(d, "dose.kit-would-help") {
		t.Errorf("%s", tell(d))
	}
}

// What is asked for at the visit, or new at it, takes the place of nothing else: it would be
// done twice, and what was stopped would come back as a stand-in.
func TestNextAllInsteadIsNotThereAlready(t *testing.T) {
	limited := func(id string) progression.Course {
		c := courseOf(t, id, 4)
		c.Request.Screening.Limits.Masses = []screening.MassLimit{{Region: body.WholeBody, Side: body.Both, Max: kilo, Author: "a surgeon"}}
		return c
	}
	loaded := limited("dumbbell-sit-to-stand")
	if d := nextOf(t, loaded); d.Instead != "sit-to-stand" {
		t.Fatalf("alone: %s", tell(d))
	}
	free, stopped := courseOf(t, "sit-to-stand", 4), courseOf(t, "sit-to-stand", 4)
	done(&free, 0, 10, 3)
	done(&stopped, 0, 10, 3)
	stopped.Request.Screening.Limits.LeastCount = 20
	for name, courses := range map[string][]progression.Course{"asked for": {loaded, free}, "asked for before": {free, loaded}, "stopped": {loaded, stopped}, "twice": {limited("dumbbell-glute-bridge"), limited("dumbbell-hip-thrust")}} {
		list, err := progression.NextAll(courses)
		if err != nil {
			t.Fatal(name, err)
		}
		dosed := map[exercise.ID]bool{}
		for i, d := range list {
			for _, c := range courses {
				if d.Instead == c.Request.Exercise.ID {
					t.Errorf("%s: %d: %s", name, i, tell(d))
				}
			}
			if d.Next != nil && dosed[d.Next.Exercise] {
				t.Errorf("%s: %s twice", name, d.Next.Exercise)
			}
			if d.Next != nil {
				dosed[d.Next.Exercise] = true
			}
		}
	}
}
