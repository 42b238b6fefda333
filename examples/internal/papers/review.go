package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose"
	"example.org/posology/examples/internal/letter"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/record"
	"example.org/posology/progression/rule"
	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// OfReview returns what the papers of a review are made of, with what is also asked for
// from that day on and was not decided on: what begins anew, or comes back.
func OfReview(r record.Review, also ...dose.Prescription) Visit {
	v := Visit{
		note: r.Note, client: r.Client, day: r.Day, profile: r.Profile, check: r.Today, outcome: r.Screening,
		letter: letterOf(r), handout: func(s *sheet) { goesOn(s, r, also) },
	}
	if r.Coming != nil {
		v.items = append(Doses(r), also...)
	}
	return v
}

func letterOf(r record.Review) letter.Letter {
	names, why := Waiting(r)
	l := letter.Letter{
		Note: r.Note, Client: r.Client, Task: r.Task, Day: r.Day,
		Opening: fmt.Sprintf("I have reviewed the strength training of this person: %s.", visits(r)),
		Profile: r.Profile, Check: r.Today, Outcome: r.Screening, Overdue: r.Overdue,
		Training: training(r), Held: names, Stopped: r.Coming == nil, Today: HeldToday(r), Expired: r.Expired, Tests: results(r.Tested),
	}
	if slices.ContainsFunc(why, func(r evidence.Reason) bool { return r.Code == "progression.pain-back" }) {
		l.Asks = append(l.Asks, letter.OfSpine)
	}
	if alarm := Alarms(r.Alarms); alarm != "" {
		l.Opening = alarm + " " + l.Opening
	}
	if slices.ContainsFunc(why, func(r evidence.Reason) bool { return !saidAbove(r) }) {
		l.Asks = append(l.Asks, "Would you please look at what came up before this person goes on with training, and tell me whether it may go on, and within which limits?")
	}
	return l
}

// goesOn says how it goes on.
func goesOn(s *sheet, r record.Review, also []dose.Prescription) {
	s.Title = "For you: how it goes on"
	if len(r.Alarms) > 0 { // the gravest alone
		s.Say(s.texts(r.Alarms[0].Reasons[:1])...)
	}
	over := s.overdone(r)
	s.Say(page.Wanted(aim, r.Task, r.Tasks), done(r, len(over) > 0))
	s.strength(r)
	above := append(over, first(s, r)...)
	s.Listed("First", above...)
	s.asked(r.Screening, letterOf(r))
	if r.Coming == nil {
		return
	}
	var days []string
	for _, d := range r.Coming.Days {
		if d <= r.InForce.Expires { // no plan is followed for longer
			days = append(days, page.Day(d))
		}
	}
	s.Listed("Your days", days...)
	var list []part
	for _, item := range r.Items {
		if next := item.Decision.Next; next != nil {
			p := part{dose: *next, changes: page.Only(whyOf(item.Decision), Queries(item.Decision))}
			if next.Name != item.Name {
				p.was = item.Name
			}
			list = append(list, p)
		}
	}
	s.exercises(append(list, partsOf(also)...), above...)
	if len(r.Coming.Beside) > 0 && r.Coming.Begun {
		s.Section("Beside the lifting")
		s.Say("This is where one begins. If we have shown you a later step, ask us before you go on with it.")
	}
	s.beside(r.Coming.Beside, r.Coming.NotBeside)
	s.tests(r.Tested)
	s.goodToKnow(r.Coming.Reasons, append(Doses(r), also...), r.InForce.Review, r.Day)
}

// visits says how many there were, and since when.
func visits(r record.Review) string {
	if len(r.Attended.Done) == 1 {
		return "one visit, on " + page.Day(r.Attended.Done[0])
	}
	return fmt.Sprintf("%d visits since %s", len(r.Attended.Done), page.Day(r.Attended.Done[0]))
}

// done says kindly how often the person was there, without praise where that was more than asked.
func done(r record.Review, over bool) string {
	text := fmt.Sprintf("You have trained on %d days since %s.", len(r.Attended.Done), page.Day(r.Attended.Done[0]))
	if len(r.Attended.Done) == 1 {
		text = fmt.Sprintf("You have trained once, on %s.", page.Day(r.Attended.Done[0]))
	}
	switch names, _ := Waiting(r); {
	case r.Attended.Answer.Advice == rule.Ease:
		return text + " Thank you for every one of them."
	case names == "" && !over && r.Coming != nil && r.Screening.Meanwhile <= screening.WithinLimits:
		return text + " Well done."
	}
	return text
}

