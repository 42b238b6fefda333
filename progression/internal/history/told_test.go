package history_test

import (
	"math"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/internal/history"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Half a repetition leaves none more, and ten told are ten or more: who ends eight with ease is
// not kept to fifteen for good.
func TestLeaves(t *testing.T) {
	for told, want := range map[units.RIR][2]int{2.5: {7, 7}, 9.5: {14, 14}, 10: {100, math.MaxInt}} {
		if n := history.Leaves(8, told, 3); n < want[0] || n > want[1] {
			t.Errorf("eight with %v left: %d with three left", told, n)
		}
	}
}

// A carry would take double without a trial though one of the visits was not clearly easy.
func TestLongEasy(t *testing.T) {
	for _, tt := range []struct {
		what string
		each func(*setlog.Set)
		one  func(*visit.Visit) // of them
		easy bool
	}{
		{"six left", func(s *setlog.Set) { s.Effort = units.Must(units.InReserve(6)) }, func(*visit.Visit) {}, true},
		{"five left", func(s *setlog.Set) { s.Effort = units.Must(units.InReserve(5)) }, func(*visit.Visit) {}, false},
		{"rated four", func(s *setlog.Set) { s.Effort = units.Must(units.OMNI(4)) }, func(*visit.Visit) {}, true},
		{"rated five", func(s *setlog.Set) { s.Effort = units.Must(units.OMNI(5)) }, func(*visit.Visit) {}, false},
		{"once not told", func(s *setlog.Set) { s.Effort = units.Must(units.InReserve(6)) }, func(v *visit.Visit) { v.Sets[3].Effort = units.Effort{} }, false},
		{"once a set fewer", func(s *setlog.Set) { s.Effort = units.Must(units.InReserve(6)) }, func(v *visit.Visit) { v.Sets = v.Sets[:3] }, false},
		{"once another weight", func(s *setlog.Set) { s.Effort = units.Must(units.InReserve(6)) }, func(v *visit.Visit) { v.Plan.Load = units.Must(equipment.NewLoad(2*kilo, body.OneHand)) }, false},
	} {
		h := row(t)
		for i := range h.Log[0].Sets {
			tt.each(&h.Log[0].Sets[i])
		}
		tt.one(again(h, 3))
		again(h, 3)
		h.Log[2] = h.Log[0]
		if h.LongEasy(4*kilo, 3) != tt.easy || h.LongEasy(4*kilo, 4) {
			t.Errorf("%s: %v, of four visits %v", tt.what, !tt.easy, h.LongEasy(4*kilo, 4))
		}
	}
}

// Who left a heavier weight aside would be offered it at every visit.
func TestDeclined(t *testing.T) {
	six := units.Must(equipment.NewLoad(6*kilo, body.OneHand))
	feel := func(v *visit.Visit) { v.Plan.Feel = &dose.Feel{Load: six, Count: 5} }
	for _, tt := range []struct {
		what     string
		ask      func(*visit.Visit)
		each     units.Mass
		visits   int
		declined bool
	}{
		{"nothing asked", func(*visit.Visit) {}, 4 * kilo, 8, false},
		{"to be felt", feel, 4 * kilo, 8, true},
		{"of a heavier weight", feel, 3 * kilo, 8, true},
		{"of a lighter one", feel, 5 * kilo, 8, false},
		{"long ago", feel, 4 * kilo, 1, false},
		{"felt", func(v *visit.Visit) { feel(v); v.Sets[3].Load = 6 * kilo }, 4 * kilo, 8, false},
		{"to be tried", func(v *visit.Visit) { v.Plan.Finding = &dose.Search{MaxSteps: 1} }, 4 * kilo, 8, true},
		{"to be tried of what was no dose", func(v *visit.Visit) { v.Plan.Finding, v.Plan.Load = &dose.Search{MaxSteps: 1}, six }, 4 * kilo, 8, false},
	} {
		h := row(t)
		tt.ask(again(h, 3))
		again(h, 3)
		h.Log[2].Plan.Feel, h.Log[2].Plan.Finding = nil, nil
		if h.Declined(tt.each, tt.visits) != tt.declined {
			t.Errorf("%s: %v", tt.what, !tt.declined)
		}
	}
}

// Who is sent to a doctor tomorrow for a dizzy spell would not be told to call for help now for
// the pain in the chest before it, or be sent again for what somebody has looked at.
func TestRefers(t *testing.T) {
	const chest, dizzy = "chest_symptom", "dizzy_or_swaying"
	for _, tt := range []struct {
		signs    [2]screening.Code
		looked   [2]bool
		assessed units.Day // after the first visit
		place    int       // -1: none
		first    string
	}{
		{[2]screening.Code{chest, dizzy}, [2]bool{}, 0, 0, "help-now"},
		{[2]screening.Code{dizzy, chest}, [2]bool{}, 0, 1, "help-now"},
		{[2]screening.Code{dizzy, dizzy}, [2]bool{}, 0, 1, "see-today"},
		{[2]screening.Code{dizzy, chest}, [2]bool{false, true}, 0, 0, "see-today"},
		{[2]screening.Code{chest, dizzy}, [2]bool{true, false}, 0, 1, "see-today"},
		{[2]screening.Code{chest, dizzy}, [2]bool{true, true}, 0, 1, ""},
		{[2]screening.Code{chest, dizzy}, [2]bool{true, true}, 3, 1, ""},
		{[2]screening.Code{chest, dizzy}, [2]bool{true, true}, 4, -1, ""},
		{[2]screening.Code{dizzy, ""}, [2]bool{false, true}, 4, 0, "see-today"},
	} {
		h := row(t)
		again(h, 3)
		h.Request.Screening.Day += tt.assessed
		for i := range h.Log {
			v := &h.Log[i]
			v.Moment = &screening.Moment{}
			if tt.signs[i] != "" {
				v.Moment.Signs = []screening.Code{tt.signs[i]}
			}
			if tt.looked[i] {
				v.LookedAt = dose.Observation{Who: "Doctor M", Day: h.Day}
			}
		}
		v, why := h.Refers()
		place := slices.IndexFunc(h.Log, func(one visit.Visit) bool { return v != nil && one.Day == v.Day })
		if place != tt.place || place >= 0 && (len(why) == 0 || tt.first != "" != (string(why[0].Code) == "progression."+tt.first)) || tt.first == "" && len(why) > 1 {
			t.Errorf("%+v: visit %d, %+v", tt, place, why)
		}
	}
}

// The doubt that is said is that of the visit without other sets; of one before the last two
// nobody is asked any more.
func TestCleanOpens(t *testing.T) {
	for doubtful, want := range map[[3]int][3]int{ // sets of each visit with another weight; open, the visit said, asked
		{0, 0, 4}: {1, 2, 4}, {0, 4, 0}: {2, 1, 4}, {0, 4, 1}: {2, 1, 5}, {0, 1, 4}: {1, 2, 5}, {0, 4, 4}: {1, 2, 8}, {4, 0, 0}: {0, -1, 0}, {0, 1, 1}: {0, -1, 2},
	} {
		h := row(t)
		again(h, 3)
		again(h, 3)
		for i, n := range doubtful {
			for j := range n {
				h.Log[i].Sets[j].Load = 5 * kilo
			}
		}
		c := h.Clean(units.Must(h.Request.Kit.Compile(body.OneHand)), 0)
		said := -1
		if c.Open > 0 {
			said = c.Of().Visit
		}
		if got := [3]int{c.Open, said, len(c.Asked)}; got != want {
			t.Errorf("%v: %v, want %v", doubtful, got, want)
		}
	}
}

// A pair that was too light counts with the planned weight in each hand, however it was told:
// else it would count as another weight, and the dose fall for a slip.
func TestCleanPair(t *testing.T) {
	h := row(t)
	h.Request.Exercise = units.Must(exercise.Standard().Lookup("goblet-squat"))
	v := &h.Log[0]
	v.Plan.Hold, v.Plan.Load, v.Plan.Side, v.Plan.OneSided = body.OneEachHand, units.Must(equipment.NewLoad(4*kilo, body.OneEachHand)), body.Both, false
	for i := range v.Sets {
		v.Sets[i] = setlog.Set{Exercise: h.Request.Exercise.ID, Side: body.Both, Hold: body.OneEachHand, Load: 6 * kilo, Stated: body.Total, Reps: 12}
	}
	table := units.Must(h.Request.Kit.Compile(body.OneEachHand))
	for _, s := range h.Clean(table, 0).Log[0].Sets {
		if given.Each(s) != 4*kilo {
			t.Errorf("%v in each hand", given.Each(s))
		}
	}
}
