package simulate_test

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/progression"
	"example.org/posology/progression/internal/given"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/simulate"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// A ledger counts what was seen, so that no check passes for want of cases.
type ledger struct {
	sessions, courses      int
	actions                map[progression.Action]int
	changes                map[progression.Change]int
	hurt, limited, queries int
	between, passed        int // rises with a weight of the kit between, and those that pass one over by more than a tenth
	alone, beside          int // decisions of people alone; steps that waited for somebody
}

// A hundred thousand simulated sessions, a million with -long, with random kits,
// policies, limits, curves, slips, pain and missed visits keep what a decision
// must keep. The checks are written from the sentences, apart from the
// code that decides.
func TestInvariants(t *testing.T) {
	sessions := 100_000
	if *long {
		sessions *= 10
	}
	l := ledger{actions: map[progression.Action]int{}, changes: map[progression.Change]int{}}
	for seed := uint64(1); l.sessions < sessions; seed++ {
		d := draw{rand.New(rand.NewPCG(seed, 2026))}
		s, tr := d.setup(t), d.trainee()
		visits, err := simulate.Run(tr, s, rand.NewPCG(seed, 1))
		if err != nil {
			continue // the first dose is barred: no course
		}
		l.courses++
		l.walk(t, s, visits, seed)
		if t.Failed() {
			t.Fatalf("seed %d: %s, kit %v, policy %+v, limits %+v", seed, s.Request.Exercise.ID, s.Request.Kit.Dumbbells, s.Policy, s.Request.Screening.Limits)
		}
	}
	t.Logf("%d sessions, %d courses; actions %v; changes %v; %d after pain, %d at a limit, %d queries, %d alone, %d waiting for somebody, %d past a weight, %d of them far", l.sessions, l.courses, l.actions, l.changes, l.hurt, l.limited, l.queries, l.alone, l.beside, l.between, l.passed)
	for a := progression.Progress; a <= progression.StopAndRefer; a++ {
		if l.actions[a] == 0 && a != progression.StopExercise { // there nearly always is an easier variant
			t.Errorf("never: %v", a)
		}
	}
	for c := progression.NoChange; c <= progression.HarderVariant; c++ {
		if l.changes[c] == 0 {
			t.Errorf("never: %v", c)
		}
	}
	if l.hurt == 0 || l.limited == 0 || l.queries == 0 || l.alone == 0 || l.beside == 0 || l.between == 0 {
		t.Error("never any pain, limit, query, step that waits for somebody, or weight that is passed over")
	}
}

// walk checks every decision of a run against the visit before it.
func (l *ledger) walk(t *testing.T, s simulate.Setup, visits []simulate.Lived, seed uint64) {
	table := units.Must(s.Request.Kit.Compile(s.Request.Exercise.Hold))
	var before *progression.Visit
	watched, earlier, lifted := s.Request.Technique.Day, map[units.Mass]dose.Prescription{}, units.Mass(0)
	for i, v := range visits {
		if v.Missed {
			continue
		}
		l.sessions++
		if before != nil {
			d := v.Decision
			l.actions[d.Action]++
			l.changes[d.Change]++
			l.queries += len(d.Queries)
			c := check{t, s, table, *before, d, i, earlier, before.Day-watched <= 28, lifted}
			if v.Done.Observer.Made() { // who watches is at hand
				c.s.Request.Screening.Setting = max(c.s.Request.Screening.Setting, screening.WithHelper)
			}
			c.all(l)
		}
		if v.Done.Plan.Sets > 0 {
			checkLimits(t, s, v.Done.Plan)
			before = &visits[i].Done
			for _, done := range before.Sets {
				lifted = max(lifted, units.Must(done.Each()))
			}
			if p := before.Plan; !given.Searches(&p) {
				earlier[p.Load.Each()] = p
			}
			if before.Observer.Made() {
				watched = before.Day
			}
		}
	}
	if last := visits[len(visits)-1]; last.Decision.Action == progression.StopAndRefer {
		staysReferred(t, s, visits)
	} else if last.Decision.Action == progression.ChangeVariant {
		changesOne(t, s, visits)
	}
}

