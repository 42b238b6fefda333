package interview

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// Values of the choices, and a client's words for them.
var (
	settings     = []screening.Setting{screening.Alone, screening.WithHelper, screening.InGroup, screening.InClinic}
	settingTexts = []string{"alone", "with somebody at hand", "in a group with an instructor", "in a clinic"}

	efforts     = []screening.Intensity{screening.Light, screening.Moderate, screening.Vigorous}
	effortTexts = []string{"light, like a stroll", "moderate, like brisk walking", "vigorous, so that talking is hard"}

	ketones     = []screening.Ketones{screening.NoKetones, screening.SmallKetones, screening.ModerateKetones, screening.LargeKetones}
	ketoneTexts = []string{"none", "small", "moderate", "large"}

	painKinds = []screening.PainKind{screening.OrdinaryPain, screening.ChestPain, screening.SpreadingPain, screening.SpinePain, screening.BonePain, screening.HotJointPain, screening.PostOperativePain}
	painTexts = []string{"in a joint, tendon or muscle", "around the chest", "spreading into an arm or leg", "in the spine, suddenly or after a knock",
		"in a bone that has cancer", "in a joint that is hot and swollen", "where you were operated on not long ago"}

	trends     = []screening.Trend{screening.FallingPain, screening.StablePain, screening.RisingPain}
	trendTexts = []string{"falling", "stable", "rising"}

	sides     = []body.Side{body.Left, body.Right, body.Both}
	sideTexts = []string{"left", "right", "both"}

	limbs = []body.Region{body.Shoulder, body.Elbow, body.WristHand, body.Hip, body.Knee, body.AnkleFoot} // of two sides
)

// Whole numbers that are asked for.
var (
	weekDays = span{0, 7, "days", []string{"days", "day"}}
	minutes  = span{1, 1440, "minutes", []string{"minutes", "min"}}
	months   = span{1, 1440, "months", []string{"months", "month"}}
	beats    = span{20, 250, "a minute", []string{"a minute", "bpm"}}
	counts   = span{1, 2000, "10⁹/L", nil}
)

// ownWords are those of questions that the library words otherwise than an
// interview can; all others are asked in the library's words.
var ownWords = map[screening.Code]string{
	"retinopathy_moderate_or_worse": "At your last eye check, did they find changes from diabetes that are moderate or worse?",
	"clearance":                     "Has a doctor agreed that you exercise?",
	"blood_pressure":                "What was your blood pressure, taken after a rest?",
	"blood_pressure_again":          "That is up. What is it after a few quiet minutes?",
	"resting_pulse_again":           "That is quick. What is the pulse after a few quiet minutes?",
	"blood_counts":                  "Do you have the letter with your last blood test here?",
	"hernia_symptomatic_or_large":   "Does the hernia hurt, bulge a lot, or has a doctor called it large?",
	"restriction":                   "Has a surgeon or clinician told you what not to do?",
}

// fields are the questions that a field of the profile answers.
var fields = map[screening.Code]func(text string) *asking{
	"wanted": func(text string) *asking {
		return oneOf("wanted", "wanted", text, efforts, effortTexts, func(s *state, v screening.Intensity) { s.profile.Wanted = v })
	},
	"activity": func(string) *asking {
		return whole("activity", "activity", "In the last months, how many days of a week held planned exercise?", "0 to 7 days", weekDays, func(s *state, days int) {
			s.activity = screening.Activity{DaysPerWeek: days, Intensity: screening.Idle}
			if days == 0 {
				s.profile.Activity = &screening.Activity{Intensity: screening.Idle}
			}
		})
	},
	"blood_pressure": func(text string) *asking { return pressure("blood_pressure", text, pressureHint, firstPressure) },
	"blood_pressure_again": func(text string) *asking {
		return pressure("blood_pressure_again", text, "both numbers in mmHg", secondPressure)
	},
	"resting_pulse": pulse,
	"resting_pulse_again": func(text string) *asking {
		return whole("resting_pulse_again", "resting_pulse_again", text, "beats a minute", beats, func(s *state, n int) { s.profile.RestingPulseAgain = n })
	},
	"falls": func(string) *asking {
		return yesNo("falls", "falls", "Have you fallen in the past year?", func(s *state, a screening.Answer) { s.profile.Falls = &screening.FallsScreen{Fell: a} })
	},
	"blood_counts": func(text string) *asking {
		return yesNo("blood_counts", "blood_counts", text, func(s *state, a screening.Answer) {
			if a == screening.Yes {
				s.profile.Counts = &screening.BloodCounts{}
			}
		})
	},
	"fracture_region": func(text string) *asking {
		return region("fracture_region", "fracture_region", text, func(s *state, r body.Region) {
			s.profile.Events = append(s.profile.Events, screening.Event{Code: "fracture", Region: r})
		})
	},
	"clearance": func(text string) *asking {
		return yesNo("clearance", "clearance", text, func(s *state, a screening.Answer) {
			s.profile.Answers["clearance"] = a
			if a == screening.Yes {
				s.profile.Clearances = []screening.Clearance{{}}
			}
		})
	},
	"restriction": func(text string) *asking {
		return yesNo("restriction", "restriction", text, func(s *state, a screening.Answer) {
			if a == screening.Yes {
				s.profile.Restrictions = []screening.Restriction{{Region: body.WholeBody}}
			}
		})
	},
}

// firstPressure and secondPressure are where a pressure stands in the profile.
func firstPressure(s *state) **screening.BloodPressure  { return &s.profile.BP }
func secondPressure(s *state) **screening.BloodPressure { return &s.profile.BPAgain }

func pressure(key, text, hint string, at func(s *state) **screening.BloodPressure) *asking {
	return written(key, screening.Code(key), Quantity, text, hint, func(s *state, text string) (err error) {
		*at(s), err = readPressure(text)
		return err
	})
}

func pulse(text string) *asking {
	return whole("pulse", "resting_pulse", text, "beats a minute, such as 68", beats, func(s *state, n int) { s.profile.RestingPulse = n })
}

// region asks for a part of the body.
func region(key string, of screening.Code, text string, take func(s *state, r body.Region)) *asking {
	all := slices.Collect(body.Regions())
	texts := make([]string, len(all))
	for i, r := range all {
		texts[i] = r.String()
	}
	return oneOf(key, of, text, all, texts, take)
}

// dayOf asks when something was.
func dayOf(key string, of screening.Code, text string) *asking {
	what := screening.Option(of)
	text = strings.ToUpper(what[:1]) + what[1:] + ". " + text
	return written(key, screening.Code(key), Date, text, dayHint, func(s *state, text string) error {
		day, err := readDay(text, s.profile.Day)
		s.profile.Events = append(s.profile.Events, screening.Event{Code: of, Day: day})
		return err
	})
}

// site asks where something is.
func site(key string, of screening.Code, text string) *asking {
	return region(key, screening.Code(key), text, func(s *state, r body.Region) {
		s.profile.Sites = append(s.profile.Sites, screening.Site{Code: of, Region: r})
	})
}
