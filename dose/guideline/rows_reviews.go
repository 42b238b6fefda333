package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// reviews are reviews and a trial protocol.
var reviews = []Recommendation{
	{
		ID: "borde2015-strength", Body: "meta-analysis (Borde)", Year: 2015, Population: "healthy old adults, mean age 65+", AgeMin: 65, Goal: Strength,
		Days: units.Exactly(2), Sets: to(2, 3), Reps: to(7, 9), Load: to[units.Fraction](.70, .79),
		Rest: units.Exactly(60), RestInSet: units.Exactly(4), RepSeconds: units.Exactly(6), Weeks: to(50, 53),
		Effects: []Effect{{"overall_smd", 1.57}, {"period_50_53_wk", 2.34}, {"intensity_70_79", 1.89}, {"tut_6_s", 3.61}, {"rest_60_s", 4.68}, {"frequency_2", 2.13}},
		Notes:   "25 trials. Each value is the best category of one variable on its own; nobody tested them together, so they are no optimum. Period, load and time under tension, which is per repetition, mattered; rest was a trend on two trials.",
		Source:  "borde2015", Basis: evidence.Published,
	},
	{
		ID: "gschwind2013-beginner", Body: "falls-prevention trial protocol (Gschwind)", Year: 2013,
		Population: "community-dwelling older adults, beginners", AgeMin: 65, Goal: Function, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(2, 3), Reps: to(10, 15), Effort: Effort{units.ScaleBorg, borg, to(12, 13)},
		Rest: units.Exactly(120), RepSeconds: units.Exactly(4), LiftSeconds: units.Exactly(2), LowerSeconds: units.Exactly(2),
		Notes:  "Two sessions in a group and one at home.",
		Source: "gschwind2013", Basis: evidence.Published,
	},
	{
		ID: "grgic2018-rest-untrained", Body: "systematic review (Grgic)", Year: 2018, Population: "untrained adults",
		Goal: Strength, Training: []body.Training{body.Novice},
		Rest:   to(60, 120),
		Notes:  "Less than 60 s still gave clear gains.",
		Source: "grgic2018", Basis: evidence.Published,
	},
}
