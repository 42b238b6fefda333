package week_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/strength"
	"example.org/posology/dose/week"
	"example.org/posology/screening"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func plus(n int) units.Day { return units.Must(firstDay.Plus(n)) }

func weekOf(days ...int) week.Request {
	r := week.Request{
		Day:       firstDay,
		Screening: waived(body.Novice), Goal: guideline.Strength, Kit: hall,
	}
	for _, d := range days {
		r.Days = append(r.Days, plus(d))
	}
	return r
}

func firstWeek(t failer, r week.Request) week.Week {
	t.Helper()
	w, err := week.Plan(r)
	if err != nil {
		t.Fatalf("Plan: %v", err)
	}
	return w
}

// Sessions keep 48 hours for the same muscles (ACSM 2011), round the week, and
// number about three (common practice).
func TestDaysApart(t *testing.T) {
	tests := []struct {
		days, want []int
	}{
		{[]int{0, 1, 2, 3, 4, 5, 6}, []int{0, 2, 4}},
		{[]int{0, 1}, []int{0}},
		{[]int{0, 6}, []int{0}}, // the next week's first day follows
		{[]int{0, 3}, []int{0, 3}},
		{[]int{1, 2, 4}, []int{1, 4}},
		{[]int{5, 0, 2}, []int{0, 2, 5}},
	}
	for _, tt := range tests {
		w := firstWeek(t, weekOf(tt.days...))
		var got []int
		for _, s := range w.Sessions {
			got = append(got, int(s.Day-firstDay))
		}
		if diff := cmp.Diff(tt.want, got); diff != "" {
			t.Errorf("days %v: %s", tt.days, diff)
		}
		// Whoever named the days is told how many of them stay free.
		free := fmt.Sprintf("Days offered and left free: %d;", len(tt.days)-len(tt.want))
		said := slices.ContainsFunc(w.Reasons, func(r evidence.Reason) bool { return strings.HasPrefix(week.Words().Clinician(r), free) })
		if said != (len(tt.days) > len(tt.want)) {
			t.Errorf("days %v: %v", tt.days, w.Reasons)
		}
	}
}

func TestDaysApartAgainstExhaustiveSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		days := rapid.SliceOfNDistinct(rapid.IntRange(0, 6), 1, 7, rapid.ID[int]).Draw(t, "days")
		w := firstWeek(t, weekOf(days...))
		want := 0
		for a := range 7 {
			for b := range 7 {
				for c := range 7 {
					want = max(want, size(days, a, b, c))
				}
			}
		}
		if len(w.Sessions) != want {
			t.Fatalf("days %v: %d sessions, exhaustive search finds %d", days, len(w.Sessions), want)
		}
	})
}

// size returns how many different days a, b and c are, 0 if one is not to be
// had or two lie next to each other round the week.
func size(days []int, chosen ...int) int {
	different := map[int]bool{}
	for _, c := range chosen {
		there := false
		for _, d := range days {
			there = there || d == c
		}
		if !there {
			return 0
		}
		different[c] = true
	}
	for c := range different {
		if different[(c+1)%7] {
			return 0
		}
	}
	return len(different)
}

// The trial's session lengths (Schoenfeld 2019) against set time, rests and
// changes between exercises, within the row's tolerance.
func TestMinutesPublished(t *testing.T) {
	_, rows := fieldtest.Table(t, "../../testdata/published/session-minutes.csv", ',')
	if len(rows) != 3 {
		t.Fatalf("%d rows", len(rows))
	}
	for _, row := range rows {
		in := map[string]float64{"rest_s": 0}
		for _, pair := range strings.Split(row[2], ";") {
			name, value, _ := strings.Cut(pair, "=")
			in[name] = fieldtest.Number(t, value)
		}
		item := dose.Prescription{Sets: int(in["sets"]), Count: int(in["reps"]), Measure: exercise.Repetitions,
			Tempo: dose.Tempo{Lifting: in["rep_s"]}, Rest: units.Exactly(int(in["rest_s"]))}
		items := make([]dose.Prescription, int(in["exercises"]))
		for i := range items {
			items[i] = item
		}
		want, tolerance := fieldtest.Number(t, row[3]), fieldtest.Number(t, row[5])
		if got := week.MinutesOf(items); math.Abs(got-want) > tolerance {
			t.Errorf("%s (%s): %.1f minutes, want %v ± %v", row[0], row[6], got, want, tolerance)
		}
	}
}

