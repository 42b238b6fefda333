package function

// Statistic is the code of what a figure states about its measure, such as
// "p25" or "low_if_less_than". Codes that name a body end in its name where two
// bodies of a region differ.
type Statistic string

// statisticKind sorts statistics by their use.
type statisticKind uint8

const (
	_               statisticKind = iota // not given
	figure                               // describes people: a mean, a centile
	cutOff                               // flags results on one side of it
	scoreLimit                           // turns a part of the battery into points
	bandFloor                            // the lowest total of a band
	detectable                           // change in one person that is more than noise
	detectableGroup                      // the same for the mean of a group: never for one person
	important                            // change that matters to people
	practiceEffect                       // gain from the first try to the second
	context                              // told for the record; nothing is compared with it
)

// bound is the side of a cut-off or limit that it speaks of, with the
// strictness as printed.
type bound uint8

const (
	_        bound = iota // the figure bounds nothing
	lessThan              // "<"
	atMost                // "<="
	moreThan              // ">"
	atLeast               // ">="
)

// A meaning is what a statistic's code stands for.
type meaning struct {
	kind   statisticKind
	bound  bound
	words  string // before the value
	points int    // of a score limit or band
}

var statistics = map[Statistic]meaning{
	"p25":                   {kind: figure, words: "25th centile"},
	"p75":                   {kind: figure, words: "75th centile"},
	"mean":                  {kind: figure, words: "mean"},
	"median":                {kind: figure, words: "median"},
	"ci95_low":              {kind: figure, words: "lower end of the 95 % interval of the mean"},
	"ci95_high":             {kind: figure, words: "upper end of the 95 % interval of the mean"},
	"disability_figure":     {kind: figure, words: "figure linked with disability"},
	"prevalence_weak_2.5sd": {kind: context, words: "share more than 2.5 standard deviations under the peak"},

	"below_average_if_less_than":         {kind: cutOff, bound: lessThan, words: "below average under"},
	"worse_than_average_if_greater_than": {kind: cutOff, bound: moreThan, words: "worse than average above"},
	"low_strength_if_greater_than":       {kind: cutOff, bound: moreThan, words: "low strength above"},
	"low_performance_if_ge":              {kind: cutOff, bound: atLeast, words: "low performance from"},
	"low_performance_if_le":              {kind: cutOff, bound: atMost, words: "low performance up to"},
	"low_performance_if_less_than":       {kind: cutOff, bound: lessThan, words: "low performance under"},
	"low_if_less_than":                   {kind: cutOff, bound: lessThan, words: "low under"},
	"low_if_less_than_awgs":              {kind: cutOff, bound: lessThan, words: "low under"},
	"weak_if_less_than":                  {kind: cutOff, bound: lessThan, words: "weak under"},
	"slow_if_less_than":                  {kind: cutOff, bound: lessThan, words: "slow under"},
	"fall_risk_if_ge":                    {kind: cutOff, bound: atLeast, words: "risk of falls from"},
	"fall_risk_if_greater_than":          {kind: cutOff, bound: moreThan, words: "risk of falls above"},
	"fall_risk_if_le":                    {kind: cutOff, bound: atMost, words: "risk of falls up to"},
	"fall_risk_if_tandem_less_than":      {kind: cutOff, bound: lessThan, words: "risk of falls if the tandem stand lasts less than"},
	"recurrent_falls_if_greater_than":    {kind: cutOff, bound: moreThan, words: "risk of repeated falls above"},
	"screen_positive_if_ge":              {kind: cutOff, bound: atLeast, words: "screen positive from"},
	"screen_positive_if_less_than":       {kind: cutOff, bound: lessThan, words: "screen positive under"},

	"score4_if_less_than":    {scoreLimit, lessThan, "4 points under", 4},
	"score4_if_le":           {scoreLimit, atMost, "4 points up to", 4},
	"score3_if_le":           {scoreLimit, atMost, "3 points up to", 3},
	"score2_if_le":           {scoreLimit, atMost, "2 points up to", 2},
	"score2_if_ge":           {scoreLimit, atLeast, "2 points from", 2},
	"score1_if_ge":           {scoreLimit, atLeast, "1 point from", 1},
	"score1_if_greater_than": {scoreLimit, moreThan, "1 point above", 1},
	"score0_if_greater_than": {scoreLimit, moreThan, "0 points above", 0},

	"high_if_ge":     {bandFloor, atLeast, "high from", int(bandHigh)},
	"moderate_if_ge": {bandFloor, atLeast, "moderate from", int(bandModerate)},
	"low_if_ge":      {bandFloor, atLeast, "low from", int(bandLow)},
	"very_low_if_ge": {bandFloor, atLeast, "very low from", int(bandVeryLow)},

	"mdc95":           {kind: detectable, words: "detectable change (95 %)"},
	"mdc_individual":  {kind: detectable, words: "detectable change in one person"},
	"mdc_intra_rater": {kind: detectable, words: "detectable change, one rater"},
	"mdc_inter_rater": {kind: detectable, words: "detectable change, two raters"},
	"mdc_group_high":  {kind: detectableGroup, words: "detectable change of a group's mean, upper end"},

	"mcid_low":              {kind: important, words: "least important change, lower end"},
	"mcid_high":             {kind: important, words: "least important change, upper end"},
	"mcid_small":            {kind: important, words: "small important change"},
	"mcid_small_low":        {kind: important, words: "small important change, lower end"},
	"mcid_small_high":       {kind: important, words: "small important change, upper end"},
	"mcid_substantial":      {kind: important, words: "substantial change"},
	"mcid_substantial_low":  {kind: important, words: "substantial change, lower end"},
	"mcid_substantial_high": {kind: important, words: "substantial change, upper end"},
	"mcii_low":              {kind: important, words: "important improvement, lower end"},
	"mcii_high":             {kind: important, words: "important improvement, upper end"},

	"practice_low":  {kind: practiceEffect, words: "gain from the first try to the second, lower end"},
	"practice_high": {kind: practiceEffect, words: "gain from the first try to the second, upper end"},
}

// kind returns what s is used for, zero for a code not known here.
func (s Statistic) kind() statisticKind { return statistics[s].kind }

// ForResults reports whether a result is held against s: a mean, a centile or a cut-off.
func (s Statistic) ForResults() bool { return s.kind() == figure || s.kind() == cutOff }

// ForChanges reports whether s is the change in one person that is more than noise.
func (s Statistic) ForChanges() bool { return s.kind() == detectable }

// Words returns what s states, to be read before its value, and the code itself
// if it is not known here.
func (s Statistic) Words() string {
	if m, ok := statistics[s]; ok {
		return m.words
	}
	return string(s)
}
