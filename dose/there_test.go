package dose_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

var allThings = slices.Collect(exercise.Things())

// drawRoom adds to a kit what else may be in the cupboard, and what stands there.
func drawRoom(t *rapid.T, k equipment.Kit) equipment.Kit {
	k.Bands = []string{"soft", "wide", "both"}[:rapid.IntRange(0, 3).Draw(t, "bands")]
	for _, m := range rapid.SliceOfNDistinct(rapid.IntRange(1, 6), 0, 3, rapid.ID[int]).Draw(t, "ankle weights") {
		k.AnkleWeights = append(k.AnkleWeights, equipment.Dumbbell{Mass: units.Marked{Mass: units.Mass(m) * units.Kilogram / 2}, Count: 2})
	}
	for _, m := range rapid.SliceOfNDistinct(rapid.IntRange(2, 12), 0, 3, rapid.ID[int]).Draw(t, "kettlebells") {
		k.Kettlebells = append(k.Kettlebells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Mass(m) * 2 * units.Kilogram}, Count: 1})
	}
	k.Seats = rapid.SliceOfNDistinct(rapid.SampledFrom([]int{38, 42, 46, 50}), 0, 3, rapid.ID[int]).Draw(t, "seats")
	k.Steps = rapid.SliceOfNDistinct(rapid.SampledFrom([]int{10, 15, 20}), 0, 3, rapid.ID[int]).Draw(t, "steps")
	k.Things = append([]exercise.Thing{}, rapid.SliceOfDistinct(rapid.SampledFrom(allThings), rapid.ID[exercise.Thing]).Draw(t, "things")...)
	if !slices.Contains(k.Things, exercise.Chair) && !slices.Contains(k.Things, exercise.ArmChair) {
		k.Seats = nil
	}
	if !slices.Contains(k.Things, exercise.LowStep) && !slices.Contains(k.Things, exercise.Staircase) {
		k.Steps = nil
	}
	return k
}

// What more is in the cupboard or the room never takes an exercise away, and where
// nobody asked what stands there everything is as if all of it did.
func TestMoreThereNoFewer(t *testing.T) {
	full := equipment.Kit{Bands: []string{"soft", "wide", "both"}, Seats: []int{38, 42, 46, 50}, Steps: []int{10, 15, 20}}
	everything := slices.Collect(units.Must(full.Fit(exercise.Standard())).All())
	rapid.Check(t, func(rt *rapid.T) {
		v := drawVisit(rt)
		r := v.request
		r.Screening = units.Must(screening.Assess(v.profile))
		r.Estimates, r.Performed, r.Done = nil, nil, nil
		less := drawRoom(rt, r.Kit)
		more := less
		more.Things = append(slices.Clone(less.Things), rapid.SampledFrom(allThings).Filter(func(t exercise.Thing) bool {
			return !slices.Contains(less.Things, t) || len(less.Things) == len(allThings)
		}).Draw(rt, "one more"))
		slices.Sort(more.Things)
		more.Things = slices.Compact(more.Things)
		more.Kettlebells = append(slices.Clone(less.Kettlebells), equipment.Dumbbell{Mass: units.Marked{Mass: units.Kilogram}, Count: 2})
		more.Bands = []string{"soft", "wide", "both"}
		unasked, whole := more, more
		unasked.Things, whole.Things = nil, allThings
		text := func(p dose.Prescription) string { return string(units.Must(json.Marshal(p))) }
		doses := func(k equipment.Kit, ex exercise.Exercise) (dose.Prescription, bool) {
			r.Exercise, r.Kit = ex, k
			p, err := dose.Prescribe(r)
			return p, err == nil
		}
		for _, ex := range rapid.SliceOfN(rapid.SampledFrom(everything), 8, 8).Draw(rt, "exercises") {
			_, before := doses(less, ex)
			if _, after := doses(more, ex); before && !after {
				rt.Fatalf("%s is taken away by more", ex.ID)
			}
			p, some := doses(unasked, ex)
			q, all := doses(whole, ex)
			if some != all || text(p) != text(q) {
				rt.Fatalf("%s: %s where nobody asked, %s with all there", ex.ID, text(p), text(q))
			}
		}
	})
}

