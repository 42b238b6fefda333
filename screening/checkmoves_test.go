package screening_test

import (
	"math/rand/v2"
	"slices"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// A checkMove makes one thing of a day's check worse.
type checkMove struct {
	name  string
	worse func(*rand.Rand, *screening.Check) bool
}

// Readings further out of the band of glucose.
var (
	lower  = map[string]string{"120 mg/dL": "80 mg/dL", "80 mg/dL": "60 mg/dL", "60 mg/dL": "40 mg/dL", "4.6 mmol/L": "2.8 mmol/L"}
	higher = map[string]string{"120 mg/dL": "300 mg/dL", "200 mg/dL": "300 mg/dL", "300 mg/dL": "400 mg/dL"}
)

// worseAnswer moves one answer of a check.
func worseAnswer(name string, of func(*screening.Check) *screening.Answer) checkMove {
	return checkMove{name, func(_ *rand.Rand, c *screening.Check) bool {
		next, ok := nextAnswer(*of(c))
		*of(c) = next
		return ok
	}}
}

var checkMoves = slices.Concat([]checkMove{
	{"new not asked", func(_ *rand.Rand, c *screening.Check) bool { c.New = screening.Checklist{}; return true }},
	{"perhaps a pop", func(_ *rand.Rand, c *screening.Check) bool {
		if c.New.Of("tendon_pop") != screening.No {
			return false
		}
		c.New.Unsure = append(slices.Clone(c.New.Unsure), "tendon_pop")
		return true
	}},
	worseAnswer("febrile", func(c *screening.Check) *screening.Answer { return &c.Febrile }),
	worseAnswer("unwell", func(c *screening.Check) *screening.Answer { return &c.Unwell }),
	worseAnswer("insulin", func(c *screening.Check) *screening.Answer { return &c.InsulinOrSecretagogue }),
	worseAnswer("severe low", func(c *screening.Check) *screening.Answer { return &c.SevereLow }),
	{"happened", func(r *rand.Rand, c *screening.Check) bool {
		c.Events = append(slices.Clone(c.Events), screening.Event{Code: one(r, datedCodes), Day: visit})
		return true
	}},
	{"alone", func(_ *rand.Rand, c *screening.Check) bool { c.Setting = 0; return true }},
	{"drop", func(r *rand.Rand, c *screening.Check) bool {
		c.Orthostatic = &screening.OrthostaticDrop{From: screening.Sitting, Systolic: 45}
		return true
	}},
	{"lying pressure not known to be high", func(_ *rand.Rand, c *screening.Check) bool {
		if c.Orthostatic == nil || !c.Orthostatic.HighLying {
			return false
		}
		drop := *c.Orthostatic
		drop.HighLying = false
		c.Orthostatic = &drop
		return true
	}},
	{"soreness", func(_ *rand.Rand, c *screening.Check) bool { c.SorenessDays += 2; return true }},
}, glucoseMoves, heartMoves, painMoves)

var glucoseMoves = []checkMove{
	{"ketones", func(_ *rand.Rand, c *screening.Check) bool {
		if c.Ketones == 0 || c.Ketones == screening.LargeKetones {
			return false
		}
		c.Ketones++
		return true
	}},
	{"ketones not tested", func(_ *rand.Rand, c *screening.Check) bool {
		if c.Ketones >= screening.ModerateKetones || c.BloodKetones != nil || c.NoKetoneStrips {
			return false
		}
		c.Ketones = 0
		return true
	}},
	{"blood ketones", func(_ *rand.Rand, c *screening.Check) bool {
		if c.BloodKetones == nil {
			return false
		}
		c.BloodKetones = score(*c.BloodKetones + 0.2)
		return true
	}},
	{"lower", func(_ *rand.Rand, c *screening.Check) bool {
		next, ok := lower[c.Glucose.String()]
		if ok {
			c.Glucose = glucose(next)
		}
		return ok
	}},
	{"lower again", func(_ *rand.Rand, c *screening.Check) bool {
		next, ok := lower[c.GlucoseAgain.String()]
		if ok {
			c.GlucoseAgain = glucose(next)
		}
		return ok
	}},
	{"treated and not measured again", func(_ *rand.Rand, c *screening.Check) bool {
		was := c.GlucoseAgain.String()
		c.GlucoseAgain = screening.Glucose{}
		return was != "" && !slices.Contains([]string{"40 mg/dL", "300 mg/dL", "400 mg/dL", "15 mmol/L"}, was) && c.Glucose == glucose("60 mg/dL")
	}},
	{"higher", func(_ *rand.Rand, c *screening.Check) bool {
		next, ok := higher[c.Glucose.String()]
		if ok = ok && c.Ketones != 0; ok {
			c.Glucose = glucose(next)
		}
		return ok
	}},
}

var heartMoves = []checkMove{
	{"pressure", func(r *rand.Rand, c *screening.Check) bool {
		if c.BP == nil || !inBand(c.BP) {
			return false
		}
		c.BP = raised(r, c.BP)
		if c.BPAgain != nil {
			c.BPAgain = raised(r, c.BPAgain)
		}
		return true
	}},
	{"low pressure", func(r *rand.Rand, c *screening.Check) bool {
		lower, ok := lowered(r, c.BP)
		c.BP = lower
		return ok && c.BPAgain == nil
	}},
	{"low pulse", func(_ *rand.Rand, c *screening.Check) bool {
		was := c.RestingPulse
		c.RestingPulse = max(20, was-8)
		return was > 0 && was <= 60
	}},
	{"pulse", func(_ *rand.Rand, c *screening.Check) bool {
		if c.RestingPulse <= 50 { // one that was not taken may count as the worst
			return false
		}
		c.RestingPulse = max(c.RestingPulse, 80) + 40
		return true
	}},
	{"saturation", func(_ *rand.Rand, c *screening.Check) bool {
		was := c.SpO2
		c.SpO2 = max(was-1, 0)
		return was > 0
	}},
	{"saturation after a rest", func(_ *rand.Rand, c *screening.Check) bool {
		was := c.SpO2Again
		c.SpO2Again = max(was-1, 0)
		return was > 0
	}},
	{"saturation not read after a rest", func(_ *rand.Rand, c *screening.Check) bool {
		was := c.SpO2Again
		c.SpO2Again = 0
		return was >= 89 && was >= c.SpO2
	}},
	{"weight", func(_ *rand.Rand, c *screening.Check) bool {
		if c.Weight == nil {
			return false
		}
		c.Weight = &screening.WeightGain{Mass: c.Weight.Mass + units.Kilogram, Days: c.Weight.Days}
		return true
	}},
	worseAnswer("worsening", func(c *screening.Check) *screening.Answer { return &c.Worsening }),
	{"supine pulse", func(_ *rand.Rand, c *screening.Check) bool { c.SupinePulse = max(c.SupinePulse, 60) + 40; return true }},
}

// pain changes a copy of the record of pain.
func pain(name string, change func(*screening.Pain) bool) checkMove {
	return checkMove{name, func(_ *rand.Rand, c *screening.Check) bool {
		if c.Pain == nil {
			return false
		}
		p := *c.Pain
		c.Pain = &p
		return change(&p)
	}}
}

var painMoves = []checkMove{
	pain("more pain", func(p *screening.Pain) bool {
		if p.During == nil {
			return false
		}
		p.During = score(min(10, *p.During+3))
		return true
	}),
	pain("worse next morning", func(p *screening.Pain) bool {
		if p.NextMorning == nil {
			return false
		}
		p.NextMorning = score(min(10, *p.NextMorning+4))
		return true
	}),
	pain("usual less", func(p *screening.Pain) bool {
		if p.Usual == nil {
			return false
		}
		p.Usual = score(0)
		return true
	}),
	pain("pain forgotten", func(p *screening.Pain) bool {
		p.During, p.WeeklyTrend = nil, 0
		return p.Kind <= screening.OrdinaryPain
	}),
	pain("kind not given", func(p *screening.Pain) bool {
		was := p.Kind
		p.Kind = 0
		return was == screening.OrdinaryPain
	}),
	pain("side of pain forgotten", func(p *screening.Pain) bool { p.Side = 0; return true }),
	pain("chest", func(p *screening.Pain) bool {
		elsewhere := p.Kind == screening.SpreadingPain && p.Site != 0 // another pain, not a worse one
		p.Kind = screening.ChestPain
		return !elsewhere
	}),
}
