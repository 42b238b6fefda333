package function_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

func stand(seconds string) function.Stand {
	return function.Stand{How: function.Done, Time: amt(seconds + " s")}
}

func battery(side, semi, tandem string, walk function.Result, stands string) function.Battery {
	return function.Battery{
		SideBySide: stand(side), SemiTandem: stand(semi), Tandem: stand(tandem),
		Walk: walk, Stands: function.Result{Test: function.FiveSitToStands, How: function.Done, Value: amt(stands + " s")},
	}
}

func walked(t function.Test, seconds string) function.Result {
	return function.Result{Test: t, How: function.Done, Value: amt(seconds + " s")}
}

// Points at, just under and just over every printed limit of the battery.
func TestBatteryAtItsLimits(t *testing.T) {
	for _, test := range []struct {
		part   string
		times  []string
		points []float64
	}{
		{"side", []string{"0", "9.99", "10", "10.01"}, []float64{0, 0, 1, 1}},
		{"semi", []string{"0", "9.99", "10", "10.01"}, []float64{0, 0, 1, 1}},
		{"tandem", []string{"0", "2.99", "3", "3.01", "9.99", "10", "10.01"}, []float64{0, 0, 1, 1, 1, 2, 2}},
		{"stands", []string{"11.18", "11.19", "11.2", "13.68", "13.69", "13.7", "16.68", "16.69", "16.695", "16.7", "59.99", "60", "60.01"}, []float64{4, 4, 3, 3, 3, 2, 2, 2, 1, 1, 1, 1, 0}},
		{"4-m walk", []string{"4.81", "4.82", "4.83", "6.19", "6.2", "6.21", "8.69", "8.7", "8.71", "60"}, []float64{4, 3, 3, 3, 3, 2, 2, 2, 1, 1}},
		{"3-m walk", []string{"3.61", "3.62", "3.63", "4.64", "4.65", "4.66", "6.51", "6.52", "6.53"}, []float64{4, 3, 3, 3, 3, 2, 2, 2, 1}},
		{"8-ft walk", []string{"3.09", "3.1", "3.11", "3.99", "4", "4.01", "5.59", "5.6", "5.61", "5.65", "5.7", "5.71"}, []float64{4, 4, 3, 3, 3, 2, 2, 2, 1, 1, 1, 1}},
	} {
		for i, time := range test.times {
			b := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
			got := func(s function.BatteryScore) float64 { return s.Walk.Number() }
			switch test.part {
			case "side":
				b.SideBySide, b.SemiTandem, b.Tandem = stand(time), stand("0"), stand("0")
				got = func(s function.BatteryScore) float64 { return s.Balance.Number() }
			case "semi":
				b.SemiTandem, b.Tandem = stand(time), stand("0")
				got = func(s function.BatteryScore) float64 { return s.Balance.Number() - 1 }
			case "tandem":
				b.Tandem = stand(time)
				got = func(s function.BatteryScore) float64 { return s.Balance.Number() - 2 }
			case "stands":
				b.Stands.Value = amt(time + " s")
				got = func(s function.BatteryScore) float64 { return s.Stands.Number() }
			default:
				var course function.Test
				if err := course.UnmarshalText([]byte(test.part)); err != nil {
					t.Fatal(err)
				}
				b.Walk = walked(course, time)
			}
			s, err := b.Score()
			if err != nil || got(s) != test.points[i] {
				t.Errorf("%s %s s: %v points, want %v (%v)", test.part, time, got(s), test.points[i], err)
			}
			if want := s.Balance.Number() + s.Walk.Number() + s.Stands.Number(); s.Total.Number() != want {
				t.Errorf("%s %s s: total %v, parts %v", test.part, time, s.Total, want)
			}
		}
	}
}

// Every printed limit of a score is met as printed by the score at its value.
func TestPrintedLimitsHoldAtTheirValue(t *testing.T) {
	n := 0
	for _, row := range ofCollection(t) {
		var points, at int
		if _, err := fmt.Sscanf(row["statistic"], "score%d_if", &points); err != nil {
			continue
		}
		n++
		b := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
		var s function.BatteryScore
		switch row["test"] {
		case "sppb_chair_stand":
			b.Stands.Value = amt(row["value"] + " s")
			s = units.Must(b.Score())
			at = int(s.Stands.Number())
		case "sppb_balance_side_by_side", "sppb_balance_semitandem":
			s = units.Must(b.Score())
			at = int(s.Balance.Number()) - 3
		case "sppb_balance_tandem":
			b.Tandem = stand(row["value"])
			s = units.Must(b.Score())
			at = int(s.Balance.Number()) - 2
		default:
			course := map[string]function.Test{"sppb_gait_4m": function.Walk4m, "sppb_gait_3m": function.Walk3m, "sppb_gait_8ft": function.Walk8ft}[row["test"]]
			b.Walk = walked(course, row["value"])
			s = units.Must(b.Score())
			at = int(s.Walk.Number())
		}
		want := points
		switch _, bound, _ := strings.Cut(row["statistic"], "_if_"); bound {
		case "less_than":
			want-- // the limit itself belongs to the next score
		case "greater_than":
			want++
		}
		if at != want {
			t.Errorf("%s: %d points, want %d", row["id"], at, want)
		}
	}
	if n != 14 {
		t.Errorf("%d rows", n)
	}
}

