package guideline

import (
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// trials are protocols of trials and statements of practice for older adults.
var trials = []Recommendation{
	{
		ID: "gschwind2013-beginner", Body: "falls-prevention trial protocol (Gschwind)", Year: 2013,
		Population: "community-dwelling older adults, beginners", AgeMin: 65, Goal: Function, Training: []body.Training{body.Novice},
		Days: to(2, 3), Sets: to(2, 3), Reps: to(10, 15), Effort: Effort{units.ScaleBorg, borg, to(12, 13)},
		Rest: units.Exactly(120), RepSeconds: units.Exactly[float64](4), LiftSeconds: units.Exactly(2), LowerSeconds: units.Exactly(2),
		Notes:  "Two sessions in a group and one at home.",
		Source: "gschwind2013", Basis: evidence.Published,
	},
	{
		ID: "gianoudis2012-trial", Body: "trial protocol (Gianoudis)", Year: 2012, Population: "older adults at risk of falls and fractures",
		Conditions: []Condition{FallsRisk}, Goal: Power, Training: []body.Training{body.Novice},
		Sets: units.Exactly(2), Reps: to(8, 15), Effort: Effort{0, zeroToTen, to(3, 8)}, Rest: to(60, 120), LiftSeconds: to(2, 3),
		LowerSeconds: to(2, 3),
		Notes:        "A template for twelve months. Four weeks at effort 3 to 4 with 12 to 15 slow repetitions; then blocks of four weeks at 3 to 4 (10 to 15, slow) take turns with eight weeks at 5 to 8 (8 to 12, lifted fast). Rest is printed as 1 to 2 and taken as minutes.",
		Source:       "gianoudis2012", Basis: evidence.Published,
	},
	{
		ID: "gschwind2013-advanced", Body: "falls-prevention trial protocol (Gschwind)", Year: 2013, Population: "community-dwelling older adults, advanced",
		AgeMin: 65, Goal: Function, Training: []body.Training{body.Advanced},
		Days: to(2, 3), Sets: to(2, 3), Reps: to(8, 12), Effort: Effort{units.ScaleBorg, borg, to(14, 16)}, Rest: units.Exactly(120),
		RepSeconds: units.Exactly[float64](4), LiftSeconds: units.Exactly(2), LowerSeconds: units.Exactly(2),
		Source: "gschwind2013", Basis: evidence.Published,
	},
	{
		ID: "cress2006-best-practice", Body: "best-practice statement (Cress)", Year: 2006, Population: "older adults",
		Goal: Strength,
		Days: to(2, 3), Sets: to(2, 3), Exercises: units.Exactly(8), Reps: to(10, 12), Rest: units.Exactly(60),
		Notes:  "Four exercises for the arms and trunk, four for the legs; a day between sessions.",
		Source: "cress2006", Basis: evidence.Published,
	},
	{
		ID: "avers2009-white-paper", Body: "white paper (Avers & Brown)", Year: 2009, Population: "older adults",
		Goal: Strength,
		Days: to(2, 3), Sets: units.AtLeast(1), HoursBetween: 24,
		Notes:  "24 to 48 hours; the row keeps the floor. It takes 10 RM for about 80 % and more than 20 RM for under 60 %. Programmes last 12 to 16 weeks.",
		Source: "avers2009", Via: "teaching page of a national osteoporosis charity", Basis: evidence.Secondary,
	},
	{
		ID: "fisher2017-minimal-dose-older", Body: "mini-review (Fisher)", Year: 2017, Population: "older adults",
		Goal: Health,
		Days: units.Exactly(2), Minutes: units.AtMost(60),
		Notes:  "With simple equipment.",
		Source: "fisher2017", Basis: evidence.Published,
	},
}
