package screening

import (
	"cmp"
	"fmt"
	"strings"
	"sync"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// Codes of reasons.
const (
	reasonPrefix    evidence.ReasonCode = "screening."
	askPrefix       evidence.ReasonCode = "screening.ask."
	unaskedPrefix   evidence.ReasonCode = "screening.not-asked."
	branchPrefix    evidence.ReasonCode = "screening.branch."
	adaCode         evidence.ReasonCode = "screening.diabetes-start"
	togetherCode    evidence.ReasonCode = "screening.flags-together"
	clearanceCode   evidence.ReasonCode = "screening.clearance-counted"
	voidCode        evidence.ReasonCode = "screening.clearance-not-counted"
	restrictionCode evidence.ReasonCode = "screening.restriction"
	endedCode       evidence.ReasonCode = "screening.restriction-ended"
	happenedCode    evidence.ReasonCode = "screening.happened"
	lapsedCode      evidence.ReasonCode = "screening.assessment-lapsed"
	chronicCode     evidence.ReasonCode = "screening.flags-chronic"
	chronicPastCode evidence.ReasonCode = "screening.flags-chronic-past"
	followedCode    evidence.ReasonCode = "screening.flags-chronic-followed"
	nothingCode     evidence.ReasonCode = "screening.nothing-found"
)

// Variants of the reason of an entry or branch.
const (
	plainly       evidence.ReasonCode = ""
	unsurely      evidence.ReasonCode = ".unsure"
	laterOn       evidence.ReasonCode = ".later"
	withClearance evidence.ReasonCode = ".clearance"
	lookedAtOnce  evidence.ReasonCode = ".looked-at"
	longAfter     evidence.ReasonCode = ".long-after"
	byNewerList   evidence.ReasonCode = ".newer-list"
	itsPlace      evidence.ReasonCode = ".place"
	vigorously    evidence.ReasonCode = ".vigorous"
	onceMore      evidence.ReasonCode = ".again"
	lesserKind    evidence.ReasonCode = ".lesser"
)

// stageVariants are those of the stages of what is dated, from 1.
var stageVariants = [...]evidence.ReasonCode{plainly, laterOn, longAfter}

// variantOf are the variants that reasons have; what is not known is no variant.
var variantOf = map[evidence.ReasonCode]Variant{laterOn: LongAgo, longAfter: LongPast, withClearance: Agreed, lookedAtOnce: LookedAt, lookedAtOnce + laterOn: LookedAtLater, lookedAtOnce + longAfter: LookedAtPast,
	lesserKind: Lesser, byNewerList: ByNewerList, itsPlace: ItsPlace, vigorously: ForVigorous, onceMore: FirstReading}

// finding is one of a code, in one of the variants above.
func finding(code Code, variant evidence.ReasonCode, reason evidence.Reason) Finding {
	return Finding{Code: code, Known: variant != unsurely, Variant: variantOf[variant], Reason: reason}
}

// byRule is a finding of a rule whose reason has no variants.
func byRule(reason evidence.Reason) Finding { return finding(unprefixed(reason.Code), plainly, reason) }

// fixedWords are the wordings of codes that stand for no entry or question.
var fixedWords = evidence.Words{
	adaCode:                 {Clinician: "ADA 2016 asks for no clearance here, as light or moderate effort no harder than brisk walking is wanted; ACSM 2015 does (branch N2). Both stand; the joined outcome follows ACSM."},
	togetherCode:            {Client: "Taken together, what you tell us about your back should be seen by a doctor today.", Clinician: "Several signs of the spine point to one cause: urgent referral."},
	togetherCode + unsurely: {Client: "We would like to ask a little more about your back.", Clinician: "Several signs of the spine may point to one cause, some of them unsure: settle them first."},
	chronicCode:             {Client: "About your back, and the pain you have had for long: we look at it together when you come.", Clinician: "Signs of the spine that are pain of years and the same: look at nerves, night pain and how it goes; training goes on around the spine."},
	chronicPastCode:         {Client: "Please mention the pain to your doctor, because of the cancer you once had; we train around your back.", Clinician: "Signs of the spine with a cancer that is neither treated nor followed: ask the doctor; training goes on around the spine. The published red flags call several signs together an urgent referral."},
	followedCode:            {Client: "Please ask the doctor who looks after your cancer about the pain in your back; until then we practise the movements without weights.", Clinician: "Signs of the spine that are pain of years and the same, with a cancer that is treated or followed: ask the doctor who looks after it; unloaded practice around the spine until the answer. The published red flags call several signs together an urgent referral."},
	clearanceCode:           {Clinician: "Clearance by {who} of {day}, in force until {until}, counted for {scope}, up to {intensity} effort."},
	voidCode:                {Clinician: "Clearance by {who} of {day} not counted: {why}."},
	endedCode:               {Client: "The limit that {author} set you ended on {day}, so it is not kept to here. Please ask whether anything of it is left.", Clinician: "Restriction by {author}, {region}: ended on {day}, and not kept to; ask whether anything of it is left."},
	restrictionCode:         {Client: "We keep to the limits that you were given.", Clinician: "Restriction by {author}, {region}, in force."},
	lapsedCode:              {Client: "It has been a while, so we go through your health questions again before the next training.", Clinician: "The assessment was to be renewed by {day}, after its term or with a clearance that counted in it: assess again; no exercise until then."},
	happenedCode:            {Client: "Something has changed since we planned your training, so we look at everything again before weights.", Clinician: "Since the assessment: {event}. It ends clearances, estimates and the plan: assess again; unloaded practice until then."},
	nothingCode: {
		Client:    "We found no reason for caution in your answers about your health. Please stop and ask if your chest hurts, you feel faint or oddly out of breath, or something hurts sharply. Your doctor's advice comes first.",
		Clinician: "No caution was found in what was answered. Local rules and a licensed clinician decide. Stop for chest pain, faintness, unusual breathlessness or sharp pain.",
	},
	branchPrefix + "N1":                 {Client: "We begin gently and build up step by step.", Clinician: "Preparticipation branch N1 (not active, no disease, no symptoms): {need}; light or moderate at the start."},
	branchPrefix + "A1":                 {Client: "You are used to exercise; we build on that.", Clinician: "Preparticipation branch A1 (active, no disease, no symptoms): {need}."},
	branchPrefix + "N2":                 {Client: "Please ask your doctor before we go beyond the movements alone; this is routine, and about half of all people over forty are asked to.", Clinician: "Preparticipation branch N2 (not active, known disease): {need}. Until then unloaded practice."},
	branchPrefix + "N2" + withClearance: {Client: "Your doctor has agreed that you train; we begin gently, and go no harder than was agreed.", Clinician: "Preparticipation branch N2 (not active, known disease): {need}, given; light or moderate at the start, more as it is borne."},
	branchPrefix + "N1" + lookedAtOnce:  {Client: "We begin gently and build up, with an eye on what was looked at.", Clinician: "Without the signs that were looked at, which the rule counts, preparticipation branch N1 (not active, no disease): {need}; light or moderate at the start. The rule's own answer stands beside."},
	branchPrefix + "A1" + lookedAtOnce:  {Client: "You are used to exercise; we go on from there, with an eye on what was looked at.", Clinician: "Without the signs that were looked at, which the rule counts, preparticipation branch A1 (active, no disease): {need}. The rule's own answer stands beside."},
	branchPrefix + "N2" + lookedAtOnce:  {Client: "Please ask your doctor before we go beyond the movements alone, and mention what was looked at as well.", Clinician: "Without the signs that were looked at, which the rule counts, preparticipation branch N2 (not active, known disease): {need}. Until then unloaded practice. The rule's own answer stands beside."},
	branchPrefix + "A2" + lookedAtOnce:  {Client: "Please tell your doctor that you train; we go on from what you are used to, with an eye on what was looked at.", Clinician: "Without the signs that were looked at, which the rule counts, preparticipation branch A2 (active, known disease): {need}. Moderate effort may go on. The rule's own answer stands beside."},
	branchPrefix + "N2" + byNewerList:   {Client: "We begin lightly and build up; please tell your doctor that you train.", Clinician: "Preparticipation branch N2 (not active, known disease): {need} by ACSM 2015; diabetes alone needs none by ADA 2016, and the policy follows that: light or moderate, no harder than brisk walking."},
	branchPrefix + "A2":                 {Client: "Please tell your doctor that you train; we go on from what you are used to.", Clinician: "Preparticipation branch A2 (active, known disease): {need}. Moderate effort may go on."},
	branchPrefix + "A2" + vigorously:    {Client: "Please ask your doctor before you train hard; until then we keep it moderate at most.", Clinician: "Preparticipation branch A2 (active, known disease), vigorous effort wanted: {need}. Moderate effort may go on."},
	branchPrefix + "N3":                 {Client: "Please have a doctor look at this before you exercise.", Clinician: "Preparticipation branch N3 (not active, symptoms): {need}. No exercise until then."},
	branchPrefix + "N3" + withClearance: {Client: "Your doctor has looked at it and agreed; we begin gently.", Clinician: "Preparticipation branch N3 (not active, symptoms): {need}, given; light or moderate at the start, more as it is borne."},
	branchPrefix + "A3":                 {Client: "Please pause your exercise and have a doctor look at this first.", Clinician: "Preparticipation branch A3 (active, symptoms): {need}."},
	branchPrefix + "A3" + withClearance: {Client: "Your doctor has looked at it and agreed; we go back to it bit by bit.", Clinician: "Preparticipation branch A3 (active, symptoms): {need}, given; back by small steps, more as it is borne."},
}

// unsureBranches are what a client reads of branches whose way out is an answer of their own.
var unsureBranches = map[evidence.ReasonCode]string{
	branchPrefix + "N2":                "Weights wait until what is still open about your health has been answered.",
	branchPrefix + "N2" + lookedAtOnce: "Weights wait until what is still open has been answered; we keep in mind what was looked at.",
	branchPrefix + "N3":                "Please wait with exercise until what is still open about breath, heartbeat and dizziness has been answered.",
	branchPrefix + "A3":                "Please pause your exercise until what is still open about breath, heartbeat and dizziness has been answered.",
}

// Words returns the wording of every reason this package gives: for the client
// short, and empty where there is nothing to read; for the clinician the rule and
// what follows here. It is made once.
func Words() evidence.Lexicon { return lexicon() }

var lexicon = sync.OnceValue(func() evidence.Lexicon { return units.Must(evidence.NewLexicon(words())) })

func words() evidence.Words {
	w := evidence.Words{}
	for code, wording := range fixedWords {
		w[code] = wording
		if strings.HasPrefix(string(code), string(branchPrefix)) && !strings.HasPrefix(string(code), string(branchPrefix)+"N1") && !strings.HasPrefix(string(code), string(branchPrefix)+"A1") {
			w[code+unsurely] = evidence.Wording{Client: cmp.Or(unsureBranches[code], wording.Client), Clinician: wording.Clinician + " What is not known counts as yes here; the rule's own answer, which counts what is known alone, stands beside."}
		}
	}
	for i := range entries {
		entries[i].words(w)
	}
	addHeld(w)
	for i := range questions {
		q := &questions[i]
		w[askPrefix+evidence.ReasonCode(q.code)] = evidence.Wording{Client: q.client, Clinician: q.clinician}
		if _, list := unasked[q.code]; list {
			w[unaskedPrefix+evidence.ReasonCode(q.code)] = evidence.Wording{Client: listTexts[q.code], Clinician: q.clinician + " Every item of it counts as not known; no exercise until it is asked."}
		}
	}
	return w
}

// words adds the wordings of an entry.
func (e *entry) words(w evidence.Words) {
	code := reasonPrefix + evidence.ReasonCode(e.code)
	client := clientTextOf(e.code)
	rule := upper(e.meaning) + ". Source: " + e.from.says + ". Here: "
	read := ""
	again, twice := againTexts[e.code]
	if twice {
		w[code+onceMore] = evidence.Wording{Client: again, Clinician: rule + e.effect.String() + ". {first}: rest and measure again; the second counts."}
	}
	if measuredAgain[e.code] != "" {
		read = " First {first}, second {second}."
	}
	w[code] = evidence.Wording{Client: client.says, Clinician: rule + e.here(e.effect) + read}
	w[code+unsurely] = evidence.Wording{Client: e.unsureText(client), Clinician: "Not known: " + e.meaning + ". " + e.untilKnown()}
	e.finerWords(w, client, rule)
	if e.released != nil {
		w[code+withClearance] = evidence.Wording{Client: "Your doctor has agreed about " + client.about + "; we keep to what was agreed.",
			Clinician: upper(e.meaning) + ", with a clearance in force that names it: " + e.withAgreement() + "." + read}
	}
}

// unsureText is what a client reads of an entry that is not known.
func (e *entry) unsureText(client clientText) string {
	switch {
	case e.code == pressureUntaken: // which is never anything else
		return client.says
	case client.unsure != "":
		return client.unsure
	case e.notKnown != nil && client.option != "":
		return "You were not sure of this: " + client.option + ". We look at it together when you come."
	}
	return "We would like to ask a little more about " + client.about + "."
}

// untilKnown says what an entry comes to that is not known.
func (e *entry) untilKnown() string {
	if e.notKnown != nil {
		return "Until it is looked at: " + e.here(*e.notKnown)
	}
	text := "Counts as yes until it is: " + e.effect.softened().String() + "."
	if e.code == pressureUntaken {
		text = fmt.Sprintf("Counts as above %d/%d mmHg until it is taken, within %d days: %v.", relativeSystolic, relativeDiastolic, pressureDays, e.effect)
	}
	if e.lesser != nil {
		text += " With nothing beside that makes it grave: " + e.here(*e.lesser)
	}
	return text
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
