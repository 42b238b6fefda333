package dose

import "example.org/posology/dose/equipment"

// lighter returns the next weight below, false if there is none.
func lighter(t *equipment.Table, than equipment.Load) (equipment.Load, bool) {
	load, err := t.Nearest(than.Each()-1, equipment.RoundingRule{})
	return load, err == nil
}
