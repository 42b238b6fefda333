package progression

import (
	"fmt"
	"strings"

	"example.org/posology/progression/internal/told"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/rule"
	"example.org/posology/units/evidence"
)

// What an exercise may wait for at a visit.
const (
	Nothing = nothingWaits
	Load    = loadWaits
	New     = newWaits
)

// Waiting is what of an exercise waits for others of the same visit.
type Waiting = waiting

// Holding lists the rows of the two tables that hold, in their order; harder is not
// asked where something lessens.
func Holding(c Course, waits Waiting) (less, more []string, err error) {
	n, _, err := see(&c, waits, nil)
	if n == nil || err != nil {
		return nil, nil, err
	}
	for _, l := range lessens {
		if l.holds(n) {
			less = append(less, l.name)
		}
	}
	for _, r := range harder {
		if len(less) == 0 && !c.Policy.without(r.name) && r.holds(n) {
			more = append(more, r.name)
		}
	}
	return less, more, nil
}

// Decide is Next where something waits.
func Decide(c Course, waits Waiting) (Decision, error) { return decide(&c, waits, nil) }

// Joined is the dose that the rows that lessen ask for, joined from the last to the
// first.
func Joined(c Course) (Decision, error) {
	n, d, err := see(&c, nothingWaits, nil)
	if n == nil || err != nil {
		return d, err
	}
	var asks ask
	for i := range lessens {
		if l := &lessens[len(lessens)-1-i]; l.holds(n) {
			asks |= l.asks
		}
	}
	return n.ease(d, asks)
}

// A TableRow is a row of one of the tables.
type TableRow struct {
	Name  string
	Codes []evidence.ReasonCode
	Makes bool // something harder, and may be taken away
}

// Rows are those of both tables.
func Rows() (less, more []TableRow) {
	for _, l := range lessens {
		less = append(less, TableRow{l.name, l.codes, false})
	}
	for _, r := range harder {
		more = append(more, TableRow{r.name, r.codes, r.mayGo()})
	}
	return less, more
}

// Tables are both tables as the package's comment prints them.
func Tables() (less, more string) {
	for _, l := range lessens {
		less += fmt.Sprintf("//\t%-14s %s → %s%s\n", l.name, l.when, l.does, factsText(l.codes))
	}
	for _, r := range harder {
		does := r.change.String()
		if r.change == NoChange {
			does = "the dose stays"
		}
		more += fmt.Sprintf("//\t%-14s %s → %s%s\n", r.name, r.when, does, factsText(r.codes))
	}
	return less, more
}

// factsText lists the facts behind codes, those of other packages by their code.
func factsText(codes []evidence.ReasonCode) string {
	var list []string
	add := func(text string) {
		text = strings.TrimPrefix(text, "progression.")
		if !strings.Contains(" "+strings.Join(list, " ")+" ", " "+text+" ") {
			list = append(list, text)
		}
	}
	for _, code := range codes {
		for _, f := range told.Reasons()[code].Facts {
			add(string(f))
		}
		_, ofRule := rule.Words().Copy()[code]
		_, ofProgramme := programme.Words().Copy()[code]
		if ofRule || ofProgramme {
			add(string(code))
		}
	}
	return " (" + strings.Join(list, ", ") + ")"
}
