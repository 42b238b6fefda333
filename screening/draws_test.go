package screening_test

import (
	"encoding/json"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// said are the reasons of the findings, in order of their letters.
func said(o screening.Outcome) []evidence.ReasonCode {
	var list []evidence.ReasonCode
	for _, f := range o.Findings {
		list = append(list, f.Reason.Code)
	}
	slices.Sort(list)
	return list
}

func missing(o screening.Outcome) []screening.Code {
	var list []screening.Code
	for _, q := range o.Missing {
		list = append(list, q.Code)
	}
	slices.Sort(list)
	return list
}

// alike holds that two outcomes say and do the same.
func alike(t *testing.T, what string, a, b screening.Outcome) {
	t.Helper()
	if a.Route != b.Route || a.Meanwhile != b.Meanwhile || !a.Limits.AsTightAs(b.Limits) || !b.Limits.AsTightAs(a.Limits) ||
		!slices.Equal(said(a), said(b)) || !slices.Equal(missing(a), missing(b)) || a.ReviewBy != b.ReviewBy || a.Plan != b.Plan {
		t.Fatalf("%s: %v, %v, %v, missing %v\nbecame %v, %v, %v, missing %v", what, a.Route, a.Meanwhile, said(a), missing(a), b.Route, b.Meanwhile, said(b), missing(b))
	}
}

// shuffled is a profile told in another order.
func shuffled(r *rand.Rand, p screening.Profile) screening.Profile {
	p = copied(p)
	mix := func(n int, swap func(i, j int)) { r.Shuffle(n, swap) }
	for _, list := range []*screening.Checklist{&p.Diseases, &p.Symptoms, &p.RedFlags, &p.Conditions} {
		list.Present, list.Unsure = slices.Clone(list.Present), slices.Clone(list.Unsure)
		mix(len(list.Present), func(i, j int) { list.Present[i], list.Present[j] = list.Present[j], list.Present[i] })
		mix(len(list.Unsure), func(i, j int) { list.Unsure[i], list.Unsure[j] = list.Unsure[j], list.Unsure[i] })
	}
	p.Clearances, p.Sites = slices.Clone(p.Clearances), slices.Clone(p.Sites)
	mix(len(p.Events), func(i, j int) { p.Events[i], p.Events[j] = p.Events[j], p.Events[i] })
	mix(len(p.Clearances), func(i, j int) { p.Clearances[i], p.Clearances[j] = p.Clearances[j], p.Clearances[i] })
	mix(len(p.Sites), func(i, j int) { p.Sites[i], p.Sites[j] = p.Sites[j], p.Sites[i] })
	return p
}

// TestToldInAnyOrder holds that the order in which things were told changes nothing, that an
// assessment asked for twice says the same twice, and that it changes nothing of what it reads.
func TestToldInAnyOrder(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 78))
	for range usualCases / 4 {
		p := randomProfile(r)
		before := units.Must(json.Marshal(p))
		o := assess(t, p)
		c := checkFor(r, o)
		day := mustToday(t, c, o)
		alike(t, "twice", o, assess(t, p))
		alike(t, "twice on the day", day, mustToday(t, c, o))
		if after := units.Must(json.Marshal(p)); string(after) != string(before) {
			t.Fatalf("%s became %s", before, after)
		}
		again := assess(t, shuffled(r, p))
		alike(t, "another order", o, again)
		alike(t, "another order, on the day", day, mustToday(t, c, again))
	}
}

// TestNoNeverTightens holds that a no in place of a question not answered tightens nothing, the
// route with it; of the floor a yes.
func TestNoNeverTightens(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 79))
	for range usualCases / 2 {
		p := randomProfile(r)
		code := one(r, yesNoCodes)
		if p.Answers[code] = screening.Unknown; chance(r, 3) {
			delete(p.Answers, code)
		}
		open := assess(t, p)
		q := copied(p)
		if q.Answers[code] = screening.No; code == "floor_and_up" {
			q.Answers[code] = screening.Yes
		}
		answered := assess(t, q)
		tighter(t, string(code)+" open", 0, answered, open)
		if answered.Route > open.Route {
			t.Fatalf("%s answered: %v became %v", code, open.Route, answered.Route)
		}
	}
}

// TestLaterDayNotGraver holds that time alone, with no clearance to run out, makes nothing that
// has a day graver.
func TestLaterDayNotGraver(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 80))
	for range usualCases / 2 {
		p := randomProfile(r)
		p.Clearances = nil
		o := assess(t, p)
		later := copied(p)
		later.Day += units.Day(r.IntN(700))
		after := assess(t, later)
		tighter(t, "an earlier day", 0, after, o)
		if after.Route > o.Route {
			t.Fatalf("%v became %v: %v, %v", o.Route, after.Route, said(o), said(after))
		}
	}
}

