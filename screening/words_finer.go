package screening

import (
	"cmp"

	"example.org/posology/units/evidence"
)

// finerWords adds the wordings of what finer questions, days, a place and the policy
// make of an entry.
func (e *entry) finerWords(w evidence.Words, client clientText, rule string) {
	code := e.plain
	thanks := "Thank you for telling us about " + client.about + "."
	e.dated.words(w, code, rule, cmp.Or(client.later, client.says), client.long)
	if f := e.finer; f != nil {
		w[code+lookedAtOnce] = evidence.Wording{Client: cmp.Or(client.known, thanks), Clinician: rule + f.settled.String() + ", as it was looked at and has not changed." + f.standing()}
		f.dated.words(w, code+lookedAtOnce, rule, cmp.Or(client.after, thanks), cmp.Or(client.long, thanks))
	}
	if e.sited != nil {
		w[code+itsPlace] = evidence.Wording{Client: cmp.Or(client.place, thanks), Clinician: rule + e.sited.String() + ", and work of its place alone is held."}
	}
	if e.dropped {
		w[code+byNewerList] = evidence.Wording{Client: cmp.Or(client.newer, thanks), Clinician: rule + "An older list holds it, a newer one does not, and the policy follows the newer: " + byNewer.String() + "."}
	}
}

// standing says that the preparticipation rule counts the sign all the same.
func (f *finer) standing() string {
	if f.explained {
		return " The preparticipation rule counts it as a sign and asks for clearance."
	}
	return ""
}

// words adds those of the stages, for the client as given.
func (d *dated) words(w evidence.Words, code evidence.ReasonCode, rule string, client ...string) {
	for n := 1; d != nil; d, n = d.next, n+1 {
		text := client[min(n, len(client))-1]
		w[code+stageVariants[n]] = evidence.Wording{Client: text, Clinician: rule + d.later.String() + "."}
	}
}