// One walk, three courses, three scores: 4.7 s are four, two and two points.
func TestCoursesAreKeptApart(t *testing.T) {
	for course, want := range map[function.Test]float64{function.Walk4m: 4, function.Walk3m: 2, function.Walk8ft: 2} {
		s, err := battery("10", "10", "10", walked(course, "4.7"), "10").Score()
		if err != nil || s.Walk.Number() != want || s.Course != course {
			t.Errorf("%v: %v, %v, want %v", course, s.Walk, err, want)
		}
		trap := slices.ContainsFunc(s.Reasons, func(r evidence.Reason) bool { return slices.Contains(r.Facts, "function.trap.course") })
		if trap != (course != function.Walk8ft) {
			t.Errorf("%v: trap told: %v", course, trap)
		}
	}
}

// The fact that decided is named: a printed limit, or the rule for what falls
// between two.
func TestBatteryNamesItsLimit(t *testing.T) {
	const between = "function.between-limits"
	for _, test := range []struct {
		stands string
		want   []evidence.FactID
	}{
		{"11.19", []evidence.FactID{"function.sppb-chair-stand.guralnik1994.any-65.score4-if-le"}},
		{"16.695", []evidence.FactID{"function.sppb-chair-stand.guralnik1994.any-65.score1-if-ge", between}},
		{"16.7", []evidence.FactID{"function.sppb-chair-stand.guralnik1994.any-65.score1-if-ge"}},
		{"60.01", []evidence.FactID{"function.sppb-chair-stand.guralnik1994.any-65.score0-if-greater-than"}},
	} {
		s := units.Must(battery("10", "10", "10", walked(function.Walk3m, "7"), test.stands).Score())
		if got := s.Reasons[4].Facts; !slices.Equal(got, test.want) {
			t.Errorf("%s s: %v, want %v", test.stands, got, test.want)
		}
		if got := s.Reasons[3].Facts; !slices.Contains(got, between) {
			t.Errorf("3-m walk in 7 s: %v", got)
		}
	}
}

func TestBands(t *testing.T) {
	// Totals by the parts: balance 4, walk 0 to 4, stands 0 to 4.
	walks, stands := []string{"", "60", "8", "6", "4"}, []string{"", "20", "16", "13", "10"}
	for w := range 5 {
		for c := range 5 {
			for _, balance := range []int{0, 1, 4} {
				b := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
				b.Walk.Value, b.Stands.Value = function.Amount{}, function.Amount{}
				if b.Walk.How = function.Unable; w > 0 {
					b.Walk = walked(function.Walk4m, walks[w])
				}
				if b.Stands.How = function.Unable; c > 0 {
					b.Stands.How, b.Stands.Value = function.Done, amt(stands[c]+" s")
				}
				switch balance {
				case 0:
					b.SideBySide, b.SemiTandem, b.Tandem = function.Stand{How: function.Unable}, function.Stand{}, function.Stand{}
				case 1:
					b.SemiTandem, b.Tandem = stand("5"), function.Stand{}
				}
				total := w + c + balance
				want := [...]function.BatteryBand{0: 1, 1: 1, 2: 1, 3: 1, 4: 2, 5: 2, 6: 2, 7: 3, 8: 3, 9: 3, 10: 4, 11: 4, 12: 4}[total]
				s, err := b.Score()
				if err != nil || s.Total != amt(fmt.Sprintf("%d points", total)) || s.Band != want {
					t.Errorf("%d+%d+%d: %v, %v, %v", balance, w, c, s.Total, s.Band, err)
				}
			}
		}
	}
}

