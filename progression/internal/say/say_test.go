package say_test

import (
	"testing"

	"example.org/posology/progression/internal/say"
	"example.org/posology/units/evidence"
)

// What is added to a reason that was given away does not come into the next one.
func TestReasons(t *testing.T) {
	all := say.All([]say.Row{say.That("a.b", say.Rests{"a.fact"}, "you", "they")}, []say.Row{say.That("a.c", nil, "", "{n} more")})
	why := all.Because("a.b")
	why.Facts = append(why.Facts, "another")
	if again := all.Because("a.b"); len(again.Facts) != 1 || again.Facts[0] != "a.fact" {
		t.Errorf("%+v", again)
	}
	words := all.Words()
	if len(words) != 2 || words.Client(why) != "you" || words.Clinician(all.Because("a.c").With(evidence.Count("n", 2))) != "2 more" {
		t.Errorf("%+v", words)
	}
}
