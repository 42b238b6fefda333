package cohorts

import (
	"fmt"

	"example.org/posology/dose/cohort"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/setlog"
	"example.org/posology/dose/volume"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

// A Plan is how a log is read and counted.
type Plan struct {
	Reader setlog.Reader
	Study  *cohort.Study
}

// NewPlan reads a map, as setlog.Reader in JSON. Sets with up to most repetitions in
// reserve count; all do if it is below 0.
func NewPlan(mapping []byte, most float64) (p Plan, err error) {
	err = field.Decode(mapping, &p.Reader, field.Strict)
	if p.Reader.Catalogue.Len() == 0 {
		p.Reader.Catalogue = exercise.Standard()
	}
	if err == nil {
		err = p.Reader.Validate()
	}
	if err != nil {
		return Plan{}, fmt.Errorf("the map cannot be used:\n%w", err)
	}
	o := cohort.Options{Formula: onerm.Epley}
	if most >= 0 {
		reserve, err := units.Between[units.RIR](0, units.RIR(most))
		if err != nil {
			return Plan{}, err
		}
		o.Rule = volume.Rule{Source: "whoever ran this program", Reserve: reserve}
	}
	p.Study, err = cohort.NewStudy(p.Reader.Catalogue, o)
	return p, err
}
