package asking

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// Numbers, codes and doubts are read as the choices they stand for.
func TestPick(t *testing.T) {
	var choices []interview.Choice
	for _, code := range []screening.Code{"cardiac", "renal", "diabetes_t1"} {
		choices = append(choices, interview.Choice{Code: code})
	}
	for text, want := range map[string]string{
		"none": "[] []", "NO": "[] []", "0": "[] []", "1, 3": "[cardiac diabetes_t1] []", "2?": "[] [renal]", "renal 1?": "[renal] [cardiac]",
		"4": "", "0 1": "", "none 1": "", "1 1": "", "1 1?": "", ",": "", "-1": "", "1.5": "", "??": "",
	} {
		list, err := pick(text, choices)
		if got := fmt.Sprint(list.Present, list.Unsure); (err == nil) != (want != "") || err == nil && got != want {
			t.Errorf("%q: %s, %v; want %s", text, got, err, want)
		}
	}
}

// A choice is taken by its name with or without its article.
func TestAmong(t *testing.T) {
	list := slices.Collect(screening.Lifters())
	for i, one := range list {
		for _, answer := range []string{one.String(), strings.TrimPrefix(one.String(), "the "), fmt.Sprint(i + 1)} {
			if got, err := among(list, answer); err != nil || got != i {
				t.Errorf("%q: %d, %v", answer, got, err)
			}
		}
	}
	if _, err := among(list, "the"); err == nil {
		t.Error("an article is no name")
	}
}

func FuzzInterview(f *testing.F) {
	f.Add("70\n3\nnone\nnone\nnone\nno\nnone\nnone\n1\n0\nyes\nno\nno\n")
	f.Add("70\nback\nback\n?\nstop\n")
	f.Add("64\nalone\nnone\nnone\nnone\nyes\n1?\n4 5\n1 2 3 4 5\n")
	f.Fuzz(func(t *testing.T, typed string) {
		talk, err := Converse(units.Must(units.ParseDay("2026-11-25")), bufio.NewScanner(strings.NewReader(typed)), io.Discard, Known{})
		if err != nil || talk.Profile().Age == 0 {
			return // a line too long to read, or no age
		}
		o, err := talk.Outcome()
		if err != nil || !o.Screened() {
			t.Fatal(err)
		}
		TellClient(io.Discard, o)
		TellClinician(io.Discard, o)
	})
}

// Who chooses one twice has slipped, and is asked again: an exercise that ends twice counted as two of those that end.
func TestNoneIsChosenTwice(t *testing.T) {
	for answer, want := range map[string]int{"1, 2": 2, "none": 0, "1, 1": -1, "2, 1, 2": -1} {
		answers, err := Parse("answers", "of: "+answer)
		if err != nil {
			t.Fatal(err)
		}
		if some, _, err := SeveralOf(Filed(answers), "of", "Which?", screening.Lifters()); (err != nil) != (want < 0) || err == nil && len(some) != want {
			t.Errorf("%q: %v, %v", answer, some, err)
		}
	}
}
