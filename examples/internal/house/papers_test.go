package house_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

var (
	coded = regexp.MustCompile(`[a-z0-9]_[a-z0-9]|\b(screening|dose|progression|exercise|onerm)\.[a-z]`)
	empty = regexp.MustCompile(`(?m)^\s*-\s*$`)
	// step finds a sentence that lets somebody take more than is named.
	step = regexp.MustCompile(`next weight up|try the next weight|time for the next weight`)
	// look finds one that lets them look for a load.
	look = regexp.MustCompile(`next weight up|try the next weight`)
	// goOn are sentences for people whom nothing holds.
	goOn = regexp.MustCompile(`You may go on|we build on that|go back to it|Well done|raining goes on|raining begins|next weight`)
	// numbered finds where each exercise begins.
	numbered = regexp.MustCompile(`(?m)^\d+\. `)
	mass     = regexp.MustCompile(`\d+(\.\d+)? kg`)
)

// What the pages of people say, whatever the case.
func TestPapers(t *testing.T) {
	for _, l := range leaves(t) {
		t.Run(l.name, func(t *testing.T) {
			checkWords(t, l)
			checkLimits(t, l)
			checkHeld(t, l)
			checkItems(t, l)
			checkReasons(t, l)
		})
	}
}

// checkWords looks for codes of the library and bullets without words.
func checkWords(t *testing.T, l leaf) {
	t.Helper()
	for reader, text := range l.pages {
		people := reader == "client" || reader == "doctor"
		if found := coded.FindString(text); people && found != "" {
			t.Errorf("the %s reads %q", reader, found)
		}
		if empty.MatchString(text) {
			t.Errorf("an empty bullet for %s", reader)
		}
	}
	if n := strings.Count(l.pages["doctor"], "Until I hear from you") + strings.Count(l.pages["doctor"], "Until then"); n > 1 {
		t.Errorf("the doctor reads %d times what goes on meanwhile", n)
	}
}

// checkLimits looks for every mass that somebody set, with who set it and where.
func checkLimits(t *testing.T, l leaf) {
	t.Helper()
	for _, m := range l.screening.Limits.Masses {
		wants := []string{m.Max.String(), m.Author, m.Region.String()}
		if m.Side != body.Both {
			wants = append(wants, m.Side.String())
		}
		for reader := range l.pages {
			for _, want := range wants {
				if !strings.Contains(l.flat(reader), want) {
					t.Errorf("%s does not bring %q", reader, want)
				}
			}
		}
	}
}

// checkHeld looks for sentences that say go on to those who are held.
func checkHeld(t *testing.T, l leaf) {
	t.Helper()
	if l.screening.Meanwhile <= screening.WithinLimits {
		return
	}
	for _, reader := range []string{"client", "doctor"} {
		if found := goOn.FindString(l.flat(reader)); found != "" {
			t.Errorf("meanwhile %s, and the %s reads %q", l.screening.Meanwhile, reader, found)
		}
	}
}

// checkItems looks at what the client reads of each exercise.
func checkItems(t *testing.T, l leaf) {
	t.Helper()
	before, after, _ := strings.Cut(l.pages["client"], "WHAT YOU DO EACH TIME")
	parts := numbered.Split(after, -1)
	for i, item := range l.items {
		ex, _ := exercise.Standard().Get(item.Exercise)
		if l.screening.Limits.Avoid.Has(body.FloorTransfer) && ex.Demands.Has(body.FloorTransfer) {
			t.Errorf("%s for somebody who is not to get down to the floor", item.Name)
		}
		if strings.Contains(l.flat("client"), "We leave "+item.Name+" out") {
			t.Errorf("%s is left out, and has a dose", item.Name)
		}
		oneSide := item.OneSided && item.Side != body.Both
		if i+1 >= len(parts) {
			continue // no page for clients
		}
		own := strings.Join(strings.Fields(parts[i+1]), " ")
		offers := step.MatchString(before) || step.MatchString(own)
		f := item.Finding
		if found := f != nil && f.MaxSteps > 0 && item.Next != nil && (f.Ceiling == 0 || item.Next.To.Each() <= f.Ceiling); offers && !found && !rises(own) {
			t.Errorf("%s: the client is offered a step, and there is none", item.Name)
		}
		if looks := look.MatchString(before) || look.MatchString(own); looks && l.profile.Setting <= screening.Alone {
			t.Errorf("%s: somebody alone is offered a step", item.Name)
		}
		if oneSide && (strings.Contains(own, "each side") || !strings.Contains(own, item.Side.String()+" side only")) {
			t.Errorf("%s is for the %s side alone, and the client reads %q", item.Name, item.Side, own)
		}
		checkMasses(t, l, item, own)
	}
}

// checkMasses looks for a weight above the most of an exercise, or outside of the
// kit; the masses of what others have asked for may stand there too.
func checkMasses(t *testing.T, l leaf, item dose.Prescription, own string) {
	t.Helper()
	most := item.Most
	if f := item.Finding; f != nil && most == 0 {
		most = f.Ceiling
	}
	if most > 0 && item.Load.Each() > most {
		t.Errorf("%s: %s, and the most is %s", item.Name, item.Load.Each(), most)
	}
	for _, text := range mass.FindAllString(own, -1) {
		m, err := units.ParseMass(text)
		asked := slices.ContainsFunc(l.screening.Limits.Masses, func(limit screening.MassLimit) bool { return limit.Max == m })
		if err != nil || most > 0 && m > most && !asked {
			t.Errorf("%s: the client reads %s, and the most is %s", item.Name, text, most)
		}
	}
}

// rises reports whether the weight named is itself the next one.
func rises(own string) bool { return strings.Contains(own, "time for the next weight") }
