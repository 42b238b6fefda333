package page

import (
	"fmt"

	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Unused prints the tests and sets on which no dose rests, and why.
func (p *Paper) Unused(list []strength.Unused) {
	if len(list) == 0 {
		return
	}
	p.Heading("Tests that are not used")
	for _, u := range list {
		what := "a set with " + u.Load.Short(units.Nearest)
		if u.OneRM > 0 {
			what = "the estimate of " + u.OneRM.Short(units.Nearest)
		}
		p.Led("- ", fmt.Sprintf("%s, %s, %s, %s: %s:", u.Exercise, u.Side, u.Hold, Day(u.Day), what), []evidence.Reason{u.Reason})
	}
}

// WhyUnused are the reasons of such tests.
func WhyUnused(list []strength.Unused) []evidence.Reason {
	var why []evidence.Reason
	for _, u := range list {
		why = append(why, u.Reason)
	}
	return why
}

// OpenTests says in few words that there are such tests.
func OpenTests(list []strength.Unused) []string {
	if len(list) == 0 {
		return nil
	}
	return []string{fmt.Sprintf("tests that are not used: %d", len(list))}
}
