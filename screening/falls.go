package screening

import (
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/field"
)

// FallsScreen is what the falls screen of CDC 2019 asks. Its twelve questions
// are not reproduced: the person's total comes in as a number.
type FallsScreen struct {
	SelfScore *int   `json:"self_score,omitempty"` // total of the 12-question self-score, 0 to 14
	Afraid    Answer `json:"afraid,omitzero"`      // troubled by the thought of a fall
	Fell      Answer `json:"fell,omitzero"`        // at least once in the last 12 months
	Unsteady  Answer `json:"unsteady,omitzero"`    // shaky on the legs, moving or not
}

func (f *FallsScreen) check() error {
	if f == nil {
		return nil
	}
	var bad field.Errors
	bad.Add("/self_score", withinIfAny(f.SelfScore, 0, 14, ""))
	bad.Add("/afraid", given(answers, f.Afraid))
	bad.Add("/fell", given(answers, f.Fell))
	bad.Add("/unsteady", given(answers, f.Unsteady))
	return bad.Err()
}

// positive reports whether the screen is positive: Unknown where what was not
// answered would decide. Either way of asking is enough for a no.
func (f *FallsScreen) positive() Answer {
	points := [...]Answer{f.Afraid, f.Fell, f.Unsteady}
	switch {
	case f.SelfScore != nil && *f.SelfScore >= fallsScore || slices.Contains(points[:], Yes):
		return Yes
	case f.SelfScore != nil || !slices.Contains(points[:], Unknown):
		return No
	}
	return Unknown
}

// FallsAnswer is what the falls pathway says.
type FallsAnswer struct {
	Positive Answer           `json:"positive,omitzero"`
	LookAt   []Code           `json:"look_at,omitempty"`       // what a positive screen has looked at
	FollowUp units.Range[int] `json:"follow_up_days,omitzero"` // after which to follow up
}

func (a FallsAnswer) isZero() bool {
	return a.Positive == Unknown && len(a.LookAt) == 0 && a.FollowUp.IsZero()
}

// Falls answers by the falls pathway of CDC 2019, made for people from 65 who
// live at home: a self-score of 4 or more, or yes on any of the three points,
// is positive. Then whatever [FallsAnswer.LookAt] lists is looked at, and the
// person is followed up. One of the points that was told among the conditions counts as
// here. The answer is zero unless screened.
func Falls(p Profile) FallsAnswer {
	var answer FallsAnswer
	switch {
	case p.has(fallsRisk):
		answer.Positive = Yes
	case p.Falls == nil:
		return answer
	default:
		answer.Positive = p.Falls.positive()
	}
	if answer.Positive == Yes {
		answer.LookAt = slices.Clone(lookAt)
		answer.FollowUp, _ = units.Between(fallsMinFollowUp, fallsMaxFollowUp)
	}
	return answer
}

// lookAt is what a positive screen has looked at: what a clinician looks into,
// the tests, then the home. The order is ours.
var lookAt = []Code{
	"comorbidity", "medicines", "orthostatic_pressure", "vitamin_d", "vision", "feet_and_footwear",
	"chair_stand_30s", "four_stage_balance", "timed_up_and_go", "home_hazards",
}
