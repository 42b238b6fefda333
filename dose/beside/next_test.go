package beside_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// Harder when held, the same when nearly, easier when not: the edges of each rule. Design.
func TestWhatFollows(t *testing.T) {
	s := free(t)
	at := steps(t, "stance")[7] // feet together, hands free, 20 s
	if at.Seconds != 20 || at.Hands != beside.HandsNear {
		t.Fatalf("%+v", at)
	}
	for name, tt := range map[string]struct {
		h         beside.Happened
		step, met int
		code      string
	}{
		"held on two days":         {beside.Happened{Days: 2, Least: 20}, 9, 0, "beside.harder"},
		"held on one":              {beside.Happened{Days: 1, Least: 20}, 8, 1, "beside.same"},
		"not done":                 {beside.Happened{Least: 0}, 8, 0, "beside.same"},
		"a second short":           {beside.Happened{Days: 3, Least: 19}, 8, 0, "beside.same"},
		"a half":                   {beside.Happened{Days: 3, Least: 10}, 8, 0, "beside.same"},
		"less than half":           {beside.Happened{Days: 3, Least: 9}, 7, 0, "beside.easier"},
		"with more support":        {beside.Happened{Days: 3, Least: 30, MoreHands: true}, 7, 0, "beside.easier"},
		"sore":                     {beside.Happened{Days: 3, Least: 30, Troubles: []beside.Trouble{beside.SoreNextDay}}, 8, 0, "beside.same"},
		"pain":                     {beside.Happened{Days: 3, Least: 30, Troubles: []beside.Trouble{beside.Hurt}}, 7, 0, "beside.easier"},
		"nearly fell":              {beside.Happened{Days: 3, Least: 30, Troubles: []beside.Trouble{beside.Swayed, beside.Hurt}}, 1, 0, "beside.easier"},
		"fell":                     {beside.Happened{Days: 3, Least: 30, Troubles: []beside.Trouble{beside.Tumbled}}, 8, 0, "beside.paused"},
		"away for 13 days":         {beside.Happened{Days: 2, Least: 20, Missed: 13}, 9, 0, "beside.harder"},
		"away for two weeks":       {beside.Happened{Days: 2, Least: 20, Missed: 14}, 7, 0, "beside.easier"},
		"away for four":            {beside.Happened{Missed: 28}, 6, 0, "beside.easier"},
		"away for a year and more": {beside.Happened{Missed: 1 << 30}, 1, 0, "beside.easier"},
	} {
		got, err := beside.Next(at, tt.h, s)
		said := false
		for _, r := range got.Reasons {
			said = said || string(r.Code) == tt.code
		}
		if err != nil || got.Step != tt.step || got.Met != tt.met || !said || got.Paused != (tt.code == "beside.paused") {
			t.Errorf("%s: step %d, met %d, want %d, %d, %s; %v", name, got.Step, got.Met, tt.step, tt.met, tt.code, err)
		}
	}
	for _, l := range []screening.Limits{{AvoidLeft: body.DemandSet(body.KneeResisted)}, {AvoidRight: body.DemandSet(body.HipResisted)}, {Avoid: body.DemandSet(body.KneeResisted)}} {
		bad := s
		bad.Screening.Limits = l
		items, _, err := beside.Start(bad)
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range items {
			if i.Kind == beside.Power && i.Move != "fast-lifts" {
				t.Errorf("%s with %+v", i.Move, l)
			}
		}
	}
	s.Screening.Limits.Avoid = body.DemandSet(body.FreeStanding)
	got, err := beside.Next(at, beside.Happened{Days: 2, Least: 20}, s)
	if err != nil || got.Hands != beside.OneHandOn || got.Step != 6 {
		t.Errorf("without free standing: %+v, %v", got, err)
	}
}