func TestEveryLoadCanBePickedUp(t *testing.T) {
	w := firstWeek(t, weekOf(0, 2, 4))
	if len(w.Sessions) != 3 || len(w.Sessions[0].Items) < 6 {
		t.Fatalf("%d sessions of %d exercises", len(w.Sessions), len(w.Sessions[0].Items))
	}
	for _, item := range w.Sessions[0].Items {
		if item.Mode == dose.WithoutLoad {
			continue
		}
		table := units.Must(hall.Compile(item.Hold))
		if _, ok := table.Find(item.Load.Each()); !ok {
			t.Errorf("%s: %v is not in the kit", item.Exercise, item.Load)
		}
	}
}

func TestLargeBeforeSmall(t *testing.T) {
	w := firstWeek(t, weekOf(0))
	last := exercise.Pattern(0)
	for _, item := range w.Sessions[0].Items {
		ex := exerciseOf(t, item.Exercise)
		if ex.Pattern < last {
			t.Errorf("%s (%v) stands after %v", item.Exercise, ex.Pattern, last)
		}
		last = ex.Pattern
	}
}

// A guideline's days are not passed: Borde 2015 has two.
func TestDaysOfTheRow(t *testing.T) {
	r := weekOf(0, 1, 2, 3, 4, 5, 6)
	r.Guideline = "borde2015-strength"
	if w := firstWeek(t, r); len(w.Sessions) != 2 {
		t.Errorf("%d sessions, the row has two", len(w.Sessions))
	}
}

// One-sided work takes twice the time, and 15 m take half a minute at the
// pace taken for a carry.
func TestMinutesOfSidesAndMetres(t *testing.T) {
	item := dose.Prescription{Sets: 1, Count: 15, Measure: exercise.Metres}
	if got := week.MinutesOf([]dose.Prescription{item}); got != 0.5 {
		t.Errorf("15 m: %v minutes, want 0.5", got)
	}
	item.OneSided = true
	if got := week.MinutesOf([]dose.Prescription{item}); got != 1 {
		t.Errorf("15 m with each hand: %v minutes, want 1", got)
	}
}

func TestMinutesKept(t *testing.T) {
	r := weekOf(0, 3)
	whole := firstWeek(t, r)
	r.Minutes = 15
	w := firstWeek(t, r)
	if w.Sessions[0].Minutes > 15 || len(w.Sessions[0].Items) >= len(whole.Sessions[0].Items) {
		t.Errorf("%d minutes with %d exercises", w.Sessions[0].Minutes, len(w.Sessions[0].Items))
	}
	dropped := 0
	for _, out := range w.LeftOut {
		if has(out.Reasons, "dose.no-minutes") {
			dropped++
		}
	}
	if dropped+len(w.Sessions[0].Items) != len(whole.Sessions[0].Items) {
		t.Errorf("%d dropped, %d kept, %d in all", dropped, len(w.Sessions[0].Items), len(whole.Sessions[0].Items))
	}
}

