package record_test

import (
	"math/rand/v2"
	"slices"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// sound holds what a reader expects of a decision: a dose of what the kit makes or a reason
// for each exercise that is asked for, and none of them twice.
func sound(t *testing.T, rec record.Record, e record.Entry) {
	t.Helper()
	catalogue, err := rec.Catalogue()
	if err != nil {
		t.Fatal(err)
	}
	decided, dosed := map[exercise.ID]bool{}, map[exercise.ID]bool{}
	for _, item := range e.Items {
		decided[item.Exercise] = true
		d := item.Decision
		if d.Next == nil {
			if len(d.Reasons) == 0 {
				t.Errorf("%v: %s: neither a dose nor a reason", e.Day, item.Exercise)
			}
			continue
		}
		ex, _ := catalogue.Get(d.Next.Exercise)
		if dosed[ex.ID] {
			t.Errorf("%v: %s twice", e.Day, ex.ID)
		}
		dosed[ex.ID] = true
		if ex.Hold == body.Unloaded || ex.Hold == body.OnBand {
			continue
		}
		table, err := rec.Kit.CompileFor(ex)
		if err != nil {
			t.Fatal(err)
		}
		if _, made := table.Find(d.Next.Load.Each()); !made {
			t.Errorf("%v: %s with %v, which the kit does not make", e.Day, ex.ID, d.Next.Load)
		}
	}
	asked, _ := rec.AskedOn(e.Day)
	for _, a := range asked {
		if !decided[a.Exercise] {
			t.Errorf("%v: %s is asked for and not decided on", e.Day, a.Exercise)
		}
	}
}

// Where one set of a visit was worse and nothing else differs, no decision from then on asks
// for more of that exercise.
func TestWorseSetNeverMoreLater(t *testing.T) {
	compared := 0
	for seed := range 60 {
		r := rand.New(rand.NewPCG(uint64(seed), 33))
		rec, _ := course(t, drawn(t, r), r)
		if len(rec.Done) == 0 {
			continue
		}
		worse := rec
		worse.Done = slices.Clone(rec.Done)
		set := &worse.Done[r.IntN(len(rec.Done))]
		if !spoil(r, rec, set) {
			continue
		}
		for _, e := range rec.Entries {
			if e.Plan != nil || e.Day <= set.Day {
				continue
			}
			was, err := rec.AsOf(e).Decide(e.Day)
			is, worseErr := worse.AsOf(e).Decide(e.Day)
			if err != nil || worseErr != nil {
				t.Fatal(err, worseErr)
			}
			for i, item := range is.Items {
				if item.Exercise == set.Exercise {
					compared++
					noMore(t, seed, was.Items[i], item)
				}
			}
		}
	}
	if compared < 100 {
		t.Errorf("only %d compared", compared)
	}
}

// spoil makes a set worse: a repetition fewer, less told, or no longer told where it was enough.
func spoil(r *rand.Rand, rec record.Record, set *setlog.Set) bool {
	left := set.Effort.Number()
	switch r.IntN(3) {
	case 0:
		set.Reps--
	case 1:
		if set.Effort.Scale() != units.ScaleRIR || left < 1 {
			return false
		}
		set.Effort = units.Must(units.InReserve(left - 1))
	default:
		asked, _ := rec.AskedOn(set.Day)
		i := slices.IndexFunc(asked, func(a record.Asked) bool { return a.Exercise == set.Exercise })
		if i < 0 || asked[i].Reserve == nil || set.Effort.Scale() != units.ScaleRIR || left < float64(*asked[i].Reserve) {
			return false
		}
		set.Effort = units.Effort{}
	}
	return set.Reps > 0
}

func noMore(t *testing.T, seed int, was, is record.Decided) {
	t.Helper()
	a, b := was.Decision.Next, is.Decision.Next
	if b == nil || b.Exercise != is.Exercise || was.Decision.Change == progression.HarderVariant {
		return
	}
	if a == nil || a.Exercise != was.Exercise {
		t.Errorf("record %d: %s: a dose where there was none: %s", seed, is.Exercise, amount(*b))
		return
	}
	lighter := a.Load.Each() == b.Load.Each() && was.Decision.Action == progression.EaseOff && a.Sets == b.Sets
	if steps := func(p *dose.Prescription) int {
		if p.Finding == nil {
			return 0
		}
		return p.Finding.MaxSteps
	}; b.Load.Each() > a.Load.Each() || b.Sets > a.Sets || b.Reserve.Least < a.Reserve.Least || steps(b) > steps(a) || lighter && b.Count > a.Count {
		t.Errorf("record %d: %s on %v: worse, and more\nbefore %v %s\nafter  %v %s", seed, is.Exercise, is.Day, was.Decision.Action, amount(*a), is.Decision.Action, amount(*b))
	}
}
