package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/progression"
	"example.org/posology/screening"
)

// toTry reports whether a heavier weight is to be tried or felt.
func toTry(d progression.Decision) bool {
	return d.Next != nil && (d.Next.Feel != nil || d.Next.Finding != nil && d.Next.Finding.MaxSteps > 0)
}

// places are those of the decisions of which something holds.
func places(list []progression.Decision, holds func(progression.Decision) bool) (at []int) {
	for i, d := range list {
		if holds(d) {
			at = append(at, i)
		}
	}
	return at
}

// Whoever is offered a heavier weight, and does with ease what is asked besides, is asked
// why once, and not offered it again for eight visits: our own choice, as for a feel.
func TestNextLeavesWhatIsNotTried(t *testing.T) {
	asked := func(d progression.Decision) bool { return hasReason(d, "progression.not-tried") }
	for name, c := range map[string]progression.Course{
		"a squat":          and(func(t failer) progression.Course { return squatCourse(t, 4, 6) }, func(c *progression.Course) { done(c, 4*kilo, 10, 6) })(t),
		"a far weight":     from(func(c *progression.Course) { done(c, 4*kilo, 14, 6) }, 4, 6)(t),
		"a carry":          from(func(c *progression.Course) { *c = through(t, 7, 4, 6.5); repeat(c, 2) }, 4)(t),
		"a search resumed": from(func(c *progression.Course) { *c = beginner(t, "dumbbell-calf-raise", 1, 2, 3); c.Request.Phase = 2 }, 4)(t),
	} {
		list := goesOn(t, &c, 20, 8)
		offered, why := places(list, toTry), places(list, asked)
		if len(offered) == 0 || len(why) == 0 {
			t.Errorf("%s: offered %v, asked %v", name, offered, why)
		}
		for i, at := range offered {
			if at+1 < len(list) && !slices.Contains(why, at+1) || i > 0 && at-offered[i-1] <= 8 || len(why) > len(offered) {
				t.Errorf("%s: offered %v, asked %v: %s", name, offered, why, trail(list))
			}
		}
	}
}

// While it is left each decision says what is missing; and none that brings a heavier weight
// asks why one was not tried.
func TestNextSaysThatATryIsMissing(t *testing.T) {
	c := squatCourse(t, 4, 6)
	done(&c, 4*kilo, 10, 6)
	list := goesOn(t, &c, 10, 8)
	missing := places(list, func(d progression.Decision) bool { return hasReason(d, "progression.try-missing") })
	if offered := places(list, toTry); len(offered) == 0 || !slices.Equal(missing, []int{offered[0] + 2, offered[0] + 3, offered[0] + 4, offered[0] + 5, offered[0] + 6, offered[0] + 7, offered[0] + 8}) {
		t.Errorf("offered %v, missing %v: %s", offered, missing, trail(list))
	}
	c = beginner(t, "dumbbell-calf-raise", 1, 2, 3, 4, 6, 8, 10)
	c.Request.Phase, c.BodyMass = 2, 68*kilo
	c.Log[0] = asAsked(c.Log[0].Plan, firstDay, 10)
	list = goesOn(t, &c, 20, 10)
	for _, d := range list {
		if rises := d.Change == progression.MoreLoad || d.Change == progression.FindLoad; rises && (hasReason(d, "progression.not-tried") || hasReason(d, "progression.try-missing")) {
			t.Errorf("it rises, and is not tried: %s", tell(d))
		}
	}
}

// Who was hurt by what is asked is neither sent to the next weight nor asked why it was left: the same paper says
// that nothing is made harder.
func TestNextSendsNobodyOnWhoWasHurt(t *testing.T) {
	hurt := ordinary(2, 4, 3, 2, screening.StablePain)
	for _, visits := range []int{1, 3} {
		c := squatCourse(t, 4, 6)
		done(&c, 4*kilo, 10, 6)
		goesOn(t, &c, visits, 8)
		well := nextOf(t, c)
		last(&c).Pain = &hurt
		d := nextOf(t, c)
		if says := hasReason(well, "progression.not-tried") || hasReason(well, "progression.try-missing"); !says || hasReason(d, "progression.not-tried") || hasReason(d, "progression.try-missing") {
			t.Errorf("%d visits: %s\n%s", visits, tell(well), tell(d))
		}
	}
}

// What was not easy enough for a trial was rightly done without.
func TestNextAsksNotWhyWhatWasHard(t *testing.T) {
	c := squatCourse(t, 4, 6)
	done(&c, 4*kilo, 10, 6)
	first := goesOn(t, &c, 1, 3)[0]
	if d := nextOf(t, c); !toTry(first) || hasReason(d, "progression.not-tried") {
		t.Errorf("%s\n%s", told(first), tell(d))
	}
}
