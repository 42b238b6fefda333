// Package screening answers whether a person may start resistance training, at
// all ([Assess]) and today ([Today]), with which limits, and whom to ask.
//
// It flags and routes; it allows nobody anything. NoRoute means that no caution
// was found in what was answered. A clearance is a clinician's act and comes in
// from outside ([Clearance]); local rules and a licensed clinician decide.
//
// # Published rules
//
// Each published rule is a function that answers by itself, from what was
// given, and is shown in [Rules]; rules that disagree are never merged:
//
//	Preparticipation       ACSM 2015 (Riebe 2015): branch and clearance
//	DiabetesStart          ADA 2016: where it disagrees with branch N2
//	Contraindications      AHA 2007 (Williams 2007): none, relative, absolute
//	WiderContraindications Willey and Fiatarone Singh 2003, ungraded
//	RedFlags               IFOMPT 2020 (Finucane 2020), and others by design
//	SessionDay             BACR 2006 and ACSM 2009, ADA 2016, and others
//	HeartFailure           the list for chronic heart failure (Eur Respir Rev)
//	Falls                  CDC 2019
//	PainModel              Thomee 1997, Silbernagel 2007
//	During                 three tables of reasons to end a set, side by side
//	Cautions               conditions: osteoporosis, eyes, pressure, repairs
//	OsteoporosisVersions   Canada, the United Kingdom, Australia, side by side
//
// A disease counts for every rule that asks about it, whichever list it was told
// in: heart failure among the conditions is known heart disease, diseased eyes
// or kidneys of diabetes are diabetes. What is known disease from memory only (a
// pacemaker, angina on effort) counts in the joined outcome and not in the rule's
// own answer. A fracture told by a region of the spine is a vertebral fracture.
//
// # How findings are joined
//
// Every finding has a [Route], a [Meanwhile] and [Limits]. The outcome takes the
// most urgent route, the gravest meanwhile and the tighter of every limit. What
// a source says is a fact with its source; what follows here is this module's
// own mapping, marked as design, and both are named in the reason. That of each code is a
// fact of its own, screening.map and the code; the table gives the kinds:
//
//	finding                                   route      meanwhile
//	sign of cauda equina, stroke              emergency  nothing
//	other red flag that counts by itself      same day   nothing
//	unstable coronary disease, dissection     emergency  nothing
//	acute heart disease                       same day   nothing
//	other absolute contraindication           ask first  nothing
//	chest pain or blackout                    same day   nothing
//	a sign that was looked at, unchanged      ask first  light and supervised; claudication tell
//	branches N3, A3                           ask first  nothing
//	branch N2                                 ask first  unloaded practice
//	branch A2, vigorous effort wanted         ask first  within limits: at most moderate
//	branch A2 otherwise                       tell       within limits
//	branches N1, A1                           none       within limits
//	relative contraindication                 ask first  light and supervised
//	one that a newer list dropped             tell       within limits, unless the policy follows the older
//	condition with published changes          tell       within limits
//	replaced joint, undated or within 12 weeks ask first light and supervised
//	another operation, likewise, not known to have healed  ask first  unloaded practice
//	joint that hurts or is injured, its place known  as graded  within limits: the place is spared
//	looked at by the physiotherapist, nothing left against weights  tell  within limits
//	not known, and a look in the room settles it  physiotherapist looks  within limits: moderate for a sign, else light, or the place is spared
//	something happened since the assessment   ask first  unloaded practice
//	the day by which it was to be renewed is past  ask first  nothing
//
// A sign that was looked at counts for the rule's own branch and not for the joined
// one. Where an older list is stricter than its successor, [JoinPolicy] says which is
// followed; it is kept in the outcome, and the other stays in [Rules]. What
// the strictest of the rules says stands in [Rules.Strictest].
//
// Whatever is light and supervised or graver carries the same limits: at most
// 40 % of the one-repetition maximum, four repetitions in reserve, light effort,
// an instructor beside.
//
// # Not known is not no
//
// What is not known counts as yes for what may go on and for the limits; the
// route is softened to asking first, and the question is named in
// [Outcome.Missing]. A list that was not asked is one finding: nothing goes on
// until it is asked, since asking is cheap. Where a look or a measure in the room
// settles it (a replaced joint, an old break of the spine, swollen ankles, a murmur
// that nobody told of, a joint that hurts), what is not known is looked at and holds
// nobody: published rules count only what is known. Alarm signs, absolute entries and
// what only a doctor can tell hold as their yes does. Whether a pressure is under
// control its reading says. A question that an answer triggers and that stays open is
// missing; one never triggered is not. Activity that is not given counts as none, wanted effort as vigorous, the setting as alone.
// Pressure, pulse, setting and, from 65, the screen for falls are asked of
// everybody and named where they were not; by themselves they hold nobody.
//
// # Finer questions
//
// Where one code hides several people, questions with yes and no tell them apart. A
// yes is the grave one. As long as one is not answered the code reads as the gravest
// of them, which is how records read that were stored before the questions.
// [Profile.Sites] says where a joint hurts: then its place is held and not the person,
// of an arm or a leg on its side alone, where that is told.
//
// # Ways out
//
// Every finding that holds or sends somebody names who can lift it and with what
// ([Finding.Exit]), and the outcome the one answer or paper that would free most
// ([Outcome.Frees]). What a condition speaks for stands in [Outcome.Favours].
//
// # Clearances and restrictions
//
// A clearance counts with a name, a day on or before the visit, a scope, and no
// event since. It may lift relative contraindications, the need of a branch,
// the signs that it names (except chest pain and a faint), and the wait for a
// surgeon's answer, up to the effort it speaks for; it never forbids what could
// go on without it, and then lifts no limit. Absolute contraindications,
// red flags and the day's findings stay. Whatever a clearance in force could lift
// and does not is a question in Missing, until the answer is no. A restriction in force binds every
// dose, named or not.
//
// # What a client reads
//
// The sentences follow the joined outcome: one that lets more go on than it does
// is left out or said otherwise, and who is held reads a sentence of
// what holds them.
//
// # Monotone safety
//
// Whatever becomes worse — a code present, a no that becomes unsure, a list not
// asked, a reading further outside its band, a clearance lost, a restriction,
// less company, a heavier plan — never lowers Meanwhile and never loosens
// Limits. The route may soften where something is no longer known.
//
// # Today
//
// [Today] ends in [Outcome.Plan]: as planned, lighter, settle first, not today
// or help now. A pressure, pulse or oxygen saturation that would stop the day is measured
// again after a rest; both readings are kept and the second counts. A pressure meets
// the lists too, so that it is never looser than at the screening, with the
// clearances that are still in force ([Outcome.Clearances]). Past
// [Outcome.ReviewBy] nobody trains until assessed again. "Settle first" is
// that, or an answer that is missing; a finding that either may lift is marked
// [Finding.Open]. "Lighter" is data in [Limits.Lighten]. Readings that nobody
// else is asked for are triggered: saturation by lung disease or oxygen, counts
// by disease of the blood or chemotherapy, glucose by insulin and its like, and
// whatever a clinician asked the person to measure at home. An anticoagulant
// does not lower the counts and so asks for none.
//
// # Not read
//
// A temperature (fever is asked), HbA1c in mmol/mol, a systolic pressure that
// must not rise more than 20 mmHg in retinopathy, how long a desaturation lasts.
package screening
