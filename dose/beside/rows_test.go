package beside_test

import (
	"os"
	"strings"
	"testing"

	"example.org/posology/dose/beside"
	"example.org/posology/dose/guideline"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A part is one number of a row.
type part struct {
	Name  string   `json:"name"`
	Value *float64 `json:"value"`
	Min   *float64 `json:"min"`
	Max   *float64 `json:"max"`
}

// row is a row of the collection; its value stands among the parts, without a name.
type row struct {
	ID     string   `json:"id"`
	Known  string   `json:"known"`
	Value  *float64 `json:"value"`
	Min    *float64 `json:"min"`
	Max    *float64 `json:"max"`
	DOI    string   `json:"doi"`
	Parts  []part   `json:"parts"`
	reader testing.TB
}

// of returns the numbers of a part, from the least to the most; "" is the row's own.
func (r row) of(name string) (least, most float64) {
	p := part{"", r.Value, r.Min, r.Max}
	for _, q := range r.Parts {
		if q.Name == name {
			p = q
		}
	}
	if p.Name != name {
		r.reader.Fatalf("%s has no part %q", r.ID, name)
	}
	if p.Value != nil {
		return *p.Value, *p.Value
	}
	if p.Min != nil {
		least, most = *p.Min, *p.Min
	}
	if p.Max != nil {
		most = *p.Max
	}
	return least, most
}

func (r row) one(name string) int {
	n, _ := r.of(name)
	return int(n)
}

func published(t testing.TB) []row {
	t.Helper()
	data, err := os.ReadFile("../../testdata/published/beside.json")
	if err != nil {
		t.Fatal(err)
	}
	var rows []row
	if err := field.Decode(data, &rows, field.PassOver); err != nil {
		t.Fatal(err)
	}
	for i := range rows {
		rows[i].reader = t
	}
	return rows
}

func whose(t testing.TB, change func(*beside.Situation)) map[beside.TrackID]beside.Item {
	s := free(t)
	change(&s)
	on, _ := start(t, s)
	return on
}

func factsOf(items ...beside.Item) map[evidence.FactID]bool {
	all := map[evidence.FactID]bool{}
	for _, i := range items {
		for _, r := range i.Reasons {
			for _, f := range r.Facts {
				all[f] = true
			}
		}
	}
	return all
}

// reached are the rows that the code is held against.
var reached = map[string]func(t *testing.T, r row){
	"bal-02": func(t *testing.T, r row) {
		aim, _ := whose(t, func(s *beside.Situation) { s.Screening.Limits.Support = true })["stance"].Aim.Min()
		check(t, r, aim == 60*r.one("threshold"), aim)
	},
	"bal-06": func(t *testing.T, r row) {
		i := whose(t, func(s *beside.Situation) {
			s.Screening.Limits.Support, s.Known.Stands, s.Known.Brisk = true, nil, new(600)
		})["walking"]
		check(t, r, i.Brisk == 0 && i.Sets > 0 && factsOf(i)["beside.no-brisk"], i)
	},
	"bal-07": func(t *testing.T, r row) { // feet close or one leg, hands hardly used, the body moved: two of three
		for _, id := range []beside.TrackID{"stance", "one-leg", "reach", "stepping"} {
			all := steps(t, id)
			check(t, r, all[len(all)-1].Hands == beside.HandsNear && r.one("") == 2, id) // and stances are narrow, the others move
		}
	},
	"bal-09": func(t *testing.T, r row) {
		check(t, r, whose(t, func(*beside.Situation) {})["stance"].Days == units.AtLeast(3), "days")
	},
	"bal-18": func(t *testing.T, r row) {
		var moves []string
		for _, i := range steps(t, "stance") {
			if i.Hands == beside.HandsNear && i.Seconds == 10 {
				moves = append(moves, string(i.Move))
			}
		}
		check(t, r, strings.Join(moves, " ") == "feet-together half-tandem heel-to-toe heel-to-toe-looking", moves)
		check(t, r, steps(t, "one-leg")[0].Move == "one-leg", "one leg after it")
	},
	"bal-19": func(t *testing.T, r row) {
		s := free(t)
		s.Known.Stands = new(2)
		on, _ := start(t, s)
		i := on["stance"]
		check(t, r, i.Seconds == r.one("hold at first") && i.Sets == r.one("holds"), i)
		for i.Move == "half-tandem" {
			last := i.Seconds
			once, _ := beside.Next(i, beside.Happened{Days: r.one("visits") - 1, Least: 30}, s)
			check(t, r, once.Step == i.Step && once.Met == 1, once)
			i, _ = beside.Next(once, beside.Happened{Days: 1, Least: 30}, s)
			check(t, r, i.Move == "half-tandem" || last == r.one("hold to move on"), last)
		}
	},
	"bal-20": func(t *testing.T, r row) {
		i := whose(t, func(s *beside.Situation) { s.Known.Stands = new(1); s.Screening.Limits.Support = true })["stance"]
		check(t, r, i.Hands == beside.BothHandsOn, i)
	},
	"imp-06": func(t *testing.T, r row) { check(t, r, most(steps(t, "impact")) == r.one(""), "most") },
	"imp-07": func(t *testing.T, r row) {
		s := free(t)
		s.Screening.Limits.LowImpact, s.Known.Brisk = true, new(600)
		on, off := start(t, s)
		check(t, r, on["walking"].Brisk*on["walking"].Minutes == r.one("") && off["impact"].Reasons != nil, on["walking"])
	},
	"imp-09": func(t *testing.T, r row) { // frailty asks for support, and then there is no impact
		check(t, r, whose(t, func(s *beside.Situation) { s.Screening.Limits.Support = true })["impact"].Kind == 0, "impact")
	},
	"imp-11": func(t *testing.T, r row) {
		force, _ := r.of("")
		i := move(t, "impact", "small-jumps")
		check(t, r, i.Force == force && i.Height == 8.5, i)
	},
	"imp-12": func(t *testing.T, r row) {
		for _, i := range steps(t, "impact") {
			check(t, r, factsOf(i)["beside.jumps-alone"], i.Move)
		}
	},
	"imp-14": func(t *testing.T, r row) { // 5 sets of 10, rests of 15 s or more
		i := move(t, "impact", "hops")
		check(t, r, i.Count == 10 && i.Rest >= 15 && i.Sets <= 5, i)
	},
	"imp-15": func(t *testing.T, r row) {
		s := free(t)
		finding("osteoporosis")(&s)
		top(t, s, "impact", "heel-drops")
	},
	"imp-17": func(t *testing.T, r row) {
		_, force := r.of("effort 5 of 10")
		i := move(t, "impact", "stamps")
		check(t, r, i.Force == force && i.Effort == 5, i)
	},
	"imp-18": func(t *testing.T, r row) {
		force, _ := r.of("")
		check(t, r, move(t, "impact", "heel-drops").Force == force, force)
	},
	"imp-19": func(t *testing.T, r row) {
		_, force := r.of("")
		check(t, r, move(t, "impact", "hops").Force == force, force)
	},
	"imp-25": func(t *testing.T, r row) {
		for _, worse := range []func(*beside.Situation){
			finding("vertebral_fracture"), finding("recent_fracture"), func(s *beside.Situation) { finding("osteoporosis")(s); s.Known.SpineFracture = 0 },
			func(s *beside.Situation) { s.Known.Stands = new(1) }, func(s *beside.Situation) { s.Known.Leaks = screening.Yes },
			func(s *beside.Situation) { s.Screening.Limits.MaxIntensity = screening.Light },
		} {
			check(t, r, whose(t, worse)["impact"].Kind == 0, "impact")
		}
	},
	"imp-26": func(t *testing.T, r row) {
		all := steps(t, "impact")
		days, _ := all[0].Days.Min()
		check(t, r, all[0].Sets*all[0].Count == r.one("first") && days == r.one("days"), all[0])
		check(t, r, all[1].Sets*all[1].Count-all[0].Sets*all[0].Count == r.one("step") && most(all) == r.one("top"), all[1])
		early, _ := beside.Next(all[0], beside.Happened{Days: days - 1, Least: 10}, free(t))
		check(t, r, early.Step == 1 && all[5].Height > 0 && all[5].Company, early)
	},
	"pow-03": func(t *testing.T, r row) { check(t, r, factsOf(lifts(t))["beside.power-load"], "lifts") },
	"pow-04": func(t *testing.T, r row) {
		all := steps(t, "chair-rise")
		last := all[len(all)-1]
		check(t, r, last.Sets == r.one("sets") && last.Count == r.one("repetitions"), last)
	},
	"pow-07": func(t *testing.T, r row) {
		for _, id := range []beside.TrackID{"chair-rise", "lifts"} {
			check(t, r, whose(t, func(*beside.Situation) {})[id].Slower == units.Fraction(r.one(""))/100, id)
		}
	},
	"pow-13": func(t *testing.T, r row) {
		for _, i := range steps(t, "chair-rise") {
			for name, n := range map[string]int{"sets": i.Sets, "repetitions": i.Count, "rest": i.Rest / 60} {
				least, most := r.of(name)
				check(t, r, float64(n) >= least && float64(n) <= most, name)
			}
		}
	},
	"aer-01": func(t *testing.T, r row) {
		least, most := r.of("")
		check(t, r, whose(t, func(*beside.Situation) {})["walking"].Aim == units.Must(units.Between(int(least), int(most))), "aim")
	},
	"aer-06": func(t *testing.T, r row) {
		all := steps(t, "walking")
		days, _ := r.of("days")
		on, _ := all[0].Days.Min()
		check(t, r, all[0].Minutes == r.one("first bout") && all[0].Sets > 1 && on == int(days) && all[0].Brisk == 0, all[0])
		check(t, r, all[3].Minutes == r.one("next bout") && all[3].Sets == r.one("bouts a day") && all[3].Brisk == 0 && all[4].Brisk > 0, all[3])
	},
	"aer-07": func(t *testing.T, r row) {
		said := false
		for _, why := range whose(t, func(s *beside.Situation) { s.Known.Brisk = new(150) })["walking"].Reasons {
			said = said || strings.Contains(beside.Words().Clinician(why), "About 100 steps a minute")
		}
		check(t, r, said && r.one("3 METs") == 100, "steps")
	},
	"aer-13": func(t *testing.T, r row) {
		check(t, r, factsOf(steps(t, "walking")...)["beside.talk"], "talk test")
	},
	"con-pd-01": func(t *testing.T, r row) { // the WHO's days hold it; brisk waits for a look at the balance
		p := invented()
		p.Conditions = screening.AskedFor("parkinsons")
		on := whose(t, func(s *beside.Situation) { s.Screening = assessed(t, p); s.Known.Stands, s.Known.Brisk = nil, new(300) })
		_, balance := r.of("balance days")
		stance, _ := on["stance"].Days.Min()
		walking, _ := on["walking"].Days.Min()
		check(t, r, float64(stance) >= balance && walking >= r.one("aerobic days") && on["walking"].Brisk == 0, on["stance"])
	},
	"low-13": func(t *testing.T, r row) {
		for _, tt := range []struct {
			systolic int
			fast     bool
		}{{r.one("not today under") - 1, false}, {r.one("not today under"), false}, {99, false}, {100, true}} {
			p := invented()
			p.BP = &screening.BloodPressure{Systolic: tt.systolic, Diastolic: 64}
			on := whose(t, func(s *beside.Situation) { s.Screening = assessed(t, p) })
			check(t, r, (on["chair-rise"].Kind == beside.Power) == tt.fast, tt.systolic)
		}
	},
	"cha-04": func(t *testing.T, r row) {
		on := whose(t, func(*beside.Situation) {})
		check(t, r, on["stance"].Days == units.AtLeast(r.one("strength, balance, stretch")) && on["walking"].Days == units.AtLeast(r.one("walking")), on["walking"])
	},
	"aer-17": func(t *testing.T, r row) { // known from memory: it only orders
		all := steps(t, "walking")
		check(t, r, all[3].WeeklyMinutes() == all[len(all)-1].WeeklyMinutes(), "minutes before pace")
	},
}

func lifts(t *testing.T) beside.Item { return whose(t, func(*beside.Situation) {})["lifts"] }

func check(t *testing.T, r row, ok bool, got any) {
	t.Helper()
	if !ok {
		t.Errorf("%s: %+v", r.ID, got)
	}
}

func most(all []beside.Item) (n int) {
	for _, i := range all {
		n = max(n, i.Sets*i.Count)
	}
	return n
}

func move(t testing.TB, track beside.TrackID, id beside.MoveID) beside.Item {
	for _, i := range steps(t, track) {
		if i.Move == id {
			return i
		}
	}
	t.Fatalf("%s has no %s", track, id)
	return beside.Item{}
}

// Every published row on balance, impact, power and aerobic work is held or listed, those
// of single conditions too.
func TestPublishedRows(t *testing.T) {
	rows := published(t)
	if len(rows) != 93 {
		t.Errorf("%d rows", len(rows))
	}
	seen := 0
	for _, r := range rows {
		look, held := reached[r.ID]
		reason := listed[r.ID]
		switch {
		case held == (reason != ""):
			t.Errorf("%s is to be held against the code or listed, one of them", r.ID)
		case held:
			look(t, r)
		}
		seen++
	}
	if seen != len(reached)+len(listed) {
		t.Errorf("%d rows, %d held, %d listed", seen, len(reached), len(listed))
	}
}

// A fact is never better known than the row that it was copied from.
func TestFactsKeepTheRowsBasis(t *testing.T) {
	bases := map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory, "design": evidence.Design}
	from := map[evidence.FactID]string{
		"beside.falls-hours": "bal-02", "beside.no-brisk": "bal-06", "beside.stamp-force": "imp-17", "beside.jump-force": "imp-11", "beside.heel-drop-force": "imp-18",
		"beside.hop-force": "imp-19", "beside.hops-not-advised": "imp-15", "beside.jumps-alone": "imp-12", "beside.lifting-with-impact": "imp-03", "beside.brittle-spine": "imp-07",
		"beside.slower": "pow-07", "beside.power-load": "pow-03", "beside.walk-start": "aer-06", "beside.talk": "aer-13", "beside.cadence": "aer-07",
	}
	rows := map[string]row{}
	for _, r := range published(t) {
		rows[r.ID] = r
	}
	for f := range beside.Facts() {
		id, copied := from[f.ID]
		switch {
		case !copied && f.Basis != evidence.Design:
			t.Errorf("%s is %v and copied from no row", f.ID, f.Basis)
		case copied && bases[rows[id].Known] != f.Basis:
			t.Errorf("%s is %v, its row %s is %s", f.ID, f.Basis, id, rows[id].Known)
		case copied:
			source, _ := evidence.LookUp(f.Source)
			if source.DOI != rows[id].DOI && f.Source != "brookewavell2022" {
				t.Errorf("%s: %q, the row has %q", f.ID, source.DOI, rows[id].DOI)
			}
		}
	}
	for range beside.Facts() {
		break // a caller may stop
	}
}

