package record_test

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

var records = flag.Int("records", usualRecords, "how many random records are taken through their course")

// oneOf draws one of a list.
func oneOf[T any](r *rand.Rand, list ...T) T { return list[r.IntN(len(list))] }

// drawn is an invented record, changed at random: no such person exists.
func drawn(t testing.TB, r *rand.Rand) record.Record {
	rec := read(t, oneOf(r, old...))
	rec.Checks, rec.Asked, rec.Visits, rec.Done, rec.Review, rec.Began = nil, nil, nil, nil, 0, 0
	p, limit := &rec.Profile, units.Kilogram
	p.Age += body.Age(r.IntN(20) - 8)
	p.Setting = oneOf(r, screening.Alone, screening.WithHelper, screening.InGroup, screening.InClinic)
	p.Conditions = screening.AskedFor(oneOf(r, nil, []screening.Code{"osteoporosis"}, []screening.Code{"falls_risk", "hypertension_treated"})...)
	if r.IntN(8) == 0 {
		p.Symptoms = screening.AskedFor("dizziness_or_syncope")
	}
	if r.IntN(8) == 0 {
		p.Restrictions = []screening.Restriction{{Author: "Surgeon B", Region: body.Shoulder, Side: body.Right, MaxMass: &limit}}
	}
	if r.IntN(3) == 0 {
		var kit equipment.Kit
		for kg := range oneOf(r, 2, 4, 9) {
			kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: units.Marked{Mass: units.Mass(kg+1) * units.Kilogram, Unit: units.KG}, Count: 2})
		}
		rec.Kit = kit
	}
	rec.Phase = oneOf(r, dose.Phase(0), dose.Familiarise, dose.Build)
	rec.BodyMass = units.Mass(r.IntN(2)*70) * units.Kilogram
	rec.Policy = oneOf(r, progression.Policy{}, progression.Policy{Rule: rule.NameTwoForTwo}, progression.Policy{KeepExercise: true})
	for i := range rec.Seen {
		rec.Seen[i].Day = p.Day
	}
	rec.Days = []units.Day{p.Day + 5, p.Day + 8}
	return rec
}

// named fails for an error that names no field, except that nothing can be dosed.
func named(t *testing.T, what string, err error) bool {
	t.Helper()
	var all field.Errors
	var one *field.Error
	var barred *dose.ConstraintError
	switch {
	case err == nil:
		return true
	case errors.As(err, &all):
		for _, f := range all {
			if f.Path == "" || strings.HasPrefix(f.Path, "/0") || strings.HasPrefix(f.Path, "/request") || strings.HasPrefix(f.Path, "/screening") || strings.HasPrefix(f.Path, "/performed") {
				t.Errorf("%s: at no place of the record: %v", what, f)
			}
		}
	case errors.As(err, &one):
	case !errors.As(err, &barred):
		t.Errorf("%s: names no field: %v", what, err)
	}
	return false
}

// ask adds what is asked for from a day on, where it is another than before.
func ask(rec *record.Record, from units.Day, p dose.Prescription) {
	a := record.AskedFrom(p, from)
	for _, b := range slices.Backward(rec.Asked) {
		if b.Exercise == a.Exercise {
			if b.From >= from {
				return
			}
			break
		}
	}
	rec.Asked = append(rec.Asked, a)
}

