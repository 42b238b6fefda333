package beside

import (
	"cmp"

	"example.org/posology/dose/guideline"
	"example.org/posology/units/evidence"
)

// Start gives the items that a person begins with: balance and aerobic work from 50
// years on, impact where bone is the goal, power where it is trained. What is in force
// goes on within the day's limits. What is not begun comes with its reasons. Both
// lists are empty where none is asked for. The error is [field.Errors] for bad fields.
func Start(s Situation) ([]Item, []Barred, error) {
	if err := s.validate(); err != nil {
		return nil, nil, err
	}
	s.Screening = s.Screening.Tightest()
	var items []Item
	var barred []Barred
	for i := range tracks {
		t := &tracks[i]
		if !s.wants(t) {
			continue
		}
		most, why := s.ceiling(t)
		going := s.going(t)
		switch {
		case most == 0:
			barred = append(barred, Barred{t.kind, t.id, []evidence.Reason{*why}, freed(why.Code)})
		case going != nil && going.Paused:
			items = append(items, s.pause(t, going.Step, evidence.Because("beside.paused", factTrouble)))
		case going != nil && going.Step <= most:
			items = append(items, s.make(t, going.Step, going.Met))
		case going != nil:
			items = append(items, s.make(t, most, 0))
		default:
			items = append(items, s.make(t, min(s.first(t), most), 0))
		}
	}
	return items, barred, nil
}

// wants reports whether the person is to have an item of the track.
func (s *Situation) wants(t *track) bool {
	if int(s.Screening.Who.Age) < t.from {
		return false
	}
	switch {
	case t.kind == Impact:
		return s.Goal == guideline.Bone
	case t.id == "lifts":
		return s.Fast
	case t.kind == Power:
		return s.Fast || s.Goal == guideline.Power
	}
	return true
}

func (s *Situation) going(t *track) *Item {
	for i := range s.Known.InForce {
		if s.Known.InForce[i].Track == t.id {
			return &s.Known.InForce[i]
		}
	}
	return nil
}

// first returns the step that is begun with.
func (s *Situation) first(t *track) int {
	switch {
	case t.kind == Balance && (s.unsteady() || s.Known.Stands != nil && *s.Known.Stands == 0):
		return 1
	case t.id == "stance" && s.stood(1):
		return t.free() + (min(*s.Known.Stands, 3)-1)*len(stanceTry.seconds)
	case t.id == "one-leg" && !s.stood(4):
		return 1
	case t.kind == Balance && s.stood(3):
		return t.free()
	case t.kind == Balance:
		return t.oneHand()
	case t.kind == Aerobic:
		return paced(s.Known)
	}
	return 1
}

// free returns the first step without a hand on anything.
func (t *track) free() int { return t.firstWith(HandsNear) }

func (t *track) oneHand() int { return t.firstWith(OneHandOn) }

func (t *track) firstWith(h Holding) int {
	for i, s := range t.steps {
		if s.hands == h {
			return i + 1
		}
	}
	return 1
}

// paced returns the last step whose brisk minutes of a week are no more than is done now,
// and, while none is brisk, all of whose minutes are no more than those that are done
// easily, or than three times the brisk ones.
func paced(k Known) int {
	brisk, easy := *cmp.Or(k.Brisk, new(0)), *cmp.Or(k.Easy, new(0))
	at := 1
	for i, s := range trackOf("walking").steps {
		within := s.brisk*s.minutes*aerobicDays <= brisk
		if s.brisk == 0 {
			within = s.sets*s.minutes*aerobicDays <= max(easy, 3*brisk)
		}
		if within {
			at = i + 1
		}
	}
	return at
}

// frees are what would lift a bar, by its code.
var frees = map[evidence.ReasonCode]evidence.ReasonCode{
	"beside.not-now": "beside.free-seen", "beside.held": "beside.free-seen", "beside.review-overdue": "beside.free-screening",
	"beside.look-first": "beside.free-test", "beside.no-brisk": "beside.free-test", "beside.unsteady": "beside.free-test",
	"beside.company-first": "beside.free-company", "beside.jump-company": "beside.free-company",
	"beside.spine-first": "beside.free-spine", "beside.pelvic-floor": "beside.free-pelvic",
}

func freed(why evidence.ReasonCode) []evidence.Reason {
	return []evidence.Reason{evidence.Because(cmp.Or(frees[why], "beside.free-limit"))}
}
