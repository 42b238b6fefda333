package papers

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/setlog"
	"example.org/posology/examples/internal/page"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// What a client minds is common practice, in our own words: no source is claimed for it.
const (
	withSpray = "For the tightness in your chest: keep the spray or tablets that you were prescribed within reach. At the first tightness stop, sit down and take them as your doctor told you. If it does not pass, call the emergency services. Ask your doctor before you train if you were given none."
	headKnock = "After a knock on the head call for medical help at once, even if you feel well: with a blood thinner it can bleed inside."
	inReach   = "When you train alone: carry a telephone or an alarm, so that you can call from the floor, and tell somebody when you begin and when you are through."
	afterFall = "If you fall: lie still for a moment. If something hurts, or you cannot get up, call for help and keep warm; do not struggle. Stop for that day, also when nothing hurts, and tell us."
)

// minded is what an illness, or training alone, asks to be at hand.
func minded(o screening.Outcome) (lines []string) {
	found := func(codes ...screening.Code) bool {
		return slices.ContainsFunc(o.Findings, func(f screening.Finding) bool { return f.Known && slices.Contains(codes, f.Code) })
	}
	if found("exertional_angina") {
		lines = append(lines, withSpray)
	}
	if found("anticoagulant") {
		lines = append(lines, headKnock)
	}
	if o.Setting <= screening.Alone && found("floor_and_up", "falls_risk", "fall") {
		lines = append(lines, inReach, afterFall)
	}
	return lines
}

// overdone says kindly what was more than asked: days of the last week of training that
// followed each other and were not planned so, and the weights and sets of the last visit.
func (s *sheet) overdone(r record.Review) (lines []string) {
	if r.Coming == nil {
		return nil
	}
	planned := func(d units.Day) bool {
		return slices.ContainsFunc(r.Attended.Sessions, func(p programme.PlannedSession) bool { return p.Day == d })
	}
	done := r.Attended.Done
	var days, more []string
	for i := 1; i < len(done); i++ {
		if done[i]-done[i-1] == 1 && done[i] > done[len(done)-1]-7 && !(planned(done[i]) && planned(done[i-1])) {
			days = append(days, page.Day(done[i]))
		}
	}
	if len(days) > 0 {
		lines = append(lines, fmt.Sprintf("You trained without a day of rest before on: %s. %s Muscles need that time. Please keep to the days named below.",
			strings.Join(days, "; "), s.words.Client(evidence.Because("dose.days-between"))))
	}
	for _, item := range r.Items {
		if n := len(item.Log); n > 0 && len(item.Decision.Queries) == 0 && exceeds(item.Log[n-1]) { // else it is asked about
			more = append(more, item.Name)
		}
	}
	if len(more) > 0 {
		lines = append(lines, "You took more weight, or did more sets, than was asked: "+strings.Join(more, ", ")+". Please keep to the weights and sets named; we raise them together.")
	}
	return lines
}

// exceeds reports whether a set was heavier than all that its plan let be tried, or there
// were more sets than it asked for.
func exceeds(v progression.Visit) bool {
	most, search := v.Plan.Load.Each(), v.Plan.Finding
	if v.Plan.Feel != nil {
		most = max(most, v.Plan.Feel.Load.Each())
	}
	if search != nil && search.MaxSteps > 0 {
		if most = search.Ceiling; most == 0 {
			return false
		}
	}
	of := map[body.Side]int{}
	return slices.ContainsFunc(v.Sets, func(set setlog.Set) bool {
		of[set.Side]++
		each, err := set.Each()
		return err == nil && each > most || of[set.Side] > v.Plan.Sets && (search == nil || search.MaxSteps == 0)
	})
}
