package main

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// A row counts the people of one finding.
type row struct {
	with    int // it was found in
	stopped int // it alone would let nothing go on
	alone   int // nothing goes on, and without it something would
	held    int // without load, or light and supervised
	sent    int // it sends to ask first or further
	limited int // it goes on, within limits of its own
}

// A tally counts outcomes.
type tally struct {
	people    int
	meanwhile map[screening.Meanwhile]int
	decades   map[body.Age]map[screening.Meanwhile]int
	route     map[screening.Route]int
	branch    map[screening.Branch]int
	need      map[screening.Need]int
	level     map[screening.ContraindicationLevel]int
	referral  map[screening.Referral]int
	plan      map[screening.DayPlan]int
	wider     int
	findings  map[key]*row
	kinds     map[string]*row
	unknown   int // stopped by nothing but what is not known
	open      int // with a question open

	silent     int                                  // of whom every published rule that speaks finds nothing
	silentHeld int                                  // of those, held all the same
	stays      int                                  // of those, whatever comes of what is not known
	staysHeld  int                                  // of these, held
	silentBy   map[string]int                       // why those of them are held who are
	aloneBy    map[key]map[screening.Strictness]int // stopped by one finding alone, by what the strictest rule says
}

func newTally() *tally {
	return &tally{
		meanwhile: map[screening.Meanwhile]int{}, decades: map[body.Age]map[screening.Meanwhile]int{},
		route: map[screening.Route]int{}, branch: map[screening.Branch]int{}, need: map[screening.Need]int{},
		level: map[screening.ContraindicationLevel]int{}, referral: map[screening.Referral]int{}, plan: map[screening.DayPlan]int{},
		silentBy: map[string]int{}, aloneBy: map[key]map[screening.Strictness]int{}, findings: map[key]*row{}, kinds: map[string]*row{},
	}
}

// add takes in the outcome of one person.
func (t *tally) add(p screening.Profile, o screening.Outcome) {
	t.people++
	t.meanwhile[o.Meanwhile]++
	decade := min(p.Age/10*10, 80)
	if t.decades[decade] == nil {
		t.decades[decade] = map[screening.Meanwhile]int{}
	}
	t.decades[decade][o.Meanwhile]++
	t.route[o.Route]++
	t.branch[o.Rules.Preparticipation.Branch]++
	t.need[o.Rules.Preparticipation.Clearance]++
	t.level[o.Rules.Contraindications.Level]++
	t.referral[o.Rules.RedFlags]++
	t.plan[o.Rules.SessionDay.Plan]++
	if len(o.Rules.Wider) > 0 {
		t.wider++
	}
	if len(o.Missing) > 0 {
		t.open++
	}
	if o.Rules.Strictest() == screening.Silent {
		t.silent++
		stays, held := !ruled(p, o), o.Meanwhile > screening.WithinLimits
		if stays {
			t.stays++
		}
		if held {
			t.silentHeld++
			t.silentBy[whyHeld(p, o)]++
		}
		if stays && held {
			t.staysHeld++
		}
	}
	t.findingsOf(o)
}

// findingsOf counts each finding, and each kind of finding once a person.
func (t *tally) findingsOf(o screening.Outcome) {
	stops, known := 0, false
	stopKinds, perKind := map[string]bool{}, map[string]*row{}
	for _, f := range o.Findings {
		if f.Meanwhile != screening.Nothing {
			continue
		}
		stopKinds[kindOf(f)] = true
		if !isBranch(f) { // a branch only says again what its signs say
			stops, known = stops+1, known || f.Known
		}
	}
	for _, f := range o.Findings {
		kind, one := kindOf(f), rowOf(f)
		if f.Meanwhile == screening.Nothing && stops == 1 && !isBranch(f) {
			one.alone = 1
			t.stoppedAlone(keyOf(f), o.Rules.Strictest())
		}
		entry(t.findings, keyOf(f)).plus(one)
		if f.Meanwhile == screening.Nothing && len(stopKinds) == 1 {
			one.alone = 1
		}
		entry(perKind, kind).most(one)
	}
	for kind, r := range perKind {
		entry(t.kinds, kind).plus(*r)
	}
	if stops > 0 && !known {
		t.unknown++
	}
}

// stoppedAlone notes what the strictest published rule says of somebody whom one
// finding alone stops.
func (t *tally) stoppedAlone(k key, v screening.Strictness) {
	if t.aloneBy[k] == nil {
		t.aloneBy[k] = map[screening.Strictness]int{}
	}
	t.aloneBy[k][v]++
}