// TestEndsOnItsDay holds that what ends by itself ends on the day that its way out names, and
// not the day before, leap days too.
func TestEndsOnItsDay(t *testing.T) {
	ended := 0
	for _, start := range []units.Day{units.Must(units.NewDay(2023, time.February, 27)), units.Must(units.NewDay(2024, time.February, 27)), units.Must(units.NewDay(2027, time.August, 27)), units.Must(units.NewDay(2027, time.November, 27))} {
		for day := start; day < start+7; day++ {
			for _, code := range datedCodes {
				for _, answer := range []screening.Answer{screening.No, screening.Yes} {
					p := made(says(answer, yesNoCodes))
					p.Day, p.Events = day, []screening.Event{{Code: code, Day: day, Region: 0}}
					if code == "fracture" {
						p.Events[0].Region = body.LowerBack
					}
					for _, f := range assess(t, p).Findings {
						if f.Exit.From.IsZero() {
							continue
						}
						ended++
						is := func(on units.Day) bool {
							p.Day = on
							return slices.ContainsFunc(assess(t, p).Findings, func(g screening.Finding) bool {
								return g.Code == f.Code && g.Reason.Code == f.Reason.Code
							})
						}
						if !is(f.Exit.From-1) || is(f.Exit.From) {
							t.Errorf("%s of %v: ends from %v, and does not", f.Reason.Code, day, f.Exit.From)
						}
					}
				}
			}
		}
	}
	if ended < 100 {
		t.Errorf("only %d that end by themselves", ended)
	}
}

// TestAgeAlone holds that an age holds nobody: from 65 falls are asked about, and no more.
func TestAgeAlone(t *testing.T) {
	r := rand.New(rand.NewPCG(50, 81))
	for range usualCases / 8 {
		p := randomProfile(r)
		p.Falls = nil
		p.Age = 50
		young := assess(t, p)
		for _, age := range []body.Age{64, 65, 90, 110} {
			p.Age = age
			o := assess(t, p)
			if o.Route != young.Route || o.Meanwhile != young.Meanwhile || !slices.Equal(said(o), said(young)) || misses(o, "falls") && age < 65 {
				t.Fatalf("at %d: %v, %v; at 50: %v, %v", age, o.Route, said(o), young.Route, said(young))
			}
		}
	}
}

// TestOperation holds that an operation that was told holds until it has healed or lies back:
// after it the plan ends, and the assessment that follows knew nothing of it.
func TestOperation(t *testing.T) {
	for days, want := range map[units.Day]screening.Meanwhile{0: screening.UnloadedPractice, 83: screening.UnloadedPractice, 84: screening.WithinLimits} {
		if o := assess(t, made(ago("operation", days))); o.Meanwhile != want || (o.Route == screening.AskFirst) != (want > screening.WithinLimits) {
			t.Errorf("%d days ago: %v, %v", days, o.Route, o.Meanwhile)
		}
	}
	healed := assess(t, made(ago("operation", 7), no("operation_unhealed")))
	if expect(t, healed, screening.Tell, screening.WithinLimits); !healed.Limits.IsZero() {
		t.Errorf("healed: %+v", healed.Limits)
	}
	p := made(ago("operation", 7), agreed("operation")) // of a month ago: before it
	expect(t, assess(t, p), screening.AskFirst, screening.UnloadedPractice)
	p.Clearances[0].Day = visit - 1
	expect(t, assess(t, p), screening.Tell, screening.WithinLimits)
}

// TestSteroidsAndSeizures holds that steroid tablets and seizures hold nobody by themselves, and
// what they make of what is beside them.
func TestSteroidsAndSeizures(t *testing.T) {
	p := made(has("steroid_tablets", "epilepsy"))
	for s := range 5 {
		p.Setting = screening.Setting(s)
		o := assess(t, p)
		expect(t, o, screening.Tell, screening.WithinLimits)
		if alone := p.Setting <= screening.Alone; o.Limits.Avoid.Has(body.OverFace) != alone || o.Limits.Avoid.Has(body.Overhead) != alone {
			t.Errorf("%v: %v", p.Setting, o.Limits.Avoid)
		}
	}
	expect(t, assess(t, made(has("steroid_tablets", "severe_midline_back_pain"), no("midline_pain_unseen"))), screening.AskFirst, screening.UnloadedPractice)
	c := quiet()
	c.Pain = &screening.Pain{Kind: screening.OrdinaryPain, Site: body.LowerBack, During: score(3), After: score(2), SettledNextMorning: screening.Yes, WeeklyTrend: screening.StablePain}
	if o := assess(t, made(has("steroid_tablets"))); !o.MayBeFracture(*c.Pain) {
		t.Error("new back pain on steroids is no break")
	}
}

// TestWhoIsAsked holds that what an answer of the person settles sends nobody to a doctor.
func TestWhoIsAsked(t *testing.T) {
	p := made(has("recent_infection_or_injected_drugs", "weakened_immune_system"))
	if way := assess(t, p).Frees; way.Who != screening.ThePerson || way.Ask != "back_pain" {
		t.Errorf("the back was not asked about: %v, %v", way, way.Ask)
	}
	p = made(has("ankle_oedema"), no("ankle_oedema_new"), unsure("ischaemic_chest_neck_jaw_arm_pain"))
	for _, f := range assess(t, p).Findings {
		if f.Branch() != 0 && f.Exit.Ask != "ischaemic_chest_neck_jaw_arm_pain" {
			t.Errorf("an ache that may not be there: %v", f.Exit)
		}
	}
	p = made(unsure("nephropathy"))
	if o := assess(t, p); misses(o, "diabetes") || !misses(o, "nephropathy") {
		t.Errorf("diabetes is asked about, of which a no settles nothing: %v", missing(o))
	}
}