// train adds a visit at which more or less was done of what was asked for.
func train(rec *record.Record, r *rand.Rand, day units.Day, doses map[exercise.ID]dose.Prescription) {
	v := record.TrainingDay{Day: day, Noted: record.Noted{PainFree: r.IntN(4) > 0, Moment: &screening.Moment{}, Observer: oneOf(r, "", "Physiotherapist E")}}
	v.FormLost, v.RangeLost = oneOf(r, screening.No, screening.No, screening.Unknown, screening.Yes), screening.No
	v.SorenessDays = r.IntN(4)
	if r.IntN(30) == 0 {
		v.Moment = &screening.Moment{Signs: []screening.Code{"dizzy_or_swaying"}}
	}
	rec.Visits = append(rec.Visits, v)
	for _, id := range order(rec.Asked) {
		p, ok := doses[id]
		if !ok {
			continue
		}
		sides := []body.Side{body.Both}
		if p.OneSided {
			sides = []body.Side{body.Left, body.Right}
		}
		for range max(1, p.Sets-r.IntN(8)/7) {
			for _, side := range sides {
				if p.Side != body.Both && side != p.Side {
					continue
				}
				s := setlog.Set{Day: day, Exercise: id, Side: side, Hold: p.Hold, Load: p.Load.Each(), Reps: max(1, p.Count+r.IntN(6)-2)}
				if p.Hold == body.OneEachHand {
					s.Stated = body.PerHand
				}
				if p.Measure == exercise.Repetitions && r.IntN(6) > 0 {
					s.Effort = units.Must(units.InReserve(float64(1 + r.IntN(5))))
				}
				rec.Done = append(rec.Done, s)
			}
		}
	}
}

func order(asked []record.Asked) []exercise.ID {
	var list []exercise.ID
	for _, a := range asked {
		if !slices.Contains(list, a.Exercise) {
			list = append(list, a.Exercise)
		}
	}
	return list
}

// drop ends what is no longer asked for.
func drop(rec *record.Record, id exercise.ID, last units.Day) {
	for i := range slices.Backward(rec.Asked) {
		if a := &rec.Asked[i]; a.Exercise == id {
			a.Until = max(last, a.From)
			return
		}
	}
}

// course takes a record through its start, its week, twelve visits and a review,
// keeping each decision, and returns it with what became of it, in short.
func course(t *testing.T, rec record.Record, r *rand.Rand) (record.Record, []string) {
	t.Helper()
	said := []string{}
	entry, err := rec.Decide(rec.LastDay())
	if !named(t, "start", err) {
		return rec, append(said, "refused")
	}
	rec.Entries = append(rec.Entries, entry)
	_, err = rec.Week(rec.LastDay())
	named(t, "week", err)
	said = append(said, short(entry)...)
	if entry.Plan.Week == nil {
		return rec, said
	}
	doses := map[exercise.ID]dose.Prescription{}
	day := slices.Min(rec.Days)
	for _, p := range entry.Plan.Week.Sessions[0].Items {
		doses[p.Exercise] = p
		ask(&rec, day, p)
	}
	for range 12 {
		train(&rec, r, day, doses)
		last := day
		day += units.Day(3 + r.IntN(2) + r.IntN(20)/19*10)
		rec.Absence = oneOf(r, screening.No, screening.No, screening.No, screening.No, screening.Yes)
		if r.IntN(2) == 0 {
			rec.Checks = append(rec.Checks, screening.Check{Day: day, New: screening.AskedFor(), Setting: rec.Profile.Setting, Febrile: screening.No, Unwell: screening.No})
		}
		entry, err := rec.Decide(day)
		if !named(t, "next", err) {
			return rec, append(said, "refused")
		}
		sound(t, rec, entry)
		rec.Entries, said = append(rec.Entries, entry), append(said, short(entry)...)
		for _, item := range entry.Items {
			d := item.Decision
			if d.Instead != "" {
				drop(&rec, item.Exercise, last)
				delete(doses, item.Exercise)
			}
			if d.Next != nil {
				doses[d.Next.Exercise] = *d.Next
				ask(&rec, day, *d.Next)
			}
		}
		if len(doses) == 0 {
			break
		}
	}
	_, err = rec.Assess(day)
	named(t, "review", err)
	return rec, said
}

