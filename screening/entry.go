package screening

import (
	"slices"

	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// An effect is what follows from one finding. The mapping from what a source
// says to an effect is this module's own, unless the source gives it.
type effect struct {
	route     Route
	meanwhile Meanwhile
	limits    Limits
}

// full returns e with the limits that bind whatever is light and supervised or
// graver, so that a graver finding never drops a limit of a lesser one.
func (e effect) full() effect {
	if e.meanwhile > WithinLimits {
		e.limits = e.limits.Join(lightLimits)
	}
	return e
}

// softened returns e for something that is not known: asking comes first, and
// what may go on is as if the answer were yes.
func (e effect) softened() effect {
	e.route = min(e.route, AskFirst)
	return e
}

func (e effect) join(f effect) effect {
	return effect{max(e.route, f.route), max(e.meanwhile, f.meanwhile), e.limits.Join(f.limits)}
}

// lightLimits are the limits of light and supervised training.
var lightLimits = Limits{MaxFraction: lightFraction, MinReserve: lightReserve, MaxIntensity: Light, LeastSetting: InGroup}

// lightFacts are the facts behind lightLimits.
var lightFacts = []evidence.FactID{lightLoadFact, reserveFact}

// Effects that many entries share.
var (
	nothingFound = effect{NoRoute, WithinLimits, Limits{}}

	tell       = effect{Tell, WithinLimits, Limits{}}
	ask        = effect{AskFirst, WithinLimits, Limits{}}
	askLight   = effect{AskFirst, LightSupervised, Limits{}}
	askNoLoad  = effect{AskFirst, UnloadedPractice, Limits{}}
	askNothing = effect{AskFirst, Nothing, Limits{}}
	seeToday   = effect{SameDay, Nothing, Limits{}}
	emergency  = effect{Emergency, Nothing, Limits{}}
)

func (e effect) with(l Limits) effect {
	e.limits = e.limits.Join(l)
	return e
}

func (e effect) avoiding(ds ...body.Demand) effect {
	return e.with(Limits{Avoid: body.DemandSet(ds...)})
}

// provenance is what a source says of an entry, and how that is known here.
type provenance struct {
	says    string
	source  evidence.SourceID
	via     string
	locator string
	basis   evidence.Basis
}

// An entry is one row of the tables of codes: what the code stands for, what a
// source says of it, and what follows.
type entry struct {
	code    Code
	kind    Kind
	meaning string // for a clinician
	from    provenance
	effect  effect

	finer    *finer  // what further questions make of it
	seen     *seen   // what is left once the physiotherapist has looked; nil: no question takes that look
	lesser   *effect // at the screening with nothing beside that makes it grave: see isLesser; nil: there is no such thing
	beside   []Code  // what makes it grave, where no finer question does
	notKnown *effect // of the list's answer "not known", where a look in the room settles it; nil: as present
	sited    *effect // once its place is known; the place itself is spared too
	dropped  bool    // off the newer of two lists: see [JoinPolicy]
	named    []Code  // further codes by which a clearance may name it
	released *effect // with a clearance that covers it; nil: none counts
	dated    *dated  // what changes once its day is known
	balance  bool    // fainting or falling: no lone standing, overhead or over-the-face work

	level    ContraindicationLevel // on the list of contraindications
	as       Code                  // the list's code, where it differs
	failure  ContraindicationLevel // on the list for chronic heart failure
	wider    bool                  // on the wider list
	cautions []Code                // published cautions
	flag     Referral              // of a red flag that counts by itself
	also     []evidence.FactID     // further facts behind it
	points   string                // serious cause that a sign points to, where one sign alone says little

	row   int                 // in the table of all entries
	known *listedDisease      // the known disease that it names, nil if none
	plain evidence.ReasonCode // of its reason, without a variant
	facts []evidence.FactID   // behind every reason of it
}

// dated says what follows once enough time since the event has passed.
type dated struct {
	weeks, months int // since the event
	later         effect
	next          *dated // and what follows later still
	test          bool   // tests of strength before it say nothing
}

func (e *entry) factID() evidence.FactID { return factPrefix + evidence.FactID(e.code) }
func (e *entry) mapID() evidence.FactID  { return factPrefix + "map." + evidence.FactID(e.code) }

// listed is the code under which the list of contraindications has the entry.
func (e *entry) listed() Code {
	if e.as != "" {
		return e.as
	}
	return e.code
}

var (
	entries = numbered(diseaseEntries, symptomEntries, heartEntries, failureEntries, conditionEntries, moreConditions, triggerEntries, frailtyEntries,
		widerEntries, dailyEntries, redFlags, finerFlags, happenings, readings, moreReadings, lowEntries, floorEntries, finerTopics, topics, moreTopics, stops)
	index = indexEntries()
)

// numbered returns one table of all, with what is worked out once for each row.
func numbered(tables ...[]entry) []entry {
	all := slices.Concat(tables...)
	for i := range all {
		e := &all[i]
		e.row, e.plain = i, reasonPrefix+evidence.ReasonCode(e.code)
		if k, ok := knownDiseases[e.code]; ok {
			e.known = &k
		}
		e.facts = append([]evidence.FactID{e.factID(), e.mapID()}, e.also...)
		if e.balance {
			e.facts = append(e.facts, aloneFact)
		}
	}
	return all
}

// codesWith are the codes of the entries of which something is so.
func codesWith(is func(*entry) bool) []Code {
	var codes []Code
	for i := range entries {
		if is(&entries[i]) {
			codes = append(codes, entries[i].code)
		}
	}
	return codes
}

func indexEntries() map[Code]int {
	at := make(map[Code]int, len(entries))
	for i := range entries {
		at[entries[i].code] = i
	}
	return at
}

// find returns the entry of a code, nil if there is none.
func find(code Code) *entry {
	if i, ok := index[code]; ok {
		return &entries[i]
	}
	return nil
}

// unasked is what follows from a list that was not asked: what would follow if
// every item of it were present.
var unasked = map[Code]effect{
	askDiseases:   joined(Disease).join(joined(Topic)),
	askSymptoms:   joined(Symptom).join(joined(Topic)),
	askRedFlags:   joined(RedFlag).join(joined(Topic)),
	askConditions: joined(Condition).join(joined(Topic)).avoiding(slices.Collect(body.EveryDemand())...),
	askNew:        joined(Symptom).join(joined(RedFlag)),
}

func joined(k Kind) effect {
	all := askNothing
	for i := range entries {
		if entries[i].kind == k {
			all = all.join(entries[i].effect)
		}
	}
	return all.full()
}
