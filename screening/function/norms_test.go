package function

import (
	"slices"
	"strings"
	"testing"
)

// Norms that cannot be read are an error here, so that they never are one for a caller.
func TestReadTables(t *testing.T) {
	all, err := readTables(normsCSV)
	if err != nil {
		t.Fatal(err)
	}
	for i, one := range all {
		if one.body == "" || slices.ContainsFunc(all[:i], func(before table) bool { return before.takes(one.norms[0]) }) {
			t.Errorf("the rows of %q about %s do not stand together", one.body, one.measure)
		}
	}
	const row = "FN1,chair_stand_30s,M,60,64,p25,14,reps,A study,,secondary,,study1999,Study 1999,reprints,,,\n"
	if _, err := readTables(normColumns + "\n" + row); err != nil {
		t.Fatal(err)
	}
	for _, change := range [][2]string{
		{"chair_stand_30s", "chair_stand"}, {",M,", ",male,"}, {",60,64,", ",64,60,"}, {",60,", ",-60,"}, {",64,", ",640,"}, {",64,", ",sixty,"},
		{"p25", "p26"}, {",14,", ",,"}, {",14,", ",14 to 15,"}, {"reps", "cups"}, {"secondary", "seen"}, {",,,\n", ",,\n"}, {"A study", "A \"study"},
	} {
		bad := strings.Replace(row, change[0], change[1], 1)
		if _, err := readTables(normColumns + "\n" + bad); err == nil || bad == row {
			t.Errorf("%q for %q: no error", change[1], change[0])
		}
	}
	for _, data := range []string{"", "a,b\n1,2\n"} {
		if _, err := readTables(data); err == nil {
			t.Errorf("%q: no error", data)
		}
	}
}

// Every code is used by a figure, and one that flags, scores or bands has a bound.
func TestStatisticsAreUsed(t *testing.T) {
	used := map[Statistic]bool{}
	for n := range Norms() {
		used[n.Statistic] = true
	}
	for s, m := range statistics {
		if want := m.kind == cutOff || m.kind == scoreLimit || m.kind == bandFloor; !used[s] || (m.bound != 0) != want {
			t.Errorf("%s: used %v, bound %d, kind %v", s, used[s], m.bound, m.kind)
		}
	}
}
