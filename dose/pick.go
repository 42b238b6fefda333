package dose

import (
	"example.org/posology/dose/equipment"
	"example.org/posology/units"
)

// pick returns the lightest weight from target to ceiling and, if there is
// none, the heaviest at or below both. It is false if every weight lies above.
//
// Scaling target and ceiling down together, or the ceiling alone, never makes
// the pick heavier: what lies above the old pick lay outside the old band, and
// lies outside a lower one.
func pick(t *equipment.Table, target, ceiling units.Mass) (equipment.Load, bool) {
	load, err := t.Nearest(target, equipment.RoundingRule{Direction: equipment.Above, Ceiling: ceiling})
	return load, err == nil
}

// lighter returns the next weight below, false if there is none.
func lighter(t *equipment.Table, than equipment.Load) (equipment.Load, bool) {
	load, err := t.Nearest(than.Each()-1, equipment.RoundingRule{})
	return load, err == nil
}
