package reviewpaper

import (
	"fmt"
	"io"
	"slices"

	"example.org/posology/examples/internal/letter"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/units/evidence"
)

// doctorPaper is a letter: what was found, and the questions.
func doctorPaper(w io.Writer, r record.Review) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	if err := toDoctor(r).Write(p); err != nil {
		return err
	}
	return p.Close()
}

func toDoctor(r record.Review) letter.Letter {
	names, _ := waiting(r)
	l := letter.Letter{
		Note: r.Note, Client: r.Client, Task: r.Task, Day: r.Day,
		Opening: fmt.Sprintf("I have reviewed the strength training of %s, %d visits since %s.", r.Client, len(r.Attended.Done), page.Day(r.Attended.Done[0])),
		Profile: r.Profile, Check: r.Today, Outcome: r.Screening, Overdue: r.Overdue,
		Training: func(p *page.Paper) { doctorTraining(p, r) },
		Held:     names, Stopped: r.Coming == nil, Expired: r.Expired,
	}
	if names != "" {
		l.Asks = []string{"Would you please look at what came up in training before this person goes on with it, and tell me whether training may go on, and within which limits?"}
	}
	return l
}

// doctorTraining prints what hurt, showed or was lost during the exercises.
func doctorTraining(p *page.Paper, r record.Review) {
	p.Line("\nWhat came up in training:")
	some := false
	for _, item := range r.Items {
		for _, v := range item.Log {
			some = doctorVisit(p, item.Name, v) || some
		}
	}
	names, why := waiting(r)
	switch {
	case names != "":
		p.Say("- ", "Nothing is prescribed for now of: "+names+".")
		for _, reason := range why {
			if !said(reason) {
				p.Say("    ", p.Clinician(reason))
			}
		}
	case !some:
		p.Line("- nothing in what was recorded")
	}
}

// said reports whether a reason only repeats that screening holds the dose, which
// the letter says with what was found.
func said(r evidence.Reason) bool {
	return slices.ContainsFunc(r.Args, func(a evidence.Arg) bool { return a.Name == "finding" })
}

// doctorVisit prints one exercise of one visit, and reports whether there was anything.
func doctorVisit(p *page.Paper, name string, v progression.Visit) bool {
	why := record.Bodily(v)
	if len(why) == 0 {
		return false
	}
	p.Say("- ", fmt.Sprintf("%s, on %s:", name, page.Day(v.Day)))
	for _, reason := range why {
		p.Say("    ", p.Clinician(reason))
	}
	if text := painText(v.Pain); text != "" {
		p.Say("    ", "Recorded: "+text+".")
	}
	return true
}
