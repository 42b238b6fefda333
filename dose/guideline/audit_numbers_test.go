package guideline_test

import (
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// onDay are single sets of exercises on one day.
func onDay(day int, ids ...exercise.ID) []auditSets {
	var list []auditSets
	for _, id := range ids {
		list = append(list, auditSets{day, id, body.Both, 1, 10, 3})
	}
	return list
}

// TestAuditExercisesOfASession: 3 exercises on Monday and 1 on Thursday are 1 to
// 3 in a session, and eight are met where 8 to 10 are asked for (ACSM/AHA 2007).
func TestAuditExercisesOfASession(t *testing.T) {
	sets := append(onDay(0, "goblet-squat", "dumbbell-bench-press", "biceps-curl"), onDay(3, "goblet-squat")...)
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, sets...)}
	list := found(audited(t, w, "acsmaha2007-older-strengthening"), guideline.FieldExercises, "")
	if verdictsOf(list) != "short" || list[0].Found != units.Must(units.Between(1.0, 3.0)) || list[0].Bound != units.Must(units.Between(8.0, 10.0)) {
		t.Errorf("%+v", list)
	}
	eight := onDay(0, "goblet-squat", "dumbbell-bench-press", "biceps-curl", "lateral-raise", "dumbbell-shoulder-press", "dumbbell-floor-press",
		"seated-hammer-curl", "dead-bug")
	w.Totals = auditTally(t, volume.Performed, eight...)
	list = found(audited(t, w, "acsmaha2007-older-strengthening"), guideline.FieldExercises, "")
	if verdictsOf(list) != "met" || list[0].Found != units.Exactly(8.0) {
		t.Errorf("eight: %+v", list)
	}
}

// TestAuditReserve: 1 to 3 in reserve (the review on diabetes risk) against 2, 5
// and 0, and against sets without a rating.
func TestAuditReserve(t *testing.T) {
	for reserve, want := range map[float64]string{2: "met", 5: "over", 0: "short"} {
		w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, auditSets{0, "goblet-squat", body.Both, 2, 10, reserve})}
		list := found(audited(t, w, "prediabetes2021-review"), guideline.FieldReserve, "goblet-squat")
		if verdictsOf(list) != want || list[0].Found != units.Exactly(reserve) || list[0].Bound != units.Must(units.Between(1.0, 3.0)) {
			t.Errorf("%v in reserve: %+v, want %s", reserve, list, want)
		}
	}
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, auditSets{0, "goblet-squat", body.Both, 2, 10, 2})}
	w.Totals.Exercises[0].Reserve = units.Range[units.RIR]{}
	if got := verdictsOf(found(audited(t, w, "prediabetes2021-review"), guideline.FieldReserve, "*")); got != "not recorded" {
		t.Errorf("without a rating: %s", got)
	}
}

// TestAuditEmptyWeek: nothing done is not recorded, in each part of the body
// that has a bound of its own, and no sides are even.
func TestAuditEmptyWeek(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed)}
	load := found(audited(t, w, "aha2007-initial-older-or-cardiac"), guideline.FieldLoad, "*")
	if verdictsOf(load) != "not recorded, not recorded" || load[0].Bound == load[1].Bound || load[0].Fact == load[1].Fact ||
		load[0].Bound != units.Must(units.Between(.30, .40)) || load[1].Bound != units.Must(units.Between(.50, .60)) {
		t.Errorf("load: %+v", load)
	}
	for _, tt := range []struct {
		row  guideline.ID
		item guideline.Field
		want string
	}{
		{"acsm2009-strength-novice", guideline.FieldLoad, "not recorded"},
		{"acsm2011-older-start", guideline.FieldHoursBetween, "not recorded"},
		{"acsm2011-older-start", guideline.FieldSides, ""},
		{"acsm2011-older-start", guideline.FieldExercises, "not stated"},
	} {
		if got := verdictsOf(found(audited(t, w, tt.row), tt.item, "*")); got != tt.want {
			t.Errorf("%s, %v: %q, want %q", tt.row, tt.item, got, tt.want)
		}
	}
}

// TestAuditOneDay: no muscle is trained on two days, so 48 hours are kept.
func TestAuditOneDay(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, onDay(0, "goblet-squat", "dumbbell-bench-press")...)}
	list := found(audited(t, w, "acsm2011-older-start"), guideline.FieldHoursBetween, "*")
	if verdictsOf(list) != "met" || !list[0].Found.IsZero() || list[0].Bound != units.AtLeast(48.0) {
		t.Errorf("%+v", list)
	}
}

