package papers_test

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// of returns the papers of a record by name, as text without its line breaks.
func of(t testing.TB, r record.Record, day units.Day) map[string]string {
	t.Helper()
	all, err := papers.From(r, day)
	if err != nil {
		t.Fatal(err)
	}
	list := map[string]string{}
	for _, p := range all {
		var out strings.Builder
		if err := p.Text(&out); err != nil {
			t.Fatal(err)
		}
		list[p.Name] = strings.Join(strings.Fields(out.String()), " ")
	}
	return list
}

// Which papers there are follows from what was found; all say whose they are.
func TestFrom(t *testing.T) {
	everyday := []string{"diary", "handout"}
	for _, tt := range []struct {
		name   string
		change func(*record.Record)
		want   []string
	}{
		{"nothing to ask", func(*record.Record) {}, everyday},
		{"insulin", func(r *record.Record) {
			r.Profile.Diseases = screening.AskedFor("diabetes_t2")
			r.Profile.Answers["insulin_or_secretagogue"] = screening.Yes
		}, append(everyday, "doctor", "glucose")},
		{"a new hip", func(r *record.Record) {
			r.Profile.Conditions = screening.AskedFor("total_hip_replacement")
			r.Profile.Events = []screening.Event{{Code: "total_hip_replacement", Day: r.Profile.Day - 60, Side: body.Right}}
		}, append(everyday, "surgeon")},
		{"a fall", func(r *record.Record) { r.Profile.Falls = &screening.FallsScreen{Fell: screening.Yes} }, append(everyday, "doctor", "falls-service")},
		{"a sign of the heart", func(r *record.Record) { r.Profile.Symptoms = screening.AskedFor("palpitations_or_tachycardia") }, []string{"handout", "doctor"}},
	} {
		r := programtest.Decoded(t, demo.VillageHall())
		tt.change(&r)
		got := of(t, r, r.LastDay())
		var names []string
		for name, text := range got {
			names = append(names, name)
			if !strings.Contains(text, "invented") {
				t.Errorf("%s: the %s does not say that the case is invented", tt.name, name)
			}
		}
		slices.Sort(names)
		slices.Sort(tt.want)
		if diff := cmp.Diff(tt.want, names); diff != "" {
			t.Errorf("%s: %s", tt.name, diff)
		}
	}
}

// The letters ask what each of them can answer.
func TestLetters(t *testing.T) {
	r := programtest.Decoded(t, demo.VillageHall())
	r.Profile.Falls = &screening.FallsScreen{Fell: screening.Yes}
	r.Profile.Conditions = screening.AskedFor("total_hip_replacement")
	r.Profile.Events = []screening.Event{{Code: "total_hip_replacement", Day: r.Profile.Day - 60, Side: body.Right}}
	got := of(t, r, r.LastDay())
	for name, want := range map[string]string{
		"surgeon":       "MY QUESTIONS - Which movements, positions and loads are still to be left after the operation, and until when? A line",
		"falls-service": "HAS LOOKED AT",
	} {
		if !strings.Contains(got[name], want) {
			t.Errorf("the %s reads\n%s", name, got[name])
		}
	}
	for _, want := range []string{"vitamin D", "blood pressure lying and standing", "MY QUESTIONS - Would you look at what may lie behind a fall, unsteadiness or the fear of falling"} {
		if !strings.Contains(got["falls-service"], want) {
			t.Errorf("the falls service does not read %q", want)
		}
	}
}

// What hurt in an exercise that is asked for no more, since another came in its place, still
// stands in the letter.
func TestLeftInLetters(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	id, last := r.Asked[0].Exercise, &r.Visits[len(r.Visits)-1]
	seven := 7.
	last.But = []record.Exception{{Exercise: id, Noted: record.Noted{Pain: &screening.Pain{Kind: screening.OrdinaryPain, Site: body.Shoulder, During: &seven}}}}
	for i := range r.Asked {
		if r.Asked[i].Exercise == id {
			r.Asked[i].Until = last.Day
		}
	}
	re, err := r.Assess(last.Day + 1)
	if err != nil {
		t.Fatal(err)
	}
	letter, err := papers.OfReview(re).Letter()
	if err != nil {
		t.Fatal(err)
	}
	if got := fmt.Sprint(letter); !strings.Contains(got, "shoulder: during 7") {
		t.Errorf("the doctor reads\n%s", got)
	}
}

// Whose oxygen is to be measured each day has a place to write it down, who else has none.
func TestDiaryAsksForOxygen(t *testing.T) {
	for code, want := range map[screening.Code]bool{"lung_disease": true, "copd_asymptomatic": false} {
		r := programtest.Decoded(t, demo.VillageHall())
		r.Profile.Conditions = screening.AskedFor(code)
		if got := of(t, r, r.LastDay())["diary"]; strings.Contains(got, "your oxygen before you began") != want || got == "" {
			t.Errorf("%s: %s", code, got)
		}
	}
}