// checkLimits holds a dose to the limits of the screening.
func checkLimits(t *testing.T, s simulate.Setup, p dose.Prescription) {
	limits := s.Request.Screening.Limits
	for _, m := range limits.Masses {
		each := m.Max
		if p.Hold == body.OneEachHand {
			each /= 2
		}
		if p.Load.Each() > each {
			t.Errorf("%v each above the limit %v", p.Load.Each(), each)
		}
	}
	if p.Measure == countsReps && p.Reserve.Least < limits.MinReserve {
		t.Errorf("reserve %v below the limit %v", p.Reserve, limits.MinReserve)
	}
	if f := p.Finding; f != nil && f.MaxSteps > 4 {
		t.Errorf("%d steps in a visit", f.MaxSteps)
	}
	if s.Request.Screening.Meanwhile == screening.LightSupervised && p.Sets > 1 {
		t.Errorf("%d sets where work is to be light and supervised", p.Sets)
	}
}

// A check is of one decision.
type check struct {
	t      *testing.T
	s      simulate.Setup
	table  *equipment.Table
	before progression.Visit
	d      progression.Decision
	at     int
	// earlier holds the last dose of each weight that was not a search.
	earlier map[units.Mass]dose.Prescription
	seen    bool       // somebody watched, at the visit or within four weeks before
	lifted  units.Mass // the heaviest weight so far
}

func (c check) want(holds bool, what string) {
	if !holds {
		p := dose.Prescription{}
		if c.d.Next != nil {
			p = *c.d.Next
		}
		c.t.Errorf("visit %d: %s: %v, %v\nbefore %v × %d × %d, tempo %v, sets %+v\nnow    %v × %d × %d, tempo %v\n%+v", c.at, what, c.d.Action, c.d.Change,
			c.before.Plan.Load.Each(), c.before.Plan.Sets, c.before.Plan.Count, c.before.Plan.Tempo, c.before.Sets, p.Load.Each(), p.Sets, p.Count, p.Tempo, c.d.Reasons)
	}
}

func (c check) all(l *ledger) {
	c.want(c.d.Action != 0 && len(c.d.Reasons) > 0, "no action or no reason")
	c.want((c.d.Change != progression.NoChange) == (c.d.Action == progression.Progress || c.d.Change == progression.HarderVariant), "change and action")
	gone := c.d.Action == progression.StopExercise || c.d.Action == progression.StopAndRefer
	c.want(!gone || c.d.Next == nil, "a dose after stop")
	c.oneChange()
	c.caution(l)
	c.beside(l)
	c.saysWhy()
	c.passesOver(l)
	c.slips()
	for _, r := range c.d.Reasons {
		if r.Code == "progression.limit" {
			l.limited++
		}
	}
}

// Beginners whose body moves with the weight, and a kit in whole kilograms: nearly every rise is to the
// next weight.
func TestNextOfTheKit(t *testing.T) {
	l := ledger{actions: map[progression.Action]int{}, changes: map[progression.Change]int{}}
	for seed := range uint64(80) {
		d := draw{rand.New(rand.NewPCG(seed, 9))}
		s := beginner(t, []string{"dumbbell-sit-to-stand", "dumbbell-calf-raise"}[seed%2], dumbbells(1, 2, 3, 4, 5, 6, 8, 10))
		s.BodyMass = 70 * units.Kilogram
		kg := [...]float64{66, 90}[seed%2] + 40*d.Float64()
		l.walk(t, s, runOf(t, simulate.Typical(units.Must(units.Kilograms(kg))), s, seed), seed)
	}
	if rises := l.changes[progression.MoreLoad]; l.passed == 0 || 10*l.between > rises {
		t.Errorf("%d rises, %d past a weight, %d of them far", rises, l.between, l.passed)
	}
}

// passesOver holds a rise to the next weight of the kit, but for a step of up to ten per cent in the
// hand, and for one past a weight that is said to be spent: its whole range is allowed.
func (c check) passesOver(l *ledger) {
	rise := c.d.Rise
	if rise == nil {
		return
	}
	next, _ := c.table.Next(rise.From)
	if next.To.Each() == rise.To.Each() {
		return
	}
	l.between++
	if rise.External <= 0.1 {
		return
	}
	l.passed++
	said := slices.IndexFunc(rise.Reasons, func(r evidence.Reason) bool { return r.Code == "progression.passed-over" })
	c.want(said >= 0, "a weight of the kit is passed over and nothing says why")
	if said >= 0 {
		top, _ := c.d.Next.Span.Max()
		count, err := strconv.Atoi(rise.Reasons[said].Args[2].Value())
		c.want(err == nil && count >= top, "the weight that is passed over is not spent")
	}
	c.want(rise.Moved > 0 && rise.Moved <= 0.1 && rise.External <= 1, "a large step past a weight")
}

