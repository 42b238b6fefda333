package progression

import (
	"cmp"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// MapID names a published map between effort and load.
type MapID string

// Maps.
const (
	OMNIBefore     MapID = "omni-leg-press-before"     // about 64 years, before 12 weeks of training
	OMNIAfter      MapID = "omni-leg-press-after"      // the same people after them
	OMNICurl       MapID = "omni-65-percent-curl"      // young, felt in the working muscle
	OMNICurlBody   MapID = "omni-65-percent-curl-body" // young, felt in the whole body
	OMNIKnee       MapID = "omni-65-percent-knee"      // young, felt in the working muscle
	OMNIKneeBody   MapID = "omni-65-percent-knee-body" // young, felt in the whole body
	CR10           MapID = "cr10"                      // Buckley & Borg 2011
	BorgYoungWomen MapID = "borg-young-women"          // trained young women
	CardiacStages  MapID = "cardiac-stages"            // cardiac rehabilitation
)

// An EffortPoint ties a rating to a share of 1RM. A mean is a range of one
// value with the standard deviation beside it.
type EffortPoint struct {
	Stage    string                      `json:"stage,omitzero"`
	Rating   units.Range[float64]        `json:"rating,omitzero"`    // on the map's scale
	RatingSD float64                     `json:"rating_sd,omitzero"` // 0 where none is stated
	Share    units.Range[units.Fraction] `json:"share,omitzero"`     // of 1RM
	ShareSD  units.Fraction              `json:"share_sd,omitzero"`  // 0 where none is stated
	Reps     units.Range[int]            `json:"reps,omitzero"`      // of the set that was rated
}

// An EffortMap is what one source found between ratings and load, for some
// people at one time. It is data, not a rule: [EffortMap.Warning].
type EffortMap struct {
	ID     MapID           `json:"id"`
	Scale  units.Scale     `json:"scale"`
	Who    string          `json:"who"`
	Points []EffortPoint   `json:"points"`
	Fact   evidence.FactID `json:"fact"`
}

// EffortMaps yields every map, each with a list of points of the caller's own.
func EffortMaps() iter.Seq[EffortMap] {
	return func(yield func(EffortMap) bool) {
		for _, m := range effortMaps {
			m.Points = slices.Clone(m.Points)
			if !yield(m) {
				return
			}
		}
	}
}

// LookUpMap returns the map with the given ID, and whether there is one.
func LookUpMap(id MapID) (EffortMap, bool) {
	for m := range EffortMaps() {
		if m.ID == id {
			return m, true
		}
	}
	return EffortMap{}, false
}

// Warning says why no such map tells a load: after 12 weeks the same ratings
// stood for 24, 19 and 14 points more of the 1RM, and a rating depends on the
// repetitions done. Ratings hold an effort; they do not tell a 1RM.
func (m EffortMap) Warning() evidence.Reason {
	return evidence.Because("progression.map-drifts", m.Fact, factMapDrifts).With("map", m.ID)
}

// Slope returns the points of per cent of 1RM for each point of the scale, from
// the first mean to the last. It is false for a map without two means.
func (m EffortMap) Slope() (float64, bool) {
	type mean struct{ rating, share float64 }
	var means []mean
	for _, p := range m.Points {
		rating, oneRating := single(p.Rating)
		share, oneShare := single(p.Share)
		if oneRating && oneShare {
			means = append(means, mean{rating, share.Percent()})
		}
	}
	if len(means) < 2 {
		return 0, false
	}
	first, last := means[0], means[len(means)-1]
	return (last.share - first.share) / (last.rating - first.rating), true
}

// single returns the value of a range that holds one alone.
func single[T ~float64](r units.Range[T]) (T, bool) {
	low, hasLow := r.Min()
	high, hasHigh := r.Max()
	return low, hasLow && hasHigh && low == high
}

// A Drift is how a rating rises while the load stays.
type Drift struct {
	Points float64              `json:"points"` // by which the rating rises
	Reps   units.Range[int]     `json:"reps"`   // over so many repetitions
	From   units.Range[float64] `json:"from"`   // a first rating of
	// A load rated above TooHeavy after FirstReps repetitions is too heavy for For.
	TooHeavy  float64          `json:"too_heavy"`
	FirstReps int              `json:"first_reps"`
	For       units.Range[int] `json:"for"` // repetitions
	Fact      evidence.FactID  `json:"fact"`
}

// CR10Drift returns how ratings on the scale CR10 rise with the repetitions
// (Buckley & Borg 2011, published).
func CR10Drift() Drift { return cr10Drift }

var cr10Drift = Drift{Points: 1, Reps: between(3, 4), From: between(4.0, 6), TooHeavy: 6, FirstReps: 2, For: between(12, 15), Fact: factDrift}

// between makes the ranges of tables.
func between[T cmp.Ordered](low, high T) units.Range[T] { return units.Must(units.Between(low, high)) }

// shareAt is a rating with the mean share of 1RM that it stood for, and its SD.
func shareAt(rating float64, mean, sd units.Fraction) EffortPoint {
	return EffortPoint{Rating: units.Exactly(rating), Share: units.Exactly(mean), ShareSD: sd}
}

// ratingAt is a share of 1RM with the mean rating that it was given, and its SD.
func ratingAt(share units.Fraction, mean, sd float64) EffortPoint {
	return EffortPoint{Rating: units.Exactly(mean), RatingSD: sd, Share: units.Exactly(share)}
}

// at65 are the mean ratings after the fewest and the most repetitions at 65 % of 1RM.
func at65(fewest, most float64) []EffortPoint {
	point := func(n int, rating float64) EffortPoint {
		return EffortPoint{Rating: units.Exactly(rating), Share: units.Exactly[units.Fraction](0.65), Reps: units.Exactly(n)}
	}
	return []EffortPoint{point(4, fewest), point(12, most)}
}

const (
	aboutSixtyFour = "older adults, about 64 years, leg press"
	youngAdults    = "young adults"
)

// Means and SDs as printed.
var effortMaps = []EffortMap{
	{OMNIBefore, units.ScaleOMNI, aboutSixtyFour + ", before training",
		[]EffortPoint{shareAt(4, 0.3684, 0.1123), shareAt(6, 0.5472, 0.1056), shareAt(8, 0.7258, 0.1222)}, factOMNIMap},
	{OMNIAfter, units.ScaleOMNI, aboutSixtyFour + ", after 12 weeks",
		[]EffortPoint{shareAt(4, 0.6108, 0.1491), shareAt(6, 0.7407, 0.1114), shareAt(8, 0.8656, 0.0843)}, factOMNIMap},
	{OMNICurl, units.ScaleOMNI, youngAdults + ", arm curl, working muscle", at65(3.6, 8.2), factOMNI65},
	{OMNICurlBody, units.ScaleOMNI, youngAdults + ", arm curl, whole body", at65(2.4, 6.7), factOMNI65},
	{OMNIKnee, units.ScaleOMNI, youngAdults + ", knee extension, working muscle", at65(5.1, 9.6), factOMNI65},
	{OMNIKneeBody, units.ScaleOMNI, youngAdults + ", knee extension, whole body", at65(4.2, 7.6), factOMNI65},
	{CR10, units.ScaleCR10, "a younger group, after 2 repetitions", []EffortPoint{{Rating: between(3.0, 6), Share: between[units.Fraction](0.40, 0.70), Reps: units.Exactly(2)}}, factCR10},
	{BorgYoungWomen, units.ScaleBorg, "young trained women", []EffortPoint{ratingAt(0.40, 11.26, 1.95), ratingAt(0.57, 13.94, 1.58), ratingAt(0.70, 15.52, 2.05)}, factBorgWomen},
	{CardiacStages, units.ScaleBorg, "cardiac rehabilitation", []EffortPoint{
		{Stage: "stage0", Rating: units.AtMost(11.0), Share: units.AtLeast[units.Fraction](0.30), Reps: between(5, 10)},
		{Stage: "stage1", Rating: between(12.0, 13), Share: between[units.Fraction](0.30, 0.50), Reps: between(10, 15)},
		{Stage: "stage2", Rating: between(14.0, 15), Share: between[units.Fraction](0.40, 0.60), Reps: between(8, 15)},
		{Stage: "stage3", Share: between[units.Fraction](0.60, 0.80), Reps: between(8, 10)},
	}, factCardiac},
}