// first says what comes before the next visit.
func first(s *sheet, r record.Review) []string {
	if len(r.Alarms) > 0 { // and nothing beside it but the limits of others
		return append(paused(s, r, s.texts(r.Alarms[0].Reasons[:1])), limits(r.Screening, r.Profile, false)...)
	}
	later := slices.Concat(r.Attended.Answer.Reasons, page.WhyUnused(r.Unused))
	if r.Coming != nil || r.Expired { // nobody is tested while all is held
		later = slices.Concat(r.Overdue, later)
	}
	found := r.Screening
	if names, _ := Waiting(r); names != "" || r.Coming == nil { // no praise beside what holds
		found.Findings = slices.DeleteFunc(slices.Clone(found.Findings), func(f screening.Finding) bool { return f.Route < screening.Tell })
	}
	texts := s.texts(page.ToClient(found))
	texts = append(texts, paused(s, r, texts)...)
	texts = append(texts, without(s.texts(later), texts)...)
	for _, item := range r.Items {
		if ask := s.texts(Queries(item.Decision)); len(ask) > 0 {
			day := item.Log[item.Decision.Queries[0].Visit].Day
			texts = append(texts, fmt.Sprintf("About the %s on %s: %s", item.Name, page.Day(day), strings.Join(ask, " ")))
		}
	}
	return append(texts, limits(r.Screening, r.Profile, r.Coming != nil)...)
}

// paused says why an exercise is not done for now: with its name, unless it
// is so for others too.
func paused(s *sheet, r record.Review, said []string) []string {
	of := map[string][]string{}
	var texts []string
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			continue
		}
		for _, text := range s.texts(item.Decision.Reasons) {
			if len(of[text]) == 0 && !slices.Contains(said, text) {
				texts = append(texts, text)
			}
			of[text] = append(of[text], item.Name)
		}
	}
	for i, text := range texts {
		if names := of[text]; len(names) == 1 && len(r.Items) > 1 {
			texts[i] = fmt.Sprintf("About the %s: %s", names[0], text)
		}
	}
	return texts
}

// Doses are the doses of the next visit.
func Doses(r record.Review) []dose.Prescription {
	var list []dose.Prescription
	for _, item := range r.Items {
		if item.Decision.Next != nil {
			list = append(list, *item.Decision.Next)
		}
	}
	return list
}

// whyOf returns what a client reads of a decision: what stands in the way of more,
// unless the load rises or is still looked for, and the reasons.
func whyOf(d progression.Decision) []evidence.Reason {
	switch {
	case d.Change == progression.MoreLoad || d.Change == progression.FindLoad:
		return d.Reasons
	case d.Action == progression.EaseOff:
		return append(stands(d, rule.Ease), d.Reasons...)
	}
	return append(stands(d, rule.Keep), d.Reasons...)
}

// stands returns what the gates say that ask for so little, or less.
func stands(d progression.Decision, advice rule.LoadAdvice) []evidence.Reason {
	var list []evidence.Reason
	for _, g := range d.Gates {
		if g.Advice >= advice {
			list = append(list, g.Reasons...)
		}
	}
	return list
}

// waits reports whether somebody else has to look at the exercise first.
func waits(item record.Decided) bool { return item.Decision.Action == progression.StopAndRefer }

// HeldToday reports whether the check of the day alone stops all: nobody has to look, and another day may go on.
func HeldToday(r record.Review) bool {
	before, err := screening.Assess(r.Profile, r.Screening.Policy)
	return err == nil && r.Today != nil && len(r.Alarms) == 0 && r.Screening.Meanwhile == screening.Nothing && before.Meanwhile < screening.Nothing
}

// Waiting returns the exercises that somebody else has to look at first, and why.
func Waiting(r record.Review) (names string, why []evidence.Reason) {
	var list []string
	for _, item := range r.Items {
		if waits(item) {
			list = append(list, item.Name)
			why = append(why, item.Decision.Reasons...)
		}
	}
	return strings.Join(list, ", "), Once(why)
}

// ToLook names the exercises that are out until somebody has looked at them.
func ToLook(items []record.Decided) (names []string) {
	for _, item := range items {
		if _, waits := item.Waits(); waits && item.Decision.Action == progression.StopExercise {
			names = append(names, "a look at "+item.Name+", by a doctor or whoever is responsible, before it begins anew")
		}
	}
	return names
}

// Queries are the reasons of what is to be asked about.
func Queries(d progression.Decision) []evidence.Reason {
	var list []evidence.Reason
	for _, q := range d.Queries {
		list = append(list, q.Reason)
	}
	return Once(list)
}

// Once drops reasons that stand twice.
func Once(list []evidence.Reason) []evidence.Reason {
	var kept []evidence.Reason
	for _, r := range list {
		kept = append(kept, page.Only([]evidence.Reason{r}, kept)...)
	}
	return kept
}
