package progression_test

import (
	"slices"
	"testing"

	"example.org/posology/progression"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A knee that hurts 7 of 10 keeps the row as it is, and eases what loads it; pain of no known
// site, of another kind, or of the shoulder eases the row, and none makes anything harder.
func TestNextPainElsewhere(t *testing.T) {
	row := func(t failer) progression.Course { return rowCourse(t, 4, 4.25) }
	squat := func(t failer) progression.Course { return squatCourse(t, 4, 4.25) }
	for name, tt := range map[string]struct {
		course func(failer) progression.Course
		site   body.Region
		kind   screening.PainKind
		want   progression.Action
	}{
		"the knee":              {row, body.Knee, screening.OrdinaryPain, progression.HoldDose},
		"no site":               {row, 0, screening.OrdinaryPain, progression.EaseOff},
		"the shoulder":          {row, body.Shoulder, screening.OrdinaryPain, progression.EaseOff},
		"the back":              {row, body.LowerBack, screening.OrdinaryPain, progression.EaseOff},
		"a hot knee":            {row, body.Knee, screening.HotJointPain, progression.StopAndRefer},
		"of no kind":            {row, body.Knee, 0, progression.EaseOff},
		"the knee, on the toes": {func(t failer) progression.Course { return courseOf(t, "dumbbell-calf-raise", 4, 4.25) }, body.Knee, screening.OrdinaryPain, progression.EaseOff},
		"the knee, a squat":     {squat, body.Knee, screening.OrdinaryPain, progression.EaseOff},
	} {
		c := tt.course(t)
		p := calmPain()
		p.Kind, p.Site, p.During = tt.kind, tt.site, score(7)
		last(&c).Pain = &p
		if d := nextOf(t, c); d.Action != tt.want || saysElsewhere(d) != (tt.want == progression.HoldDose) {
			t.Errorf("%s: %s", name, tell(d))
		}
	}
}

func saysElsewhere(d progression.Decision) bool {
	return slices.ContainsFunc(d.Gates, func(g visit.GateAnswer) bool {
		return slices.ContainsFunc(g.Reasons, func(r evidence.Reason) bool { return r.Code == "progression.pain-elsewhere" })
	})
}
