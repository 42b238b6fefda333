package record

import (
	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// newer returns what came with version 2, as unknown to the versions before.
func (r Record) newer() error {
	var bad field.Errors
	bad.Add("", r.Given.newer())
	for i, c := range r.Checks {
		bad.Add(path("checks", i)+"/glucose_again", unknown(!c.GlucoseAgain.IsZero()))
	}
	bad.Add("/practised", unknown(len(r.Practised) > 0))
	bad.Add("/happened", unknown(len(r.Happened) > 0))
	bad.Add("/looked", unknown(len(r.Looked) > 0))
	for i, e := range r.Entries {
		bad.Add(path("entries", i)+"/given", e.Given.newer())
	}
	return bad.Err()
}

func (g Given) newer() error {
	var bad field.Errors
	bad.Add("/kit/kettlebells", unknown(len(g.Kit.Kettlebells) > 0))
	bad.Add("/kit/ankle_weights", unknown(len(g.Kit.AnkleWeights) > 0))
	bad.Add("/kit/bands", unknown(len(g.Kit.Bands) > 0))
	bad.Add("/brief", unknown(g.Brief))
	bad.Add("/reached", unknown(g.Reached != screening.Unknown))
	bad.Add("/kit/seats_cm", unknown(len(g.Kit.Seats) > 0))
	bad.Add("/kit/steps_cm", unknown(len(g.Kit.Steps) > 0))
	bad.Add("/kit/things", unknown(g.Kit.Things != nil))
	for i, own := range g.Own {
		bad.Add(path("own", i)+"/needs", unknown(len(own.Needs) > 0))
		bad.Add(path("own", i)+"/band", unknown(own.Band != ""))
		bad.Add(path("own", i)+"/height_cm", unknown(own.Height != 0))
	}
	return bad.Err()
}

// unknown refuses what was given in a field that came later.
func unknown(given bool) error {
	if !given {
		return nil
	}
	return field.Bad(nil, "a field that versions before 2 had", field.ErrUnknown)
}