func rowOf(f screening.Finding) row {
	r := row{with: 1}
	switch {
	case f.Meanwhile == screening.Nothing:
		r.stopped = 1
	case f.Meanwhile > screening.WithinLimits:
		r.held = 1
	case !f.Limits.IsZero():
		r.limited = 1
	}
	if f.Route >= screening.AskFirst {
		r.sent = 1
	}
	return r
}

func entry[K comparable](rows map[K]*row, key K) *row {
	if rows[key] == nil {
		rows[key] = &row{}
	}
	return rows[key]
}

func (r *row) plus(s row) {
	r.with, r.stopped, r.alone = r.with+s.with, r.stopped+s.stopped, r.alone+s.alone
	r.held, r.sent, r.limited = r.held+s.held, r.sent+s.sent, r.limited+s.limited
}

// most joins findings of one kind in one person.
func (r *row) most(s row) {
	r.with, r.stopped, r.alone = max(r.with, s.with), max(r.stopped, s.stopped), max(r.alone, s.alone)
	r.held, r.sent, r.limited = max(r.held, s.held), max(r.sent, s.sent), max(r.limited, s.limited)
}

// A key tells one row of findings from another. That something else holds the
// person makes no other finding of it.
type key struct {
	code    screening.Code
	known   bool
	variant screening.Variant
	branch  bool
}

// keyOf keeps of a finding what it is of.
func keyOf(f screening.Finding) key {
	return key{f.Code, f.Known || isBranch(f), f.Variant, isBranch(f)}
}

// said is what is said of the code.
func (k key) said() string {
	if !k.known {
		return " (not known)"
	}
	return variants[k.variant]
}

var variants = map[screening.Variant]string{
	screening.LookedAt: " (looked at)", screening.LookedAtLater: " (looked at)", screening.LookedAtPast: " (looked at)", screening.LongPast: " (long past)", screening.ByNewerList: " (newer list)", screening.ItsPlace: " (its place)",
	screening.FirstReading: " (once)", screening.LongAgo: " (long ago)", screening.Agreed: " (agreed)", screening.ForVigorous: " (hard effort wanted)", screening.Lesser: " (lesser)"}

// kindOf says which rule or list a finding comes from.
func kindOf(f screening.Finding) string {
	if kind := kindNames[f.Code]; kind != "" && (f.Known || isBranch(f)) {
		return kind
	}
	term, listed := screening.LookUp(f.Code)
	switch {
	case !f.Known:
		return "not known, whatever it is of"
	case !listed:
		return "clearances, restrictions and others"
	}
	return cmp.Or(listNames[term.Kind], term.Kind.String())
}

const (
	signs    = "signs and symptoms, branches N3 and A3"
	disease  = "known disease, branches N2 and A2"
	redFlags = "red flags"
)

// kindNames are of findings that stand on no list.
var kindNames = map[screening.Code]string{
	"N3": signs, "A3": signs, "N2": disease, "A2": disease, "flags-together": redFlags, "flags-chronic": redFlags, "flags-chronic-past": redFlags, "flags-chronic-followed": redFlags,
	"N1": "branches N1 and A1", "A1": "branches N1 and A1",
}

var listNames = map[screening.Kind]string{
	screening.Symptom: signs, screening.Disease: disease, screening.RedFlag: redFlags,
	screening.Condition: "conditions and contraindications", screening.Reading: "pressure, pulse and other readings", screening.Topic: "answers to triggered questions",
}

func isBranch(f screening.Finding) bool { return f.Branch() != 0 }

// name is the code in words, with what is said of it.
func (k key) name() string {
	text := strings.ReplaceAll(string(k.code), "-", " ")
	if k.branch {
		text = "branch " + text
	}
	return text + k.said()
}

// label is what a finding is called in the table.
func (k key) label() string {
	text := strings.TrimSuffix(k.name(), k.said())
	if term, listed := screening.LookUp(k.code); listed {
		text = term.Meaning
	}
	runes := []rune(text)
	if room := labelWidth - len(k.said()); len(runes) > room {
		text = string(runes[:room-1]) + "…"
	}
	return text + k.said()
}

const labelWidth = 46

// sorted returns the keys of rows, those that stop most first.
func sorted[K comparable](rows map[K]*row, name func(K) string) []K {
	return slices.SortedFunc(maps.Keys(rows), func(a, b K) int {
		return cmp.Or(rows[b].stopped-rows[a].stopped, rows[b].held-rows[a].held, rows[b].with-rows[a].with, cmp.Compare(name(a), name(b)))
	})
}