// The figures of the page are those of the published rows: ADA's table of 2016 as
// reported with its figures in Colberg 2016 (position statement on exercise) and
// Turner 2019; in testdata/published/screening.json.
func TestGlucose(t *testing.T) {
	r := programtest.Decoded(t, demo.VillageHall())
	r.Profile.Answers["insulin_or_secretagogue"] = screening.Yes
	all, err := papers.From(r, r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	page := all[slices.IndexFunc(all, func(p papers.Paper) bool { return p.Name == "glucose" })]
	if err := page.HTML(&out); err != nil {
		t.Fatal(err)
	}
	got := out.String()
	for _, want := range []string{"below 52 mg/dL or 2.9 mmol/L", "52 to 69 mg/dL or 2.9 to 3.9 mmol/L", "below 90 mg/dL or 5.0 mmol/L", "250 to 349 mg/dL or 13.9 to 19.3 mmol/L",
		"350 mg/dL or 19.4 mmol/L", "moderate or large ketones, or 1.5 mmol/L or more in the blood", "No exercise today because of the ketones. Please speak to your diabetes team",
		"ketones below 1.5 mmol/L", "No exercise until they are tested", "Before", "15 to 30 g", "During", "After, and at night"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// What is typed in from a diary reads back as the sets that were done, and those as a log.
func TestDiaryReadsBack(t *testing.T) {
	r := programtest.Decoded(t, demo.HomeReview())
	review, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	v := papers.OfReview(review)
	var sheet strings.Builder
	if err := v.Diary().Text(&sheet); err != nil {
		t.Fatal(err)
	}
	type done struct{ reps, more int }
	rapid.Check(t, func(t *rapid.T) {
		typed := "day,row,weight,done,more\n"
		var want []done
		for row := 1; ; row++ {
			if !strings.Contains(sheet.String(), fmt.Sprintf("\n%d. ", row)) {
				break
			}
			d := done{rapid.IntRange(1, 30).Draw(t, "reps"), rapid.IntRange(0, 6).Draw(t, "more")}
			want = append(want, d)
			typed += fmt.Sprintf("2027-03-12,%d,,%d,%d\n", row, d.reps, d.more)
		}
		pain := rapid.IntRange(0, 10).Draw(t, "pain")
		typed += fmt.Sprintf("2027-03-12,no pain,,no,\n2027-03-12,pain,,%d,\n", pain)
		sets, days, err := v.ReadDiary(strings.NewReader(typed))
		if err != nil || len(days) != 1 || days[0].PainFree || *days[0].Pain.During != float64(pain) {
			t.Fatalf("%v, %+v", err, days)
		}
		var got []done
		for _, s := range sets {
			got = append(got, done{s.Reps, int(s.Effort.Number())})
		}
		if diff := cmp.Diff(want, got, cmp.AllowUnexported(done{})); diff != "" {
			t.Fatal(diff)
		}
		var log bytes.Buffer
		if err := setlog.WriteCSV(&log, slices.Values(sets)); err != nil {
			t.Fatal(err)
		}
		i := 0
		for s, err := range setlog.ReadCSV(&log) {
			if err != nil || s != sets[i] {
				t.Fatalf("%v, %+v, want %+v", err, s, sets[i])
			}
			i++
		}
		r.Visits, r.Done = append(slices.Clip(r.Visits), days...), append(slices.Clip(r.Done), sets...)
		if err := r.Validate(); err != nil {
			t.Fatal(err)
		}
		r.Visits, r.Done = r.Visits[:len(r.Visits)-1], r.Done[:len(r.Done)-len(sets)]
	})
}

// What cannot be read names its line and column, all at once.
func TestDiaryErrors(t *testing.T) {
	r := programtest.Decoded(t, demo.VillageHall())
	plan, err := r.Start(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	v := papers.OfPlan(plan)
	const head = "day,row,weight,done,more\n"
	for typed, want := range map[string]string{
		"":                             "/1",
		"day,row\n":                    "/1",
		head + "2026-12-01,1,,8,4,5\n": "five columns",
		head + "yesterday,1,,8,4\n2026-12-01,99,,8,4\n":          "/3/row",
		head + "2026-12-01,1,heavy,8,4\n":                        "/2/weight",
		head + "2026-12-01,1,,many,4\n":                          "/2/done",
		head + "2026-12-01,1,,0,4\n":                             "/2/reps",
		head + "2026-12-01,1,,8,11\n":                            "/2/more",
		head + "2026-12-01,1,,8,a lot\n":                         "/2/more",
		head + "2026-12-01,1,,8,4\n2026-12-01,1,,8,4\n":          "/3/row",
		head + "2026-12-01,mood,,8,\n":                           "/2/row",
		head + "2026-12-01,pain,,11,\n":                          "/2/done",
		head + "2026-12-01,no pain,,perhaps,\n":                  "/2/done",
		head + "2026-12-01,pain,,2,\n2026-12-01,no pain,,yes,\n": "/3/done",
	} {
		sets, days, err := v.ReadDiary(strings.NewReader(typed))
		if err == nil || !strings.Contains(err.Error(), want) || sets != nil || days != nil {
			t.Errorf("%q: %v, want %s", typed, err, want)
		}
	}
}

// How hard it was to hold or carry reads back from a diary as a rating; a number alone, which
// could be how many were left, is no rating.
func TestDiaryRatesWhatIsHeld(t *testing.T) {
	r := programtest.Decoded(t, demo.VillageHall())
	r.Exercises = []exercise.ID{"farmers-carry", "plank", "goblet-squat"}
	plan, err := r.Start(r.LastDay())
	if err != nil {
		t.Fatal(err)
	}
	v := papers.OfPlan(plan)
	var sheet strings.Builder
	if err := v.Diary().Text(&sheet); err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(sheet.String(), "2. Plank, set 1           10 seconds          –       ____  __/10") {
		t.Fatalf("nothing is held:\n%s", sheet.String())
	}
	for more, want := range map[string]string{"6/10": "omni 6", "/10": "", "": "", "6": "!", "11/10": "!"} {
		sets, _, err := v.ReadDiary(strings.NewReader("day,row,weight,done,more\n2026-12-01,2,,10," + more + "\n"))
		if want == "!" {
			if err == nil || !strings.Contains(err.Error(), "/more") {
				t.Errorf("%q: %v", more, err)
			}
			continue
		}
		if err != nil {
			t.Errorf("%q: %v", more, err)
		} else if text, _ := sets[0].Effort.MarshalText(); string(text) != want {
			t.Errorf("%q: %q", more, text)
		}
	}
}