// A band is dosed by repetitions and reserve; a limit in kilograms or in shares of a
// maximum leaves it out, since nobody can say that it is kept.
func TestBandWithoutMass(t *testing.T) {
	r := row(t)
	r.Kit.Bands = []string{"soft", "wide"}
	r.Exercise, _ = units.Must(exercise.Standard().WithBands("soft", "wide")).Get("band-row-soft")
	r.Side = body.Both
	p := prescribe(t, r)
	if p.Mode != dose.WithoutLoad || p.Load.Each() != 0 || p.Load.Hold() != body.OnBand || p.Reserve.IsZero() || p.Share != 0 || p.Next != nil || !has(p.Reasons, "dose.by-band") {
		t.Errorf("%+v", p)
	}
	f, err := dose.NewFrame(r)
	if err != nil {
		t.Fatal(err)
	}
	if q, err := f.Continue(dose.Step{Count: 12, Sets: 2, Steps: 2}); err != nil || q.Mode != dose.WithoutLoad || q.Finding != nil || q.Count != 12 || !has(q.Reasons, "dose.by-band") {
		t.Errorf("%+v, %v", q, err)
	}
	for name, limit := range map[string]func(*dose.Request){
		"a mass": func(r *dose.Request) {
			r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Shoulder, Side: body.Both, Max: units.Kilogram}}
		},
		"a share": func(r *dose.Request) { r.Screening.Limits.MaxFraction = 0.4 },
		"a bound": func(r *dose.Request) { r.Bound = units.Kilogram },
	} {
		worse := r
		limit(&worse)
		if c := barred(t, worse, dose.ErrTooHeavy); c.Constraint.Code != "dose.band-unweighed" || len(c.Free) == 0 {
			t.Errorf("%s: %+v", name, c)
		}
	}
	r.Screening.Limits.Masses = []screening.MassLimit{{Region: body.Knee, Side: body.Both, Max: units.Kilogram}}
	prescribe(t, r) // a limit of the knee is none of a row
	r.Kit.Bands = []string{"wide"}
	barred(t, r, dose.ErrNothingToHold)
}

// A published is a row of the evidence as it was taken.
type published struct {
	ID    string
	Known string
	Value *float64
	Parts []struct {
		Name  string
		Value float64
	}
}

func cupboardRows(t *testing.T) map[string]published {
	t.Helper()
	data, err := os.ReadFile("../testdata/published/cupboard.json")
	if err != nil {
		t.Fatal(err)
	}
	var list []published
	if err := json.Unmarshal(data, &list); err != nil {
		t.Fatal(err)
	}
	rows := map[string]published{}
	for _, r := range list {
		rows[r.ID] = r
	}
	return rows
}

// The figures on bands, against the rows as they were read.
func TestBandFigures(t *testing.T) {
	rows := cupboardRows(t)
	text := map[evidence.FactID]evidence.Fact{}
	for f := range dose.Facts() {
		text[f.ID] = f
	}
	known := map[string]evidence.Basis{"text": evidence.Published, "secondary": evidence.Secondary, "memory": evidence.FromMemory, "design": evidence.Design}
	for row, fact := range map[string]evidence.FactID{
		"ban-03": "dose.band-by-repetitions", "ban-04": "dose.band-printed-values", "ban-05": "dose.band-steps-uneven", "ban-06": "dose.band-stretch", "ban-10": "dose.band-order",
	} {
		if text[fact].Basis != known[rows[row].Known] {
			t.Errorf("%s is %s, %s is %s", fact, text[fact].Basis, row, rows[row].Known)
		}
	}
	for figure, fact := range map[string]evidence.FactID{
		fmt.Sprintf("so that %v were", *rows["ban-03"].Value):                        "dose.band-by-repetitions",
		fmt.Sprintf("in %v of 8", rows["ban-04"].Parts[0].Value):                     "dose.band-printed-values",
		fmt.Sprintf("strongest %.1f times", math.Floor(*rows["ban-05"].Value*10)/10): "dose.band-steps-uneven",
	} {
		if !strings.Contains(text[fact].Value, figure) {
			t.Errorf("%s: no %q in %q", fact, figure, text[fact].Value)
		}
	}
	unused := map[string]string{
		"ban-01": "in package choice", "ban-02": "an effect, no dose",
		"ban-07": "a dose at 80 to 100 % of 10RM is nearer to failure than a beginner's", "ban-08": "no dose goes by it",
		"ban-09": "how it progressed is from memory", "cha-06": "a threshold of our own, for frailty; the choice caps it otherwise",
		"ses-07": "in TestBriefFigures", "ses-08": "in TestBriefFigures",
	}
	for id := range rows {
		if used := slices.Contains([]string{"ban-03", "ban-04", "ban-05", "ban-06", "ban-10"}, id); used == (unused[id] != "") {
			t.Errorf("%s is neither used nor listed with the reason, or both", id)
		}
	}
}

