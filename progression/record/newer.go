package record

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

// newer returns what came after a version, as unknown to it.
func (r Record) newer(than int) error {
	var bad field.Errors
	if than < 2 {
		bad.Add("", r.since2())
	}
	if than < 3 {
		bad.Add("", r.since3())
	}
	if than < 4 {
		bad.Add("", r.since4())
	}
	return bad.Err()
}

// since2 returns what came with version 2.
func (r Record) since2() error {
	var bad field.Errors
	bad.Add("", r.Given.since2())
	bad.Add("/practised", unknown(2, len(r.Practised) > 0))
	for i, e := range r.Entries {
		bad.Add(path("entries", i)+"/given", e.Given.since2())
	}
	return bad.Err()
}

func (g Given) since2() error {
	var bad field.Errors
	bad.Add("/kit/kettlebells", unknown(2, len(g.Kit.Kettlebells) > 0))
	bad.Add("/kit/ankle_weights", unknown(2, len(g.Kit.AnkleWeights) > 0))
	bad.Add("/kit/bands", unknown(2, len(g.Kit.Bands) > 0))
	bad.Add("/brief", unknown(2, g.Brief))
	bad.Add("/kit/seats_cm", unknown(2, len(g.Kit.Seats) > 0))
	bad.Add("/kit/steps_cm", unknown(2, len(g.Kit.Steps) > 0))
	bad.Add("/kit/things", unknown(2, g.Kit.Things != nil))
	for i, own := range g.Own {
		bad.Add(path("own", i)+"/needs", unknown(2, len(own.Needs) > 0))
		bad.Add(path("own", i)+"/band", unknown(2, own.Band != ""))
		bad.Add(path("own", i)+"/height_cm", unknown(2, own.Height != 0))
	}
	return bad.Err()
}

// since3 returns what came with version 3.
func (r Record) since3() error {
	var bad field.Errors
	bad.Add("/reached", unknown(3, r.Reached != screening.Unknown))
	bad.Add("/happened", unknown(3, len(r.Happened) > 0))
	bad.Add("/looked", unknown(3, len(r.Looked) > 0))
	for i, c := range r.Checks {
		bad.Add(path("checks", i)+"/glucose_again", unknown(3, !c.GlucoseAgain.IsZero()))
	}
	for i, e := range r.Entries {
		bad.Add(path("entries", i)+"/given/reached", unknown(3, e.Given.Reached != screening.Unknown))
		bad.Add(path("entries", i)+"/decided", unknown(3, e.Decided != 0))
	}
	return bad.Err()
}

// since4 returns what came with version 4.
func (r Record) since4() error {
	var bad field.Errors
	bad.Add("/away", unknown(4, len(r.Away) > 0))
	for i, c := range r.Checks {
		bad.Add(path("checks", i)+"/spo2_again", unknown(4, c.SpO2Again > 0))
	}
	for i, l := range r.Looked {
		bad.Add(path("looked", i)+"/by", unknown(4, l.By != 0))
	}
	for i, e := range r.Entries {
		bad.Add(path("entries", i)+"/given/away", unknown(4, len(e.Given.Away) > 0))
		for k, item := range e.Items {
			bad.Add(path("entries", i)+path("items", k)+"/decision/after", unknown(4, item.Decision.After != nil))
		}
	}
	return bad.Err()
}

// unknown refuses what was given in a field that came with a version.
func unknown(version int, given bool) error {
	if !given {
		return nil
	}
	return field.Bad(nil, fmt.Sprintf("a field that versions before %d had", version), field.ErrUnknown)
}
