package record_test

import (
	"errors"
	"slices"
	"testing"

	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A second reading of glucose stands in the check of the day once more: what was decided on
// the first stays as it was, and is worked out again from it.
func TestMeasuredAgain(t *testing.T) {
	r := read(t, review)
	day, first := r.Review, &r.Checks[len(r.Checks)-1]
	first.Glucose, first.InsulinOrSecretagogue, first.SevereLow, first.Setting = units.Must(screening.ParseGlucose("60 mg/dL")), screening.Yes, screening.No, screening.InClinic
	decide := func() (doses int) {
		entry, err := r.Decide(day)
		if err != nil {
			t.Fatal(err)
		}
		r.Entries = append(r.Entries, entry)
		for _, item := range entry.Items {
			if item.Decision.Next != nil {
				doses++
			}
		}
		return doses
	}
	if n := decide(); n > 0 {
		t.Errorf("%d doses at 60 mg/dL", n)
	}
	again := *first
	again.GlucoseAgain = units.Must(screening.ParseGlucose("105 mg/dL"))
	r.Checks = append(r.Checks, again)
	if n := decide(); n == 0 {
		t.Error("no dose at 105 mg/dL after sugar")
	}
	sameAnswers(t, r)
	for name, change := range map[string]func(c *screening.Check){
		"nothing":        func(c *screening.Check) { c.GlucoseAgain = screening.Glucose{} },
		"something else": func(c *screening.Check) { c.Febrile = screening.Unknown },
		"after no low":   func(c *screening.Check) { r.Checks = append(r.Checks, *c) },
		"after one that ends the day": func(c *screening.Check) {
			r.Checks = append(r.Checks, *c)
			c.GlucoseAgain = units.Must(screening.ParseGlucose("45 mg/dL"))
		},
	} {
		was := slices.Clone(r.Checks)
		change(&r.Checks[len(r.Checks)-1])
		if err := r.Validate(); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s: %v", name, err)
		}
		r.Checks = was
	}
	still := again
	still.GlucoseAgain = units.Must(screening.ParseGlucose("66 mg/dL"))
	r.Checks = slices.Insert(r.Checks, len(r.Checks)-1, still)
	r.Entries = nil
	if err := r.Validate(); err != nil {
		t.Errorf("treated twice: %v", err)
	}
	for i := range r.Checks { // one event, and not two
		r.Checks[i].Events = []screening.Event{{Code: "fall", Day: day}}
	}
	if stands, err := r.Alarms(day); err != nil || len(stands) != 1 {
		t.Errorf("%+v, %v", stands, err)
	}
}

// A second reading of saturation stands so too, once: after two the check of the day is through.
func TestSaturationMeasuredAgain(t *testing.T) {
	r := read(t, review)
	first := &r.Checks[len(r.Checks)-1]
	first.SpO2, first.Setting = 86, screening.InClinic
	entry, err := r.Decide(r.Review)
	if err != nil || entry.Items[0].Decision.Next != nil {
		t.Fatalf("at 86 %%: %v, %+v", err, entry.Items[0].Decision)
	}
	again := *first
	again.SpO2Again = 93
	r.Checks, r.Entries = append(r.Checks, again), []record.Entry{entry}
	if entry, err = r.Decide(r.Review); err != nil || entry.Items[0].Decision.Next == nil {
		t.Fatalf("at 93 %% after a rest: %v, %+v", err, entry.Items[0].Decision)
	}
	r.Entries = append(r.Entries, entry)
	sameAnswers(t, r)
	for _, reading := range []int{0, 93} { // nothing, and once more
		third := again
		third.SpO2Again = reading
		bad := r
		if bad.Checks = append(slices.Clone(r.Checks), third); reading == 0 {
			bad.Checks = append(r.Checks[:len(r.Checks)-1:len(r.Checks)-1], third)
		}
		if err := bad.Validate(); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%d %%: %v", reading, err)
		}
	}
	low := r
	low.Checks, low.Entries = slices.Clone(r.Checks), nil
	low.Checks[len(low.Checks)-1].SpO2Again = 87
	if low.Checks = append(low.Checks, again); !errors.Is(low.Validate(), field.ErrConflict) {
		t.Error("read a third time")
	}
	first = &r.Checks[len(r.Checks)-2]
	if first.SpO2 = 89; !errors.Is(r.Validate(), field.ErrConflict) {
		t.Error("89 % read again")
	}
}