// oneChange counts what became harder.
func (c check) oneChange() {
	if c.d.Next == nil || c.d.Next.Exercise != c.before.Plan.Exercise {
		return
	}
	was, is := c.before.Plan, *c.d.Next
	harder := 0
	for _, more := range []bool{
		is.Load.Each() > was.Load.Each(), is.Sets > was.Sets && !(was.Finding != nil && is.Sets <= c.before.Done()), is.Tempo.Lowering > was.Tempo.Lowering, is.Tempo.Pausing > was.Tempo.Pausing,
		is.Count > was.Count && is.Load.Each() >= was.Load.Each(), is.Finding != nil && was.Finding == nil,
	} {
		if more {
			harder++
		}
	}
	anew := slices.ContainsFunc(c.d.Reasons, func(r evidence.Reason) bool { return r.Code == "progression.return-anew" })
	switch {
	case anew: // a new baseline, in its own range and from the lightest weight
		c.want(is.Load.Each() == c.table.Lightest().Each() && is.Sets == 1, "not from the start")
	case c.d.Action != progression.Progress:
		c.want(harder == 0 || c.known(is), "made harder without progress")
	default:
		c.want(harder <= 1, "more than one thing made harder")
	}
	if c.d.Change == progression.MoreLoad {
		gap, ok := c.table.Next(was.Load.Each())
		within := c.d.Rise != nil && max(c.d.Rise.Moved, c.d.Rise.External) > 0 && (c.d.Rise.Moved > 0 && c.d.Rise.Moved <= 0.1 || c.d.Rise.External <= 0.1)
		second, _ := c.table.Next(gap.To.Each())
		within = within || c.before.Day-c.s.Start <= 35 && is.Load.Each() == second.To.Each() && max(gap.Step, second.Step) <= units.Kilogram // the first five weeks
		c.want(ok && (is.Load.Each() == gap.To.Each() || within) && c.d.Rise != nil && c.d.Rise.To.Each() == is.Load.Each(), "a weight was skipped beyond the published step, or the step is not told")
	}
	if c.d.Change == progression.FindLoad && is.Load.Each() > was.Load.Each() {
		c.want(c.wasDone(is.Load.Each()), "found without being done")
	}
}

// known reports whether a dose after a trial is no more than what was found, or
// than the dose with that weight before the trial.
func (c check) known(is dose.Prescription) bool {
	was, earlier := c.before.Plan, c.earlier[is.Load.Each()]
	again := is.Count <= earlier.Count && is.Tempo.Lowering <= earlier.Tempo.Lowering && is.Tempo.Pausing <= earlier.Tempo.Pausing
	found := is.Load.Each() > was.Load.Each() && c.wasDone(is.Load.Each()) && is.Count <= was.Count && is.Tempo == was.Tempo
	return was.Finding != nil && is.Sets <= max(was.Sets, c.before.Done()) && (again || found)
}

// wasDone reports whether that much was lifted while the load was looked for.
func (c check) wasDone(each units.Mass) bool {
	return c.before.Plan.Finding != nil && slices.ContainsFunc(c.before.Sets, func(s setOf) bool { return units.Must(s.Each()) >= each })
}

// caution holds what must not progress.
func (c check) caution(l *ledger) {
	calm := c.d.Action != progression.Progress && c.d.Change == progression.NoChange
	if p := c.before.Pain; *p.During > 5 || *p.NextMorning > *p.Usual {
		l.hurt++
		c.want(calm && c.d.Action != progression.HoldDose, "pain above 5 or unsettled only held, or worse")
	}
	seen := c.seen && c.before.FormLost == screening.No
	if !seen && c.d.Next != nil && c.d.Next.Exercise == c.before.Plan.Exercise {
		c.want(c.d.Next.Load.Each() <= c.before.Plan.Load.Each() && (c.d.Next.Finding == nil || c.d.Action != progression.Progress), "load rises with technique lost or unseen")
	}
	if len(c.before.Moment.Signs) > 0 {
		c.want(c.d.Action == progression.StopAndRefer, "a sign that ends the session is not referred")
	}
}

