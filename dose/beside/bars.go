package beside

import (
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// Findings of the screening that a landing is not put on.
var (
	osteoporosis   = []screening.Code{"osteoporosis", "osteoporosis_uk", "osteoporosis_essa", "osteoporosis_essa_dose", "osteoporosis_with_vertebral_fracture"}
	recentFracture = []screening.Code{"recent_fracture", "vertebral_fracture", "osteoporosis_with_vertebral_fracture"}
	pelvicFloor    = []screening.Code{"pelvic_organ_prolapse"}
	// lowPressure at the edge of its band: nobody rises fast.
	lowPressure = []screening.Code{"bp_lt_100_or_50"}
	// sparedFeet move sitting down.
	sparedFeet = []screening.Code{"foot_ulcer_neuropathy"}
)

// ceiling returns the last step of the track up to which nothing bars one, and what bars
// the next; no reason at the track's end.
func (s *Situation) ceiling(t *track) (int, *evidence.Reason) {
	for i, step := range t.steps {
		if why := s.bars(t, step); why != nil {
			return i, why
		}
	}
	return len(t.steps), nil
}

// bars returns what bars a step, nil if nothing does.
func (s *Situation) bars(t *track, at step) *evidence.Reason {
	o := &s.Screening
	switch {
	case o.Route >= screening.SameDay || o.Meanwhile >= screening.Nothing:
		return new(evidence.Because("beside.not-now").With(evidence.Term("route", o.Route.String()), evidence.Term("meanwhile", o.Meanwhile.String())))
	case s.Day > o.ReviewBy:
		return new(evidence.Because("beside.review-overdue").With(evidence.Day("review", o.ReviewBy)))
	}
	demands := at.demands
	if at.hands == HandsNear {
		demands = demands.Union(body.DemandSet(body.FreeStanding))
	}
	if clash := demands.Both(o.Limits.Avoided(body.Both)); clash != 0 {
		return new(evidence.Because("beside.demand", factLimits).With(evidence.Terms("demands", clash.String())))
	}
	switch t.kind {
	case Balance:
		return s.barsBalance(t, at)
	case Impact:
		return s.barsImpact(at)
	case Power:
		return s.barsPower(at)
	}
	return s.barsAerobic(at)
}

// held reports whether somebody else has to come first, or to be there: then nothing
// is done free-handed, fast or with a landing.
func (s *Situation) held() bool {
	return s.Screening.Meanwhile > screening.WithinLimits || s.Screening.Setting < s.Screening.Limits.LeastSetting
}

func (s *Situation) barsBalance(t *track, at step) *evidence.Reason {
	switch {
	case t.id == "one-leg" && !s.stood(3):
		return new(evidence.Because("beside.look-first", factStart).With(evidence.Count("stands", 3)))
	case at.hands != BothHandsOn && s.unsteady() && s.alone():
		return new(evidence.Because("beside.company-first", factCompany))
	case at.hands == HandsNear && (s.held() || s.unsteady()):
		return new(evidence.Because("beside.hand-stays", factCompany))
	}
	return nil
}

// barsImpact holds who is not to land.
func (s *Situation) barsImpact(at step) *evidence.Reason {
	l := s.Screening.Limits
	jumps := at.move != &stamps
	switch {
	case s.held():
		return new(evidence.Because("beside.held", factNoImpact))
	case l.LowImpact && s.found(recentFracture...):
		return new(evidence.Because("beside.low-impact", factBrittle, factNoImpact))
	case l.LowImpact:
		return new(evidence.Because("beside.low-impact", factNoImpact))
	case s.found(recentFracture...):
		return new(evidence.Because("beside.fracture", factNoImpact))
	case l.Support || s.stood(0) && !s.stood(2):
		return new(evidence.Because("beside.unsteady", factNoImpact))
	case l.MaxIntensity == screening.Light:
		return new(evidence.Because("beside.light-only", factNoImpact))
	case s.Known.SpineFracture == screening.Yes || s.Known.SpineFracture != screening.No && s.found(osteoporosis...):
		return new(evidence.Because("beside.spine-first", factNoImpact))
	case s.Known.Leaks == screening.Yes || s.Known.Leaks != screening.No && s.found(pelvicFloor...):
		return new(evidence.Because("beside.pelvic-floor", factNoImpact))
	case jumps && s.alone():
		return new(evidence.Because("beside.jump-company", factImpactSteps))
	case jumps && !s.stood(3):
		return new(evidence.Because("beside.look-first", factImpactSteps).With(evidence.Count("stands", 3)))
	case at.move == &hops && s.found(osteoporosis...):
		return new(evidence.Because("beside.no-hops", factHopCentre))
	case at.move == &hops && !s.stood(4):
		return new(evidence.Because("beside.look-first", factImpactSteps).With(evidence.Count("stands", 4)))
	}
	return nil
}

func (s *Situation) barsPower(at step) *evidence.Reason {
	l := s.Screening.Limits
	switch {
	case s.held():
		return new(evidence.Because("beside.held", factRises))
	case l.MaxIntensity == screening.Light:
		return new(evidence.Because("beside.light-only", factRises))
	case s.unsteady() && s.alone():
		return new(evidence.Because("beside.company-first", factCompany))
	case at.move != &lifts && s.found(lowPressure...):
		return new(evidence.Because("beside.low-pressure", factLowPressure))
	}
	if _, some := s.band(); at.move == &lifts && !some {
		return new(evidence.Because("beside.share", factLimits).With(evidence.Share("most", l.MaxFraction)))
	}
	return nil
}

// barsAerobic holds pace, never easy movement: who may fall walks briskly once somebody
// looked at the balance and heel to toe was held.
func (s *Situation) barsAerobic(at step) *evidence.Reason {
	l := s.Screening.Limits
	switch {
	case at.brisk == 0:
		return nil
	case s.held():
		return new(evidence.Because("beside.held", factPace))
	case l.MaxIntensity == screening.Light:
		return new(evidence.Because("beside.light-only", factPace))
	case l.Avoid.Has(body.FreeStanding) || s.unsteady() && !s.stood(3):
		return new(evidence.Because("beside.no-brisk", factNoBrisk))
	case l.LowImpact && at.brisk*at.minutes > brittleBrisk:
		return new(evidence.Because("beside.brisk-limit", factBrittle).With(evidence.Minutes("minutes", brittleBrisk)))
	}
	return nil
}
