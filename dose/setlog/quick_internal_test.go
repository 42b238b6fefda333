package setlog

import (
	"reflect"
	"strings"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"pgregory.net/rapid"
)

var cellTexts = [numFields][]string{
	ofPerson:   {"", "p1", "p2"},
	ofDay:      {"", "2026-11-25", "2026-02-30", "25/11/2026", "2026-1-5", "x"},
	ofExercise: {"", "biceps-curl", "Goblet Squat", "goblet-squat", "one-arm-dumbbell-row", "zumba"},
	ofSide:     {"", "left", "both", "Right", "r", "up"},
	ofHold:     {"", "one hand", "one in each hand", "unloaded", "On a Band", "x"},
	ofLoad:     {"", "0", "5", "12.5", "12,5", "0.0001", "1.00001", "12.5 kg", "12.5 KG", "1000", "1000.1", "999999", "1234567", "5.", ".5", "5.0.0", "-5", "NaN", "1,250 g", "0.3", "7.3lb", "4"},
	ofStated:   {"", "per hand", "total", "Total", "x"},
	ofReps:     {"", "0", "1", "10", "1000", "1001", "8-10", "99999", "+5", "-1"},
	ofEffort:   {"", "2", "8.5", "9", "rir 2", "RPE8", "rpe 11", "x", "99", "cr10 3"},
	ofSeconds:  {"", "4.5", "4,5", "61", "x"},
	ofUnit:     {"", "kg", "lb", "lbs", "g", "oz", "stone"},
	ofScale:    {"", "rir", "RPE", "x"},
	ofRPE:      {"", "8", "8,5", "RPE 8", "rir 2", "11", "4", "1_0", "x"},
	ofRIR:      {"", "2", "1.5", "5", "-1", "x"},
	ofSet:      {"", "1", "999", "1000", "0", "x"},
}

// tidyTexts make a good row; the unit of a load that has its own is left out.
var tidyTexts = [numFields]string{ofPerson: "p1", ofDay: "2026-11-25", ofExercise: "biceps-curl", ofSide: "left", ofHold: "one hand", ofLoad: "5 kg", ofReps: "10", ofSet: "1"}

// The quick way says what the slow way says, or nothing, whatever rows were before.
func TestQuickAsSlow(t *testing.T) {
	quick := 0
	rapid.Check(t, func(t *rapid.T) {
		rd := &Reader{
			Unit:   rapid.SampledFrom([]units.MassUnit{0, units.KG, units.LB, units.OZ}).Draw(t, "unit"),
			Scale:  rapid.SampledFrom([]units.Scale{0, units.ScaleRIR, units.ScaleRPE}).Draw(t, "scale"),
			Side:   rapid.SampledFrom([]body.Side{0, body.Left}).Draw(t, "side"),
			Stated: rapid.SampledFrom([]body.Stated{0, body.PerHand, body.Total}).Draw(t, "stated"),

			DayForm:   rapid.SampledFrom([]string{"", "year-month-day", "day/month/year"}).Draw(t, "form"),
			Sides:     map[string]body.Side{"R ": body.Right, "x": body.Both},
			Exercises: map[string]exercise.ID{"ZUMBA": "goblet-squat"},
		}
		if rapid.Bool().Draw(t, "catalogue") {
			rd.Catalogue = exercise.Standard()
		}
		p := newParser(rd)
		p.numbered = rapid.Bool().Draw(t, "numbered")
		for range 30 {
			for i, texts := range cellTexts {
				p.texts[i] = []byte(tidyTexts[i])
				if rapid.IntRange(0, 5).Draw(t, "otherwise") == 0 {
					p.texts[i] = []byte(rapid.SampledFrom(texts).Draw(t, "text"))
				}
			}
			var got Set
			if !p.quick(&got) {
				continue
			}
			quick++
			if want, bad := newParser(rd).withTexts(p).slow(); len(bad) > 0 || !reflect.DeepEqual(got, want) {
				t.Fatalf("%q: quick %+v, slow %+v, %v", p.texts, got, want, bad)
			}
		}
	})
	if quick < 50 {
		t.Errorf("only %d rows were read quickly", quick)
	}
}

// The first row of a log is looked at as every other: nothing before it was found good.
func TestFirstRowIsChecked(t *testing.T) {
	p := newParser(&Reader{})
	for i := range cellTexts {
		p.texts[i] = []byte(tidyTexts[i])
	}
	p.texts[ofHold], p.texts[ofSide] = nil, nil
	var s Set
	if p.quick(&s) {
		t.Errorf("a row without a hold is read: %+v", s)
	}
}

// Names that are too long to be kept are not kept as what comes behind another either.
func TestLongNamesAreNotKept(t *testing.T) {
	p := newParser(&Reader{})
	var s Set
	for i, name := range []string{"a", "b", strings.Repeat("x", memoText+1), strings.Repeat("y", memoText+1)} {
		p.texts[ofExercise] = []byte(name)
		if !p.quickRun(&s) || string(s.Exercise) != name {
			t.Errorf("row %d is of %q", i, s.Exercise)
		}
	}
	a := p.named["a"]
	if a == nil || a.next == nil || a.next.name != "b" || a.next.next != nil {
		t.Errorf("behind a there is %+v", a)
	}
}

func (p *parser) withTexts(q *parser) *parser {
	p.texts, p.numbered = q.texts, q.numbered
	return p
}

// Every decimal that is read quickly is what ParseMass reads.
func TestDecimalAsParseMass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[0-9]{0,7}([.,][0-9]{0,6})?`).Draw(t, "text")
		u := rapid.SampledFrom([]units.MassUnit{units.KG, units.LB}).Draw(t, "unit")
		if got, ok := decimal([]byte(text), u); ok {
			if want, err := units.ParseMass(text + " " + u.String()); err != nil || got != want {
				t.Fatalf("%s %s: %d, want %d, %v", text, u, got, want, err)
			}
		}
	})
}
