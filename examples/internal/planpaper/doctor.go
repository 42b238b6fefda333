package planpaper

import (
	"fmt"
	"io"

	"example.org/posology/examples/internal/letter"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
)

// doctorPaper is a letter: what was found, and the questions.
func doctorPaper(w io.Writer, r record.Plan) error {
	p, err := page.New(w)
	if err != nil {
		return err
	}
	if err := toDoctor(r).Write(p); err != nil {
		return err
	}
	return p.Close()
}

func toDoctor(r record.Plan) letter.Letter {
	day := max(r.Screening.Day, r.Screening.Today)
	return letter.Letter{
		Note: r.Note, Client: r.Client, Task: r.Task, Day: day,
		Opening: fmt.Sprintf("I saw %s on %s for strength training.", r.Client, page.Day(day)),
		Profile: r.Profile, Check: r.Today, Outcome: r.Screening, Stopped: r.Week == nil,
	}
}
