package function_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"example.org/posology/screening/function"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// back returns v after a trip through JSON.
func back[T any](t testing.TB, v T) T {
	t.Helper()
	text, err := json.Marshal(v)
	if err != nil {
		t.Fatal(err)
	}
	var got T
	if err := field.Decode(text, &got, field.Strict); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return got
}

func roundTrips[T any](t testing.TB, v T) {
	t.Helper()
	if got := back(t, v); !reflect.DeepEqual(got, v) {
		t.Errorf("%+v came back as %+v", v, got)
	}
}

// keepsText is roundTrips for values that hold an empty list, which is written
// as none is.
func keepsText[T any](t testing.TB, v T) {
	t.Helper()
	was, is := string(units.Must(json.Marshal(v))), string(units.Must(json.Marshal(back(t, v))))
	if was != is {
		t.Errorf("%s came back as %s", was, is)
	}
}

func TestRoundTrips(t *testing.T) {
	grip := done(function.Grip, "31 kg")
	grip.Hand, grip.Try, grip.Protocol, grip.Trials = function.Dominant, 2, "hydraulic", []function.Amount{amt("30 kg"), amt("31 kg")}
	nought := done(function.ChairStand30, "0 reps")
	for _, r := range []function.Result{{}, grip, nought, {Test: function.Walk8ft, How: function.Refused}} {
		roundTrips(t, r)
	}
	roundTrips(t, units.Must(grip.Score()))
	for n := range function.Norms() {
		roundTrips(t, n)
	}
	b := battery("10", "10", "4", walked(function.Walk3m, "4.2"), "12.5")
	roundTrips(t, b)
	roundTrips(t, units.Must(b.Score()))
	for _, s := range compare(t, grip, body.Male, 72) {
		roundTrips(t, s)
	}
	roundTrips(t, change(t, grip, with(later(grip, "31 kg"), func(r *function.Result) { r.Try = 3 }), body.Male, 72))
	text, _ := json.Marshal(nought)
	if want := `{"test":"30-s chair stand","day":"2026-03-02","how":"done","value":"0 reps"}`; string(text) != want {
		t.Errorf("%s, want %s", text, want)
	}
}

func TestJSONIsStrict(t *testing.T) {
	var r function.Result
	err := field.Decode([]byte(`{"test":"grip","how":"maybe","value":"31","side":"right","colour":1,"side":"left"}`), &r, field.Strict)
	wants(t, err, "/how", field.ErrUnknown)
	wants(t, err, "/value", field.ErrSyntax)
	wants(t, err, "/colour", field.ErrUnknown)
	wants(t, err, "/side", field.ErrDuplicate)
	for _, v := range []any{new(function.Battery), new(function.BatteryScore), new(function.Norm), new(function.Score), new(function.NormAnswer), new(function.ChangeAnswer)} {
		wants(t, field.Decode([]byte(`{"colour":1}`), v, field.Strict), "/colour", field.ErrUnknown)
	}
}

// Whatever decodes can be scored, compared and marshalled without a panic, and
// what was valid stays so.
func FuzzResult(f *testing.F) {
	for _, seed := range []string{
		`{"test":"grip","day":"2026-03-02","how":"done","value":"31 kg","side":"right","trials":["30 kg","31 kg"]}`,
		`{"test":"grip","how":"done","value":"00 kg","side":"right","trials":[]}`,
		`{"test":"4-m walk","how":"done","value":"4.82 s"}`,
		`{"test":"30-s chair stand","how":"used arms","value":"0 reps"}`,
		`{"test":"frailty level","how":"unable"}`, `{}`, `null`, `{"test":"timed up and go","value":"-1 s"}`,
	} {
		f.Add(seed, uint8(1), uint8(70))
	}
	f.Fuzz(func(t *testing.T, text string, sex, age uint8) {
		var r function.Result
		if field.Decode([]byte(text), &r, field.Strict) != nil {
			return
		}
		if r.Validate() != nil {
			if _, err := function.AgainstNorms(r, body.Sex(sex), body.Age(age)); err == nil {
				t.Errorf("%s is bad and compares", text)
			}
			return
		}
		keepsText(t, r)
		if all, err := function.AgainstNorms(r, body.Sex(sex), body.Age(age)); err == nil && len(all) == 0 {
			t.Errorf("%s: no answer", text)
		}
		if v, err := function.ChangeBetween(r, r, body.Sex(sex), body.Age(age)); err == nil {
			roundTrips(t, v)
		}
	})
}

func FuzzBattery(f *testing.F) {
	seed, _ := json.Marshal(battery("10", "10", "4", walked(function.Walk3m, "4.2"), "12.5"))
	f.Add(string(seed))
	f.Add(strings.Replace(string(seed), "done", "unable", 1))
	f.Fuzz(func(t *testing.T, text string) {
		var b function.Battery
		if field.Decode([]byte(text), &b, field.Strict) != nil {
			return
		}
		s, err := b.Score()
		if (err == nil) != (b.Validate() == nil) {
			t.Errorf("%s: %v", text, err)
		}
		if err == nil {
			roundTrips(t, s)
			if !s.Total.IsZero() && (s.Total.Number() < 0 || s.Total.Number() > 12 || s.Band == 0) {
				t.Errorf("%s: %v, %v", text, s.Total, s.Band)
			}
		}
	})
}

func FuzzAmount(f *testing.F) {
	for _, seed := range []string{"8.86 s", "-0 kg", "0.000001 m/s", "999999999.999999 %", "1 ", " s"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		a, err := function.ParseAmount(text)
		if err != nil {
			return
		}
		if again, err := function.ParseAmount(a.String()); err != nil || again != a {
			t.Errorf("%q is %v and then %v, %v", text, a, again, err)
		}
	})
}
