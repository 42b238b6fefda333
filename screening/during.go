package screening

import (
	"fmt"
	"iter"

	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A Moment is what shows or is measured during a set.
type Moment struct {
	Signs        []Code         `json:"signs,omitempty"`        // of kind [Sign] or [RedFlag]; in doubt, given
	BP           *BloodPressure `json:"bp,omitempty"`           // on effort, mmHg
	SystolicFall int            `json:"systolic_fall,omitzero"` // mmHg while the work rose, -150 to 200
	SpO2         int            `json:"spo2,omitzero"`          // oxygen saturation, per cent; 0 is not measured
	Pain         *float64       `json:"pain,omitempty"`         // 0 to 10
}

// Validate returns every bad field of m at once.
func (m Moment) Validate() error {
	var bad field.Errors
	for i, code := range m.Signs {
		bad.Add(fmt.Sprintf("/signs/%d", i), code.check(Sign, RedFlag))
	}
	bad.Add("/bp", m.BP.check())
	bad.Add("/systolic_fall", within(m.SystolicFall, -150, 200, " mmHg"))
	bad.Add("/spo2", checkSaturation(m.SpO2))
	bad.Add("/pain", withinIfAny(m.Pain, 0, 10, ""))
	return bad.Err()
}

// StopAction is what to do with a set that is under way.
type StopAction uint8

// Actions, rising in urgency.
const (
	_          StopAction = iota // not asked
	CarryOn                      // "carry on": nothing was met
	EndSet                       // "end the set": end the set and rest
	EndSession                   // "stop for today": no more today
	GetHelp                      // "help now": emergency services now
)

var stopActions = field.NewVocabulary[StopAction]("action", "", "carry on", "end the set", "stop for today", "help now")

// StopActions yields every action, from carrying on to help now.
func StopActions() iter.Seq[StopAction] { return stopActions.All() }

// String returns the action's name, such as "end the set".
func (a StopAction) String() string { return stopActions.Text(a) }

// MarshalText writes what String returns.
func (a StopAction) MarshalText() ([]byte, error) { return stopActions.Marshal(a) }

// UnmarshalText reads what MarshalText writes.
func (a *StopAction) UnmarshalText(text []byte) error { return stopActions.Unmarshal(text, a) }

// A DuringAnswer is the gravest action, with a finding for every row of every
// table that was met: where sources disagree each stands by itself.
type DuringAnswer struct {
	Action   StopAction `json:"action"`
	Route    Route      `json:"route"`
	Findings []Finding  `json:"findings,omitempty"`
}

// During says whether a set that is under way is ended: by the tables of
// reasons to end an exercise test (hfrev2023, jssm_t7, pmj_t5), each with its own
// threshold, by desaturation (Garvey 2012), by pain above the limit of the pain
// model and by every red flag. The errors are those of [Moment.Validate].
func During(m Moment) (DuringAnswer, error) {
	if err := m.Validate(); err != nil {
		return DuringAnswer{}, err
	}
	var o Outcome
	answer := DuringAnswer{Action: CarryOn, Route: NoRoute}
	for _, code := range m.met() {
		e := find(code)
		answer.Action = max(answer.Action, e.action())
		answer.Route = max(answer.Route, e.effect.route)
		o.add(e.finding(plainly), e.effect)
	}
	answer.Findings = o.Findings
	return answer, nil
}

// action is how an entry ends a set.
func (e *entry) action() StopAction {
	switch {
	case e.effect.route == Emergency:
		return GetHelp
	case e.effect.meanwhile == Nothing || e.kind == RedFlag:
		return EndSession
	}
	return EndSet
}

// met lists the rows that are met, signs first.
func (m Moment) met() []Code {
	var list []Code
	for _, it := range inOrder(AskedFor(m.Signs...).appendItems(nil)) {
		list = append(list, it.code)
	}
	meet := func(met bool, code Code) {
		if met {
			list = append(list, code)
		}
	}
	for _, s := range stopPressures {
		meet(s.met(m.BP), s.code)
	}
	meet(m.SystolicFall > stopSystolicFall, stopFall)
	meet(m.SpO2 > 0 && m.SpO2 < spo2Severe, stopSaturation)
	meet(m.SpO2 > 0 && m.SpO2 < spo2Floor, stopSaturation2)
	meet(m.Pain != nil && *m.Pain > painLimit, painHigh)
	return list
}

// A StopRow is a row of the table of reasons to end a set.
type StopRow struct {
	Code   Code            `json:"code"`
	Action StopAction      `json:"action"`
	Says   string          `json:"says"` // by its source, in our own words
	Fact   evidence.FactID `json:"fact"`
}

// StopRows lists the reasons to end a set besides red flags, with each source's
// own threshold.
func StopRows() []StopRow {
	list := make([]StopRow, 0, len(stops))
	for i := range stops {
		e := &stops[i]
		list = append(list, StopRow{e.code, e.action(), e.from.says, e.factID()})
	}
	return list
}