// The recommendations that dose balance, impact, power or aerobic work, likewise.
func TestRecommendations(t *testing.T) {
	used := factsOf(steps(t, "stance")[0], steps(t, "impact")[0], lifts(t), steps(t, "walking")[0],
		whose(t, func(s *beside.Situation) { s.Screening.Who.Age = 55 })["stance"], whose(t, func(s *beside.Situation) { s.Screening.Who.Age = 55 })["walking"])
	why := map[guideline.ID]string{
		"acsm2009-power-novice-intermediate": "healthy adults of any age; the row for older adults is followed", "acsm2009-power-advanced": "known from memory only",
		"acsm2011-older-power": "20 to 50 % by a secondary table; one row is followed", "acsm2026-power": "of adults from 18 on, no count", "nsca2019-older-power": "known from memory only",
		"gianoudis2012-trial": "a trial's template with other efforts",
	}
	seen := 0
	for r := range guideline.All() {
		for _, f := range []guideline.Field{guideline.FieldBalanceDays, guideline.FieldImpacts, guideline.FieldAerobic, guideline.FieldLoad} {
			_, stated := r.Stated(f)
			if !stated && !(f == guideline.FieldLoad && r.Goal == guideline.Power) || f == guideline.FieldLoad && r.Goal != guideline.Power {
				continue
			}
			seen++
			fact, _ := r.Fact(f)
			if used[fact] == (why[r.ID] != "") {
				t.Errorf("%s of %s is to be used or listed, one of them", f, r.ID)
			}
		}
	}
	if seen != 12 {
		t.Errorf("%d fields", seen)
	}
}