// TestAuditUntimed: repetitions of unknown length, and holds, have no seconds a
// repetition.
func TestAuditUntimed(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, append(onDay(0, "goblet-squat"), auditSets{0, "plank", body.Both, 1, 30, 3})...)}
	list := found(audited(t, w, "borde2015-strength"), guideline.FieldRepSeconds, "*")
	if verdictsOf(list) != "not recorded" || list[0].Of != "goblet-squat" || !list[0].Found.IsZero() {
		t.Errorf("%+v", list)
	}
}

// TestAuditEffortScale: a rating is shown on the scale of its source.
func TestAuditEffortScale(t *testing.T) {
	w := guideline.AuditedWeek{Totals: auditTally(t, volume.Performed, onDay(0, "goblet-squat")...)}
	for _, id := range []guideline.ID{"acsmaha2007-older-strengthening", "prediabetes2021-review"} {
		row, err := guideline.Get(id)
		if err != nil {
			t.Fatal(err)
		}
		list := found(audited(t, w, id), guideline.FieldEffort, "goblet-squat")
		if verdictsOf(list) != "not comparable" || list[0].Scale == "" || list[0].Scale != row.Effort.Ends {
			t.Errorf("%s: %+v, want the scale %q", id, list, row.Effort.Ends)
		}
	}
}

// TestAuditAtMost: a bound with an upper end alone has no lower one: zero is
// within it, and so is any number up to it.
func TestAuditAtMost(t *testing.T) {
	row := guideline.Recommendation{ID: "made-up", Population: "nobody", Sets: units.AtMost(2), Minutes: units.AtMost(60)}
	for sets, want := range map[int]string{1: "met", 2: "met", 3: "over"} {
		w := guideline.AuditedWeek{Minutes: []float64{0}, Totals: auditTally(t, volume.Performed, auditSets{0, "goblet-squat", body.Both, sets, 10, 3})}
		report, err := guideline.Audit(w, row)
		if err != nil {
			t.Fatal(err)
		}
		list := found(report, guideline.FieldSets, "goblet-squat")
		if verdictsOf(list) != want || list[0].Bound != units.AtMost(2.0) {
			t.Errorf("%d sets: %+v, want %s", sets, list, want)
		}
		if minutes := found(report, guideline.FieldMinutes, ""); verdictsOf(minutes) != "met" || minutes[0].Bound != units.AtMost(60.0) {
			t.Errorf("0 minutes: %+v", minutes)
		}
	}
}

// TestAuditOfTwoMuscles: of muscles that rest as long the first, from the head down,
// is named, and a muscle that is trained on the side alone has no exercise of its own.
func TestAuditOfTwoMuscles(t *testing.T) {
	sets := append(onDay(0, "dumbbell-bench-press", "biceps-curl"), onDay(2, "dumbbell-bench-press", "biceps-curl")...)
	totals := auditTally(t, volume.Performed, sets...)
	list := found(audited(t, guideline.AuditedWeek{Totals: totals}, "acsm2011-older-start"), guideline.FieldHoursBetween, "*")
	if len(list) != 1 || list[0].Of != totals.Muscles[0].Muscle.String() || list[0].Found != units.Exactly(48.0) {
		t.Errorf("%+v, want the first of %+v", list, totals.Muscles)
	}
	row := guideline.Recommendation{ID: "made-up", Population: "nobody", PerMuscle: units.AtLeast(1)}
	report, err := guideline.Audit(guideline.AuditedWeek{Totals: totals}, row)
	if err != nil {
		t.Fatal(err)
	}
	list = found(report, guideline.FieldPerMuscle, "*")
	direct := 0
	for _, m := range totals.Muscles {
		if m.Exercises > 0 {
			direct++
		}
	}
	if len(list) != direct || direct == len(totals.Muscles) {
		t.Errorf("%d lines for %d muscles trained directly, of %d", len(list), direct, len(totals.Muscles))
	}
	for _, l := range list {
		if l.Verdict != guideline.Met || l.Found == units.Exactly(0.0) {
			t.Errorf("%+v", l)
		}
	}
}
