package page

import (
	"slices"

	"example.org/posology/dose/choice"
	"example.org/posology/units/evidence"
)

// Tests prints each test of function, its reasons by say: for what it is, what is held of
// norm and change, and what has come of it. It returns the reasons of the tests, which are said with that.
func (p *Paper) Tests(say func(mark string, reasons []evidence.Reason), tests []choice.TaskTest, done []choice.Tested) (said []evidence.Reason) {
	p.Heading("Tests, at the start and at each review")
	for _, k := range tests {
		say("- ", k.Reasons[:1])
		say("  ", k.Reasons[1:])
		said = append(said, k.Reasons...)
		tried := len(done)
		done = slices.DeleteFunc(slices.Clone(done), func(t choice.Tested) bool {
			own := t.Test == k.Test && t.Trial == k.Trial
			if own {
				say("  = ", t.Reasons)
			}
			return own
		})
		if len(done) == tried {
			p.Say("  = ", "No result is kept yet.")
		}
	}
	for _, t := range done {
		p.Say("- ", "Tested before, and not chosen now.")
		say("  = ", t.Reasons)
	}
	return said
}
