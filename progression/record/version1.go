package record

import (
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// newer returns what came with version 2, as unknown to the versions before.
func (r Record) newer() error {
	var bad field.Errors
	bad.Add("", r.Given.newer())
	if len(r.Practised) > 0 {
		bad.Add("/practised", field.Bad(nil, "a field that versions before 2 had", field.ErrUnknown))
	}
	if len(r.Happened)+len(r.Looked) > 0 {
		bad.Add("/happened", field.Bad(nil, "a field that versions before 2 had", field.ErrUnknown))
	}
	for i, e := range r.Entries {
		bad.Add(path("entries", i)+"/given", e.Given.newer())
	}
	return bad.Err()
}

func (g Given) newer() error {
	var bad field.Errors
	unknown := func(at string, given bool) {
		if given {
			bad.Add(at, field.Bad(nil, "a field that versions before 2 had", field.ErrUnknown))
		}
	}
	unknown("/kit/kettlebells", len(g.Kit.Kettlebells) > 0)
	unknown("/kit/ankle_weights", len(g.Kit.AnkleWeights) > 0)
	unknown("/kit/bands", len(g.Kit.Bands) > 0)
	unknown("/brief", g.Brief)
	unknown("/reached", g.Reached != screening.Unknown)
	unknown("/kit/seats_cm", len(g.Kit.Seats) > 0)
	unknown("/kit/steps_cm", len(g.Kit.Steps) > 0)
	unknown("/kit/things", g.Kit.Things != nil)
	for i, own := range g.Own {
		unknown(path("own", i)+"/needs", len(own.Needs) > 0)
		unknown(path("own", i)+"/band", own.Band != "")
		unknown(path("own", i)+"/height_cm", own.Height != 0)
	}
	return bad.Err()
}
