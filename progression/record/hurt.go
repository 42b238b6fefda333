package record

import (
	"example.org/posology/dose/exercise"
	"example.org/posology/units"
)

// hurtElsewhere writes into every visit which other exercises of the same kind of movement
// hurt on its day.
func (l *log) hurtElsewhere() {
	hurt := map[units.Day][]exercise.Exercise{}
	for _, ex := range l.exercises {
		for _, v := range l.logged[ex.ID].visits {
			if v.Hurt() {
				hurt[v.Day] = append(hurt[v.Day], ex)
			}
		}
	}
	for _, ex := range l.exercises {
		visits := l.logged[ex.ID].visits
		for i := range visits {
			for _, other := range hurt[visits[i].Day] {
				if v := &visits[i]; other.ID != ex.ID && alike(other.Pattern, ex.Pattern) {
					v.HurtElsewhere = append(v.HurtElsewhere, other.Name)
				}
			}
		}
	}
}

// alike reports whether two patterns are of the same kind of movement: pushes, pulls, those
// that rise from bent knees, or else the same.
func alike(a, b exercise.Pattern) bool {
	rises := func(p exercise.Pattern) bool { return p == exercise.Squat || p == exercise.Lunge }
	return a != 0 && a == b || a.Pushes() && b.Pushes() || a.Pulls() && b.Pulls() || rises(a) && rises(b)
}
