package reviewpaper

import (
	"fmt"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/page"
	"example.org/posology/examples/internal/papers"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/visit"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// recordItem prints one exercise: its log, what is next, what changes, what
// stands in the way and why.
func recordItem(p *page.Paper, n int, item record.Decided, shared []evidence.Reason) {
	d := item.Decision
	p.Line("")
	p.Say(fmt.Sprintf("%d. ", n), strings.ToUpper(item.Name)+": "+overview(item))
	p.Line("")
	for _, v := range item.Log {
		p.Say(fmt.Sprintf("   %-12s", v.Day), visited(v))
	}
	p.Line("")
	if d.Next != nil {
		recordNext(p, *d.Next)
	}
	why := d.Reasons
	if d.Rise != nil {
		p.Say("   step     ", StepText(*d.Rise))
		p.Clinicians("            ", page.Only(d.Rise.Reasons, why))
	}
	if d.Jump != nil {
		p.Say("   after it ", StepText(*d.Jump)+BridgeText(d))
		p.Clinicians("            ", d.Jump.Reasons)
		why = page.Only(why, d.Jump.Reasons)
	} else if d.Next != nil && d.Next.Mode != dose.WithoutLoad && d.Next.Next == nil { // of another exercise, the step is its own
		p.Say("   after it ", "the kit has nothing heavier")
	}
	recordGates(p, d.Gates)
	p.Clinicians("   why      ", papers.Once(why))
	if d.Next != nil {
		p.Clinicians("   heed     ", page.Only(d.Next.Cautions, shared))
		p.Clinicians("   dose     ", page.Only(d.Next.Reasons, shared))
	}
}

// recordGates prints what each gate says; those that nothing stands against share a line.
func recordGates(p *page.Paper, gates []visit.GateAnswer) {
	var open []string
	for _, g := range gates {
		if g.Advice == rule.Raise {
			open = append(open, g.Gate.String())
		}
	}
	if len(open) > 0 {
		p.Say("   gates    ", "nothing against more load from: "+strings.Join(open, ", "))
	}
	for _, g := range gates {
		if g.Advice != rule.Raise {
			p.Led("   gate     ", fmt.Sprintf("%s: %s.", g.Gate, g.Advice), g.Reasons)
		}
	}
}

func recordNext(p *page.Paper, next dose.Prescription) {
	p.Say("   next     ", fmt.Sprintf("%s: %s", next.Name, page.Amount(next)))
	if next.Feel != nil {
		p.Say("   felt     ", "last set: "+page.Felt(next))
	}
	p.Dose(next)
	for _, f := range next.Flags {
		p.Say("   flag     ", f.String())
	}
}

// StepText says how large a step is; its reasons say what is published.
func StepText(j progression.Jump) string {
	text := fmt.Sprintf("%s to %s: %s of the weight held", j.From, held(j.To.Hold(), j.To.Each()), j.External)
	if j.Moved > 0 {
		text += fmt.Sprintf(", %s of all that is moved", j.Moved)
	}
	if j.Within {
		return text + "; within what is published"
	}
	return text + "; beyond what is published for the weight held"
}

// BridgeText says how many repetitions come before the step.
func BridgeText(d progression.Decision) string {
	top, _ := d.Next.Span.Max()
	switch {
	case d.Next.Measure != exercise.Repetitions:
		return ""
	case d.RepsBefore == 0:
		return "; no number of repetitions in the reserve asked shows it"
	case d.RepsBefore > top:
		return fmt.Sprintf("; it would take %d repetitions in reserve to show it, and the range ends at %d", d.RepsBefore, top)
	}
	return fmt.Sprintf("; %d repetitions in reserve, in every set, show it", d.RepsBefore)
}

// visited prints what was asked for and done at one visit.
func visited(v progression.Visit) string {
	text := fmt.Sprintf("asked %d of %d", v.Plan.Sets, v.Plan.Count)
	if v.Plan.Measure != exercise.Repetitions {
		text += " " + v.Plan.Measure.String()
	}
	if v.Plan.Mode != dose.WithoutLoad {
		text += " with " + held(v.Plan.Hold, v.Plan.Load.Each())
	}
	text += "; done"
	if len(v.Sets) == 0 {
		text += " nothing"
	}
	for _, side := range []body.Side{body.Both, body.Left, body.Right} {
		text += sideDone(v, side)
	}
	if pain := papers.PainText(v.Pain); pain != "" {
		text += "; " + pain
	}
	return text
}

// sideDone prints the sets of one side: " left 12, 11 (rir 4, 3)".
func sideDone(v progression.Visit, side body.Side) string {
	var reps, efforts []string
	for _, s := range v.Sets {
		if s.Side != side {
			continue
		}
		reps = append(reps, fmt.Sprint(s.Reps)+otherLoad(v, s))
		efforts = append(efforts, effortText(v, s, len(reps) > 1))
	}
	if len(reps) == 0 {
		return ""
	}
	text := " " + strings.Join(reps, ", ") + " (" + strings.Join(efforts, ", ") + ")"
	if side != body.Both {
		return " " + side.String() + text
	}
	return text
}

// effortText prints "rir 4", and after the first set of a side "4"; of what is held or
// walked how it was rated.
func effortText(v progression.Visit, s setlog.Set, again bool) string {
	text, err := s.Effort.MarshalText()
	switch held := v.Plan.Measure != exercise.Repetitions; {
	case held && s.Effort.IsZero():
		return "not rated"
	case held && s.Effort.Scale() == units.ScaleOMNI:
		return fmt.Sprintf("rated %v of 10", s.Effort.Number())
	}
	if err != nil || len(text) == 0 {
		return "effort not recorded"
	}
	if short, ok := strings.CutPrefix(string(text), "rir "); ok && again {
		return short
	}
	return string(text)
}

func otherLoad(v progression.Visit, s setlog.Set) string {
	each, err := s.Each()
	if err != nil || each == v.Plan.Load.Each() {
		return ""
	}
	return " with " + held(s.Hold, each)
}

// held says what one implement weighs, and that there are two where there are.
func held(h body.Hold, each units.Mass) string {
	if h.Implements() > 1 {
		return each.String() + " each"
	}
	return each.String()
}