// short says an entry in a line each: what a change of answers would change.
func short(e record.Entry) []string {
	if e.Plan != nil {
		text := fmt.Sprintf("start %v: %v, %v", e.Day, e.Plan.Screening.Route, e.Plan.Screening.Meanwhile)
		if e.Plan.Week == nil {
			return []string{text + ", no week: " + string(e.Plan.Stop.Constraint.Code)}
		}
		list := []string{text + fmt.Sprintf(", %v", e.Plan.Week.Phase)}
		for _, p := range e.Plan.Week.Sessions[0].Items {
			list = append(list, "  "+amount(p))
		}
		return list
	}
	list := []string{fmt.Sprintf("next %v", e.Day)}
	for _, item := range e.Items {
		text := fmt.Sprintf("  %s: %v", item.Exercise, item.Decision.Action)
		if item.Decision.Change != progression.NoChange {
			text += ", " + item.Decision.Change.String()
		}
		if n := item.Decision.Next; n != nil {
			text += ": " + amount(*n)
		}
		list = append(list, text)
	}
	return list
}

func amount(p dose.Prescription) string {
	left := ""
	if !p.Reserve.IsZero() {
		left = fmt.Sprintf(", %v left", p.Reserve)
	}
	return fmt.Sprintf("%s, %s, %v, %d × %d%s, %v", p.Exercise, p.Side, p.Load.Each(), p.Sets, p.Count, left, p.Mode)
}

// Random records go from start to review: no panic, every error names its field,
// the record encodes to the same bytes after a pass, and replay gives the same answers.
func TestRandomRecords(t *testing.T) {
	refused, weeks, decisions := 0, 0, 0
	for seed := range *records {
		r := rand.New(rand.NewPCG(uint64(seed), 12))
		rec, said := course(t, drawn(t, r), r)
		if said[len(said)-1] == "refused" {
			refused++
		}
		text, err := json.Marshal(rec)
		if err != nil {
			t.Fatal(err)
		}
		back, err := record.Decode(text, field.Strict)
		if err != nil {
			t.Fatalf("record %d: %v", seed, err)
		}
		if again, err := json.Marshal(back); err != nil || string(again) != string(text) {
			t.Fatalf("record %d encodes otherwise after a pass", seed)
		}
		for _, one := range back.Replay() {
			if one.Err != nil {
				t.Fatalf("record %d: %v", seed, one.Err)
			}
			was, _ := json.Marshal(one.Stored)
			if is, _ := json.Marshal(one.Now); string(is) != string(was) {
				t.Fatalf("record %d: other bytes on replay", seed)
			}
			decisions++
		}
		if len(rec.Visits) > 0 {
			weeks++
		}
	}
	t.Logf("%d records: %d with visits, %d refused, %d decisions", *records, weeks, refused, decisions)
	if weeks < *records/3 || refused > *records/3 {
		t.Errorf("too few records come far: %d with visits, %d refused", weeks, refused)
	}
}

// The corpus are the answers for twenty records. Where they change and the edition
// does not, a stored decision would be taken for one that still holds.
func TestCorpus(t *testing.T) {
	var got strings.Builder
	fmt.Fprintln(&got, record.Edition())
	for seed := range 20 {
		r := rand.New(rand.NewPCG(uint64(seed), 2024))
		_, said := course(t, drawn(t, r), r)
		fmt.Fprintf(&got, "record %d\n%s\n", seed, strings.Join(said, "\n"))
	}
	const name = "corpus.txt"
	if *update {
		write(t, name, got.String())
	}
	edition, was, _ := strings.Cut(string(file(t, name)), "\n")
	now, is, _ := strings.Cut(got.String(), "\n")
	switch {
	case was == is && edition == now:
	case edition == now:
		t.Errorf("answers change and the edition does not: raise the constant Edition of the package that answers otherwise (%s)\n%s", edition, cmp.Diff(strings.Split(was, "\n"), strings.Split(is, "\n")))
	default:
		t.Errorf("another edition than %s, which the corpus has: look at what changes, then run with -update\n%s", edition, cmp.Diff(strings.Split(was, "\n"), strings.Split(is, "\n")))
	}
}
