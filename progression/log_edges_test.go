package progression_test

import (
	"encoding/json"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// What is asked about: a load that the kit lacks, or a slip's multiple of the
// planned one that looking for the load cannot reach.
func TestNextQueries(t *testing.T) {
	for _, tt := range []struct {
		name    string
		kit     []float64
		finding *dose.Search
		load    float64
		why     evidence.ReasonCode
	}{
		{"twice", []float64{4, 8}, nil, 8, "progression.slip"},
		{"about twice", []float64{4, 8.3}, nil, 8.3, "progression.slip"},
		{"not quite about twice", []float64{4, 9.6}, nil, 9.6, ""},
		{"half", []float64{2, 4}, nil, 2, "progression.slip"},
		{"about half", []float64{2.08, 4}, nil, 2.08, "progression.slip"},
		{"not quite about half", []float64{2.11, 4}, nil, 2.11, ""},
		{"pounds", []float64{4, 8.8}, nil, 8.8, "progression.slip"},
		{"kilograms", []float64{1.8, 4}, nil, 1.8, "progression.slip"},
		{"another weight of the kit", []float64{3, 4}, nil, 3, ""},
		{"not of the kit", []float64{4, 6}, nil, 5, "progression.not-in-kit"},
		{"reached in one step", []float64{4, 8}, &dose.Search{MaxSteps: 1}, 8, ""},
		{"beyond one step", []float64{4, 5, 8}, &dose.Search{MaxSteps: 1}, 8, "progression.slip"},
		{"reached in two", []float64{4, 5, 8}, &dose.Search{MaxSteps: 2}, 8, ""},
		{"reached up to the ceiling", []float64{4, 8}, &dose.Search{MaxSteps: 1, Ceiling: 8 * kilo}, 8, ""},
		{"beyond the ceiling", []float64{4, 8}, &dose.Search{MaxSteps: 1, Ceiling: 5 * kilo}, 8, "progression.slip"},
		{"the kit ends before the steps do", []float64{4, 8}, &dose.Search{MaxSteps: 2}, 8, ""},
		{"below what it began with", []float64{2, 4, 8}, &dose.Search{MaxSteps: 2}, 2, "progression.slip"},
	} {
		c := rowCourse(t, tt.kit...)
		c.Log = append(c.Log, *last(&c))
		v := last(&c)
		v.Plan.Finding, v.Sets = tt.finding, slices.Clone(v.Sets)
		v.Sets[2].Load = units.Must(units.Kilograms(tt.load))
		d := nextOf(t, c)
		if tt.why == "" {
			if len(d.Queries) != 0 {
				t.Errorf("%s: %+v", tt.name, d.Queries)
			}
			continue
		}
		if len(d.Queries) != 1 || d.Queries[0].Visit != 1 || d.Queries[0].Set != 2 || d.Queries[0].Load != v.Sets[2].Load || d.Queries[0].Reason.Code != tt.why {
			t.Errorf("%s: %+v, want %s", tt.name, d.Queries, tt.why)
		}
	}
}

// A set that is asked about is left out, and every other set counts.
func TestNextLeavesOutWhatIsQueried(t *testing.T) {
	for _, slips := range [][]int{{0}, {3}, {1, 2}, {7}} {
		c := rowCourse(t, 4, 4.25)
		v := last(&c)
		v.Sets = append(v.Sets, v.Sets[0], v.Sets[2]) // four on each side, of three planned
		for _, i := range slips {
			v.Sets[i].Load = 5 * kilo
		}
		d := nextOf(t, c)
		if d.Change != progression.MoreLoad || len(d.Queries) != len(slips) {
			t.Errorf("sets %v: %s, %+v", slips, told(d), d.Queries)
		}
		for i := range v.Sets {
			if !slices.Contains(slips, i) {
				v.Sets[i].Reps = 7 // below the range
				break
			}
		}
		if d = nextOf(t, c); d.Change != progression.NoChange {
			t.Errorf("sets %v, another one of 7: %s", slips, told(d))
		}
	}
}

// The sets before one that is asked about count once.
func TestNextCountsSetsOnce(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	last(&c).Sets[5].Load = 5 * kilo
	if d := nextOf(t, c); d.Action != progression.HoldDose || len(d.Queries) != 1 {
		t.Errorf("two sets on the right, of three planned: %s", told(d))
	}
}

// Any of what was measured in the sets may end the plan, on the day of the
// assessment too.
func TestNextRefersByWhatWasMeasured(t *testing.T) {
	for name, m := range map[string]screening.Moment{
		"a sign":     {Signs: []screening.Code{"feels_sick"}},
		"pressure":   {BP: &screening.BloodPressure{Systolic: 260, Diastolic: 120}},
		"a fall":     {SystolicFall: 60},
		"saturation": {SpO2: 75},
	} {
		d, err := screening.During(m)
		if err != nil || d.Action < screening.EndSession {
			t.Errorf("%s: %v, %v: no case of its kind", name, d.Action, err)
		}
		c := rowCourse(t, 4, 4.25)
		c.Request.Screening.Day = firstDay
		last(&c).Moment = &m
		if d := nextOf(t, c); d.Action != progression.StopAndRefer {
			t.Errorf("%s: %s", name, told(d))
		}
	}
	a, b := rowCourse(t, 4, 4.25), rowCourse(t, 4, 4.25)
	b.Request.Screening.Ended = []screening.Code{"fall"}
	list, err := progression.NextAll([]progression.Course{a, b})
	if err != nil || list[0].Action != progression.StopAndRefer || !hasReason(list[0], "progression.plan-ended") {
		t.Errorf("%+v, %v", list, err)
	}
}

// Who saw the technique at a visit counts for the request that does not say: the
// phase Power is for those whose technique somebody saw.
func TestNextTakesTheTechniqueFromTheLog(t *testing.T) {
	c := courseOf(t, "lateral-raise", 1, 1.05)
	for i := range last(&c).Sets {
		last(&c).Sets[i].Stated = body.PerHand
	}
	v := last(&c)
	v.Plan.Load = units.Must(equipment.NewLoad(1*kilo, body.OneEachHand))
	v.Plan.Span, v.Plan.Count = units.Must(units.Between(12, 20)), 20
	done(&c, 1*kilo, 20, 3)
	c.Request.Technique = dose.Observation{}
	// A beginner's first weight of a raise ends at 1 kg until somebody saw it.
	if d := nextOf(t, c); d.Change != progression.MoreLoad || d.Next.Load.Each() != 1050*units.Gram {
		t.Errorf("seen at the visit: %s, %+v", told(d), d.Reasons)
	}
	unseen := *v
	unseen.Day, unseen.Observer = firstDay+1, dose.Observation{}
	c.Log = append(c.Log, unseen)
	if d := nextOf(t, c); hasReason(d, "progression.limit") {
		t.Errorf("seen at the visit before: %s", told(d))
	}
	done(&c, 1050*units.Gram, 20, 3)
	if d := nextOf(t, c); d.Next.Load.Each() != 1050*units.Gram {
		t.Errorf("beyond the first weight, seen before: %s", told(d))
	}
	c.Log[0].Observer = dose.Observation{}
	if d := nextOf(t, c); d.Next.Load.Each() != 1*kilo || !hasReason(d, "progression.above-limit") {
		t.Errorf("beyond the first weight, seen by nobody: %s", told(d))
	}
	done(&c, 1*kilo, 20, 3)
	if d := nextOf(t, c); d.Change == progression.MoreLoad {
		t.Errorf("seen by nobody: %s", told(d))
	}
}

func TestCourseBounds(t *testing.T) {
	for name, tt := range map[string]struct {
		spoil func(c *progression.Course)
		path  string // "": taken
	}{
		"repetitions to 20":   {func(c *progression.Course) { c.Policy.MostReps = 20 }, ""},
		"repetitions below 0": {func(c *progression.Course) { c.Policy.MostReps = -1 }, "/policy/most_reps"},
		"sore for 30 days":    {func(c *progression.Course) { last(c).SorenessDays = 30 }, ""},
		"sore for -1 days":    {func(c *progression.Course) { last(c).SorenessDays = -1 }, "/log/0/soreness_days"},
		"a plan of one":       {func(c *progression.Course) { last(c).Plan.Count = 1 }, ""},
		"a plan of none":      {func(c *progression.Course) { last(c).Plan.Count = 0 }, "/log/0/plan/count"},
		"two visits a day":    {func(c *progression.Course) { c.Log = append(c.Log, c.Log[0]) }, ""},
		"no day":              {func(c *progression.Course) { c.Day = 0 }, "/day"},
		"a visit without day": {func(c *progression.Course) { c.Log = append(c.Log, c.Log[0]); last(c).Day = 0 }, "/log/1/day"},
		"a set of no side, planned for the left": {func(c *progression.Course) {
			c.Request.Side, last(c).Plan.Side, last(c).Sets = body.Left, body.Left, last(c).Sets[:2]
			last(c).Sets[0].Side = 9
		}, "/log/0/sets/0/side"},
		"a set of no side": {func(c *progression.Course) { last(c).Sets[0].Side = 9 }, "/log/0/sets/0/side"},
	} {
		c := rowCourse(t, 4, 4.25)
		last(&c).Sets = slices.Clone(last(&c).Sets)
		tt.spoil(&c)
		_, err := progression.Next(c)
		var all field.Errors
		if tt.path == "" {
			if err != nil {
				t.Errorf("%s: %v", name, err)
			}
			continue
		}
		if !errors.As(err, &all) || len(all) != 1 || !strings.HasSuffix(all[0].Path, tt.path) {
			t.Errorf("%s: %v, want %s once", name, err, tt.path)
		}
	}
}

// A policy and what is asked about are read as strictly as they are written.
func TestNextJSONOfPolicyAndQueries(t *testing.T) {
	c := rowCourse(t, 4, 4.25)
	c.Policy = progression.Policy{Rule: rule.NameOverTarget, MostReps: 15, KeepExercise: true}
	last(&c).Sets[0].Load = 5 * kilo
	var again progression.Course
	if err := field.Decode(units.Must(json.Marshal(c)), &again, field.Strict); err != nil || !cmp.Equal(again.Policy, c.Policy) {
		t.Errorf("%+v, %v", again.Policy, err)
	}
	text := units.Must(json.Marshal(nextOf(t, c)))
	var back progression.Decision
	if err := field.Decode(text, &back, field.Strict); err != nil || len(back.Queries) != 1 || string(units.Must(json.Marshal(back))) != string(text) {
		t.Errorf("%+v, %v", back.Queries, err)
	}
	for _, bad := range []string{`{"most_reps":1,"most_reps":2}`, `{"set":1,"set":2}`, `{"what":1}`} {
		var p progression.Policy
		var q visit.Doubt
		if field.Decode([]byte(bad), &p, field.Strict) == nil || field.Decode([]byte(bad), &q, field.Strict) == nil {
			t.Errorf("%s was read", bad)
		}
	}
}
