package visit_test

import (
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// read looks at a visit with a kit of pairs and three in reserve asked for.
func read(t failer, v visit.Visit, kg ...float64) visit.Summary {
	t.Helper()
	r, err := v.Read(visit.Trial{Least: 3, Floor: 12, Most: units.MaxMass}, kit(t, kg...))
	if err != nil {
		t.Fatalf("Read: %v", err)
	}
	return r
}

func kit(t failer, kg ...float64) *equipment.Table {
	t.Helper()
	var k equipment.Kit
	for _, m := range kg {
		k.Dumbbells = append(k.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Must(units.Kilograms(m)), Unit: units.KG}, Count: 1})
	}
	table, err := k.Compile(body.OneHand)
	if err != nil {
		t.Fatalf("Compile: %v", err)
	}
	return table
}

// tried is a visit in which 4, 5 and 6 kg were tried, with so much left.
func tried(left ...float64) visit.Visit {
	v := goodVisit()
	v.Plan.Finding, v.Plan.Sets = &dose.Search{MaxSteps: 2}, 1
	sides := []setlog.Set{v.Sets[0], v.Sets[2]}
	v.Sets = nil
	for i, l := range left {
		for _, s := range sides {
			s.Load, s.Effort = units.Mass(4+i)*units.Kilogram, units.Must(units.InReserve(l))
			v.Sets = append(v.Sets, s)
		}
	}
	return v
}

// The heaviest weight that ended as it should is what is gone on from, unless
// something else than effort stood against it.
func TestRead(t *testing.T) {
	for _, tt := range []struct {
		left  []float64
		base  units.Mass
		tried bool
		easy  bool
	}{{[]float64{8}, 4, false, true}, {[]float64{8, 7}, 5, false, true}, {[]float64{8, 2}, 4, true, true}, {[]float64{8, 4, 3}, 6, false, false}, {[]float64{4, 2}, 4, true, false}} {
		r := read(t, tried(tt.left...), 4, 5, 6)
		if r.Base != tt.base*units.Kilogram || r.Tried != tt.tried || r.BeyondCounting() != tt.easy || !r.Finding || !r.AllRated() {
			t.Errorf("%v: %+v", tt.left, r)
		}
	}
	lost := tried(8, 7)
	lost.FormLost = screening.Yes
	if r := read(t, lost, 4, 5, 6); r.Base != 4*units.Kilogram {
		t.Errorf("with technique lost: %v", r.Base)
	}
	lighter := goodVisit()
	lighter.Sets[1].Load = 3 * units.Kilogram
	if r := read(t, lighter, 3, 4); r.Base != 3*units.Kilogram || r.Reps != 12 || r.Left != 3 || !r.Known {
		t.Errorf("with a lighter set: %+v", r)
	}
}

// A rating below 8 of 10 stands for a reserve where the policy has it so.
func TestReadByRating(t *testing.T) {
	v := tried(8, 7)
	for i := range v.Sets {
		v.Sets[i].Effort = units.Must(units.OMNI(float64(5 + i)))
	}
	table := kit(t, 4, 5, 6)
	for rated, want := range map[bool]units.Mass{true: 4, false: 4} {
		r, err := v.Read(visit.Trial{Least: 3, Floor: 12, Most: units.MaxMass, Rated: rated}, table)
		if err != nil || r.Base != want*units.Kilogram || !r.Tried {
			t.Errorf("%v: %+v, %v", rated, r, err)
		}
	}
	v.Sets[3].Effort = units.Must(units.OMNI(7))
	if r, err := v.Read(visit.Trial{Least: 3, Floor: 12, Most: units.MaxMass, Rated: true}, table); err != nil || r.Base != 5*units.Kilogram {
		t.Errorf("rated below 8: %+v, %v", r, err)
	}
	v.Plan.Measure, v.Plan.Finding = exercise.Seconds, nil
	r := read(t, v, 4, 5, 6)
	if !r.BeyondCounting() {
		t.Errorf("seconds rated low: %+v", r)
	}
}

// A load that the kit does not make, or of a slip, is asked about and not used.
func TestWithoutQueried(t *testing.T) {
	for load, want := range map[float64]string{4: "", 5: "", 3.7: "progression.not-in-kit", 8: "progression.slip", 2: "progression.slip", 8.8: "progression.slip"} {
		v := goodVisit()
		v.Sets[1].Load = units.Must(units.Kilograms(load))
		kept, doubtful := v.WithoutQueried(7, kit(t, 2, 4, 5, 8, 8.8))
		if (want == "") != (len(doubtful) == 0) || len(kept)+len(doubtful) != 4 {
			t.Errorf("%v kg: %d kept, %+v", load, len(kept), doubtful)
			continue
		}
		if want != "" && (doubtful[0].Visit != 7 || doubtful[0].Set != 1 || string(doubtful[0].Reason.Code) != want || visit.Words().Clinician(doubtful[0].Reason) == "") {
			t.Errorf("%v kg: %+v", load, doubtful)
		}
	}
	v := tried(8, 8, 8)
	v.Plan.Load, v.Plan.Finding.MaxSteps = units.Must(equipment.NewLoad(3*units.Kilogram, body.OneHand)), 3 // up to twice the planned load by looking for it
	if _, doubtful := v.WithoutQueried(0, kit(t, 3, 4, 5, 6)); len(doubtful) > 0 {
		t.Errorf("reached by looking: %+v", doubtful)
	}
}

func TestWhatAVisitShows(t *testing.T) {
	v := goodVisit()
	if v.Below() || !v.Met() || v.LastReps() != 12 || v.LeastLeft(0) != 3 || len(v.Refers(nil)) > 0 || !v.MayFind() || !given.PainTold(v.Pain) {
		t.Errorf("a good visit: %+v", v)
	}
	v.Sets[3].Reps, v.Sets[3].Effort = 7, units.Effort{}
	if !v.Below() || v.Met() || v.LastReps() != 7 || v.LeastLeft(0) != 0 {
		t.Errorf("a weak last set: %+v", v)
	}
	v.Plan.Finding = &dose.Search{MaxSteps: 1}
	if v.Below() {
		t.Error("nothing is below a search")
	}
	v.Moment, v.Pain = &screening.Moment{Signs: []screening.Code{"feels_sick"}}, &screening.Pain{Kind: screening.ChestPain}
	if why := v.Refers(nil); len(why) != 3 || why[0].Code != "progression.see-today" || v.MayFind() || given.PainTold(v.Pain) {
		t.Errorf("a sign and chest pain: %+v", why)
	}
	v.Moment, v.Pain = nil, &screening.Pain{Kind: screening.OrdinaryPain, Site: body.LowerBack, Usual: score(0), During: score(5), After: score(5), NextMorning: score(5), WeeklyTrend: screening.RisingPain}
	brittle := &screening.Outcome{Findings: []screening.Finding{{Code: "osteoporosis"}}}
	if why := v.Refers(brittle); len(why) != 2 || why[0].Code != "progression.look-first" || why[1].Code != "progression.pain-back" || len(v.Refers(&screening.Outcome{})) > 0 {
		t.Errorf("new back pain: %+v", why)
	}
	one := goodVisit()
	one.Plan.Side, one.Sets = body.Left, one.Sets[:2]
	if one.Done() != 2 {
		t.Errorf("%d sets of one side", one.Done())
	}
}

func TestFacts(t *testing.T) {
	for f := range visit.Facts() {
		if f.Value == "" {
			t.Errorf("%s says nothing", f.ID)
		}
	}
}
