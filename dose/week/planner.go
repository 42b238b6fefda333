package week

import (
	"errors"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/internal/given"
	"example.org/posology/dose/internal/tested"
	"example.org/posology/dose/strength"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// A planner collects the items of the session, in the order of wish, and what
// was left out.
type planner struct {
	r       Request
	chosen  choice.Chosen
	wanted  []exercise.Exercise
	frames  map[exercise.ID]*dose.Frame // of the items
	items   []dose.Prescription
	leftOut []LeftOut
	unused  []strength.Unused
	short   []evidence.Reason // of what the minutes do not reach
	last    error             // why the latest exercise was left out
}

func newPlanner(r Request) (*planner, error) {
	if r.Catalogue.Len() == 0 {
		r.Catalogue = exercise.Standard()
	}
	var err error
	var bad field.Errors
	if r.Catalogue, err = r.Kit.Fit(r.Catalogue); err != nil {
		bad.Add("/kit", err)
	}
	if err := r.validate(); errors.Is(err, dose.ErrNotScreened) {
		return nil, err
	} else if bad.Add("", err); len(bad) > 0 {
		return nil, bad.Err()
	}
	p := &planner{r: r, frames: map[exercise.ID]*dose.Frame{}}
	r.Screening, r.Kit = r.Screening.Tightest(), r.Kit.Once(r.Kit)
	p.r, p.unused = r.Usable()
	p.choose()
	return p, nil
}

// choose takes the exercises that were asked for, or chooses some where none were.
func (p *planner) choose() {
	often := len(spread(slices.Sorted(slices.Values(p.r.Days)), given.Week)) > 1
	p.chosen = choice.Choose(choice.Wish{Tasks: p.r.Tasks, Goal: p.r.Goal, Screening: p.r.Screening, Little: p.r.ComesLittle || !often, Named: len(p.r.Exercises) > 0, Kit: p.r.Kit, Brief: p.r.Brief, Tried: p.r.Tried})
	ids := p.r.Exercises
	for _, w := range p.chosen.Wanted {
		ids = append(ids, w.Exercise)
	}
	for _, id := range ids {
		if ex, err := p.r.Catalogue.Lookup(string(id)); err == nil { // those asked for are validated
			p.wanted = append(p.wanted, ex)
		}
	}
}

// reviewOverdue says that every day offered lies after that by which the
// assessment is to be made again.
func (p *planner) reviewOverdue() error {
	why := evidence.Because("dose.review-overdue", factReviewed).With(evidence.Day("review", p.r.Screening.ReviewBy), evidence.Day("day", slices.Min(p.r.Days)))
	return &dose.ConstraintError{Constraint: why, Free: []evidence.Reason{evidence.Because("dose.free-by-assessment")}, Err: dose.ErrNoDose}
}

// place doses an exercise, or the first stand-in that can be dosed, none of
// them harder, and records what was replaced or left out. Bad fields are an
// error, and so is [dose.ErrNoDose], which bars every exercise.
func (p *planner) place(wanted exercise.Exercise) error {
	out := LeftOut{Exercise: wanted.ID}
	offers := func(yield func(exercise.Exercise) bool) {
		if yield(wanted) {
			p.r.Catalogue.Instead(wanted.ID)(yield)
		}
	}
	for ex := range offers {
		if slices.Contains(p.r.Without, ex.ID) {
			out.Reasons = append(out.Reasons, evidence.Because("dose.not-wanted").With(evidence.ID("exercise", ex.ID)))
			continue
		}
		item, err := p.dose(ex)
		if err == nil {
			p.keep(out, item)
			return nil
		}
		var barred *dose.ConstraintError
		if errors.Is(err, dose.ErrNoDose) || !errors.As(err, &barred) {
			return err
		}
		p.last = err
		out.Reasons = append(out.Reasons, barred.Constraint)
		if ex.ID == wanted.ID {
			out.Free = barred.Free
		}
	}
	p.leftOut = append(p.leftOut, out)
	return nil
}

// keep adds an item, unless the session has it already; out is what it stands
// in for, if it is not what was wanted.
func (p *planner) keep(out LeftOut, item dose.Prescription) {
	if item.Exercise != out.Exercise {
		out.Instead = item.Exercise
		p.leftOut = append(p.leftOut, out)
	}
	item.Reasons = append(item.Reasons, p.chosen.Why(out.Exercise)...)
	for _, have := range p.items {
		if have.Exercise == item.Exercise {
			return
		}
	}
	p.items = append(p.items, item)
}

// dose prescribes one exercise for both sides or, where a limit on mass, or what is
// avoided, rules out one side of one-sided work, for the other side alone.
func (p *planner) dose(ex exercise.Exercise) (dose.Prescription, error) {
	item, err := p.doseSide(ex, body.Both)
	var barred *dose.ConstraintError
	tooHeavy := errors.Is(err, dose.ErrTooHeavy) && len(p.r.Screening.Limits.Masses) > 0
	avoided := errors.As(err, &barred) && barred.Constraint.Code == "dose.demand"
	if !ex.OneSided || !tooHeavy && !avoided {
		return item, err
	}
	for _, side := range []body.Side{body.Left, body.Right} {
		if item, err := p.doseSide(ex, side); err == nil {
			item.Reasons = append(item.Reasons, evidence.Because("dose.one-side-only", factOneSide).With(evidence.Term("side", side.String())))
			return item, nil
		}
	}
	return item, err
}

// doseSide prescribes with the estimates of the exercise, and the set that is chosen
// for the side, if there are any.
func (p *planner) doseSide(ex exercise.Exercise, side body.Side) (dose.Prescription, error) {
	mine := tested.Lists{Estimates: p.r.Estimates, Performed: p.r.Performed}.For(ex)
	r := dose.Request{
		Day: p.r.Day, Screening: p.r.Screening, Exercise: ex, Side: side,
		Goal: p.r.Goal, Phase: p.r.Phase, Technique: p.r.Technique(ex.ID), Estimates: mine.Estimates,
		Performed: mine.Set(ex, side), Done: mine.Performed, Kit: p.r.Kit, Brief: p.r.Brief, Chance: p.r.Chance, Guideline: p.r.Guideline,
		Known: p.r.Known,
	}
	f, err := dose.NewFrame(r)
	if err != nil {
		return dose.Prescription{}, err
	}
	p.frames[ex.ID] = f
	return f.Prescribe()
}

// raiseHeaviest lets an exercise that takes the heaviest weight of the session
// begin with no less than the heaviest of the others.
func (p *planner) raiseHeaviest() {
	var most units.Mass
	for _, item := range p.items {
		if ex, _ := p.r.Catalogue.Get(item.Exercise); !ex.Heaviest {
			most = max(most, item.Load.Each())
		}
	}
	for i, item := range p.items {
		p.items[i] = p.frames[item.Exercise].Heaviest(item, most)
	}
}
