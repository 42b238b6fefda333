package guideline_test

import (
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

func ids(list []guideline.Recommendation) []guideline.ID {
	var names []guideline.ID
	for _, r := range list {
		names = append(names, r.ID)
	}
	return names
}

func TestFor(t *testing.T) {
	tests := []struct {
		q    guideline.Query
		want []guideline.ID
	}{
		{guideline.Query{Goal: guideline.Strength, Training: body.Novice, Age: 70}, []guideline.ID{
			"nsca2019-older-start", "grgic2018-rest-untrained", "acsm2011-older-start", "acsm2011-strength-novice-intermediate",
			"borde2015-strength", "steib2010-dose-response", "nsca2019-older-healthy", "icfsr2021-prt", "silva2014-duration",
			"peterson2010-strength", "fyfe2022-minimal-dose", "ralston2017-strength-sets", "cress2006-best-practice",
			"acsm2026-strength", "avers2009-white-paper", "sarcopenia2022-hurst", "sarcopenia2022-review",
			"acsm2009-strength-novice", "acsm2009-older-strength"}},
		{guideline.Query{Goal: guideline.Strength, Training: body.Novice, Age: 64}, []guideline.ID{
			"grgic2018-rest-untrained", "acsm2011-older-start", "acsm2011-strength-novice-intermediate",
			"silva2014-duration", "peterson2010-strength", "fyfe2022-minimal-dose", "ralston2017-strength-sets",
			"cress2006-best-practice", "acsm2026-strength", "avers2009-white-paper", "acsm2009-strength-novice", "acsm2009-older-strength"}},
		{guideline.Query{Goal: guideline.Bone}, []guideline.ID{
			"giangregorio2014-osteoporosis", "brookewavell2022-osteoporosis", "essa2017-osteoporosis"}},
		{guideline.Query{Goal: guideline.Power, Age: 65}, []guideline.ID{
			"nsca2019-older-power", "acsm2026-power", "acsm2011-older-power", "gianoudis2012-trial",
			"acsm2009-power-novice-intermediate", "acsm2009-power-advanced", "acsm2009-older-power"}},
		{guideline.Query{Goal: guideline.Health, Age: 70}, []guideline.ID{
			"ukcmo2019-older", "who2020-older", "acsm2009-older-physical-activity", "acsmaha2007-older-strengthening",
			"aha2023-adults", "ukcmo2019-adults", "fisher2017-minimal-dose-older", "acsm2026-health", "usdhhs2018-adults",
			"ada2016-diabetes", "prediabetes2021-review", "acsm2019-cancer", "eular2018-arthritis",
			"aha2007-initial-healthy-sedentary", "aha2007-initial-older-or-cardiac"}},
		{guideline.Query{Goal: guideline.Health, Age: 64, AtLarge: true}, []guideline.ID{
			"acsmaha2007-older-strengthening", "aha2023-adults", "ukcmo2019-adults", "fisher2017-minimal-dose-older", "acsm2026-health",
			"who2020-adults", "usdhhs2018-adults", "aha2007-initial-healthy-sedentary"}},
		{guideline.Query{Goal: guideline.Endurance, Training: body.Advanced, Age: 70, AtLarge: true}, []guideline.ID{
			"acsm2011-endurance", "acsm2009-endurance-advanced", "acsm2009-older-endurance"}},
		{guideline.Query{Goal: guideline.Bone, AtLarge: true}, nil},
	}
	for _, tt := range tests {
		if got := ids(guideline.For(tt.q)); !slices.Equal(got, tt.want) {
			t.Errorf("For(%+v) = %v, want %v", tt.q, got, tt.want)
		}
	}
	if got := len(guideline.For(guideline.Query{})); got != 77 {
		t.Errorf("%d rows fit a query for nothing, want all 77", got)
	}
}

// TestForProperties: an answer holds what fits and nothing else, once each,
// superseded rows last and rows for the person's conditions first.
func TestForProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := guideline.Query{
			Goal:     guideline.Goal(rapid.IntRange(0, int(guideline.Health)).Draw(t, "goal")),
			Training: body.Training(rapid.IntRange(0, int(body.Advanced)).Draw(t, "training")),
			Age:      body.Age(rapid.IntRange(0, 120).Draw(t, "age")),
			AtLarge:  rapid.Bool().Draw(t, "at large"),
		}
		for _, c := range rapid.SliceOfN(rapid.IntRange(1, int(guideline.AchillesTendinopathy)), 0, 2).Draw(t, "conditions") {
			q.Conditions = append(q.Conditions, guideline.Condition(c))
		}
		own := func(r guideline.Recommendation) bool {
			return slices.ContainsFunc(r.Conditions, func(c guideline.Condition) bool { return slices.Contains(q.Conditions, c) })
		}
		list := guideline.For(q)
		n := 0
		for r := range guideline.All() {
			asked := q.AtLarge || q.Conditions != nil
			fits := (q.Goal == 0 || q.Goal == r.Goal) && (q.Age == 0 || q.Age >= r.AgeMin) && (r.AgeMax == 0 || q.Age <= r.AgeMax) &&
				(q.Training == 0 || r.Training == nil || slices.Contains(r.Training, q.Training)) &&
				(r.Conditions == nil || own(r) || !asked)
			if fits {
				n++
			}
			if got := slices.Contains(ids(list), r.ID); got != fits {
				t.Fatalf("For(%+v) holds %s: %v, want %v", q, r.ID, got, fits)
			}
		}
		if len(list) != n {
			t.Fatalf("For(%+v): %d rows, want %d", q, len(list), n)
		}
		last := 0
		for _, r := range list {
			rank := 2
			switch {
			case r.SupersededBy != nil:
				rank = 3
			case own(r):
				rank = 1
			}
			if rank < last {
				t.Fatalf("For(%+v): %s stands too late", q, r.ID)
			}
			last = rank
		}
	})
}

