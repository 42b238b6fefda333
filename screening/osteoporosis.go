package screening

import (
	"iter"
	"slices"

	"example.org/posology/units/evidence"
)

// An OsteoporosisVersion is what one country's statement asks of people with
// osteoporosis, in our own words; "" where it is silent or could not be read.
type OsteoporosisVersion struct {
	Country   string            `json:"country"`
	Movements string            `json:"movements"`
	Lifting   string            `json:"lifting,omitzero"`
	Impact    string            `json:"impact,omitzero"`
	Falls     string            `json:"falls,omitzero"`    // in people prone to falls
	Fracture  string            `json:"fracture,omitzero"` // after a vertebral fracture
	Dose      string            `json:"dose,omitzero"`
	Facts     []evidence.FactID `json:"facts"`
}

// OsteoporosisVersions yields the Canadian, British and Australian versions side
// by side. They are not merged: the limits of the outcome keep to the tightest
// of each, and the dose is a matter of the guideline that is followed.
func OsteoporosisVersions() iter.Seq[OsteoporosisVersion] {
	list := slices.Clone(osteoporosisVersions)
	for i := range list {
		list[i].Facts = slices.Clone(list[i].Facts)
	}
	return slices.Values(list)
}

var osteoporosisVersions = []OsteoporosisVersion{
	{
		Country: "Canada, consensus of 2014", Movements: canadaMovements,
		Lifting: canadaLifting, Fracture: canadaFracture,
		Dose:  "strength on 2 or more days a week, 1 to 3 sets of 8 to 12 at 8 to 12 RM; a lighter start for the inactive, for beginners and at high risk",
		Facts: []evidence.FactID{factPrefix + "osteoporosis", factPrefix + "osteoporosis_with_vertebral_fracture"},
	},
	{
		Country: "United Kingdom, consensus of 2022", Movements: "no deep forward bending of the spine",
		Falls: "balance and strength are trained first", Fracture: "after a vertebral fracture, or several from little force, impact no higher than brisk walking",
		Dose:  "build up to a load liftable 8 to 12 times, up to 3 sets",
		Facts: []evidence.FactID{factPrefix + "osteoporosis_uk"},
	},
	{
		Country: "Australia, ESSA 2017", Movements: "advises against bending the spine under load",
		Impact: "with osteoarthritis or frailty it may have to be altered",
		Dose:   "2 days a week, 2 to 3 sets of 8 at 80 to 85 % of the 1RM, lower at the start in high risk; from memory",
		Facts:  []evidence.FactID{factPrefix + "osteoporosis_essa", factPrefix + "osteoporosis_essa_dose"},
	},
}
