package function_test

import (
	"math"
	"strconv"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var trialColumns = []string{"MGXH1T1", "MGXH1T2", "MGXH1T3", "MGXH2T1", "MGXH2T2", "MGXH2T3"}

// NHANES 2011-2012, reduced: of US adults from 60 years 5.5 % of men and 6.0 %
// of women, weighted by the examination weight, have a best grip of either hand
// below 27 and 16 kg, by the cut-offs as the package applies them.
func TestShareBelowTheGripCutOffs(t *testing.T) {
	list := rows(t, "../../testdata/published/nhanes-grip.csv")
	if len(list) != 2317 {
		t.Errorf("%d rows, want 2317", len(list))
	}
	weight, low := map[body.Sex]float64{}, map[body.Sex]float64{}
	for _, row := range list {
		age := units.Must(strconv.Atoi(row["RIDAGEYR"]))
		if age < 60 {
			continue
		}
		sex := map[string]body.Sex{"1": body.Male, "2": body.Female}[row["RIAGENDR"]]
		w := units.Must(strconv.ParseFloat(row["WTMEC2YR"], 64))
		weight[sex] += w
		if flagged(t, row, sex, body.Age(age)) {
			low[sex] += w
		}
	}
	for sex, want := range map[body.Sex]float64{body.Male: 5.5, body.Female: 6.0} {
		if got := 100 * low[sex] / weight[sex]; math.Abs(got-want) > 0.05 {
			t.Errorf("%v: %.2f %%, want %.1f %%", sex, got, want)
		}
	}
}

// flagged asks EWGSOP2 about the best of all trials of a row.
func flagged(t *testing.T, row map[string]string, sex body.Sex, age body.Age) bool {
	t.Helper()
	r := function.Result{Test: function.Grip, How: function.Done, Side: body.Both}
	for _, c := range trialColumns {
		if row[c] != "" {
			r.Trials = append(r.Trials, amt(row[c]+" kg"))
		}
	}
	var err error
	if r.Value, err = function.Best(function.Grip, r.Trials...); err != nil {
		t.Fatal(err)
	}
	all, err := function.AgainstNorms(r, sex, age)
	if err != nil {
		t.Fatal(err)
	}
	own := bodies(all, "EWGSOP2")
	if len(own) != 1 {
		t.Fatalf("%d answers of EWGSOP2", len(own))
	}
	return own[0].Position == function.Flagged
}

// Trial 2 against trial 3 of the hand tested first, where the effort of both was
// rated maximal: the typical error, SD of the difference of logarithms over √2,
// is 5.7 % in people from 50. The figure was given without its definition; by
// other choices of hand, effort and formula it lies between 4.8 and 6.1 %.
func TestTypicalErrorOfGrip(t *testing.T) {
	var n, sum, squares float64
	for _, row := range rows(t, "../../testdata/published/nhanes-grip.csv") {
		if row["MGXH1T2E"] != "1" || row["MGXH1T3E"] != "1" || row["MGXH1T2"] == "" || row["MGXH1T3"] == "" {
			continue
		}
		d := math.Log(units.Must(strconv.ParseFloat(row["MGXH1T3"], 64)) / units.Must(strconv.ParseFloat(row["MGXH1T2"], 64)))
		n++
		sum += d
		squares += float64(d * d)
	}
	sd := math.Sqrt((squares - float64(sum*sum)/n) / (n - 1))
	if got := 100 * math.Expm1(sd/math.Sqrt2); math.Abs(got-5.7) > 0.05 || n != 2263 {
		t.Errorf("%.2f %% in %.0f people, want 5.7 %% in 2263", got, n)
	}
}
