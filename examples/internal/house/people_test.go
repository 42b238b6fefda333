package house_test

import (
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"
)

var (
	// titled finds a title with a name behind it. Authors of sources bear none.
	titled = regexp.MustCompile(`\b(` + strings.Join(titles, "|") + `)\b\.?[ _-]*\p{Lu}\p{L}+`)
	titles = []string{"Mr", "Mrs", "Ms", "Mx", "Miss", "Dr", "Prof", "Sr"}
	// somebody finds who is named in a case or in a file of answers.
	somebody = regexp.MustCompile(`"?\b(client|who|author|observer|clearance_who)"?: "?([^"\n]+)`)
	lettered = regexp.MustCompile(`^\p{L}+ \p{Lu}($|,)`) // "Client A, 67, a woman"
)

// Invented people have a letter, so that nobody takes them for somebody.
func TestInventedPeopleHaveNoNames(t *testing.T) {
	cases := 0
	committed(t, func(name string, text []byte) {
		number := 0
		isCase := strings.HasPrefix(name, "examples/") && (path.Ext(name) == ".json" || path.Ext(name) == ".txt")
		for line := range strings.Lines(string(text)) {
			number++
			mayName := slices.ContainsFunc(titles, func(title string) bool { return strings.Contains(line, title) })
			if mayName && titled.MatchString(line) {
				t.Errorf("%s:%d names %q; give a letter instead, such as doctor A", name, number, titled.FindString(line))
			}
			if !isCase {
				continue
			}
			found := somebody.FindStringSubmatch(line)
			if found == nil {
				continue
			}
			cases++
			if !lettered.MatchString(strings.TrimSpace(found[2])) {
				t.Errorf("%s:%d: %s %q; want a word and a letter, such as Client A", name, number, found[1], found[2])
			}
		}
	})
	if cases == 0 {
		t.Error("no case names anybody")
	}
}

var says = regexp.MustCompile(`(?m)^( *"note": "an |note: |# )[Ii]nvented`)

// Every case that comes with a program says itself that it is invented.
func TestCasesSayThatTheyAreInvented(t *testing.T) {
	cases := 0
	committed(t, func(name string, text []byte) {
		demo := strings.HasPrefix(name, "examples/internal/demo/") && path.Ext(name) == ".json"
		if !demo && !strings.HasPrefix(path.Base(name), "answers.") && !strings.HasPrefix(path.Base(name), "invented-") {
			return
		}
		cases++
		if !says.Match(text) {
			t.Errorf("%s does not say that it is invented", name)
		}
	})
	if cases < 3 {
		t.Errorf("found %d cases", cases)
	}
}

func TestNamesAreFound(t *testing.T) {
	for _, text := range []string{"Dr " + "Weiss", "Mrs. " + "Weiss", "Prof " + "Älg", "clearance_who: Dr " + "Weiss"} {
		if !titled.MatchString(text) {
			t.Errorf("%s is not found", text)
		}
	}
	for _, text := range []string{"doctor A", "Mr B", "a drop", "Dr. B"} {
		if titled.MatchString(text) {
			t.Errorf("%s is taken for a name", text)
		}
	}
}
