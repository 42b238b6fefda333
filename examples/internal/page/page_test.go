package page_test

import (
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units"
	"example.org/posology/units/body"
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
	if got := page.LeaveOut(0); got != "" {
		t.Errorf("nothing to leave out: %q", got)
	}
	for d := range body.EveryDemand() {
		got := page.LeaveOut(body.DemandSet(d))
		if !strings.HasSuffix(got, ".") || strings.HasSuffix(got, ": .") {
			t.Errorf("no plain words for %q: %q", d, got)
		}
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

// The set that feels the next weight is one of those asked for, and is said apart.
func TestAFeltSetIsSaid(t *testing.T) {
	light, err := equipment.NewLoad(6*units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	next, err := equipment.NewLoad(10*units.Kilogram, body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	var out strings.Builder
	p, err := page.New(&out)
	if err != nil {
		t.Fatal(err)
	}
	p.ClientItem(1, dose.Prescription{
		Name: "row", Load: light, Sets: 3, Measure: exercise.Repetitions, Count: 12, Reserve: dose.Reserve{Least: 3, Countable: true},
		Feel: &dose.Feel{Load: next, Count: 5},
	}, nil, nil)
	if err := p.Close(); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"Do   2 sets of 12", "Last at most 5 with " + next.String() + ", with somebody beside you."} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("no %q in\n%s", want, out.String())
		}
	}
}
