package protocol_test

import (
	"fmt"
	"strings"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression/protocol"
	"example.org/posology/testdata/fieldtest"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func marked(text string) units.Marked { return units.Must(units.ParseMarked(text)) }

func inKG(v float64) units.Marked {
	return units.Marked{Mass: units.Must(units.Kilograms(v)), Unit: units.KG}
}

// A row of the published checks.
type row struct{ id, rule, inputs, expected, known string }

// The rules whose rows are checked here, with the check.
var checks = map[string]func(*testing.T, row){
	"delorme_sets":                  func(t *testing.T, r row) { checkMasses(t, r, protocol.DeLorme) },
	"oxford_sets_three":             func(t *testing.T, r row) { checkMasses(t, r, protocol.OxfordThreeSet) },
	"dapre_sets":                    checkSets,
	"apre_sets":                     checkSets,
	"dapre_set4_adjustment":         checkChange,
	"dapre_next_session_adjustment": checkChange,
	"apre_adjustment":               checkChange,
}

func TestPublishedSchemes(t *testing.T) {
	_, rows := fieldtest.Table(t, "../../testdata/published/progression-checks.csv", ',')
	seen := map[string]int{}
	for _, r := range rows {
		if check, ok := checks[r[1]]; ok {
			seen[r[1]]++
			check(t, row{r[0], r[1], r[2], r[3], r[7]})
		}
	}
	if fmt.Sprint(seen) != "map[apre_adjustment:10 apre_sets:2 dapre_next_session_adjustment:3 dapre_set4_adjustment:4 dapre_sets:1 delorme_sets:1 oxford_sets_three:1]" {
		t.Errorf("checked %v", seen)
	}
}

func decode[T any](t *testing.T, r row, column string) (v T) {
	t.Helper()
	if err := field.Decode([]byte(column), &v, field.Strict); err != nil {
		t.Fatalf("%s: %v", r.id, err)
	}
	return v
}

// known holds that a fact behind the reasons is known as the row is.
func known(t *testing.T, r row, reasons []evidence.Reason) {
	t.Helper()
	want := map[string]evidence.Basis{"secondary": evidence.Secondary, "memory": evidence.FromMemory}[r.known]
	for f := range protocol.Facts() {
		if f.ID == reasons[0].Facts[0] && f.Basis != want {
			t.Errorf("%s: fact %s is %v, the row %s", r.id, f.ID, f.Basis, r.known)
		}
	}
}

func checkMasses(t *testing.T, r row, s protocol.Scheme) {
	session, err := s.Plan(inKG(decode[map[string]float64](t, r, r.inputs)["ten_rm_kg"]), nil)
	want := decode[[]float64](t, r, r.expected)
	if err != nil || len(session.Sets) != len(want) {
		t.Fatalf("%s: %+v, %v", r.id, session, err)
	}
	for i, set := range session.Sets {
		if set.Mass != inKG(want[i]) || set.Reps != 10 {
			t.Errorf("%s: set %d %v × %v, want %v kg × 10", r.id, i+1, set.Mass, set.Reps, want[i])
		}
	}
	known(t, r, session.Reasons)
}

var adjustableByRM = map[int]protocol.Scheme{0: protocol.DAPRE, 10: protocol.APRE10, 6: protocol.APRE6, 3: protocol.APRE3}

func checkSets(t *testing.T, r row) {
	in := decode[struct {
		Protocol int     `json:"protocol_rm"`
		RM       float64 `json:"rm_kg"`
		Working  float64 `json:"working_weight_kg"`
	}](t, r, r.inputs)
	session, err := adjustableByRM[in.Protocol].Plan(inKG(in.RM+in.Working), nil)
	if err != nil {
		t.Fatal(err)
	}
	var got []map[string]any
	for _, set := range session.Sets {
		line := map[string]any{"reps": float64(set.Reps), "kg": set.Mass.Mass.Kilograms()}
		if set.AsMany {
			line["reps"] = "max"
		}
		if set.Adjusted {
			line["kg"] = "adjusted"
		}
		got = append(got, line)
	}
	if want := decode[[]map[string]any](t, r, r.expected); fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%s: %v, want %v", r.id, got, want)
	}
	known(t, r, session.Reasons)
}

