package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// A Question is one that was to be asked and was not answered. The words of its
// reason are the question.
type Question struct {
	Code Code `json:"code"`
	// Because is the code that made it necessary; empty where everybody is asked, or
	// nothing of a list.
	Because Code `json:"because,omitzero"`
	// Unsure says that it was asked with its list, and the answer was not known.
	Unsure bool            `json:"unsure,omitzero"`
	Reason evidence.Reason `json:"reason"`
}

// A Prompt is a row of the table of questions: what makes one necessary, and
// how it is answered.
type Prompt struct {
	Code     Code   `json:"code"`
	YesNo    bool   `json:"yes_no,omitzero"`    // answered in [Profile.Answers], else by a field of its own
	Triggers []Code `json:"triggers,omitempty"` // any of which, present or unsure, makes it necessary; none: asked of everyone
	// Reason has the question's words, as that of a [Question] has.
	Reason evidence.Reason `json:"reason"`
}

// Prompts yields the table of questions.
func Prompts() iter.Seq[Prompt] {
	list := make([]Prompt, len(questions))
	for i, q := range questions {
		list[i] = Prompt{q.code, q.yesNo, slices.Clone(q.triggers), askFor(q.code, "").Reason}
		if q.everyone {
			list[i].Triggers = nil
		}
	}
	return slices.Values(list)
}

// A question is a row of the table.
type question struct {
	code      Code
	yesNo     bool
	triggers  []Code
	everyone  bool   // asked without a trigger too
	unless    []Code // any of which, present, answers it
	means     Code   // entry whose effect a yes has
	client    string // the question
	clinician string // why it is asked

	asks evidence.ReasonCode // of its reason
}

// questions are those written out and one for the day of each dated condition.
var questions = asking(writtenQuestions, finerQuestions, dayQuestions(), siteQuestions())

// asking joins the tables and fills in the codes of their reasons.
func asking(tables ...[]question) []question {
	all := slices.Concat(tables...)
	for i := range all {
		all[i].asks = askPrefix + evidence.ReasonCode(all[i].code)
	}
	return all
}

func dayQuestions() []question {
	var list []question
	for i := range entries {
		if e := &entries[i]; e.dated != nil {
			list = append(list, question{code: dayOf(e.code), triggers: []Code{e.code},
				client:    "About " + clientTextOf(e.code).about + ": when was it? A month and a year will do.",
				clinician: "Day of: " + e.meaning + ". Without a day it counts as recent."})
		}
	}
	return list
}

// dayOf is the code of the question for the day of a dated condition.
func dayOf(code Code) Code { return code + "_day" }

// findQuestion returns the row of a code, nil if there is none.
func findQuestion(code Code) *question {
	if i, ok := questionIndex[code]; ok {
		return &questions[i]
	}
	return nil
}

var questionIndex = func() map[Code]int {
	at := make(map[Code]int, len(questions))
	for i := range questions {
		at[questions[i].code] = i
	}
	return at
}()

// asksFor is the code of a question's reason, which some topics that are no question
// have too.
func asksFor(code Code) evidence.ReasonCode {
	if q := findQuestion(code); q != nil {
		return q.asks
	}
	return askPrefix + evidence.ReasonCode(code)
}

// askFor returns the question of a code, asked because of another.
func askFor(code, because Code) Question {
	reason := evidence.Because(asksFor(code))
	if because != "" {
		reason = reason.With(evidence.ID("because", because))
	}
	return Question{Code: code, Because: because, Reason: reason}
}

// unsure is the question that an item of a list leaves open.
func (it item) unsure() Question {
	return Question{Code: it.code, Unsure: true, Reason: it.reason(unsurely)}
}
