package interview

import (
	"slices"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// daily are the questions of the day that a field of the check answers.
var daily = map[screening.Code]func(text string) *asking{
	"febrile": func(text string) *asking {
		return yesNo("febrile", "febrile", text, func(s *state, a screening.Answer) { s.check.Febrile = a })
	},
	"severe_low_24h": func(text string) *asking {
		return yesNo("severe_low_24h", "severe_low_24h", text, func(s *state, a screening.Answer) { s.check.SevereLow = a })
	},
	"glucose": func(text string) *asking {
		return written("glucose", "glucose", Quantity, text, `with its unit, such as "98 mg/dL" or "5.4 mmol/L"`, func(s *state, text string) (err error) {
			s.check.Glucose, err = readGlucose(text)
			return err
		})
	},
	"oxygen_saturation": func(text string) *asking {
		return whole("oxygen_saturation", "oxygen_saturation", text, "per cent, such as 95", saturations, func(s *state, n int) { s.check.SpO2 = n })
	},
	"oxygen_saturation_again": func(text string) *asking {
		return whole("oxygen_saturation_again", "oxygen_saturation_again", text, "per cent, such as 95", saturations, func(s *state, n int) { s.check.SpO2Again = n })
	},
	"hf_worsening": func(text string) *asking {
		return yesNo("hf_worsening", "hf_worsening", text, func(s *state, a screening.Answer) { s.check.Worsening = a })
	},
	"ketones": func(text string) *asking {
		return oneOf("ketones", "ketones", text, ketones, ketoneTexts, func(s *state, k screening.Ketones) { s.check.Ketones = k })
	},
}

// bloodKetones asks for what a meter shows, of whoever has no strips.
func bloodKetones() *asking {
	return written("blood_ketones", "ketones", Quantity, "Or does a blood meter show them as a number?", `in mmol/L, such as "0.4 mmol/L"`, func(s *state, text string) (err error) {
		s.check.BloodKetones, err = readNumber(strings.TrimSuffix(strings.ToLower(text), "mmol/l"), "a number in mmol/L")
		return err
	})
}

var saturations = span{50, 100, "%", []string{"%", "per cent"}}

// ofPain asks for the record of pain that was begun.
func (s state) ofPain() *asking {
	if s.check.Pain == nil {
		return nil
	}
	switch {
	case !s.asked["pain_kind"]:
		return oneOf("pain_kind", "pain_kind", "Where was it?", painKinds, painTexts, func(s *state, k screening.PainKind) { s.pain().Kind = k })
	case !s.asked["pain_site"] && s.placesPain():
		return region("pain_site", "pain_kind", "In which part of the body? Of several, where it hurts most.", func(s *state, r body.Region) { s.pain().Site = r })
	case !s.asked["pain_side"] && s.check.Pain.Kind == screening.SpreadingPain && slices.Contains(limbs, s.check.Pain.Site):
		return whichSide("pain_side", "pain_kind", "", func(s *state, v body.Side) { s.pain().Side = v })
	case !s.asked["pain_during"]:
		return score("pain_during", "While you trained, how bad was it at its worst?", "0 to 10; 0 if it did not hurt, and the worse the higher", func(p *screening.Pain, v *float64) { p.During = v })
	case !s.asked["pain_after"]:
		return score("pain_after", "And right after it?", "0 to 10", func(p *screening.Pain, v *float64) { p.After = v })
	case !s.asked["pain_settled"]:
		return yesNo("pain_settled", "pain", "Was it back to usual the next morning?", func(s *state, a screening.Answer) { s.pain().SettledNextMorning = a })
	case !s.asked["pain_trend"]:
		return oneOf("pain_trend", "pain", "From week to week, which way does it go?", trends, trendTexts, func(s *state, v screening.Trend) { s.pain().WeeklyTrend = v })
	}
	return nil
}

// placesPain reports whether the place of the pain matters: where it spreads, and where one of
// the back may be a broken bone.
func (s state) placesPain() bool {
	o, err := screening.Assess(s.full())
	return s.check.Pain.Kind == screening.SpreadingPain || err == nil && o.MayBeFracture(*s.check.Pain)
}

// score asks for pain from 0 to 10.
func score(key, text, hint string, set func(p *screening.Pain, v *float64)) *asking {
	return written(key, "pain", Quantity, text, hint, func(s *state, text string) error {
		v, err := readNumber(text, "a number from 0 to 10")
		set(s.pain(), v)
		return err
	})
}

// pain returns the record of pain, a copy of its own that can be written to.
func (s *state) pain() *screening.Pain {
	s.check.Pain = again(s.check.Pain)
	return s.check.Pain
}