// What no source scores leaves the part and the total not scored.
func TestBatteryNotScored(t *testing.T) {
	whole := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
	whole.Day = units.Must(units.ParseDay("2026-03-02"))
	for _, test := range []struct {
		name   string
		change func(*function.Battery)
		scored bool
	}{
		{"whole", func(*function.Battery) {}, true},
		{"tandem refused", func(b *function.Battery) { b.Tandem = function.Stand{How: function.Refused} }, true},
		{"tandem unable", func(b *function.Battery) { b.Tandem = function.Stand{How: function.Unable} }, true},
		{"tandem stopped", func(b *function.Battery) { b.Tandem = function.Stand{How: function.Stopped, Time: amt("4 s")} }, false},
		{"semi-tandem refused", func(b *function.Battery) { b.SemiTandem = function.Stand{How: function.Refused} }, false},
		{"walk refused", func(b *function.Battery) { b.Walk = function.Result{Test: function.Walk4m, How: function.Refused} }, false},
		{"arms used", func(b *function.Battery) {
			b.Stands = function.Result{Test: function.FiveSitToStands, How: function.UsedArms, Value: amt("14 s")}
		}, false},
		{"stands unable", func(b *function.Battery) {
			b.Stands = function.Result{Test: function.FiveSitToStands, How: function.Unable}
		}, true},
	} {
		b := whole
		test.change(&b)
		s, err := b.Score()
		if err != nil || s.Total.IsZero() == test.scored || (s.Band == 0) == test.scored {
			t.Errorf("%s: %v, %v, %v", test.name, s.Total, s.Band, err)
		}
		r, ok := s.Result()
		if ok != test.scored || ok && (r.Validate() != nil || r.Value != s.Total || r.Day != b.Day || r.Protocol != "4-m walk") {
			t.Errorf("%s: result %v, %v", test.name, r, ok)
		}
	}
}

func TestBatteryValidate(t *testing.T) {
	whole := battery("10", "10", "10", walked(function.Walk4m, "4"), "10")
	for _, test := range []struct {
		name     string
		change   func(*function.Battery)
		path     string
		category error
	}{
		{"nothing", func(b *function.Battery) { *b = function.Battery{} }, "/side_by_side/how", field.ErrMissing},
		{"day", func(b *function.Battery) { b.Day = -1 }, "/day", field.ErrOutOfRange},
		{"semi-tandem not told", func(b *function.Battery) { b.SemiTandem = function.Stand{} }, "/semi_tandem/how", field.ErrMissing},
		{"tandem not told", func(b *function.Battery) { b.Tandem = function.Stand{} }, "/tandem/how", field.ErrMissing},
		{"tandem without time", func(b *function.Battery) { b.Tandem.Time = function.Amount{} }, "/tandem/time", field.ErrMissing},
		{"tandem of an hour", func(b *function.Battery) { b.Tandem.Time = amt("3600 s") }, "/tandem/time", field.ErrOutOfRange},
		{"arms in a stand", func(b *function.Battery) { b.Tandem = function.Stand{How: function.UsedArms} }, "/tandem/how", field.ErrConflict},
		{"walk as speed", func(b *function.Battery) { b.Walk.Value = amt("0.8 m/s") }, "/walk/value", field.ErrConflict},
		{"walk is no walk", func(b *function.Battery) { b.Walk = done(function.TimedUpAndGo, "9 s") }, "/walk/test", field.ErrConflict},
		{"stands of 30 s", func(b *function.Battery) { b.Stands = done(function.ChairStand30, "9 reps") }, "/stands/test", field.ErrConflict},
		{"another day", func(b *function.Battery) { b.Stands.Day = 5 }, "/stands/day", field.ErrConflict},
		{"walk not given", func(b *function.Battery) { b.Walk = function.Result{} }, "/walk/test", field.ErrMissing},
	} {
		t.Run(test.name, func(t *testing.T) {
			b := whole
			test.change(&b)
			wants(t, b.Validate(), test.path, test.category)
			_, err := b.Score()
			wants(t, err, test.path, test.category)
		})
	}
}

// A longer hold, a faster walk or faster stands never score lower.
func TestBatteryIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		seconds := func(name string, low, high int) string {
			return fmt.Sprintf("%d.%02d", rapid.IntRange(low, high-1).Draw(t, name), rapid.IntRange(0, 99).Draw(t, name+" hundredths"))
		}
		course := rapid.SampledFrom([]function.Test{function.Walk4m, function.Walk3m, function.Walk8ft}).Draw(t, "course")
		draw := func() function.Battery {
			return battery(seconds("side", 0, 12), seconds("semi", 0, 12), seconds("tandem", 0, 12), walked(course, seconds("walk", 2, 12)), seconds("stands", 8, 70))
		}
		worse, better := draw(), draw()
		order := func(a, b *function.Amount, more bool) {
			if (a.Number() > b.Number()) == more {
				*a, *b = *b, *a
			}
		}
		order(&worse.SideBySide.Time, &better.SideBySide.Time, true)
		order(&worse.SemiTandem.Time, &better.SemiTandem.Time, true)
		order(&worse.Tandem.Time, &better.Tandem.Time, true)
		order(&worse.Walk.Value, &better.Walk.Value, false)
		order(&worse.Stands.Value, &better.Stands.Value, false)
		a, b := units.Must(worse.Score()), units.Must(better.Score())
		if a.Balance.Number() > b.Balance.Number() || a.Walk.Number() > b.Walk.Number() || a.Stands.Number() > b.Stands.Number() || a.Band > b.Band {
			t.Fatalf("%v scores %v, the better %v scores %v", worse, a.Total, better, b.Total)
		}
	})
}
