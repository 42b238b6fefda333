package record

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// A StoredCurve is the person's own load–repetition curve in one exercise, which package
// dose/onerm/fit fits. It is [progression.Course.Curve] where that exercise is
// decided on with the same side, kept beside the log: no dose goes by it. The hold
// is the exercise's.
type StoredCurve struct {
	Exercise exercise.ID `json:"exercise"`      // counted in repetitions, and not mostly the body
	Side     body.Side   `json:"side,omitzero"` // not given: both
	Curve    onerm.Curve `json:"curve"`
}

// A work is an exercise with the side that does it.
type work struct {
	exercise exercise.ID
	side     body.Side
}

// readCurves keeps the curves, at most one for an exercise and side.
func (r Record) readCurves(l *log) error {
	var bad field.Errors
	l.curves = map[work]onerm.Curve{}
	for i, c := range r.Curves {
		at := path("curves", i)
		if c.Side == 0 {
			c.Side = body.Both
		}
		bad.Add(at+"/side", c.Side.Check())
		if c.Curve.Data().Form == 0 {
			bad.Add(at+"/curve", field.Bad(nil, "a curve", field.ErrMissing))
		}
		ex, err := l.catalogue.Lookup(string(c.Exercise))
		if err != nil {
			bad.Add(at+"/exercise", err)
			continue
		}
		if ex.Measure != exercise.Repetitions || ex.MovesBody {
			bad.Add(at+"/exercise", field.Bad(c.Exercise, "an exercise that is counted in repetitions, and in which the weight is most of what is lifted", field.ErrConflict))
		}
		key := work{ex.ID, c.Side}
		if _, ok := l.curves[key]; ok {
			bad.Add(at+"/exercise", field.Bad(c.Exercise, "one curve for each exercise and side", field.ErrDuplicate))
		}
		l.curves[key] = c.Curve
	}
	return bad.Err()
}

// curve returns the person's own curve, nil if there is none.
func (l *log) curve(id exercise.ID, side body.Side) onerm.Relation {
	if c, ok := l.curves[work{id, side}]; ok {
		return c
	}
	return nil
}
