package volume_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// published reads a table of testdata/published.
func published(t *testing.T, name string) []map[string]string {
	t.Helper()
	return fieldtest.Rows(t, "../../testdata/published/"+name, ',')
}

func work(role exercise.Role, muscles ...body.Muscle) []exercise.Work {
	var list []exercise.Work
	for _, m := range muscles {
		list = append(list, exercise.Work{Muscle: m, Role: role})
	}
	return list
}

func made(id exercise.ID, p exercise.Pattern, h body.Hold, muscles ...[]exercise.Work) exercise.Exercise {
	e := exercise.Exercise{ID: id, Name: "test " + string(id), Pattern: p, Hold: h, Measure: exercise.Repetitions}
	for _, m := range muscles {
		e.Muscles = append(e.Muscles, m...)
	}
	return e
}

// catalogue is small and made for these tests: its roles are no claim.
func catalogue(t testing.TB) exercise.Catalogue {
	t.Helper()
	prime, syn := exercise.Prime, exercise.Synergist
	row := made("row", exercise.Row, body.OneHand, work(prime, body.LatissimusDorsi), work(syn, body.BicepsBrachii))
	row.OneSided = true
	sit := made("sit", exercise.Squat, body.Unloaded, work(prime, body.Quadriceps))
	sit.MovesBody, sit.MovedShare = true, units.Must(units.Between[units.Fraction](0.5, 0.75))
	dip := made("dip", exercise.Trunk, body.Unloaded, work(prime, body.RectusAbdominis))
	dip.MovesBody = true
	plank := made("plank", exercise.Trunk, body.Unloaded, work(prime, body.Obliques), work(exercise.Stabiliser, body.Quadriceps))
	plank.Measure = exercise.Seconds
	carry := made("carry", exercise.Carry, body.OneEachHand, work(prime, body.ForearmGrip))
	carry.Measure = exercise.Metres
	c, err := exercise.Catalogue{}.With(row, sit, dip, plank, carry,
		made("press", exercise.HorizontalPush, body.OneEachHand, work(prime, body.PectoralisMajor), work(syn, body.TricepsBrachii, body.AnteriorDeltoid)),
		made("dip-press", exercise.OverheadPush, body.OnBar, work(prime, body.AnteriorDeltoid), work(syn, body.TricepsBrachii)),
		made("squat", exercise.Squat, body.BothHandsOnOne, work(prime, body.Quadriceps, body.GluteusMaximus)),
		made("leg-press", exercise.Squat, body.OnStack, work(prime, body.Quadriceps)),
		made("knee-extension", exercise.Squat, body.OnStack, work(prime, body.Quadriceps)),
		made("calf", exercise.Calf, body.OnStack, work(prime, body.Soleus)),
	)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func counter(t testing.TB, o volume.Options) *volume.Counter {
	t.Helper()
	if o.Kind == 0 {
		o.Kind = volume.Performed
	}
	c, err := volume.NewCounter(catalogue(t), o)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// monday is the first day of 2026-W25.
var monday = units.Must(units.ParseDay("2026-06-15"))

func set(id exercise.ID, h body.Hold, load units.Mass, reps int) setlog.Set {
	return setlog.Set{Day: monday, Exercise: id, Side: body.Both, Hold: h, Load: load, Stated: body.Total, Reps: reps}
}

// add adds n times s.
func add(t testing.TB, into *volume.Tally, n int, s setlog.Set) {
	t.Helper()
	for range n {
		if err := into.Add(s); err != nil {
			t.Fatal(err)
		}
	}
}

func week(t testing.TB, tally *volume.Tally) volume.Totals {
	t.Helper()
	w, err := volume.ISOWeekOf(monday)
	if err != nil {
		t.Fatal(err)
	}
	return tally.Totals(w)
}

// muscle finds what a week gave a muscle.
func muscle(totals volume.Totals, m body.Muscle) volume.MuscleWeek {
	for _, got := range totals.Muscles {
		if got.Muscle == m {
			return got
		}
	}
	return volume.MuscleWeek{Muscle: m}
}

func ex(totals volume.Totals, id exercise.ID) volume.ExerciseWeek {
	for _, got := range totals.Exercises {
		if got.Exercise == id {
			return got
		}
	}
	return volume.ExerciseWeek{}
}

// plain lets cmp look into the values of these packages.
var plain = cmp.AllowUnexported(volume.VolumeLoad{}, volume.Sets{}, units.Range[int]{}, units.Range[units.RIR]{}, units.Range[float64]{})

// paths lists the fields that err names.
func paths(t testing.TB, err error) string {
	t.Helper()
	var list []string
	var all field.Errors
	all.Add("", err)
	for _, f := range all {
		list = append(list, f.Path)
	}
	return strings.Join(list, " ")
}
