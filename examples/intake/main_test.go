package main

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/field"
)

// typing hands over one line at a time and shows it where it would be seen.
type typing struct {
	lines []string
	shown io.Writer
}

func (t *typing) Read(into []byte) (int, error) {
	if len(t.lines) == 0 {
		return 0, io.EOF
	}
	line := t.lines[0] + "\n"
	t.lines = t.lines[1:]
	io.WriteString(t.shown, line)
	return copy(into, line), nil
}

// conversation runs the program on typed lines and returns all that it prints.
func conversation(t *testing.T, lines []string, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	status := run(append([]string{"-day", "2026-11-25"}, args...), &typing{lines, &out}, &out, &errs)
	if status != 0 || errs.Len() > 0 {
		t.Fatalf("status %d, %s", status, errs.String())
	}
	return out.String()
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	programtest.Golden(t, name, got)
	for i, line := range strings.Split(got, "\n") {
		if len([]rune(line)) > page.Width+2 && !strings.HasPrefix(line, "> ") {
			t.Errorf("%s: line %d is %d columns wide", name, i+1, len([]rune(line)))
		}
	}
}

func TestConversations(t *testing.T) {
	tests := map[string][]string{
		// Somebody well, who makes slips on the way.
		"well.txt": {"old", "seventy", "7", "70", "5", "3", "?", "none", "1 99", "3", "back", "none", "none", "none", "none", "maybe", "no", "", "none", "none",
			"moderate", "0", "132/80", "66", "no", "no", "no", "yes", "", "no", "no", "no"},
		// Diabetes on insulin: units are asked for, readings that cannot be are not taken.
		"diabetes.txt": {"64", "alone", "none", "none", "none", "none", "none", "no", "4", "none", "1", "5 days", "45", "24", "2",
			"no", "yes", "yes", "doctor A", "October", "2026-10", "1", "vigorous", "128/78", "70", "yes", "2", "no", "no", "no", "no", "82", "82 mg", "4.6 mmol/L"},
		// Pain between trainings, an operation, a surgeon's limit in pounds.
		"shoulder.txt": {"68", "4", "none", "none", "none", "none", "none", "no", "none", "2 5", "1", "1 5", "light", "0", "2027-01", "2026-10", "3", "84/146", "146/84", "back", "146/84 mmHg", "72",
			"yes", "surgeon B", "4", "5", "5 lb", "3", "don't know", "not above the shoulder", "no", "no", "no", "yes", "", "yes", "1", "16", "6", "2,5", "yes", "rising", "yes", "no"},
		// Pressure that is up is measured again; counts and oxygen come with their units.
		"readings.txt": {"75", "3", "none", "none", "none", "none", "none", "no", "none", "2 3 10", "1", "lung_disease", "chemotherapy", "1", "0", "184/96", "104", "150/84", "88",
			"yes", "140", "9.8", "9,8 g/dl", "no", "no", "no", "no", "yes", "", "no", "no", "no", "91"},
		"emergency.txt": {"80", "1", "3 4"},
		"stopped.txt":   {"66", "3", "none", "none", "none", "none", "none", "no", "none", "1 4", "stop"},
		"at-once.txt":   {},
	}
	for name, lines := range tests {
		golden(t, name, conversation(t, lines))
	}
}

func TestAnswersFile(t *testing.T) {
	for _, reader := range []string{"client", "clinician"} {
		golden(t, "answers-"+reader+".txt", conversation(t, nil, "-answers", "answers.txt", "-for", reader))
	}
	got := conversation(t, nil, "-answers", "answers.txt", "-json")
	var answer told
	if err := field.Decode([]byte(got), &answer, field.Strict); err != nil {
		t.Fatal(err)
	}
	if o := answer.Outcome; o.Route != screening.AskFirst || o.Meanwhile != screening.WithinLimits || o.Today.IsZero() || !strings.HasPrefix(got, "{") {
		t.Errorf("%v, %v, %v", o.Route, o.Meanwhile, o.Today)
	}
}

// The questions of -json stay out of the JSON.
func TestJSONOfAnInterview(t *testing.T) {
	var out, errs bytes.Buffer
	status := run([]string{"-json", "-day", "2026-11-25"}, strings.NewReader("71\n1\n"), &out, &errs)
	var answer told
	if err := field.Decode(out.Bytes(), &answer, field.Strict); err != nil || status != 0 || !strings.Contains(errs.String(), "How old are you?") {
		t.Errorf("status %d, %v, %s", status, err, errs.String())
	}
	if o := answer.Outcome; answer.Note != "" || o.Meanwhile != screening.Nothing || len(o.Missing) == 0 {
		t.Errorf("hardly asked: %v, %d missing", o.Meanwhile, len(o.Missing))
	}
}

func answersFile(t *testing.T, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "answers.txt")
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	return name
}

func TestBadFiles(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"no colon", "age: 70\nsetting\n", "line 2"},
		{"no answer", "age:\n", "line 1"},
		{"twice", "age: 70\n# again\nage: 71\n", "line 3: age stands in line 1"},
		{"an impossible age", "age: 700\n", "line 1, age"},
		{"no such number", "age: 70\nsetting: 9\n", "line 2, setting"},
		{"no such sign", "age: 70\nsetting: 1\nsigns: 99\n", "line 3, signs"},
		{"no such code", "age: 70\nsetting: 1\nsigns: sneezing\n", "line 3, signs"},
		{"a pressure upside down", "age: 70\nareas: 2\npressure: 1\nblood_pressure: 84/146\n", "line 4, blood_pressure"},
		{"glucose without its unit", "age: 70\ndiseases: 4\ninsulin_or_secretagogue: yes\ntoday: yes\nglucose: 5.4\n", "line 5, glucose: the unit matters"},
	}
	for _, tt := range tests {
		var out, errs bytes.Buffer
		status := run([]string{"-answers", answersFile(t, tt.text)}, nil, &out, &errs)
		if status != 1 || out.Len() > 0 || !strings.Contains(errs.String(), tt.want) {
			t.Errorf("%s: status %d, %q; want 1 and %s", tt.name, status, errs.String(), tt.want)
		}
	}
	var out, errs bytes.Buffer
	if status := run([]string{"-answers", filepath.Join(t.TempDir(), "none")}, nil, &out, &errs); status != 1 || errs.Len() == 0 {
		t.Errorf("no such file: status %d", status)
	}
}

// A line whose question was not asked is named, and changes nothing.
func TestUnusedLinesAreNamed(t *testing.T) {
	var out, errs bytes.Buffer
	status := run([]string{"-answers", answersFile(t, "age: 70\nsymptoms: none\nglucose: 9 mmol/L\nshoe_size: 42\n"), "-json"}, nil, &out, &errs)
	if status != 0 || !strings.Contains(errs.String(), "line 3, glucose") || !strings.Contains(errs.String(), "line 4, shoe_size") || strings.Contains(errs.String(), "age") {
		t.Errorf("status %d, %s", status, errs.String())
	}
	out.Reset()
	if status := run([]string{"-answers", answersFile(t, "setting: 1\n")}, nil, &out, &errs); status != 0 || !strings.Contains(out.String(), "age") {
		t.Errorf("without an age: status %d, %q", status, out.String())
	}
}

func TestFlags(t *testing.T) {
	for _, args := range [][]string{{"-for", "nobody"}, {"-day", "tomorrow"}, {"-nonsense"}, {"extra"}} {
		var out, errs bytes.Buffer
		if status := run(args, strings.NewReader(""), &out, &errs); status != 2 || errs.Len() == 0 {
			t.Errorf("%v: status %d, %q", args, status, errs.String())
		}
	}
}
