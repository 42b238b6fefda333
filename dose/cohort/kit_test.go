package cohort_test

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"maps"
	"math/big"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// The log, its weights and the answers are made up for a general-purpose comparison: a
// generator writes a log with known bad rows, and a script of exact integers,
// which knows nothing of this module, answers. Checksums are over what the script printed.

// weights are muscles by exercise, in halves of a set.
const weights = `goblet_squat quadriceps 2 glutes 2 erectors 1
romanian_deadlift hamstrings 2 glutes 2 erectors 1
floor_press chest 2 triceps 1 front_delts 1
one_arm_row back 2 biceps 1
overhead_press front_delts 2 triceps 1
curl biceps 2
triceps_extension triceps 2
lateral_raise side_delts 2
split_squat quadriceps 2 glutes 1
hip_bridge glutes 2 hamstrings 1
reverse_fly back 1 side_delts 1
calf_raise calves 2`

// muscleOf gives the script's muscles one of ours each; which is of no account.
var muscleOf = map[string]body.Muscle{}

// kitCatalogue makes a catalogue of the weights. An exercise needs a prime muscle: that of
// one without is a muscle that no weight names.
func kitCatalogue(t testing.TB) (exercise.Catalogue, map[exercise.ID][]string) {
	t.Helper()
	names := slices.Collect(body.Muscles())
	var list []exercise.Exercise
	rows := map[exercise.ID][]string{}
	for line := range strings.Lines(weights) {
		words := strings.Fields(line)
		e := exercise.Exercise{ID: exercise.ID(strings.ReplaceAll(words[0], "_", "-")), Name: words[0], Pattern: exercise.Squat, Hold: body.OneHand, Measure: exercise.Repetitions}
		rows[e.ID] = words
		for i := 1; i < len(words); i += 2 {
			m, known := muscleOf[words[i]]
			if !known {
				m = names[len(muscleOf)]
				muscleOf[words[i]] = m
			}
			e.Muscles = append(e.Muscles, exercise.Work{Muscle: m, Role: map[string]exercise.Role{"2": exercise.Prime, "1": exercise.Synergist}[words[i+1]]})
		}
		if !strings.Contains(line, " 2") {
			e.Muscles = append(e.Muscles, exercise.Work{Muscle: names[len(names)-1], Role: exercise.Prime})
		}
		list = append(list, e)
	}
	return units.Must(exercise.Catalogue{}.With(list...)), rows
}

// kitReader is the map of the script's columns.
func kitReader(c exercise.Catalogue) setlog.Reader {
	return setlog.Reader{Columns: map[string]string{"person": "person", "day": "date", "exercise": "exercise", "set": "set", "load": "load", "unit": "unit", "reps": "reps", "effort": "rir"},
		Scale: units.ScaleRIR, Catalogue: c}
}

// kitOptions are the script's: up to three repetitions in reserve count.
var kitOptions = cohort.Options{Rule: volume.Rule{Source: "the comparison's own", Reserve: units.Must(units.Between[units.RIR](0, 3))}, Formula: onerm.Epley}

// splitMix is the generator's source of chance: splitmix64.
type splitMix uint64

func (s *splitMix) next() uint64 {
	*s += 0x9E3779B97F4A7C15
	z := uint64(*s)
	z = (z ^ z>>30) * 0xBF58476D1CE4E5B9
	z = (z ^ z>>27) * 0x94D049BB133111EB
	return z ^ z>>31
}

// kitLog writes a log of n rows, one in badRate bad, and the truth about those: line and
// reason.
func kitLog(n int, badRate uint64) (log, truth []byte) {
	s := splitMix(20260102)
	var names []string
	for line := range strings.Lines(weights) {
		names = append(names, strings.Fields(line)[0])
	}
	log, truth = []byte("person,date,exercise,set,load,unit,reps,rir\n"), []byte("line,reason\n")
	persons := n/(52*3*18) + 1
	monday := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
	line := 1
	for d := 0; ; d++ {
		date := monday.AddDate(0, 0, d).Format(time.DateOnly)
		for p := range persons {
			if k := (p + d) % 7; k != 0 && k != 2 && k != 4 {
				continue
			}
			for i := range 18 {
				if line > n {
					return log, truth
				}
				line++
				row := []string{fmt.Sprintf("p%05d", p), date, names[d/2%2*6+i/3], strconv.Itoa(i%3 + 1)}
				row = append(row, kitSet(&s, p%3 == 0)...)
				if y := s.next(); y%badRate == 0 {
					reason := spoil(&row, y/badRate%15)
					truth = fmt.Appendf(truth, "%d,%s\n", line, reason)
				}
				log = append(append(log, strings.Join(row, ",")...), '\n')
			}
		}
	}
}

// kitSet draws load, unit, repetitions and reserve.
func kitSet(s *splitMix, lb bool) []string {
	x := s.next()
	if x%50 == 0 {
		lb = !lb
	}
	x /= 50
	unit, load := "kg", 0.5*float64(4+x%120)
	if lb {
		unit, load = "lb", 2.5*float64(2+x%54)
	}
	x /= 6480
	reps := 3 + x%18
	x /= 18
	rir := strconv.FormatUint(x%8, 10)
	switch x % 8 {
	case 6:
		rir = ""
	case 7:
		rir = "1"
	}
	return []string{strconv.FormatFloat(load, 'f', -1, 64), unit, strconv.FormatUint(reps, 10), rir}
}

