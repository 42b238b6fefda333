package page

import (
	"fmt"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
)

// Restrictions says to a clinician what was set by others and was in force at the
// assessment: who set it, when, for which region and side, and what it is.
func Restrictions(p screening.Profile) []string {
	var lines []string
	for _, r := range inForce(p) {
		when := ", on a day not given"
		if !r.Day.IsZero() {
			when = ", " + Day(r.Day)
		}
		until := ", until further notice"
		if !r.Until.IsZero() {
			until = ", until " + Day(r.Until)
		}
		lines = append(lines, fmt.Sprintf("%s%s%s: %s: %s", author(r.Author), when, until, place(r.Region, r.Side), strings.Join(contents(r), "; ")))
	}
	return lines
}

// contents says what a restriction forbids.
func contents(r screening.Restriction) []string {
	var parts []string
	if r.MaxMass != nil {
		parts = append(parts, fmt.Sprintf("at most %s %s", r.MaxMass.Short(units.Down), counted(r.Region)))
	}
	if r.NonWeightBearing {
		parts = append(parts, "bears no weight")
	}
	if r.Avoid != 0 {
		parts = append(parts, "avoid "+r.Avoid.String())
	}
	if r.Note != "" {
		parts = append(parts, Quoted(r.Note))
	}
	if len(parts) == 0 {
		return []string{"nothing more was written down"}
	}
	return parts
}

// OwnLimits are the limits without the masses, which [Restrictions] says.
func OwnLimits(o screening.Outcome) screening.Limits {
	o.Limits.Masses = nil
	return o.Limits
}

// Given says to a client what others have asked for, with every mass. The
// movements to leave are those of [LeaveOut].
func Given(o screening.Outcome, p screening.Profile) []string {
	lines := MassLimits(o.Limits)
	for _, r := range inForce(p) {
		if r.NonWeightBearing {
			lines = append(lines, fmt.Sprintf("%s asked: put no weight on %s.", author(r.Author), yours(r.Region, r.Side)))
		}
		if r.Note != "" {
			lines = append(lines, fmt.Sprintf("%s wrote: %s. These words stand above all that is printed here: leave out what goes against them, and ask us.", author(r.Author), Quoted(r.Note)))
		}
	}
	return lines
}

// Worded are the words of others on a part of the body that something with these demands
// works: no rule reads them.
func Worded(p screening.Profile, demands body.Demands) []string {
	var lines []string
	for _, r := range inForce(p) {
		if demand, some := r.Region.Resisted(); some && r.Note != "" && demands.Has(demand) {
			lines = append(lines, fmt.Sprintf("%s's own words come first: %s.", author(r.Author), Quoted(r.Note)))
		}
	}
	return lines
}

// MassLimits says to a client the most that others let them hold.
func MassLimits(l screening.Limits) []string {
	lines := make([]string, len(l.Masses))
	for i, m := range l.Masses {
		lines[i] = fmt.Sprintf("%s asked: no more than %s %s when %s works.", author(m.Author), m.Max.Short(units.Down), counted(m.Region), yours(m.Region, m.Side))
	}
	return lines
}

// inForce are the restrictions that the assessment took into its limits: those
// bind until it is made again.
func inForce(p screening.Profile) []screening.Restriction {
	var list []screening.Restriction
	for _, r := range p.Restrictions {
		if r.Until.IsZero() || r.Until >= p.Day {
			list = append(list, r)
		}
	}
	return list
}

func author(name string) string {
	if strings.TrimSpace(name) == "" {
		return "Somebody not named"
	}
	return strings.ToUpper(name[:1]) + name[1:]
}

// counted says how a mass is counted: in a hand for work of the arms, else in all.
func counted(r body.Region) string {
	switch r {
	case body.Shoulder, body.Elbow, body.WristHand:
		return "in a hand"
	}
	return "in all"
}

// place prints "shoulder, right", or "lower back" where there are no sides.
func place(r body.Region, s body.Side) string {
	if s == body.Left || s == body.Right {
		return fmt.Sprintf("%s, %s", r, s)
	}
	return r.String()
}

func yours(r body.Region, s body.Side) string {
	if s == body.Left || s == body.Right {
		return fmt.Sprintf("your %s %s", s, r)
	}
	return "your " + r.String()
}
