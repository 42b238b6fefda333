package beside

import (
	"fmt"

	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// Known is what was looked at or told and no screening asks. What is nil or not given
// is not known, and never counts as good news.
type Known struct {
	// Stands are the stances of the four-stage balance test that were held for ten
	// seconds, 0 to 4, in its order: feet together, half-tandem, heel to toe, one leg.
	Stands *int `json:"stands,omitempty"`
	// Brisk are minutes of a week at moderate effort or above, as things are, 0 to 10080.
	Brisk *int `json:"brisk,omitempty"`
	// Easy are minutes of a week of walking and the like below that, 0 to 10080.
	Easy *int `json:"easy,omitempty"`
	// SpineFracture: of the spine; no only where somebody looked for one.
	SpineFracture screening.Answer `json:"spine_fracture,omitzero"`
	// Leaks: a leak or heaviness of the pelvic floor on landing.
	Leaks screening.Answer `json:"leaks,omitzero"`
	// InForce are items that are going on: the day's limits bind them, and they are
	// not begun anew. One that is paused is begun anew where it is left out.
	InForce []Item `json:"in_force,omitempty"`
	// Since is the day from which on what is practised is not in InForce yet; not given:
	// all of it. [MoveOn] sets it. Who begins a paused item anew by leaving it out sets it too.
	Since units.Day `json:"since,omitzero"`
}

// A Situation is what items depend on.
type Situation struct {
	Day       units.Day         `json:"day"`
	Screening screening.Outcome `json:"screening"` // whose they are, where and with whom
	Goal      guideline.Goal    `json:"goal"`
	Fast      bool              `json:"fast,omitzero"` // power is trained now, as in the phase for it
	Known     Known             `json:"known,omitzero"`
}

const (
	stages      = 4
	minutesWeek = 7 * 24 * 60
)

// Validate returns every bad field of k at once.
func (k Known) Validate() error {
	var bad field.Errors
	bad.Add("/stands", within(k.Stands, stages))
	bad.Add("/brisk", within(k.Brisk, minutesWeek))
	bad.Add("/easy", within(k.Easy, minutesWeek))
	if !k.Since.IsZero() {
		bad.Add("/since", k.Since.Check())
	}
	seen := map[TrackID]bool{}
	for i, item := range k.InForce {
		at := placeOf("/in_force", i)
		bad.Add(at, item.validate())
		bad.Refuse(seen[item.Track], at+"/track", string(item.Track), "each track once", field.ErrDuplicate)
		seen[item.Track] = true
	}
	return bad.Err()
}

func within(n *int, most int) error {
	if n != nil && (*n < 0 || *n > most) {
		return field.Bad(*n, fmt.Sprintf("0 to %d", most), field.ErrOutOfRange)
	}
	return nil
}

func (s Situation) validate() error {
	var bad field.Errors
	bad.Add("/day", s.Day.Check())
	bad.Add("/screening", s.Screening.Validate())
	bad.Add("/goal", s.Goal.Check())
	bad.Add("/known", s.Known.Validate())
	return bad.Err()
}

// unsteady reports whether anything asks for a hand on something firm.
func (s *Situation) unsteady() bool {
	return s.Screening.Limits.Support || s.stood(0) && *s.Known.Stands < 2
}

// stood reports whether at least n stances were held.
func (s *Situation) stood(n int) bool { return s.Known.Stands != nil && *s.Known.Stands >= n }

func (s *Situation) alone() bool { return s.Screening.Setting <= screening.Alone }

// found reports whether the screening found one of the codes.
func (s *Situation) found(codes ...screening.Code) bool {
	for _, f := range s.Screening.Findings {
		for _, c := range codes {
			if f.Code == c {
				return true
			}
		}
	}
	return false
}