// spoil makes a row bad in one of fifteen ways.
func spoil(row *[]string, way uint64) string {
	r := *row
	switch way {
	case 0:
		*row = r[:7]
		return "fields"
	case 1:
		*row = append(append(slices.Clone(r[:4]), "12", "5"), r[5:]...)
		return "fields"
	}
	c := []struct {
		at           int
		text, reason string
	}{{1, "2027-02-30", "date"}, {1, "", "date"}, {2, "mystery_move", "exercise"}, {3, "x", "set"}, {4, "abc", "load"}, {4, "-10", "load"}, {5, "stone", "unit"},
		{6, "0", "reps"}, {6, "8-10", "reps"}, {7, "99", "rir"}, {4, "NaN", "load"}, {4, "inf", "load"}, {4, "", "load"}}[way-2]
	r[c.at] = c.text
	return c.reason
}

// kitReasons are the script's words for our fields.
var kitReasons = map[string]string{"": "fields", "day": "date", "exercise": "exercise", "set": "set", "load": "load", "unit": "unit", "reps": "reps", "effort": "rir"}

// kitAnswers reads a log and prints what the script prints.
func kitAnswers(t testing.TB, log []byte, workers int) map[string]string {
	t.Helper()
	catalogue, rows := kitCatalogue(t)
	c := units.Must(cohort.NewStudy(catalogue, kitOptions)).NewCohort()
	lines, counts := "line,reason\n", map[string]int{}
	for _, err := range c.Read(kitReader(catalogue), bytes.NewReader(log), int64(len(log)), workers) {
		var bad *setlog.RowError
		if !errors.As(err, &bad) {
			t.Fatal(err)
		}
		reason := kitReasons[bad.Name]
		counts[reason]++
		lines += fmt.Sprintf("%d,%s\n", bad.Line, reason)
	}
	rejects := "reason,count\n"
	for _, reason := range slices.Sorted(maps.Keys(counts)) {
		rejects += fmt.Sprintf("%s,%d\n", reason, counts[reason])
	}
	return map[string]string{"reject_lines": lines, "rejects": rejects, "weekly": kitWeekly(c, rows), "estimates": kitEstimates(c, rows)}
}

func kitWeekly(c *cohort.Cohort, rows map[exercise.ID][]string) string {
	var out strings.Builder
	out.WriteString("person,week,muscle,fractional_sets,volume_kg\n")
	for w := range c.Weeks() {
		halves, volumes := map[string]int64{}, map[string]*big.Int{}
		for x := range w.Exercises(0) {
			words := rows[x.Exercise]
			for i := 1; i < len(words); i += 2 {
				n, _ := strconv.ParseInt(words[i+1], 10, 64)
				halves[words[i]] += n * int64(x.Left)
				if volumes[words[i]] == nil {
					volumes[words[i]] = new(big.Int)
				}
				kg, ng := x.Held.Parts()
				held := new(big.Int).Mul(big.NewInt(kg), big.NewInt(1e12))
				held.Add(held, big.NewInt(int64(ng)))
				volumes[words[i]].Add(volumes[words[i]], held.Mul(held, big.NewInt(n)))
			}
		}
		for _, m := range slices.Sorted(maps.Keys(halves)) {
			fmt.Fprintf(&out, "%s,%s,%s,%.1f,%s\n", w.Person, w.Week, m, float64(halves[m])/2, thousandths(volumes[m], 2e12))
		}
	}
	return out.String()
}

func kitEstimates(c *cohort.Cohort, rows map[exercise.ID][]string) string {
	var list []string
	for e := range c.Estimates() {
		list = append(list, fmt.Sprintf("%s,%s,%s\n", e.Person, rows[e.Exercise][0], thousandths(big.NewInt(int64(e.Best)), 1e12)))
	}
	slices.Sort(list)
	return "person,exercise,estimated_1rm_kg\n" + strings.Join(list, "")
}

// thousandths prints a/b, halves up, with three decimals.
func thousandths(a *big.Int, b int64) string {
	q := new(big.Int).Mul(a, big.NewInt(2000))
	q.Add(q, big.NewInt(b)).Quo(q, big.NewInt(2*b))
	return fmt.Sprintf("%d.%03d", q.Int64()/1000, q.Int64()%1000)
}

func checksum(text string) string {
	sum := sha256.Sum256([]byte(text))
	return hex.EncodeToString(sum[:])
}

func TestKitRows(t *testing.T) {
	log, truth := kitLog(20_000, 50)
	want := map[string]string{
		"log":       "d664752220b0475ffc31adf27fc7465515f440ad001f6c457e9acf216f68f779",
		"weekly":    "ea28033347aeefd4f15405b9d3fbf639d6c3f67b513dcf4cbc819dee14c8c959",
		"estimates": "2952e3bd6c1677039838315b635f7a208c149141cf9e2c1d5e612bce275aa12d",
		"rejects":   "0b2ea4edd95bb4399251114d7f4b754cf9a607c24d87472504e847150eaacb62",
	}
	if got := checksum(string(log)); got != want["log"] {
		t.Fatalf("the generator writes another log: %s", got)
	}
	for _, workers := range []int{1, 2, 7} {
		got := kitAnswers(t, log, workers)
		if got["reject_lines"] != string(truth) {
			t.Errorf("%d workers: bad rows are not the generator's", workers)
		}
		for _, name := range []string{"weekly", "estimates", "rejects"} {
			if sum := checksum(got[name]); sum != want[name] {
				t.Errorf("%d workers: %s has checksum %s, want %s\n%.300s", workers, name, sum, want[name], got[name])
			}
		}
	}
}
