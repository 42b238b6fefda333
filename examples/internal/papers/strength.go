package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/strength"
	"example.org/posology/progression/record"
	"example.org/posology/progression/track"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

const (
	// StrengthMargin is the change from which strength is called risen or fallen: by less
	// the curve between two weights alone may move what is read.
	StrengthMargin units.Fraction = 0.05
	// StrengthLevel is how probable it has to be.
	StrengthLevel units.Fraction = 0.9

	unclear = "no clear change"
)

// A Strength is how what was lifted in one exercise, on one side, goes over the visits.
type Strength struct {
	Exercise exercise.ID
	Side     body.Side
	Name     string
	Readings []track.Reading
	Track    *track.Track
	Odds     track.Odds
}

// Strengths follows the strength of each exercise and side through its visits. Left out are
// exercises in which the body is lifted, sets with a weight that nobody planned, and those with fewer than two days that tell
// something. Where the first visit ever of a novice is read, what is learned by a second is
// taken off.
func Strengths(items []record.Decided, who body.Person) ([]Strength, error) {
	var list []Strength
	for _, item := range items {
		if moves(item) {
			continue
		}
		for _, side := range []body.Side{body.Both, body.Left, body.Right} {
			s := Strength{Exercise: item.Exercise, Side: side, Name: item.Name}
			if side != body.Both {
				s.Name += ", " + side.String()
			}
			readings, err := readVisits(item, side, who)
			if err != nil {
				return nil, err
			}
			if len(readings) < 2 {
				continue
			}
			s.Readings, s.Track = readings, new(track.Track)
			if err := s.Track.Run(track.StrengthModel(), track.State{}, readings); err != nil {
				return nil, err
			}
			if s.Odds, err = s.Track.Since(readings[0].Day, StrengthMargin, StrengthLevel); err != nil {
				return nil, err
			}
			list = append(list, s)
		}
	}
	return list, nil
}

func moves(item record.Decided) bool {
	return slices.ContainsFunc(item.Log, func(v visitLog) bool { ex, ok := exerciseOf(v.Plan); return !ok || ex.MovesBody })
}

func readVisits(item record.Decided, side body.Side, who body.Person) (list []track.Reading, err error) {
	for i, v := range item.Log {
		sets := slices.DeleteFunc(slices.Clone(v.Sets), func(s setlog.Set) bool { return s.Side != side || !asked(v, s) })
		alone := strength.Ability{}.Seen(v.Plan.Sets, v.Plan.Reserve.Least, sets...)
		if !alone.Known() || alone.AtLeast || alone.Untold {
			continue // tells nothing, or only that it is no less
		}
		r, err := track.FromVisit(v.Day, alone)
		if err == nil && i == 0 && who.Training == body.Novice {
			r, err = track.StandardReliability().FirstTry(r)
		}
		if err != nil {
			return nil, err
		}
		list = append(list, r)
	}
	return list, nil
}

// asked reports whether the weight of a set is one that the plan asked for, or let be looked
// for. Another one may be written down wrong.
func asked(v visitLog, s setlog.Set) bool {
	each, err := s.Each()
	return err == nil && (v.Plan.Finding != nil || each == v.Plan.Load.Each() || v.Plan.Feel != nil && each == v.Plan.Feel.Load.Each())
}

// Clinician says what the track shows, with the interval.
func (s Strength) Clinician() string { return track.Words().Clinician(s.Odds.Reasons[0]) }

// Client says it in a sentence without a number.
func (s Strength) Client() string { return track.Words().Client(s.Odds.Reasons[0]) }

// shown says in few words what the track shows, with the interval.
func (s Strength) shown() string {
	return fmt.Sprintf("%s: %+.0f %% (%+.0f to %+.0f)", s.verdict(), 100*s.Odds.Change, 100*s.Odds.Low, 100*s.Odds.High)
}

func (s Strength) verdict() string {
	switch o := s.Odds; {
	case o.Rose >= StrengthLevel:
		return "rising"
	case o.Fell >= StrengthLevel:
		return "falling"
	case o.Held >= StrengthLevel:
		return "holding"
	}
	return unclear
}

// followed says in one line to the client what the tracks show, alike ones together.
func followed(list []Strength) string {
	var order []string
	of := map[string][]string{}
	for _, s := range list {
		text := s.Client()
		if len(of[text]) == 0 {
			order = append(order, text)
		}
		of[text] = append(of[text], s.Name)
	}
	parts := make([]string, len(order))
	for i, text := range order {
		parts[i] = fmt.Sprintf("%s: %s", upper(strings.Join(of[text], "; ")), text)
	}
	return strings.Join(parts, " ")
}

// strength says what the tracks show, and nothing beside what holds.
func (s *sheet) strength(r record.Review) {
	if names, _ := Waiting(r); names != "" || r.Coming == nil || r.Screening.Meanwhile > screening.WithinLimits {
		return
	}
	if list, err := Strengths(r.Items, r.Screening.Who); err == nil && len(list) > 0 { // of what was decided on nothing is out of range
		s.Say("Your strength, by all that you lifted. " + followed(list))
	}
}
