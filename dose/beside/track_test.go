package beside_test

import (
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Each step of a track is at least as hard as the one before, and asks for no more than
// twice as much of the same measure: by that the laws below hold. Design.
func TestTracksRise(t *testing.T) {
	total := 0
	for _, id := range trackIDs {
		all := steps(t, id)
		total += len(all)
		if len(all) < 4 {
			t.Errorf("%s has %d steps", id, len(all))
		}
		for k, i := range all {
			if !i.Dosed() || i.Name == "" || i.Step != k+1 {
				t.Errorf("%s, step %d: %+v", id, k+1, i)
			}
			if k == 0 {
				continue
			}
			if what := more(all[k-1], i); what != "" {
				t.Errorf("%s: step %d has more than the next: %s", id, k, what)
			}
			if asked(i) > 2*asked(all[k-1]) {
				t.Errorf("%s: step %d asks for %d after %d", id, i.Step, asked(i), asked(all[k-1]))
			}
		}
	}
	if total < 55 {
		t.Errorf("%d steps", total)
	}
}

// No step goes above what was published; the rows are named beside each.
func TestNothingAboveWhatWasPublished(t *testing.T) {
	impacts := steps(t, "impact")
	for _, i := range impacts {
		if i.Height > 8.5 { // Bassey 1998: jumps of 8.5 cm
			t.Errorf("%s: %v cm", i.Move, i.Height)
		}
		if n, _ := i.Amount.Max(); n > 50 || n != i.Sets*i.Count { // the UK consensus: 50; Bassey 1998: 50
			t.Errorf("%s: %d impacts", i.Move, n)
		}
	}
	if last := impacts[4]; last.Move != "stamps" || last.Sets*last.Count != 50 {
		t.Errorf("fifth week: %+v", last)
	}
	row := units.Must(guideline.Get("acsm2009-older-power")) // 30 to 60 %
	on, _ := start(t, free(t))
	if i := on["lifts"]; i.Load != row.Load || i.Days != row.Days || i.Slower != 0.2 || i.Dosed() {
		t.Errorf("lifts outside the row: %+v", i)
	}
	for _, i := range steps(t, "chair-rise") { // Orr 2006: 3 sets of 8
		if i.Sets > 3 || i.Count > 8 || !row.Rest.Contains(i.Rest) {
			t.Errorf("rises: %+v", i)
		}
	}
	walks := steps(t, "walking")
	if last := walks[len(walks)-1]; last.BriskMinutes() != 150 || last.Aim != units.Must(units.Between(150, 300)) { // WHO 2020
		t.Errorf("the last walk: %d brisk minutes of %v", last.BriskMinutes(), last.Aim)
	}
}

func TestWhereOneBegins(t *testing.T) {
	s := free(t)
	for _, tt := range []struct {
		stands *int
		move   beside.MoveID
		hands  beside.Holding
		leg    beside.Holding // on one leg; 0: not begun
	}{
		{nil, "feet-together", beside.OneHandOn, 0}, {new(0), "feet-together", beside.BothHandsOn, 0}, {new(1), "feet-together", beside.BothHandsOn, 0},
		{new(2), "half-tandem", beside.HandsNear, 0}, {new(3), "heel-to-toe", beside.HandsNear, beside.BothHandsOn}, {new(4), "heel-to-toe", beside.HandsNear, beside.HandsNear},
	} {
		s.Known.Stands = tt.stands
		on, off := start(t, s)
		if i := on["stance"]; i.Move != tt.move || i.Hands != tt.hands || i.Sets != 3 || i.Seconds != 10 {
			t.Errorf("%v: begins with %+v", tt.stands, i)
		}
		if on["one-leg"].Hands != tt.leg || (tt.leg == 0) != (off["one-leg"].Reasons != nil) {
			t.Errorf("%v: on one leg %v", tt.stands, on["one-leg"].Hands)
		}
	}
	for _, tt := range []struct{ now, bouts, minutes, brisk int }{{0, 2, 5, 0}, {20, 2, 5, 0}, {25, 3, 5, 0}, {49, 2, 10, 0}, {50, 3, 10, 1}, {149, 3, 10, 2}, {150, 3, 10, 3}, {600, 3, 10, 3}} {
		s.Known.Brisk = &tt.now
		s.Known.Easy = new(0)
		on, _ := start(t, s)
		if i := on["walking"]; i.Sets != tt.bouts || i.Minutes != tt.minutes || i.Brisk != tt.brisk || i.BriskMinutes() > max(tt.now, 0) {
			t.Errorf("%d now: %+v", tt.now, i)
		}
	}
}

func TestEasyMinutesCount(t *testing.T) {
	for easy, want := range map[int]int{0: 50, 50: 50, 74: 50, 90: 75, 100: 100, 900: 150} {
		i := whose(t, func(s *beside.Situation) { s.Known.Easy = &easy })["walking"]
		if i.WeeklyMinutes() != want || i.Brisk != 0 {
			t.Errorf("%d easy minutes: begins with %+v", easy, i)
		}
	}
	if i := whose(t, func(s *beside.Situation) { s.Known.Brisk, s.Known.Easy = nil, nil })["walking"]; i.Step != 1 {
		t.Errorf("nothing known: %+v", i)
	}
}

// Who is not to land, to move fast or to walk briskly. The first rows are the UK consensus of
// 2022 and Sherrington 2011; the rest is design.
func TestWhoMustNot(t *testing.T) {
	for name, tt := range map[string]struct {
		worse func(*beside.Situation)
		code  string
		track beside.TrackID
	}{
		"low impact":              {func(s *beside.Situation) { s.Screening.Limits.LowImpact = true }, "beside.low-impact", "impact"},
		"fracture":                {finding("recent_fracture"), "beside.fracture", "impact"},
		"osteoporosis, not known": {func(s *beside.Situation) { finding("osteoporosis")(s); s.Known.SpineFracture = 0 }, "beside.spine-first", "impact"},
		"prolapse, not asked":     {func(s *beside.Situation) { finding("pelvic_organ_prolapse")(s); s.Known.Leaks = 0 }, "beside.pelvic-floor", "impact"},
		"leaks":                   {func(s *beside.Situation) { s.Known.Leaks = screening.Yes }, "beside.pelvic-floor", "impact"},
		"unsteady":                {func(s *beside.Situation) { s.Screening.Limits.Support = true }, "beside.unsteady", "impact"},
		"half-tandem not held":    {func(s *beside.Situation) { s.Known.Stands = new(1) }, "beside.unsteady", "impact"},
		"light":                   {func(s *beside.Situation) { s.Screening.Limits.MaxIntensity = screening.Light }, "beside.light-only", "chair-rise"},
		"unloaded practice":       {func(s *beside.Situation) { s.Screening.Meanwhile = screening.UnloadedPractice }, "beside.held", "chair-rise"},
		"nothing":                 {func(s *beside.Situation) { s.Screening.Meanwhile = screening.Nothing }, "beside.not-now", "walking"},
		"same day":                {func(s *beside.Situation) { s.Screening.Route = screening.SameDay }, "beside.not-now", "stance"},
		"overdue":                 {func(s *beside.Situation) { s.Day = s.Screening.ReviewBy + 1 }, "beside.review-overdue", "stance"},
	} {
		s := free(t)
		tt.worse(&s)
		_, off := start(t, s)
		b := off[tt.track]
		if len(b.Reasons) == 0 || string(b.Reasons[0].Code) != tt.code || len(b.Free) == 0 {
			t.Errorf("%s: %+v", name, b)
		}
	}
	s := free(t)
	finding("osteoporosis")(&s)
	top(t, s, "impact", "heel-drops") // no hops
	s = free(t)
	s.Screening.Setting = screening.Alone
	top(t, s, "impact", "stamps")
	s = free(t)
	s.Screening.Limits.Avoid = s.Screening.Limits.Avoid.Union(body.DemandSet(body.SpinalTwist))
	top(t, s, "reach", "reach-forward")
	s = free(t)
	s.Screening.Limits.Support = true
	for _, id := range []beside.TrackID{"stance", "reach", "stepping"} {
		if i := top(t, s, id, ""); i.Hands != beside.OneHandOn || !i.Company {
			t.Errorf("%s with support: %+v", id, i)
		}
	}
	s.Known.Stands = nil
	if i := top(t, s, "walking", ""); i.Brisk != 0 {
		t.Errorf("brisk for who may fall: %+v", i)
	}
	s.Screening.Setting = screening.Alone
	for _, id := range []beside.TrackID{"stance", "reach", "stepping"} {
		if i := top(t, s, id, ""); i.Hands != beside.BothHandsOn || i.Company {
			t.Errorf("%s alone: %+v", id, i)
		}
	}
	s = free(t)
	s.Screening.Limits.LowImpact = true
	if i := top(t, s, "walking", ""); i.Brisk*i.Minutes != 20 { // the UK consensus
		t.Errorf("brisk minutes a day after a fracture of the spine: %+v", i)
	}
	s = free(t)
	s.Screening.Limits.MaxFraction = 0.45
	if i := top(t, s, "lifts", ""); loadOf(i) != 0.45 {
		t.Errorf("lifts under a limit: %v", i.Load)
	}
	s.Screening.Limits.MaxFraction = 0.25
	if _, off := start(t, s); len(off["lifts"].Reasons) == 0 || off["lifts"].Reasons[0].Code != "beside.share" {
		t.Errorf("lifts below the band: %+v", off["lifts"])
	}
}

func finding(code screening.Code) func(*beside.Situation) {
	return func(s *beside.Situation) {
		s.Screening.Findings = append(s.Screening.Findings, screening.Finding{Code: code, Known: true, Route: screening.NoRoute, Meanwhile: screening.WithinLimits})
	}
}

// top goes through a track as far as the situation lets it; the last move is known, unless "".
func top(t *testing.T, s beside.Situation, id beside.TrackID, last beside.MoveID) beside.Item {
	t.Helper()
	on, _ := start(t, s)
	i := on[id]
	for range 60 {
		next, err := beside.Next(i, well(i), s)
		if err != nil {
			t.Fatal(err)
		}
		i = next
	}
	if last != "" && i.Move != last {
		t.Errorf("%s ends with %s, want %s", id, i.Move, last)
	}
	return i
}

func TestWhoIsAsked(t *testing.T) {
	s := free(t)
	s.Fast, s.Goal = false, guideline.Strength
	on, off := start(t, s)
	if len(on) != 5 || len(off) != 0 || on["impact"].Kind != 0 || on["chair-rise"].Kind != 0 {
		t.Errorf("strength at 70: %v, %v", on, off)
	}
	s.Screening.Who.Age = 49
	if on, off = start(t, s); len(on) != 0 || len(off) != 0 {
		t.Errorf("at 49: %v, %v", on, off)
	}
	s.Goal = guideline.Bone
	if on, _ = start(t, s); len(on) != 1 || on["impact"].Step != 1 {
		t.Errorf("bone at 49: %v", on)
	}
	s.Goal = guideline.Power
	if on, _ = start(t, s); len(on) != 1 || on["chair-rise"].Step != 1 {
		t.Errorf("power at 49: %v", on)
	}
	s = free(t)
	s.Screening.Who.Age = 55
	on, _ = start(t, s)
	if days, _ := on["stance"].Days.Min(); days != 2 { // UK chief medical officers 2019
		t.Errorf("balance at 55 on %d days", days)
	}
	on, _ = start(t, free(t))
	if days, _ := on["stance"].Days.Min(); days != 3 { // WHO 2020
		t.Errorf("balance at 70 on %d days", days)
	}
}

// Frailty, falls and Parkinson's, alone and with somebody: at least three balance items, a hand on,
// nothing brisk, no landing. With a foot to be spared the walking is done sitting.
func TestUnsteadyPeople(t *testing.T) {
	for _, code := range []screening.Code{"frailty", "cfs_level_5", "cfs_level_6", "falls_risk", "parkinsons", "vertigo"} {
		for _, setting := range []screening.Setting{screening.Alone, screening.WithHelper, screening.InClinic} {
			p := invented()
			p.Age, p.Setting, p.Conditions = 81, setting, screening.AskedFor(code)
			s := beside.Situation{Day: firstDay, Screening: assessed(t, p), Goal: guideline.Bone}
			on, off := start(t, s)
			n := 0
			for _, i := range on {
				if i.Kind == beside.Balance {
					n++
				}
				if i.Kind == beside.Balance && i.Hands != beside.BothHandsOn {
					t.Errorf("%s, %s begins with %s", code, setting, i.Hands)
				}
			}
			if n < 3 || on["walking"].Brisk != 0 || !on["walking"].Dosed() || off["impact"].Reasons == nil {
				t.Errorf("%s, %s: %d balance items, %+v", code, setting, n, on["walking"])
			}
		}
	}
	p := invented()
	p.Conditions = screening.AskedFor("foot_ulcer_neuropathy")
	on, _ := start(t, beside.Situation{Day: firstDay, Screening: assessed(t, p), Goal: guideline.Strength})
	if i := on["walking"]; i.Move != "sit-and-move" || i.Brisk != 0 {
		t.Errorf("a foot to be spared: %+v", i)
	}
}