// What was asked for stays in the record when its weight is gone: with the kit that made it
// when something was decided, and no other. What is asked for next is of the present kit,
// and no heavier than was asked before.
func TestKitChanges(t *testing.T) {
	r := read(t, review)
	entry, err := r.Decide(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	all := r.Kit.Dumbbells // 2, 4, 6 and 10 kg
	for name, kit := range map[string][]equipment.Dumbbell{"the lightest gone": all[1:], "those in between gone": {all[0], all[3]}, "all but the lightest gone": all[:1], "all gone": nil} {
		r.Entries, r.Kit.Dumbbells = nil, kit
		if err := r.Validate(); !errors.Is(err, field.ErrConflict) {
			t.Errorf("%s, and nothing decided: %v", name, err)
		}
		r.Entries = []record.Entry{entry}
		again := read2(t, encoded(t, r))
		items, err := again.Next(r.Review)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		for i, item := range items {
			p := item.Decision.Next
			switch {
			case p == nil:
				continue
			case p.Load.Each() > 0 && !slices.ContainsFunc(kit, func(d equipment.Dumbbell) bool { return d.Mass.Mass == p.Load.Each() }):
				t.Errorf("%s: %s with %v", name, p.Exercise, p.Load.Each())
			case entry.Items[i].Decision.Change != progression.MoreLoad && item.Decision.Change != progression.MoreLoad && p.Load.Each() > item.Log[len(item.Log)-1].Plan.Load.Each():
				t.Errorf("%s: %s rises to %v", name, p.Exercise, p.Load.Each())
			}
		}
		sameAnswers(t, again)
	}
}

func read2(t *testing.T, text string) record.Record {
	t.Helper()
	r, err := record.Decode([]byte(text), field.Strict)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// A second blood pressure and pulse stand so too, once each, also one after the other.
func TestPressureAndPulseMeasuredAgain(t *testing.T) {
	r := read(t, review)
	first := &r.Checks[len(r.Checks)-1]
	first.BP, first.RestingPulse, first.Setting = &screening.BloodPressure{Systolic: 184, Diastolic: 96}, 124, screening.InClinic
	entry, err := r.Decide(r.Review)
	if err != nil || entry.Items[0].Decision.Next != nil {
		t.Fatalf("at 184/96 mmHg: %v, %+v", err, entry.Items[0].Decision)
	}
	second := *first
	second.BPAgain = &screening.BloodPressure{Systolic: 142, Diastolic: 84}
	third := second
	third.RestingPulseAgain = 88
	r.Checks, r.Entries = append(r.Checks, second, third), []record.Entry{entry}
	if entry, err = r.Decide(r.Review); err != nil || entry.Items[0].Decision.Next == nil {
		t.Fatalf("at 142/84 mmHg after a rest: %v, %+v", err, entry.Items[0].Decision)
	}
	r.Entries = append(r.Entries, entry)
	sameAnswers(t, r)
	for name, change := range map[string]func(*screening.Check){
		"the same":      func(*screening.Check) {},
		"another first": func(c *screening.Check) { c.BP = &screening.BloodPressure{Systolic: 150, Diastolic: 90} },
		"a third":       func(c *screening.Check) { c.BPAgain = &screening.BloodPressure{Systolic: 120, Diastolic: 80} },
		"without it":    func(c *screening.Check) { c.BPAgain = nil },
	} {
		bad, fourth := r, third
		change(&fourth)
		if bad.Checks = append(slices.Clip(r.Checks), fourth); !errors.Is(bad.Validate(), field.ErrConflict) {
			t.Errorf("%s: %v", name, bad.Validate())
		}
	}
}
