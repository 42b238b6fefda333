package equipment_test

import (
	"bufio"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A problem is one of testdata/plates.jsonl.
type problem struct {
	ID     string     `json:"id"`
	Unit   string     `json:"unit"`
	Bar    int64      `json:"bar"`
	Sides  int        `json:"sides"`
	Plates [][2]int64 `json:"plates"`
	Target int64      `json:"target"`

	Loads int    `json:"loads"`
	Total *int64 `json:"total"`
	Used  *int   `json:"used"`
}

func (p problem) unit() units.Mass {
	if p.Unit == "clb" {
		return units.Pound / 100
	}
	return units.Gram
}

func (p problem) marked(n int64) units.Marked {
	return units.Marked{Mass: units.Mass(n) * p.unit(), Unit: units.KG}
}

// holds lists the ways of holding that the problem is put in: one for a big
// problem, which takes time, else all that fit.
func (p problem) holds() []body.Hold {
	switch {
	case p.Sides == 4:
		return []body.Hold{body.OneEachHand}
	case p.Loads > 10000:
		return []body.Hold{body.OnBar}
	}
	return []body.Hold{body.OneHand, body.BothHandsOnOne, body.OnBar}
}

// hold is the way that the checksums were taken in.
func (p problem) hold() body.Hold {
	if p.Sides == 4 {
		return body.OneEachHand
	}
	return body.OneHand
}

func (p problem) kit() equipment.Kit {
	k := equipment.Kit{
		Handles: []equipment.Handle{{Mass: p.marked(p.Bar), Count: 2}},
		Bars:    []equipment.Bar{{Mass: p.marked(p.Bar)}},
	}
	for _, plate := range p.Plates {
		k.Plates = append(k.Plates, equipment.Plate{Mass: p.marked(plate[0]), Count: int(plate[1])})
	}
	return k
}

// answer returns the total and the plates of it in the problem's unit, as the
// script prints them.
func (p problem) answer(tb testing.TB, t *equipment.Table) string {
	tb.Helper()
	l, err := t.Nearest(units.Mass(p.Target)*p.unit()/units.Mass(p.Sides/2), equipment.RoundingRule{})
	var heavy *equipment.TooHeavyError
	switch {
	case errors.As(err, &heavy):
		return "None None"
	case err != nil:
		tb.Fatalf("%s: Nearest: %v", p.ID, err)
	case l.Total()%p.unit() != 0:
		tb.Errorf("%s: total %s is not a whole number of %s", p.ID, l.Total(), p.unit())
	}
	return fmt.Sprintf("%d %d", l.Total()/p.unit(), l.Plates())
}

// totals returns every total in the problem's unit, rising.
func (p problem) totals(t *equipment.Table) []string {
	var list []string
	for l := range t.Loads() {
		list = append(list, fmt.Sprint(int64(l.Total()/p.unit())))
	}
	return list
}

// Some cases of each kind, with the script's answers.
func TestPlatesFixture(t *testing.T) {
	f, err := os.Open("testdata/plates.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows := 0
	for lines := bufio.NewScanner(f); lines.Scan(); rows++ {
		var p problem
		if err := field.Decode(lines.Bytes(), &p, field.Strict); err != nil {
			t.Fatal(err)
		}
		for _, h := range p.holds() {
			checkProblem(t, p, h)
		}
	}
	if rows != 44 {
		t.Errorf("%d rows, want 44", rows)
	}
}

func checkProblem(t *testing.T, p problem, h body.Hold) {
	t.Helper()
	want := "None None"
	if p.Total != nil {
		want = fmt.Sprintf("%d %d", *p.Total, *p.Used)
	}
	if got := p.nearest(t, h); got != want {
		t.Errorf("%s, %s: without a table total and plates = %s, want %s", p.ID, h, got, want)
	}
	table, err := p.kit().Compile(h)
	if p.Loads > equipment.MaxLoads {
		if !errors.Is(err, equipment.ErrTooManyLoads) {
			t.Errorf("%s, %s: %d loads give %v, want ErrTooManyLoads", p.ID, h, p.Loads, err)
		}
		return
	}
	if err != nil {
		t.Fatalf("%s, %s: %v", p.ID, h, err)
	}
	if table.Len() != p.Loads {
		t.Errorf("%s, %s: %d loads, want %d", p.ID, h, table.Len(), p.Loads)
	}
	if got := p.answer(t, table); got != want {
		t.Errorf("%s, %s: total and plates = %s, want %s", p.ID, h, got, want)
	}
}

// splitMix is the generator of the script: splitmix64.
type splitMix uint64

func (s *splitMix) draw(n int) int {
	*s += 0x9E3779B97F4A7C15
	z := uint64(*s)
	z = (z ^ z>>30) * 0xBF58476D1CE4E5B9
	z = (z ^ z>>27) * 0x94D049BB133111EB
	return int((z ^ z>>31) % uint64(n))
}

// series are the kinds of cases, in the order in which the script draws them,
// with the checksums that it printed over all its answers and all totals. Those
// of the answers were the same from a brute force and a dynamic program.
var series = []struct {
	name, unit        string
	cases             int
	pool              func(i int) []int64
	kinds, more, most int
	bars              []int64
	answers, totals   string
}{
	{"small", "g", 1000, func(i int) []int64 {
		if i%3 == 0 {
			return poundsInGrams
		}
		return kilograms
	}, 3, 3, 12, []int64{1500, 2000, 2500, 7000, 20000},
		"24a3feca750580e2fbd2f32908544403ffab92d2c3b8aed6c6762a0fb84c1a75",
		"fc3a61f39598f204ecf54a1437f19743ac4fbe9850d4e812ec06d2b52a0b925e"},
	{"pound", "clb", 300, func(int) []int64 { return []int64{125, 250, 500, 1000, 2500, 3500, 4500} },
		3, 4, 12, []int64{500, 550, 3500, 4500},
		"2594c111975e9452d1ecba38080afeec672f385e20eae53f033bd91407f1aecb",
		"74160a90b1d87c70385ab519d11b782c0d27ce8c0d484ae70fc1c8bed2fae2fe"},
	{"big", "g", 60, func(int) []int64 { return slices.Concat(kilograms, poundsInGrams) }, 10, 5, 60, []int64{2000, 20000},
		"fcf790bb5412e1d7fef1d12cd77aa0455f2e1cea2d04711f5e99d9ba311f35b8", ""},
}

var (
	kilograms     = []int64{250, 500, 1000, 1250, 2000, 2500, 5000, 10000, 15000, 20000, 25000}
	poundsInGrams = []int64{333, 700, 1134, 1360, 2268, 4536, 9072}
)

// drawProblem draws one case in the order of the script.
func drawProblem(s *splitMix, p problem, pool []int64, kinds, most int, bars []int64) problem {
	pool = slices.Clone(pool)
	for range kinds {
		i := s.draw(len(pool))
		p.Plates = append(p.Plates, [2]int64{pool[i], int64(2 + s.draw(most-1))})
		pool = slices.Delete(pool, i, i+1)
	}
	p.Sides = 4 - 2*s.draw(2)
	p.Bar = bars[s.draw(len(bars))]
	sides := int64(p.Sides)
	top := p.Bar * sides / 2
	for _, plate := range p.Plates {
		top += sides * plate[0] * (plate[1] / sides)
	}
	p.Target = int64(s.draw(int(top + top/10 + 1)))
	return p
}

// nearest is answer without a table.
func (p problem) nearest(tb testing.TB, h body.Hold) string {
	tb.Helper()
	l, err := p.kit().Nearest(units.Mass(p.Target)*p.unit()/units.Mass(p.Sides/2), h, equipment.RoundingRule{})
	switch {
	case errors.As(err, new(*equipment.TooHeavyError)):
		return "None None"
	case err != nil || l.Validate() != nil:
		tb.Fatalf("%s: Kit.Nearest: %v, %v", p.ID, err, l.Validate())
	}
	return fmt.Sprintf("%d %d", l.Total()/p.unit(), l.Plates())
}

// Every case of the script, by the checksum over its answers.
func TestPlatesAll(t *testing.T) {
	s := splitMix(20260103)
	for _, c := range series {
		answers, direct, totals := sha256.New(), sha256.New(), sha256.New()
		for i := range c.cases {
			pool := c.pool(i)
			p := problem{ID: fmt.Sprintf("%c%04d", c.name[0], i), Unit: c.unit}
			p = drawProblem(&s, p, pool, c.kinds+s.draw(c.more), c.most, c.bars)
			fmt.Fprintf(direct, "%s %s\n", p.ID, p.nearest(t, p.hold()))
			if c.totals == "" {
				continue // too many for a table
			}
			table, err := p.kit().Compile(p.hold())
			if err != nil {
				t.Fatalf("%s: %v", p.ID, err)
			}
			fmt.Fprintf(answers, "%s %s\n", p.ID, p.answer(t, table))
			fmt.Fprintln(totals, strings.Join(p.totals(table), ","))
		}
		if got := hex.EncodeToString(direct.Sum(nil)); got != c.answers {
			t.Errorf("%s: checksum of answers without a table %s, want %s", c.name, got, c.answers)
		}
		if c.totals == "" {
			continue
		}
		if got := hex.EncodeToString(answers.Sum(nil)); got != c.answers {
			t.Errorf("%s: checksum of answers %s, want %s", c.name, got, c.answers)
		}
		if got := hex.EncodeToString(totals.Sum(nil)); got != c.totals {
			t.Errorf("%s: checksum of totals %s, want %s", c.name, got, c.totals)
		}
	}
}
