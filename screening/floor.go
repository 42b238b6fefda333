package screening

// floor keeps who may not get up again off the floor, until it is known or a
// clinician is beside.
func (a *assessment) floor() {
	answer := a.p.Answers[askFloor]
	if answer == Yes || a.p.Setting >= InClinic || !findQuestion(askFloor).triggered(a.items) {
		return
	}
	e := find(askFloor)
	if answer == No {
		a.out.add(e.finding(plainly), e.effect)
		return
	}
	a.out.ask(askFor(askFloor, findQuestion(askFloor).because(a.items)))
	a.out.addOpen(e.finding(unsurely), e.effect)
}
