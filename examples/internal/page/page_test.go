package page_test

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

func TestWrap(t *testing.T) {
	var out strings.Builder
	page.Wrap(&out, "- ", strings.Repeat("words ", 40)+strings.Repeat("x", 100))
	lines := strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n")
	if len(lines) != 5 {
		t.Fatalf("%d lines:\n%s", len(lines), out.String())
	}
	for i, line := range lines {
		mark := "  "
		if i == 0 {
			mark = "- "
		}
		if long := len(line) > page.Width; !strings.HasPrefix(line, mark) || long != (i == 4) {
			t.Errorf("line %d: %q", i+1, line)
		}
	}
}

func TestLeaveOut(t *testing.T) {
	if got := page.LeaveOut(screening.Limits{}); got != "" {
		t.Errorf("nothing to leave out: %q", got)
	}
	for d := range body.EveryDemand() {
		got := page.LeaveOut(screening.Limits{Avoid: body.DemandSet(d)})
		if !strings.HasSuffix(got, ".") || strings.HasSuffix(got, ": .") {
			t.Errorf("no plain words for %q: %q", d, got)
		}
	}
}

// What one side is kept from names it.
func TestLeaveOutOnASide(t *testing.T) {
	l := screening.Limits{Avoid: body.DemandSet(body.Impact), AvoidLeft: body.DemandSet(body.Overhead), AvoidRight: body.DemandSet(body.KneeResisted)}
	want := "Until we say otherwise, please leave out: jumping and stamping; weights above your shoulders, on your left side; weights that work the knee, on your right side."
	if got := page.LeaveOut(l); got != want {
		t.Errorf("%q, want %q", got, want)
	}
	if got := page.LimitLines(l); !slices.Contains(got, "avoid on the left: overhead; on the right: resisted knee") {
		t.Errorf("%q", got)
	}
}

func TestNote(t *testing.T) {
	for table, want := range map[string]string{
		"# An invented\n#  table.\nid\n# no more\n": "(An invented table.)\n",
		"id\n": "", "": "",
	} {
		var out strings.Builder
		page.Note(&out, page.Opening([]byte(table)))
		if out.String() != want {
			t.Errorf("%q: %q, want %q", table, out.String(), want)
		}
	}
}

// A limit that is set has a line of its own.
func TestEveryLimitHasALine(t *testing.T) {
	got := page.LimitLines(screening.LighterSession())
	for _, want := range []string{"no load above the last completed one", "1 set fewer, down to one"} {
		if !slices.Contains(got, want) {
			t.Errorf("a lighter session reads %q, without %q", got, want)
		}
	}
	all := reflect.ValueOf(&screening.Limits{}).Elem()
	for i := range all.NumField() {
		if of, name := all.Field(i), all.Type().Field(i).Name; name != "AvoidLeft" && name != "AvoidRight" { // together
			was := reflect.New(of.Type()).Elem()
			switch of.Kind() {
			case reflect.Bool:
				of.SetBool(true)
			case reflect.Float64:
				of.SetFloat(1)
			case reflect.Int, reflect.Int64:
				of.SetInt(1)
			case reflect.Uint8, reflect.Uint32, reflect.Uint64:
				of.SetUint(1)
			case reflect.Slice:
				of.Set(reflect.MakeSlice(of.Type(), 1, 1))
			default:
				of.Field(0).SetBool(true) // of a lighter session
			}
			if len(page.LimitLines(all.Interface().(screening.Limits))) != 1 {
				t.Errorf("%s has no line", name)
			}
			of.Set(was)
		}
	}
}

// A client is not asked for the day of what a doctor has agreed to by its name.
func TestNoDayOfWhatWasAgreed(t *testing.T) {
	p := screening.Profile{
		Day: 20700, Age: 66, Setting: screening.InGroup, Wanted: screening.Moderate, Activity: &screening.Activity{DaysPerWeek: 3, Minutes: 40, Intensity: screening.Moderate, Months: 12},
		Diseases: screening.AskedFor(), Symptoms: screening.AskedFor(), RedFlags: screening.AskedFor(), Conditions: screening.AskedFor("pacemaker"),
	}
	for _, agreed := range []bool{false, true} {
		if agreed {
			p.Clearances = []screening.Clearance{{Who: "Dr B", Day: p.Day - 7, Scope: []screening.Code{"pacemaker", "cardiac"}}}
		}
		o, err := screening.Assess(p)
		if err != nil {
			t.Fatal(err)
		}
		asked := slices.ContainsFunc(page.ToClient(o), func(r evidence.Reason) bool { return r.Code == "screening.ask.pacemaker_day" })
		if asked == agreed {
			t.Errorf("agreed %v, asked for the day %v: %+v", agreed, asked, o.Missing)
		}
	}
}