func checkChange(t *testing.T, r row) {
	in := decode[struct {
		Protocol int `json:"protocol_rm"`
		Third    int `json:"set3_reps"`
		Fourth   int `json:"set4_reps"`
	}](t, r, r.inputs)
	s := adjustableByRM[in.Protocol]
	for unit, ends := range decode[map[string][2]float64](t, r, r.expected) {
		u := units.Must(units.ParseMassUnit(unit))
		c, err := s.FourthSet(u, in.Third)
		if strings.Contains(r.rule, "next_session") {
			c, err = s.NextSession(u, in.Fourth)
		}
		low, high := units.Must(u.Mass().Scale(units.Fraction(ends[0]), units.Nearest)), units.Must(u.Mass().Scale(units.Fraction(ends[1]), units.Nearest))
		if err != nil || c.Low != (units.Marked{Mass: low, Unit: u}) || c.High != (units.Marked{Mass: high, Unit: u}) || c.Pick != c.Low {
			t.Errorf("%s: %v to %v, %v, want %v %s", r.id, c.Low, c.High, err, ends, unit)
		}
		known(t, r, c.Reasons)
	}
}

// lines prints a session, a set a line.
func lines(s protocol.SchemeSession) string {
	var all []string
	for _, set := range s.Sets {
		reps := fmt.Sprint(set.Reps)
		if set.AsMany {
			reps = "max"
		}
		mass := set.Mass.String()
		if set.Mass.Mass == 0 {
			mass = fmt.Sprintf("rm %d adjusted %v", set.RM, set.Adjusted)
		}
		failure := ""
		if set.ToFailure {
			failure = "!"
		}
		all = append(all, reps+" × "+mass+failure)
	}
	return strings.Join(all, ", ")
}

// Every scheme as printed, in both units; the base is a repetition maximum.
func TestPlans(t *testing.T) {
	for _, tt := range []struct {
		s    protocol.Scheme
		base string
		rm   int
		want string
	}{
		{protocol.DeLorme, "25 lb", 10, "10 × 12.5 lb, 10 × 18.75 lb, 10 × 25 lb!"},
		{protocol.OxfordThreeSet, "25 lb", 10, "10 × 25 lb!, 10 × 18.75 lb, 10 × 12.5 lb"},
		{protocol.OxfordTenSetPound, "20 lb", 10, "10 × 20 lb!, 10 × 19 lb, 10 × 18 lb, 10 × 17 lb, 10 × 16 lb, 10 × 15 lb, 10 × 14 lb, 10 × 13 lb, 10 × 12 lb, 10 × 11 lb"},
		{protocol.OxfordTenSetTenth, "20 kg", 10, "10 × 20 kg!, 10 × 18 kg, 10 × 16 kg, 10 × 14 kg, 10 × 12 kg, 10 × 10 kg, 10 × 8 kg, 10 × 6 kg, 10 × 4 kg, 10 × 2 kg"},
		{protocol.MacQueenHypertrophy, "20 kg", 10, "10 × 20 kg!, 10 × 20 kg!, 10 × 20 kg!"},
		{protocol.MacQueenPower, "20 kg", 10, "10 × 20 kg!, 8 × rm 8 adjusted false!, 6 × rm 6 adjusted false!, 4 × rm 4 adjusted false!"},
		{protocol.DAPRE, "40 lb", 6, "10 × 20 lb, 6 × 30 lb, max × 40 lb!, max × rm 0 adjusted true!"},
		{protocol.APRE10, "40 lb", 10, "12 × 20 lb, 10 × 30 lb, max × 40 lb!, max × rm 0 adjusted true!"},
		{protocol.APRE6, "40 lb", 6, "10 × 20 lb, 6 × 30 lb, max × 40 lb!, max × rm 0 adjusted true!"},
		{protocol.APRE3, "40 lb", 3, "6 × 20 lb, 3 × 30 lb, max × 40 lb!, max × rm 0 adjusted true!"},
	} {
		session, err := tt.s.Plan(marked(tt.base), nil)
		if err != nil || lines(session) != tt.want || tt.s.Base() != tt.rm {
			t.Errorf("%v: %s of the %dRM, %v, want %s", tt.s, lines(session), tt.s.Base(), err, tt.want)
		}
		failure := false
		for _, r := range session.Reasons {
			failure = failure || r.Code == "protocol.to-failure"
		}
		if !failure || !strings.Contains(lines(session), "!") {
			t.Errorf("%v does not say that it goes to failure", tt.s)
		}
	}
	for s, want := range map[protocol.Scheme]string{protocol.MacQueenHypertrophy: "3 to 4", protocol.MacQueenPower: "4 to 5", protocol.DeLorme: "not stated"} {
		if session := units.Must(s.Plan(marked("20 kg"), nil)); session.Count.String() != want {
			t.Errorf("%v: %v sets, want %s", s, session.Count, want)
		}
	}
}

func table(t testing.TB, masses ...string) *equipment.Table {
	t.Helper()
	var kit equipment.Kit
	for _, m := range masses {
		kit.Dumbbells = append(kit.Dumbbells, equipment.Dumbbell{Mass: marked(m), Count: 1})
	}
	table, err := kit.Compile(body.OneHand)
	if err != nil {
		t.Fatal(err)
	}
	return table
}
