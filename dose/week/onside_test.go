package week_test

import (
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// A limit on the left hand binds it in leg work too: with a weight in each hand, in both,
// or in one of which nobody says which, the right leg does not free the left hand.
func TestTheOtherLegIsNotTheOtherHand(t *testing.T) {
	hand := screening.MassLimit{Region: body.WristHand, Side: body.Left, Max: 2 * units.Kilogram, Author: "a surgeon"}
	hip := screening.MassLimit{Region: body.Hip, Side: body.Left, Max: 4 * units.Kilogram, Author: "a surgeon"} // in all
	for id, limit := range map[exercise.ID]screening.MassLimit{
		"dumbbell-split-squat": hand, "dumbbell-step-up": hand, "staggered-romanian-deadlift": hip, "single-leg-romanian-deadlift": hand, "loaded-heel-drop-knee-straight": hand,
	} {
		r := weekOf(0)
		r.Kit, r.Exercises = pairs(3), []exercise.ID{id}
		r.Screening = waived(body.Intermediate)
		r.Screening.Limits.Masses = []screening.MassLimit{limit}
		w, err := week.Plan(r)
		if err != nil {
			continue
		}
		if slices.ContainsFunc(w.Sessions[0].Items, func(i dose.Prescription) bool { return i.Exercise == id }) {
			t.Errorf("%s with 3 kg in a hand, and %v on the %v", id, limit.Max, limit.Region)
		}
	}
	r := weekOf(0) // no arm, and no leg, of the other side bears any of it
	r.Screening, r.Exercises = waived(body.Intermediate), []exercise.ID{"side-plank"}
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Shoulder, Side: body.Left, Max: 2 * units.Kilogram, Author: "a surgeon"}}
	if item := firstWeek(t, r).Sessions[0].Items[0]; item.Exercise != "side-plank" || item.Side != body.Right {
		t.Errorf("%s, %v", item.Exercise, item.Side)
	}
}

// A person with an arm to spare trains the other one, alone, in work that lets the spared arm
// rest; where the side is not told, neither arm, and work of both arms neither way.
func TestTheSparedArm(t *testing.T) {
	event := func(code screening.Code, ago units.Day, region body.Region) func(*screening.Profile, body.Side) {
		return func(p *screening.Profile, s body.Side) {
			p.Events = []screening.Event{{Code: code, Day: p.Day - ago, Region: region, Side: s}}
		}
	}
	for name, spare := range map[string]func(*screening.Profile, body.Side){
		"pacemaker 4 weeks ago":    event("pacemaker", 28, 0),
		"shoulder replaced":        event("shoulder_replacement", 400, 0),
		"wrist broken 8 weeks ago": event("fracture", 56, body.WristHand),
		"weak arm after the stroke": func(p *screening.Profile, s body.Side) {
			p.Restrictions = []screening.Restriction{{Author: "a physiotherapist", Day: p.Day, Side: s, Region: body.Elbow, Avoid: body.DemandSet(body.ElbowResisted)}}
		},
	} {
		for _, side := range []body.Side{0, body.Both, body.Left, body.Right} {
			sound := map[body.Side]body.Side{body.Left: body.Right, body.Right: body.Left}[side]
			r := weekOf(0)
			r.Screening = sparing(t, side, spare)
			r.Exercises = []exercise.ID{"one-arm-dumbbell-row", "suitcase-carry", "seated-hammer-curl", "goblet-squat", "sit-to-stand"}
			one := map[exercise.ID]bool{}
			for _, item := range firstWeek(t, r).Sessions[0].Items {
				ex := exerciseOf(t, item.Exercise)
				if arms := body.DemandSet(body.ShoulderResisted, body.ElbowResisted, body.WristResisted); ex.Demands.Both(arms) == 0 {
					continue
				}
				one[item.Exercise] = true
				if sound == 0 || item.Side != sound || !has(item.Reasons, "dose.one-side-only") {
					t.Errorf("%s, %q: %s on the %v side, %v", name, side, item.Exercise, item.Side, item.Reasons)
				}
			}
			if sound != 0 && (!one["seated-one-arm-row"] || !one["suitcase-carry"] || len(one) != 2) {
				t.Errorf("%s, %q: the sound arm gets %v", name, side, one)
			}
		}
	}
}

func sparing(t *testing.T, side body.Side, spare func(*screening.Profile, body.Side)) screening.Outcome {
	t.Helper()
	p := screening.Profile{
		Day: firstDay, Age: 66, Sex: body.Female, Training: body.Intermediate, Setting: screening.InGroup, Wanted: screening.Moderate,
		Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 12},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor(),
	}
	spare(&p, side)
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// A knee to spare leaves the other leg what is done sitting or lying on the back, and nothing
// that stands, on either leg.
func TestTheSparedKnee(t *testing.T) {
	r := weekOf(0)
	r.Screening = sparing(t, body.Left, func(p *screening.Profile, s body.Side) {
		p.Conditions = screening.AskedFor("pain_made_worse_by_training")
		p.Sites = []screening.Site{{Code: "pain_made_worse_by_training", Region: body.Knee, Side: s}}
	})
	r.Kit.AnkleWeights = []equipment.Dumbbell{{Mass: units.Marked{Mass: units.Kilogram / 2}, Count: 2}}
	r.Exercises = []exercise.ID{"ankle-weight-straight-leg-raise", "step-up", "single-leg-heel-raise", "dumbbell-split-squat"}
	for i, item := range firstWeek(t, r).Sessions[0].Items {
		ex := exerciseOf(t, item.Exercise)
		if i == 0 && (item.Exercise != r.Exercises[0] || item.Side != body.Right) || ex.Demands.Has(body.SingleLegStance) || item.Side == body.Both && ex.Demands.Has(body.KneeResisted) {
			t.Errorf("%s, %v", item.Exercise, item.Side)
		}
	}
}
