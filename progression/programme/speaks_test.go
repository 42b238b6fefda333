package programme_test

import (
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/week"
	"example.org/posology/progression/programme"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

const learningDay units.Day = 739950

// speaks wants every reason to have facts and words without open slots.
func speaks(t *testing.T, all ...evidence.Reason) {
	t.Helper()
	words := units.Must(evidence.NewLexicon(programme.Words().Copy(), dose.Words().Copy(), week.Words().Copy()))
	for _, why := range all {
		said := words.Clinician(why)
		for _, a := range why.Args {
			if a.Value() == "" {
				t.Errorf("%s gives no %s", why.Code, a.Name)
			}
		}
		if _, ok := words.Wording(why.Code); !ok || strings.ContainsAny(said+words.Client(why), "{}") {
			t.Errorf("%s says %q and %q", why.Code, said, words.Client(why))
		}
		if len(why.Facts) == 0 && why.Code != "dose.stop-and-ask" {
			t.Errorf("%s rests on nothing", why.Code)
		}
	}
}

// roundTrips walks an enumeration past its last value.
func roundTrips[E interface {
	~uint8
	String() string
	MarshalText() ([]byte, error)
}, P interface {
	*E
	UnmarshalText([]byte) error
}](t *testing.T, last E) {
	t.Helper()
	for e := E(0); e < last+3; e++ {
		text, err := e.MarshalText()
		var back E
		valid := e <= last
		if valid != (err == nil) || valid && (P(&back).UnmarshalText(text) != nil || back != e || e.String() != string(text)) {
			t.Errorf("%T %d: %q, %v", e, e, text, err)
		}
		if (text == nil || string(text) == "") != (e == 0 || !valid) {
			t.Errorf("%T %d: %q", e, e, text)
		}
	}
	var e E
	if P(&e).UnmarshalText([]byte("no such")) == nil {
		t.Errorf("%T: an unknown text was read", e)
	}
}
