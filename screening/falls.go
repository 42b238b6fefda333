package screening

import (
	"slices"

	"example.org/posology/units"
)

// FallsScreen is what the falls screen of CDC 2019 asks. Its twelve questions
// are not reproduced: the person's total comes in as a number.
type FallsScreen struct {
	SelfScore *int   `json:"self_score,omitempty"` // total of the 12-question self-score, 0 to 14
	Fell      Answer `json:"fell,omitzero"`        // a fall in the past year
	Unsteady  Answer `json:"unsteady,omitzero"`    // standing or walking
	Afraid    Answer `json:"afraid,omitzero"`      // of falling
}

func (f *FallsScreen) check() error {
	if f == nil {
		return nil
	}
	var bad units.FieldErrors
	if f.SelfScore != nil {
		bad.Add("/self_score", within(*f.SelfScore, 0, 14, ""))
	}
	bad.Add("/fell", given(answers, f.Fell))
	bad.Add("/unsteady", given(answers, f.Unsteady))
	bad.Add("/afraid", given(answers, f.Afraid))
	return bad.Err()
}

// positive reports whether the screen is positive: Unknown where what was not
// answered would decide. Either way of asking is enough for a no.
func (f *FallsScreen) positive() Answer {
	points := [...]Answer{f.Fell, f.Unsteady, f.Afraid}
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
// is positive. Then walking, strength and balance and what else is listed are
// looked at, and the person is followed up. The answer is zero unless screened.
func Falls(p Profile) FallsAnswer {
	if p.Falls == nil {
		return FallsAnswer{}
	}
	answer := FallsAnswer{Positive: p.Falls.positive()}
	if answer.Positive == Yes {
		answer.LookAt = slices.Clone(lookAt)
		answer.FollowUp, _ = units.Between(fallsMinFollowUp, fallsMaxFollowUp)
	}
	return answer
}

// lookAt is what a positive screen has looked at, in the order of the pathway.
var lookAt = []Code{
	"timed_up_and_go", "chair_stand_30s", "four_stage_balance", "medicines", "home_hazards",
	"orthostatic_pressure", "vision", "feet_and_footwear", "vitamin_d", "comorbidity",
}
