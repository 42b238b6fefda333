package cases

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/screening"
)

// answers is the vocabulary of the column expected; nil is not compared.
type answers struct {
	Branch     *screening.Branch                `json:"acsm_branch"`
	Clearance  *screening.Need                  `json:"acsm_clearance"`
	AHA        *screening.ContraindicationLevel `json:"aha2007"`
	AHAReasons *codes                           `json:"aha2007_reasons"`
	Day        *screening.DayPlan               `json:"session_day_rules"`
	DayReasons *codes                           `json:"session_day_reasons"`
	RedFlag    *screening.Referral              `json:"red_flag"`
	Cautions   *codes                           `json:"cautions"`
}

// codes is a list in which order does not matter.
type codes []screening.Code

// String prints the list in order, each code once.
func (c codes) String() string {
	texts := make([]string, len(c))
	for i, code := range c {
		texts[i] = string(code)
	}
	slices.Sort(texts)
	return "[" + strings.Join(slices.Compact(texts), " ") + "]"
}

// A Disagreement is a field in which the library answers otherwise than the
// table expects.
type Disagreement struct{ ID, Field, Got, Want string }

// String prints it in one line.
func (d Disagreement) String() string {
	return fmt.Sprintf("%s: %s: got %s, want %s", d.ID, d.Field, d.Got, d.Want)
}

// A comparison gathers what disagrees in one case.
type comparison struct {
	id       string
	compared int
	found    []Disagreement
}

func compare[T fmt.Stringer](c *comparison, field string, want *T, got T) {
	if want == nil {
		return
	}
	c.compared++
	if g, w := said(got), said(*want); g != w {
		c.found = append(c.found, Disagreement{c.id, field, g, w})
	}
}

func said(answer fmt.Stringer) string {
	if text := answer.String(); text != "" {
		return text
	}
	return "(no answer)"
}

// Compare asks every published rule by itself, and returns how many fields the
// case expects something of and those in which the library answers otherwise.
func (c Case) Compare() (compared int, found []Disagreement) {
	// The clearance is "unchanged since": an operation after it does not end it.
	unchanged := c.Profile
	unchanged.Events = nil
	pre, aha := screening.Preparticipation(unchanged), screening.Contraindications(c.Profile)
	day := screening.SessionDay(c.Check, c.Profile)
	sum := comparison{id: c.ID}
	compare(&sum, "acsm_branch", c.want.Branch, pre.Branch)
	compare(&sum, "acsm_clearance", c.want.Clearance, pre.Clearance)
	compare(&sum, "aha2007", c.want.AHA, aha.Level)
	compare(&sum, "aha2007_reasons", c.want.AHAReasons, codes(aha.Reasons))
	compare(&sum, "session_day_rules", c.want.Day, day.Plan)
	compare(&sum, "session_day_reasons", c.want.DayReasons, codes(day.Reasons))
	compare(&sum, "red_flag", c.want.RedFlag, screening.RedFlags(c.Profile))
	compare(&sum, "cautions", c.want.Cautions, codes(screening.Cautions(c.Profile)))
	return sum.compared, sum.found
}
