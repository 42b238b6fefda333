package beside_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

const longWeeks = 24

// lived is a drawn week of a drawn person: mostly a little more than was asked, at
// times less, with more support, with trouble, or not at all.
func lived(t *rapid.T, i beside.Item, able float64) beside.Happened {
	days, _ := i.Days.Min()
	h := beside.Happened{Days: rapid.IntRange(max(0, days-2), days+1).Draw(t, "days"), Least: int(able * float64(asked(i)))}
	switch rapid.IntRange(0, 14).Draw(t, "week") {
	case 0:
		h.Troubles = []beside.Trouble{rapid.SampledFrom([]beside.Trouble{beside.SoreNextDay, beside.OutOfBreath, beside.Hurt, beside.Leaked, beside.Swayed, beside.Dizzied, beside.Tumbled}).Draw(t, "trouble")}
	case 1:
		h.MoreHands = true
	case 2:
		h.Days, h.Least, h.Missed = 0, 0, rapid.IntRange(1, 40).Draw(t, "missed")
	case 3:
		h.Least /= 3
	}
	return h
}

// changing is the situation of a week: limits come and go, and so does company.
func changing(t *rapid.T, s beside.Situation) beside.Situation {
	if rapid.IntRange(0, 5).Draw(t, "other limits") == 0 {
		s.Screening.Limits = drawLimits(t, "week")
	}
	if rapid.IntRange(0, 5).Draw(t, "other company") == 0 {
		s.Screening.Setting = rapid.SampledFrom([]screening.Setting{screening.Alone, screening.WithHelper, screening.InGroup}).Draw(t, "setting")
	}
	return s
}

// Half a year of drawn people, all tracks at once, under limits that come and go: one step
// a review at most, never more after a worse week, never beyond what rows and limits
// allow, and each week begins where the one before was kept.
func TestHalfAYear(t *testing.T) {
	rose, paused, eased := 0, 0, 0
	rapid.Check(t, func(rt *rapid.T) {
		s := free(t)
		s.Known = known(rapid.IntRange(0, 4).Draw(rt, "stands"), rapid.IntRange(0, 150).Draw(rt, "brisk"))
		able := rapid.Float64Range(0.4, 1.6).Draw(rt, "able")
		for week := range longWeeks {
			on, _ := start(t, s)
			var kept []beside.Item
			minutes, brisk := 0, 0
			for _, id := range append(trackIDs, "lifts") {
				i, there := on[id]
				if !there {
					continue
				}
				bounded(rt, week, i, s)
				minutes, brisk = minutes+i.WeeklyMinutes(), brisk+i.BriskMinutes()
				h := lived(rt, i, able)
				next, err := beside.Next(i, h, s)
				if err != nil {
					rt.Fatalf("week %d: %v", week, err)
				}
				good := h.Days > 0 && h.Least >= asked(i) && !h.MoreHands && len(h.Troubles) == 0 && h.Missed < 14
				if what := more(next, i); what != "" && !good || next.Step > i.Step+1 || i.Paused && !next.Paused {
					rt.Fatalf("week %d, %s: %+v: %s\n%+v\n%+v", week, id, h, what, i, next)
				}
				if h.MoreHands && next.Hands < i.Hands && !next.Paused {
					rt.Fatalf("week %d, %s: less support after more was used", week, id)
				}
				switch {
				case next.Paused && !i.Paused:
					paused++
				case next.Step > i.Step:
					rose++
				case next.Step < i.Step:
					eased++
				}
				kept = append(kept, next.Place())
			}
			if aerobic := minutes - balanceMinutes(on); aerobic > 150 || brisk > 150 || balanceMinutes(on) > 4*5*3 {
				rt.Fatalf("week %d: %d minutes, %d brisk", week, minutes, brisk)
			}
			s.Known.InForce = kept
			goesOn(rt, t, s, kept)
			s = changing(rt, s)
		}
	})
	if rose == 0 || paused == 0 || eased == 0 {
		t.Errorf("rose %d times, paused %d, eased %d: the laws were not tried", rose, paused, eased)
	}
}

func balanceMinutes(on map[beside.TrackID]beside.Item) (n int) {
	for _, i := range on {
		if i.Kind == beside.Balance {
			n += i.WeeklyMinutes()
		}
	}
	return n
}

// goesOn holds that what was kept is what the next plan begins with, or less.
func goesOn(rt *rapid.T, t *testing.T, s beside.Situation, kept []beside.Item) {
	on, _ := start(t, s)
	for _, k := range kept {
		if i, there := on[k.Track]; there && (i.Step != k.Step || i.Met != k.Met && !k.Paused || i.Paused != k.Paused) {
			rt.Fatalf("kept %+v, begun %+v", k, i)
		}
	}
}

// bounded holds an item to what rows, trials and the limits of the week allow.
func bounded(rt *rapid.T, week int, i beside.Item, s beside.Situation) {
	l := s.Screening.Limits
	for what, bad := range map[string]bool{
		"impacts beyond the row's 50":             i.Kind == beside.Impact && i.Sets*i.Count > 50,
		"higher than the trial's 8.5 cm":          i.Height > 8.5,
		"harder than was measured":                i.Force > 4.9,
		"a stance of more than 30 s":              i.Seconds > 30,
		"more rises than the trial's 3 x 8":       i.Kind == beside.Power && (i.Sets > 3 || i.Count > 8),
		"a landing under a limit to low impact":   i.Kind == beside.Impact && l.LowImpact && !i.Paused,
		"hands free where support is asked for":   i.Kind == beside.Balance && l.Support && i.Hands == beside.HandsNear,
		"hands free where standing free is out":   i.Hands == beside.HandsNear && l.Avoid.Has(body.FreeStanding),
		"a jump alone":                            i.Height > 0 && i.Kind == beside.Impact && s.Screening.Setting <= screening.Alone,
		"brisk under a limit to light effort":     i.Brisk > 0 && l.MaxIntensity == screening.Light,
		"more than 20 brisk minutes of a brittle": i.Brisk*i.Minutes > 20 && l.LowImpact,
		"a dose while paused":                     i.Paused && (i.Dosed() || i.WeeklyMinutes() > 0),
	} {
		if bad {
			rt.Fatalf("week %d, %s: %s: %+v", week, i.Track, what, i)
		}
	}
}