// beside holds what waits for somebody at hand, and what nobody has seen yet.
func (c check) beside(l *ledger) {
	if c.d.Next == nil {
		return
	}
	alone, ex := c.s.Request.Screening.Setting == screening.Alone, c.s.Request.Exercise
	steps := c.d.Next.Finding != nil && c.d.Next.Finding.MaxSteps > 0
	c.want(!steps || !alone && (c.seen || c.s.Request.Technique.Made()), "a search alone, or unseen")
	if c.d.Action == progression.ChangeVariant {
		lightest := c.d.Next.Hold == body.Unloaded || c.d.Next.Load.Each() == units.Must(c.s.Request.Kit.Compile(c.d.Next.Hold)).Lightest().Each()
		c.want(lightest && !steps, "a new exercise that is not light")
		return
	}
	if !alone {
		return
	}
	l.alone++
	for _, r := range c.d.Reasons {
		if strings.HasSuffix(string(r.Code), "-beside") {
			l.beside++
			c.want(c.d.Next.Load.Each() <= c.before.Plan.Load.Each(), "a step that waits, taken")
		}
	}
	above := ex.Demands.Has(body.Overhead) || ex.Demands.Has(body.OverFace)
	c.want(!above || c.d.Next.Load.Each() <= c.lifted || c.d.Next.Load.Each() <= c.before.Plan.Load.Each(), "alone, heavier over head or face than ever")
	if c.d.Change == progression.MoreLoad && c.d.Next.Load.Each() > c.lifted {
		big := c.d.Rise.Moved > 0.1 || c.d.Rise.Moved == 0 && c.d.Rise.External > 0.5
		c.want(!big, "a big step alone")
	}
}

// saysWhy asks every hold for what stands in the way.
func (c check) saysWhy() {
	if c.d.Action != progression.HoldDose {
		return
	}
	stands := slices.ContainsFunc(c.d.Gates, func(g visit.GateAnswer) bool { return g.Advice != rule.Raise })
	for _, r := range c.d.Reasons {
		switch r.Code {
		case "progression.limit", "progression.as-allowed", "progression.kit-ends", "progression.too-far", "progression.more-reserve", "progression.familiarising",
			"progression.maintain", "progression.settle-first", "progression.nothing-done", "progression.tried", "progression.resumed", "progression.ask-first", "progression.fewer-reps", "progression.note-effort", "progression.rate-effort", "progression.set-nearest", "progression.range-ends",
			"progression.ladder-ends", "progression.tried-lately", "progression.once-more", "progression.try-missing", "progression.not-tried",
			"progression.step-beside", "progression.look-beside", "progression.above-beside",
			"progression.lighter-day", "progression.attendance-low", "progression.return-kept": // nothing was left to take
			stands = true
		}
	}
	c.want(stands, "held without a reason")
}

// slips asks for every load that the kit does not make.
func (c check) slips() {
	for i, s := range c.before.Sets {
		each := units.Must(s.Each())
		if _, ok := c.table.Find(each); !ok && len(c.d.Gates) > 0 {
			c.want(slices.ContainsFunc(c.d.Queries, func(q visit.Doubt) bool { return q.Set == i && q.Load == each }), "a load that is not in the kit was used")
		}
	}
}

// changesOne decides on three exercises that would change at one visit.
func changesOne(t *testing.T, s simulate.Setup, visits []simulate.Lived) {
	c := progression.Course{Request: s.Request, Day: visits[len(visits)-1].Day, Absence: screening.No, BodyMass: s.BodyMass, Policy: s.Policy}
	for _, v := range visits {
		if v.Done.Plan.Sets > 0 {
			c.Log = append(c.Log, v.Done)
		}
	}
	list, err := progression.NextAll([]progression.Course{c, c, c})
	changed := 0
	for _, d := range list {
		easy := d.Change == progression.NoChange && d.Next != nil && d.Next.Mode == dose.WithoutLoad // no more to learn than a first visit asks
		if d.Action == progression.ChangeVariant && !easy {
			changed++
		}
	}
	if err != nil || changed > 1 {
		t.Errorf("%d exercises are new at one visit, %v", changed, err)
	}
}

// staysReferred asks again later: nothing is prescribed until an assessment.
func staysReferred(t *testing.T, s simulate.Setup, visits []simulate.Lived) {
	var log []progression.Visit
	for _, v := range visits {
		if v.Done.Plan.Sets > 0 {
			log = append(log, v.Done)
		}
	}
	c := progression.Course{Request: s.Request, Log: log, Day: visits[len(visits)-1].Day + 100, Absence: screening.No, Policy: s.Policy}
	d, err := progression.Next(c)
	if err != nil || d.Action != progression.StopAndRefer || d.Next != nil {
		t.Errorf("a dose after a referral: %v, %v, %v", d.Action, d.Next, err)
	}
}