// What does not fit is replaced by an easier exercise or left out, with reasons.
func TestReplacedAndLeftOut(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"goblet-squat", "dumbbell-shoulder-press"}
	r.Screening.Limits.Avoid = body.DemandSet(body.SpinalCompression, body.Overhead, body.ShoulderResisted)
	w := firstWeek(t, r)
	if len(w.LeftOut) != 2 {
		t.Fatalf("left out: %+v", w.LeftOut)
	}
	squat, press := w.LeftOut[0], w.LeftOut[1]
	if squat.Exercise != "goblet-squat" || squat.Instead != "sit-to-stand" || !has(squat.Reasons, "dose.demand") {
		t.Errorf("%+v", squat)
	}
	if press.Exercise != "dumbbell-shoulder-press" || !has(press.Reasons, "dose.demand") {
		t.Errorf("%+v", press)
	}
	r.Kit = pairs(20)
	r.Screening.Limits = screening.Limits{}
	r.Exercises = []exercise.ID{"lateral-raise"}
	w = firstWeek(t, r)
	if w.Sessions[0].Items[0].Exercise == "lateral-raise" || !has(w.LeftOut[0].Reasons, "dose.too-heavy") {
		t.Errorf("a lateral raise with 20 kg: %+v", w)
	}
}

func TestWeakerSideLeads(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"one-arm-dumbbell-row"}
	q := row(t)
	right := estimateOf(t, q, 10, 8, 2)
	q.Side = body.Left
	left := estimateOf(t, q, 5, 8, 2)
	r.Estimates = []onerm.Estimate{right, left}
	both := firstWeek(t, r).Sessions[0].Items[0]
	if both.Side != body.Both || !has(both.Reasons, "dose.weaker-side") {
		t.Errorf("%+v", both)
	}
	weaker, _ := strength.Ability{}.Tested(left).OneRM()
	if most := units.Must(weaker.Scale(0.5, units.Down)); both.Load.Each() > most {
		t.Errorf("%v, want at most half of the weaker side's %v", both.Load.Each(), weaker)
	}
	r.Estimates = []onerm.Estimate{right}
	one := firstWeek(t, r).Sessions[0].Items[0]
	if one.Share != 0 || !has(one.Reasons, "dose.one-side-tested") {
		t.Errorf("one side tested: share %v", one.Share)
	}
}

func TestWeekErrors(t *testing.T) {
	tests := []struct {
		name  string
		spoil func(r *week.Request)
		path  string
		want  error
	}{
		{"not screened", func(r *week.Request) { r.Screening = screening.Outcome{} }, "/screening", dose.ErrNotScreened},
		{"no days", func(r *week.Request) { r.Days = nil }, "/days", field.ErrMissing},
		{"a day twice", func(r *week.Request) { r.Days = []units.Day{firstDay, firstDay} }, "/days/1", field.ErrDuplicate},
		{"no day", func(r *week.Request) { r.Days = []units.Day{0} }, "/days/0", field.ErrMissing},
		{"days too far apart", func(r *week.Request) { r.Days = []units.Day{firstDay, plus(7)} }, "/days", field.ErrOutOfRange},
		{"minutes below nought", func(r *week.Request) { r.Minutes = -1 }, "/minutes", field.ErrOutOfRange},
		{"unknown exercise", func(r *week.Request) { r.Exercises = []exercise.ID{"goblet-squad"} }, "/exercises/0", field.ErrUnknown},
		{"empty estimate", func(r *week.Request) { r.Estimates = make([]onerm.Estimate, 1) }, "/estimates/0/one_rm", field.ErrOutOfRange},
		{"no goal", func(r *week.Request) { r.Goal = 0 }, "/goal", field.ErrMissing},
		{"a test of function of no day", func(r *week.Request) { r.Tried = make([]choice.Tried, 1) }, "/tried/0/day", field.ErrMissing},
		{"more walked than a week has", func(r *week.Request) { r.Known.Easy = new(100_000) }, "/known/easy", field.ErrOutOfRange},
	}
	for _, tt := range tests {
		r := weekOf(0)
		tt.spoil(&r)
		_, err := week.Plan(r)
		found := false
		for _, p := range paths(err) {
			found = found || p == tt.path
		}
		if !errors.Is(err, tt.want) || !found {
			t.Errorf("%s: %v; want %v at %s", tt.name, err, tt.want, tt.path)
		}
	}
	r := weekOf(0)
	r.Screening.Route = screening.Emergency
	r.Exercises = []exercise.ID{"goblet-squat"}
	var barred *dose.ConstraintError
	if _, err := week.Plan(r); !errors.Is(err, dose.ErrNoDose) || !errors.As(err, &barred) || barred.Exercise != "goblet-squat" {
		t.Errorf("emergency: %v, want %v for the goblet squat", err, dose.ErrNoDose)
	}
}