func TestForConditions(t *testing.T) {
	bone := guideline.For(guideline.Query{Goal: guideline.Bone, Conditions: []guideline.Condition{guideline.VertebralFracture}})
	if got := ids(bone); !slices.Equal(got, []guideline.ID{"giangregorio2014-osteoporosis"}) {
		t.Errorf("vertebral fracture, for bone: %v", got)
	}
	oa := guideline.For(guideline.Query{Age: 70, Conditions: []guideline.Condition{guideline.Osteoarthritis}})
	if got := ids(oa)[:4]; !slices.Equal(got, []guideline.ID{"lawford2024-knee-oa", "juhl2014-knee-oa", "eular2018-arthritis", "gschwind2013-advanced"}) {
		t.Errorf("osteoarthritis at 70: %v first", got)
	}
	for _, r := range guideline.For(guideline.Query{AtLarge: true}) {
		if len(r.Conditions) > 0 {
			t.Errorf("%s is for %v", r.ID, r.Conditions)
		}
	}
}

func ExampleFor() {
	for _, r := range guideline.For(guideline.Query{Goal: guideline.Strength, Training: body.Novice, Age: 68})[:3] {
		fmt.Printf("%s: load %s (%s)\n", r.ID, r.Load, r.Basis)
	}
	// Output:
	// nsca2019-older-start: load not stated (secondary)
	// grgic2018-rest-untrained: load not stated (published)
	// acsm2011-older-start: load 40 % to 50 % (secondary)
}

func BenchmarkFor(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if len(guideline.For(guideline.Query{Goal: guideline.Strength, Age: 70})) == 0 {
			b.Fatal("nothing fits")
		}
	}
}

// One recommendation by its ID, field by field as it was read.
func ExampleGet() {
	r, err := guideline.Get("acsm2011-older-start")
	fmt.Println(r.Load, "–", r.Basis, err)
	_, err = guideline.Get("acsm2011-old")
	fmt.Println(err)
	// Output:
	// 40 % to 50 % – secondary <nil>
	// unknown: value = "acsm2011-old", allowed: perhaps acsm2011-older-start, acsm2011-older-power
}
