package screening

import (
	"strings"

	"example.org/posology/units/evidence"
)

// Codes of reasons.
const (
	reasonPrefix    evidence.Code = "screening."
	askPrefix       evidence.Code = "screening.ask."
	unaskedPrefix   evidence.Code = "screening.not-asked."
	branchPrefix    evidence.Code = "screening.branch."
	adaCode         evidence.Code = "screening.diabetes-start"
	togetherCode    evidence.Code = "screening.flags-together"
	clearanceCode   evidence.Code = "screening.clearance-counted"
	voidCode        evidence.Code = "screening.clearance-not-counted"
	restrictionCode evidence.Code = "screening.restriction"
	lapsedCode      evidence.Code = "screening.clearance-lapsed"
	nothingCode     evidence.Code = "screening.nothing-found"
)

// Variants of the reason of an entry or branch.
const (
	plainly       evidence.Code = ""
	unsurely      evidence.Code = ".unsure"
	laterOn       evidence.Code = ".later"
	withClearance evidence.Code = ".clearance"
	vigorously    evidence.Code = ".vigorous"
)

// byRoute is what a client reads where no text of its own is given.
var byRoute = [...]string{
	NoRoute:   "",
	Tell:      "Thank you for telling us. Please mention our training when you next see your doctor.",
	AskFirst:  "Please ask your doctor before we add weight; this is routine, and here is the question to ask.",
	SameDay:   "Please see a doctor today, and leave exercise until then.",
	Emergency: "Please call the emergency services now, and leave exercise.",
}

const (
	oneMoreQuestion = "We would like to ask about one more thing before we go on."
	withinAgreement = "Your doctor has agreed to this; we keep to what was agreed."
)

// fixedWords are the wordings of codes that stand for no entry or question.
var fixedWords = evidence.Words{
	adaCode:                 {Clinician: "ADA 2016 asks for no clearance here, as light or moderate effort no harder than brisk walking is wanted; ACSM 2015 does (branch N2). Both stand; the joined outcome follows ACSM."},
	togetherCode:            {Client: byRoute[SameDay], Clinician: "Several signs of the spine point to one cause: urgent referral."},
	togetherCode + unsurely: {Client: oneMoreQuestion, Clinician: "Several signs of the spine may point to one cause, some of them unsure: settle them first."},
	clearanceCode:           {Clinician: "Clearance by {who} of {day}, in force until {until}, counted for {scope}, up to {intensity} effort."},
	voidCode:                {Clinician: "Clearance by {who} of {day} not counted: {why}."},
	restrictionCode:         {Client: "We keep to the limits that you were given.", Clinician: "Restriction by {author}, {region}, in force."},
	lapsedCode:              {Client: oneMoreQuestion, Clinician: "A clearance that counted lapsed after {day}: assess again."},
	nothingCode: {
		Client:    "We found no reason for caution in what you told us. Please stop and ask if your chest hurts, you feel faint or oddly out of breath, or something hurts sharply. Your doctor's advice comes first.",
		Clinician: "No caution was found in what was answered. Local rules and a licensed clinician decide. Stop for chest pain, faintness, unusual breathlessness or sharp pain.",
	},
	branchPrefix + "N1":                 {Clinician: "Preparticipation branch N1 (not active, no disease, no symptoms): {need}; begin light to moderate."},
	branchPrefix + "A1":                 {Clinician: "Preparticipation branch A1 (active, no disease, no symptoms): {need}."},
	branchPrefix + "N2":                 {Client: byRoute[AskFirst], Clinician: "Preparticipation branch N2 (not active, known disease): {need}. Until then unloaded practice."},
	branchPrefix + "N2" + withClearance: {Client: withinAgreement, Clinician: "Preparticipation branch N2 (not active, known disease): {need}, given; light to moderate, built as tolerated."},
	branchPrefix + "A2":                 {Client: byRoute[Tell], Clinician: "Preparticipation branch A2 (active, known disease): {need}. Moderate effort may go on."},
	branchPrefix + "A2" + vigorously:    {Client: "Please ask your doctor before you train hard; until then we keep it moderate.", Clinician: "Preparticipation branch A2 (active, known disease), vigorous effort wanted: {need}. Moderate effort may go on."},
	branchPrefix + "N3":                 {Client: "Please have a doctor look at this before you exercise.", Clinician: "Preparticipation branch N3 (not active, symptoms): {need}. No exercise until then."},
	branchPrefix + "N3" + withClearance: {Client: withinAgreement, Clinician: "Preparticipation branch N3 (not active, symptoms): {need}, given; light to moderate, built as tolerated."},
	branchPrefix + "A3":                 {Client: "Please pause your exercise and have a doctor look at this first.", Clinician: "Preparticipation branch A3 (active, symptoms): {need}."},
	branchPrefix + "A3" + withClearance: {Client: withinAgreement, Clinician: "Preparticipation branch A3 (active, symptoms): {need}, given; return and progress as tolerated."},
}

// Words returns a fresh table of the wording of every reason this package
// gives: for the client short, and empty where there is nothing to read; for
// the clinician the rule and what follows here.
func Words() evidence.Words {
	w := evidence.Words{}
	for code, wording := range fixedWords {
		w[code] = wording
	}
	for i := range entries {
		entries[i].words(w)
	}
	for i := range questions {
		q := &questions[i]
		w[askPrefix+evidence.Code(q.code)] = evidence.Wording{Client: q.client, Clinician: q.clinician}
		if _, list := unasked[q.code]; list {
			w[unaskedPrefix+evidence.Code(q.code)] = evidence.Wording{Client: oneMoreQuestion, Clinician: q.clinician + " Every item of it counts as not known; no exercise until it is asked."}
		}
	}
	return w
}

// words adds the wordings of an entry.
func (e *entry) words(w evidence.Words) {
	code := reasonPrefix + evidence.Code(e.code)
	told := func(follows effect) evidence.Wording {
		client := e.client
		if client == "" {
			client = byRoute[follows.route]
		}
		return evidence.Wording{Client: client, Clinician: upper(e.meaning) + ". Source: " + e.from.says + ". Here: " + follows.String() + "."}
	}
	w[code] = told(e.effect)
	w[code+unsurely] = evidence.Wording{Client: oneMoreQuestion,
		Clinician: "Not known: " + e.meaning + ". Counts as yes until it is: " + e.effect.softened().String() + "."}
	if e.dated != nil {
		w[code+laterOn] = told(e.dated.later)
	}
	if e.released != nil {
		w[code+withClearance] = evidence.Wording{Client: withinAgreement,
			Clinician: upper(e.meaning) + ", with a clearance in force that names it: " + e.released.String() + "."}
	}
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