func TestWeekJSON(t *testing.T) {
	w := firstWeek(t, weekOf(0, 2, 4))
	first := units.Must(json.Marshal(w))
	var back week.Week
	if err := field.Decode(first, &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(first), string(units.Must(json.Marshal(back)))); diff != "" {
		t.Error(diff)
	}
}

// The two-handed squat carries the session's heaviest dumbbell (common practice).
func TestSquatTakesTheHeaviest(t *testing.T) {
	r := weekOf(0)
	r.Exercises = []exercise.ID{"goblet-squat", "one-arm-dumbbell-row"}
	q := row(t)
	right := estimateOf(t, q, 10, 8, 2)
	q.Side = body.Left
	r.Estimates = []onerm.Estimate{right, estimateOf(t, q, 10, 8, 2)}
	r.Seen = []week.Seen{{Exercise: "goblet-squat", Observation: dose.Observation{Who: "a colleague", Day: firstDay}}}
	items := firstWeek(t, r).Sessions[0].Items
	if items[0].Load.Each() < items[1].Load.Each() || !has(items[0].Reasons, "dose.heaviest") {
		t.Errorf("squat with %v, row with %v", items[0].Load, items[1].Load)
	}
	r.Screening.Limits.MaxFraction = 0.4
	if light := firstWeek(t, r).Sessions[0].Items[0]; light.Load.Each() != units.Kilogram/2 {
		t.Errorf("under a low limit the squat begins with %v, want the lightest", light.Load)
	}
}

// What goes first where minutes run short is what a plan gives last.
func TestWithOtherDoses(t *testing.T) {
	r := weekOf(0, 3)
	w := firstWeek(t, r)
	items := slices.Clone(w.Sessions[0].Items)
	if none := (week.Week{}).With(items, 30); len(none.Sessions) > 0 || len(none.Reasons) > 0 {
		t.Errorf("a week without sessions: %+v", none)
	}
	if same := w.With(items, 0); same.Sessions[0].Minutes != w.Sessions[0].Minutes || !reflect.DeepEqual(same.Reasons, w.Reasons) {
		t.Errorf("the same doses: %+v, %+v", same.Sessions[0].Minutes, same.Reasons)
	}
	for i := range items {
		items[i].Sets = 3
	}
	whole := int(math.Ceil(5 + week.MinutesOf(items)))
	for minutes := 1; minutes <= whole+1; minutes++ {
		more := w.With(items, minutes)
		at := slices.IndexFunc(more.Reasons, func(r evidence.Reason) bool { return r.Code == "dose.minutes-over" })
		if more.Sessions[1].Minutes != whole || (at >= 0) != (minutes < whole) {
			t.Fatalf("%d minutes: %+v", minutes, more.Reasons)
		}
		if at < 0 {
			continue
		}
		said, n := more.Reasons[at].Args[2].Value(), len(items)
		switch last := items[n-1].Name; {
		case minutes == whole-1 && said != last+", 2 of 3 sets":
			t.Errorf("a minute too few: %s", said)
		case minutes == 1 && (strings.Count(said, "no ") != n-1 || !strings.HasPrefix(said, items[0].Name+", 1 of 3 sets")):
			t.Errorf("one minute: %s", said)
		}
	}
	if w.Sessions[0].Items[0].Sets == 3 {
		t.Error("the week itself was changed")
	}
}
