package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// ToldBeside names, in the reason of a kept step beside lifting, what was told of it last.
const ToldBeside = "told"

const nothingCame = "nothing in what was recorded"

// training says what hurt, showed or was lost during the exercises, each once with the
// exercises in which it did.
func training(r record.Review) []string {
	words, err := record.Words()
	if err != nil {
		return nil // reported by whoever prints
	}
	var lines []string
	of := map[string][]string{} // names, by what was said of them on a day
	for _, item := range slices.Concat(r.Left, r.Items) {
		for _, v := range item.Log {
			for _, text := range cameUp(words, v) {
				text = fmt.Sprintf("on %s: %s", page.Day(v.Day), text)
				if of[text] = append(of[text], item.Name); len(of[text]) == 1 {
					lines = append(lines, text)
				}
			}
		}
	}
	for i, text := range lines {
		lines[i] = strings.Join(of[text], ", ") + ", " + text
	}
	var begun, alarms []evidence.Reason // what the letter begins with
	for _, a := range r.Alarms {
		begun, alarms = append(begun, a.Reasons[0]), append(alarms, a.Reasons...)
	}
	for _, h := range r.Told {
		lines = append(lines, strings.TrimSpace(upper(h.Kind.String())+", on "+page.Day(h.Day)+". "+clinician(words, page.Only(h.Reasons, begun))))
	}
	for _, i := range r.Beside.InForce {
		if len(i.Reasons) == 1 && len(i.Reasons[0].Args) == 1 && i.Reasons[0].Args[0].Name == ToldBeside {
			lines = append(lines, fmt.Sprintf("Beside lifting (%s), told on %s: %s", i.Track, page.Day(i.Last), i.Reasons[0].Args[0].Value()))
		}
	}
	names, why := Waiting(r)
	above, why := strings.Join(lines, " "), page.Only(why, alarms)
	why = slices.DeleteFunc(why, func(r evidence.Reason) bool {
		return saidAbove(r) || strings.Contains(above, page.Dated(words.Clinician(r)))
	})
	switch {
	case names != "" && !HeldToday(r):
		lines = append(lines, strings.TrimSpace("Nothing is prescribed for now of: "+names+". "+clinician(words, why)))
	case len(lines) == 0:
		lines = append(lines, nothingCame)
	}
	return lines
}

// onTheWay says which exercises were stopped, why, and who has looked since, and on which days since the
// assessment, before that of the review, the check allowed no session.
func onTheWay(r record.Record, review record.Review) (lines []string) {
	words, _ := record.Words() // reported by whoever prints
	stopped := map[exercise.ID]bool{}
	for _, e := range append(slices.Clip(r.Entries), record.Entry{Day: review.Next, Items: review.Items, Rests: record.Lengths{Asked: len(r.Asked)}}) {
		for _, item := range e.Items {
			why, waits := item.Waits()
			was := stopped[item.Exercise]
			if stopped[item.Exercise] = waits && item.Decision.Action == progression.StopExercise; was || !stopped[item.Exercise] {
				continue
			}
			text := fmt.Sprintf("%s was stopped from %s on: %s", upper(item.Name), page.Day(e.Day), words.Clinician(why))
			since := r.Asked[min(e.Rests.Asked, len(r.Asked)):]
			if at := slices.IndexFunc(since, func(a record.Asked) bool { return a.Exercise == item.Exercise && a.Looked != nil }); at >= 0 {
				text += fmt.Sprintf(" Looked at by %s on %s, and begun anew.", since[at].Looked.Who, page.Day(since[at].Looked.Day))
			}
			lines = append(lines, text)
		}
	}
	for _, c := range r.Checks {
		before, _ := r.Screening(c.Day) // of a record that was read nothing is wrong
		if o, err := screening.Today(c, before); err == nil && c.Day < review.Day && o.Plan >= screening.NotToday {
			var why []evidence.Reason
			for _, f := range o.Findings {
				if !slices.ContainsFunc(before.Findings, func(b screening.Finding) bool { return b.Code == f.Code }) {
					why = append(why, f.Reason)
				}
			}
			lines = append(lines, fmt.Sprintf("The check of %s allowed no session: %s", page.Day(c.Day), clinician(words, why)))
		}
	}
	return lines
}

// cameUp is what came up at a visit of one exercise: what showed, which may be the same of
// several, apart from what hurt or was lost.
func cameUp(words evidence.Lexicon, v progression.Visit) []string {
	var list []string
	why := record.Bodily(v)
	if len(why) > 0 && why[0].Code == "progression.event" {
		list, why = append(list, words.Clinician(why[0])), why[1:]
	}
	text := clinician(words, why)
	if pain := PainText(v.Pain); v.Pain != nil && pain != "" {
		text += " Recorded: " + pain + "."
	}
	if v.FormLost == screening.Yes {
		text += " The technique gave way."
	}
	if text = strings.TrimSpace(text); text != "" {
		list = append(list, text)
	}
	return list
}

func clinician(words evidence.Lexicon, why []evidence.Reason) string {
	return strings.Join(page.Texts(words.Clinician, why), " ")
}

// saidAbove reports whether a reason only repeats that screening holds the dose and what
// would free it, which the letter says with what was found.
func saidAbove(r evidence.Reason) bool {
	return strings.HasPrefix(string(r.Code), "dose.free-by-") || slices.ContainsFunc(r.Args, func(a evidence.Arg) bool { return a.Name == "finding" })
}

// PainText prints the scores of pain that are above zero.
func PainText(p *screening.Pain) string {
	if p == nil {
		return "pain not recorded"
	}
	var list []string
	some := p.Kind > screening.OrdinaryPain
	for _, s := range [...]struct {
		when  string
		score *float64
	}{{"usual", p.Usual}, {"during", p.During}, {"after", p.After}, {"next morning", p.NextMorning}} {
		if s.score != nil {
			list = append(list, fmt.Sprintf("%s %g", s.when, *s.score))
			some = some || *s.score > 0
		}
	}
	if !some {
		return ""
	}
	where := strings.TrimSpace(fmt.Sprintf("%s %s", p.Side, p.Site))
	if p.Side == body.Both {
		where = fmt.Sprintf("%s, both sides", p.Site)
	}
	return strings.TrimRight(fmt.Sprintf("pain (%s), %s: %s", p.Kind, where, strings.Join(list, ", ")), " ,:")
}