// A lower seat is a harder variant, above standing up from any that suits; it is given
// from seats that are there alone, and to nobody who is to bend no knee deeply.
func TestLowerSeat(t *testing.T) {
	r := row(t)
	r.Kit.Seats = []int{42, 48, 45}
	c := units.Must(r.Kit.Fit(exercise.Standard()))
	want := []exercise.ID{"supported-sit-to-stand", "sit-to-stand", "sit-to-stand-45", "sit-to-stand-42"}
	for i, ex := range c.Ladder("sit-to-stand-42")[:4] {
		if ex.ID != want[i] {
			t.Errorf("%s, want %s", ex.ID, want[i])
		}
	}
	if up := c.Ladder("dumbbell-sit-to-stand"); up[1].ID != "sit-to-stand" {
		t.Errorf("from a weight down to %s", up[1].ID)
	}
	r.Exercise, _ = c.Get("sit-to-stand-45")
	r.Side = body.Both
	prescribe(t, r)
	worse := r
	worse.Screening.Limits.Avoid = body.DemandSet(body.DeepKneeBend)
	barred(t, worse, dose.ErrDemand)
	r.Kit.Seats = []int{42, 48}
	if c := barred(t, r, dose.ErrNotThere); c.Instead != "sit-to-stand" || c.Constraint.Args[0].Value() != "chair of 45 cm" {
		t.Errorf("%+v", c)
	}
}

// Whoever the person, whatever the kit, no plan has an exercise that needs what is not
// there, stand-ins among them, nor a weight that the kit does not make for it.
func TestNothingThatIsNotThere(t *testing.T) {
	planned := 0
	rapid.Check(t, func(rt *rapid.T) {
		v := drawVisit(rt)
		r := threeDays()
		r.Screening, r.Goal, r.Kit = units.Must(screening.Assess(v.profile)), v.request.Goal, drawRoom(rt, v.request.Kit)
		if rapid.Bool().Draw(rt, "no dumbbells") {
			r.Kit.Dumbbells = nil
		}
		if rapid.Bool().Draw(rt, "by name") {
			c := units.Must(r.Kit.Fit(exercise.Standard()))
			for ex := range c.All() {
				if rapid.IntRange(0, 9).Draw(rt, "wanted") == 0 {
					r.Exercises = append(r.Exercises, ex.ID)
				}
			}
		}
		w, err := week.Plan(r)
		if err != nil {
			return
		}
		catalogue := units.Must(r.Kit.Fit(exercise.Standard()))
		for _, item := range w.Sessions[0].Items {
			planned++
			ex, ok := catalogue.Get(item.Exercise)
			if lacks := ex.Lacks(r.Kit.Things...); !ok || len(lacks) > 0 || ex.Height > 0 && !slices.Contains(append(slices.Clone(r.Kit.Seats), r.Kit.Steps...), ex.Height) {
				rt.Fatalf("%s lacks %v of %v", item.Exercise, lacks, r.Kit.Things)
			}
			if ex.Hold == body.Unloaded {
				continue
			}
			table, err := r.Kit.CompileFor(ex)
			if err != nil {
				rt.Fatalf("%s: %v", ex.ID, err)
			}
			if _, made := table.Find(item.Load.Each()); !made {
				rt.Fatalf("%s with %s", ex.ID, item.Load)
			}
			if ex.Hold == body.OnBand && (item.Share != 0 || item.Finding != nil || item.Next != nil || item.Load.Each() != 0) {
				rt.Fatalf("a mass of a band: %+v", item)
			}
		}
	})
	if planned == 0 {
		t.Error("nothing was ever planned: the law was not tried")
	}
}

// Of a kettlebell, which one hand holds, nobody is told that the kit has nothing for one hand.
func TestNothingOfItsKind(t *testing.T) {
	r := row(t)
	r.Exercise, r.Side = exerciseOf(t, "dumbbell-calf-raise"), body.Both
	for _, c := range []struct {
		name, want string
		kit        equipment.Kit
	}{
		{"a kettlebell", "one hand, dumbbell", equipment.Kit{Kettlebells: []equipment.Dumbbell{{Mass: units.Marked{Mass: 8 * units.Kilogram}, Count: 1}}}},
		{"nothing", "one hand", equipment.Kit{}},
	} {
		r.Kit = c.kit
		_, err := dose.Prescribe(r)
		barred, ok := errors.AsType[*dose.ConstraintError](err)
		if !ok || !strings.HasSuffix(dose.Words().Clinician(barred.Constraint), "nothing for the hold "+c.want+".") {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}
