package beside_test

import (
	"slices"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

func codesOf(kind screening.Kind) (list []screening.Code) {
	for term := range screening.Codes() {
		if term.Kind == kind {
			list = append(list, term.Code)
		}
	}
	return list
}

// drawSituation is somebody assessed, with or without findings.
func drawSituation(t *rapid.T) (screening.Profile, beside.Situation) {
	p := invented()
	p.Age = body.Age(rapid.IntRange(45, 95).Draw(t, "age"))
	p.Setting = rapid.SampledFrom(slices.Collect(screening.Settings())).Draw(t, "setting")
	codes := rapid.SampledFrom(codesOf(screening.Condition))
	p.Conditions = screening.AskedFor(rapid.SliceOfNDistinct(codes, 0, 2, rapid.ID[screening.Code]).Draw(t, "conditions")...)
	s := beside.Situation{Day: firstDay, Goal: rapid.SampledFrom(slices.Collect(guideline.Goals())).Draw(t, "goal"), Fast: rapid.Bool().Draw(t, "fast")}
	if rapid.Bool().Draw(t, "looked at") {
		s.Known.Stands = new(rapid.IntRange(0, 4).Draw(t, "stands"))
	}
	if rapid.Bool().Draw(t, "told") {
		s.Known.Brisk, s.Known.Easy = new(rapid.IntRange(0, 300).Draw(t, "brisk")), new(rapid.IntRange(0, 300).Draw(t, "easy"))
	}
	answers := []screening.Answer{screening.No, screening.Unknown, screening.Yes}
	s.Known.SpineFracture, s.Known.Leaks = rapid.SampledFrom(answers).Draw(t, "spine"), rapid.SampledFrom(answers).Draw(t, "leaks")
	return p, s
}

// worsen makes one thing worse, in the screening or in what is known.
func worsen(t *rapid.T, p *screening.Profile, s *beside.Situation) string {
	switch i := rapid.IntRange(0, 8).Draw(t, "worse"); i {
	case 0, 1, 2:
		codes := codesOf(screening.Condition)
		c := rapid.SampledFrom(codes).Filter(func(c screening.Code) bool { return p.Conditions.Of(c) == screening.No }).Draw(t, "condition")
		p.Conditions = screening.Checklist{Asked: true, Present: append(slices.Clone(p.Conditions.Present), c)}
		return string(c)
	case 3:
		p.Symptoms = screening.AskedFor(rapid.SampledFrom(codesOf(screening.Symptom)).Draw(t, "symptom"))
		return "symptom"
	case 4:
		p.Setting = screening.Alone
		return "alone"
	case 5:
		if s.Known.Stands != nil {
			s.Known.Stands = new(rapid.IntRange(0, *s.Known.Stands).Draw(t, "fewer"))
		}
		return "stances"
	case 6:
		s.Known.Brisk, s.Known.Easy = nil, nil
		return "minutes not known"
	case 7:
		s.Known.SpineFracture = max(s.Known.SpineFracture, screening.Yes)
		return "spine"
	}
	s.Known.Leaks = screening.Yes
	return "leaks"
}

func assess(t *rapid.T, p screening.Profile, s beside.Situation) beside.Situation {
	o, err := screening.Assess(p)
	if err != nil {
		t.Fatal(err)
	}
	s.Screening = o
	return s
}

// Anything worse never brings more of what the law names, nor an item where there was none.
func TestStartIsMonotone(t *testing.T) {
	compared := 0
	rapid.Check(t, func(rt *rapid.T) {
		p, s := drawSituation(rt)
		better := assess(rt, p, s)
		how := worsen(rt, &p, &s)
		worse := assess(rt, p, s)
		on, _ := start(t, better)
		then, _ := start(t, worse)
		for id, i := range then {
			was, there := on[id]
			if !there {
				rt.Fatalf("%s: %s is begun, and was not", how, id)
			}
			compared++
			if what := more(i, was); what != "" {
				rt.Fatalf("%s: more in %s: %s\nbefore %+v\nafter %+v", how, id, what, was, i)
			}
		}
	})
	if compared == 0 {
		t.Error("nothing was compared")
	}
}

// The same for each limit by itself, whatever it comes from, in Start and in Next.
func TestLimitsAreMonotone(t *testing.T) {
	all := map[beside.TrackID][]beside.Item{}
	for _, id := range trackIDs {
		all[id] = steps(t, id)
	}
	all["lifts"] = []beside.Item{lifts(t)}
	rapid.Check(t, func(rt *rapid.T) {
		s := free(t)
		s.Screening.Setting = rapid.SampledFrom(slices.Collect(screening.Settings())).Draw(rt, "setting")
		s.Screening.Limits = drawLimits(rt, "first")
		w := s
		w.Screening.Limits = s.Screening.Limits.Join(drawLimits(rt, "second"))
		w.Screening.Meanwhile = rapid.SampledFrom(slices.Collect(screening.EveryMeanwhile())).Draw(rt, "meanwhile")
		id := rapid.SampledFrom(append(trackIDs, "lifts")).Draw(rt, "track")
		i := rapid.SampledFrom(all[id]).Draw(rt, "step")
		h := drawHappened(rt, i)
		better, err := beside.Next(i, h, s)
		if err != nil {
			rt.Fatal(err)
		}
		worse, err := beside.Next(i, h, w)
		if err != nil {
			rt.Fatal(err)
		}
		if what := more(worse, better); what != "" {
			rt.Fatalf("Next: more in %s: %s\n%+v\n%+v", id, what, better, worse)
		}
		s.Known.InForce, w.Known.InForce = []beside.Item{i}, []beside.Item{i}
		on, _ := start(t, s)
		then, _ := start(t, w)
		if got, there := then[id]; there {
			if what := more(got, on[id]); what != "" {
				rt.Fatalf("Start: more in %s: %s\n%+v\n%+v", id, what, on[id], got)
			}
		}
	})
}

func drawLimits(t *rapid.T, name string) screening.Limits {
	flag := func(what string) bool { return rapid.IntRange(0, 3).Draw(t, name+" "+what) == 3 }
	demands := rapid.SliceOfNDistinct(rapid.SampledFrom(slices.Collect(body.EveryDemand())), 0, 2, rapid.ID[body.Demand]).Draw(t, name+" avoid")
	l := screening.Limits{Support: flag("support"), LowImpact: flag("impact"), Avoid: body.DemandSet(demands...)}
	if flag("effort") {
		l.MaxIntensity = rapid.SampledFrom([]screening.Intensity{screening.Light, screening.Moderate}).Draw(t, name+" intensity")
	}
	if flag("share") {
		l.MaxFraction = units.Fraction(rapid.IntRange(1, 20).Draw(t, name+" fraction")) / 20
	}
	if flag("setting") {
		l.LeastSetting = rapid.SampledFrom(slices.Collect(screening.Settings())).Draw(t, name+" least")
	}
	return l
}

func drawHappened(t *rapid.T, i beside.Item) beside.Happened {
	h := beside.Happened{Days: rapid.IntRange(0, 7).Draw(t, "days"), Least: rapid.IntRange(0, 2*max(asked(i), 5)).Draw(t, "least"), MoreHands: rapid.IntRange(0, 5).Draw(t, "hands") == 5}
	if rapid.IntRange(0, 3).Draw(t, "missed") == 3 {
		h.Missed = rapid.IntRange(0, 60).Draw(t, "days missed")
	}
	if rapid.IntRange(0, 4).Draw(t, "trouble") == 4 {
		h.Troubles = []beside.Trouble{rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(t, "which")}
	}
	return h
}

// worseOf makes what happened worse, or less known, in one way.
func worseOf(t *rapid.T, h beside.Happened) beside.Happened {
	switch rapid.IntRange(0, 4).Draw(t, "how") {
	case 0:
		h.Least = rapid.IntRange(0, h.Least).Draw(t, "less")
	case 1:
		h.MoreHands = true
	case 2:
		h.Troubles = append(slices.Clone(h.Troubles), rapid.SampledFrom(slices.Collect(beside.Troubles())).Draw(t, "trouble"))
	case 3:
		h.Missed += rapid.IntRange(0, 40).Draw(t, "more missed")
	default:
		// What was not done at all shows nothing, good or bad: it is no worse than a bad week.
		h.Days = rapid.IntRange(min(1, h.Days), h.Days).Draw(t, "fewer days")
	}
	return h
}

// Of two histories on one track, one of them worse in one place, the worse never comes to more.
func TestHistoriesAreMonotone(t *testing.T) {
	all := map[beside.TrackID][]beside.Item{}
	for _, id := range trackIDs {
		all[id] = steps(t, id)
	}
	rapid.Check(t, func(rt *rapid.T) {
		s := free(t)
		id := rapid.SampledFrom(trackIDs).Draw(rt, "track")
		at := rapid.SampledFrom(all[id]).Draw(rt, "step")
		n := rapid.IntRange(1, 12).Draw(rt, "weeks")
		bad := rapid.IntRange(0, n-1).Draw(rt, "the worse one")
		better, worse := at, at
		for week := range n {
			h := drawHappened(rt, better)
			w := h
			if week == bad {
				w = worseOf(rt, h)
			}
			var err, werr error
			if better, err = beside.Next(better, h, s); err != nil {
				rt.Fatal(err)
			}
			if worse, werr = beside.Next(worse, w, s); werr != nil {
				rt.Fatal(werr)
			}
			if what := more(worse, better); what != "" {
				rt.Fatalf("week %d of %s: %s\n%+v\n%+v\nbetter %+v\nworse  %+v", week, id, what, h, w, better, worse)
			}
		}
	})
}

// What went badly never brings more than there was; nothing but all as asked does.
func TestBadWeeksNeverBringMore(t *testing.T) {
	all := map[beside.TrackID][]beside.Item{}
	for _, id := range trackIDs {
		all[id] = steps(t, id)
	}
	rose := 0
	rapid.Check(t, func(rt *rapid.T) {
		id := rapid.SampledFrom(trackIDs).Draw(rt, "track")
		i := rapid.SampledFrom(all[id]).Draw(rt, "step")
		i.Met = rapid.IntRange(0, 9).Draw(rt, "met")
		h := drawHappened(rt, i)
		next, err := beside.Next(i, h, free(t))
		if err != nil {
			rt.Fatal(err)
		}
		good := h.Days > 0 && h.Least >= asked(i) && !h.MoreHands && len(h.Troubles) == 0 && h.Missed < 14
		if !good {
			if what := more(next, i); what != "" || next.Met != 0 {
				rt.Fatalf("%+v brings more: %s", h, what)
			}
		}
		if next.Step > i.Step+1 {
			rt.Fatalf("%d steps at once", next.Step-i.Step)
		}
		rose += max(0, next.Step-i.Step)
	})
	if rose == 0 {
		t.Error("nothing ever rose")
	}
}
