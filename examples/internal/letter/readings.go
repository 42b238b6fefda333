package letter

import (
	"fmt"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
)

// readings says what was measured, at the assessment and today, with its day.
func (l Letter) readings() []string {
	lines := []string{onThe("at the assessment", page.Day(l.Profile.Day), assessment(l.Profile))}
	if l.Check != nil {
		lines = append(lines, onThe("today", page.Day(l.Check.Day), today(*l.Check)))
	}
	return append(lines, "medicines: no list of them is kept here")
}

func onThe(when, day string, parts parts) string {
	if len(parts) == 0 {
		parts = append(parts, "nothing was measured")
	}
	return fmt.Sprintf("%s, %s: %s", when, day, strings.Join(parts, "; "))
}

// parts are what was measured, in words.
type parts []string

// add adds a part if it was measured.
func (p *parts) add(measured bool, format string, args ...any) {
	if measured {
		*p = append(*p, fmt.Sprintf(format, args...))
	}
}

// twice adds pressure and pulse with the second reading, if there is one.
func (p *parts) twice(bp, again *screening.BloodPressure, pulse, pulseAgain int) {
	p.add(bp != nil, "blood pressure at rest %s", bp)
	p.add(again != nil, "after a rest %s", again)
	p.add(pulse > 0, "pulse at rest %d a minute", pulse)
	p.add(pulseAgain > 0, "after a rest %d a minute", pulseAgain)
}

func (p *parts) counts(c *screening.BloodCounts) {
	p.add(c != nil && c.Platelets > 0, "platelets %d × 10⁹/L", value(c).Platelets)
	p.add(c != nil && c.Haemoglobin > 0, "haemoglobin %d g/L", value(c).Haemoglobin)
}

func assessment(r screening.Profile) parts {
	var p parts
	p.twice(r.BP, r.BPAgain, r.RestingPulse, r.RestingPulseAgain)
	p.add(r.HbA1c != nil, "HbA1c %g %%", value(r.HbA1c))
	p.add(r.CapacityMETs != nil, "functional capacity %g METs", value(r.CapacityMETs))
	p.add(r.MeanPAP != nil, "mean pulmonary artery pressure %d mmHg", value(r.MeanPAP))
	p.counts(r.Counts)
	return p
}

func today(c screening.Check) parts {
	var p parts
	p.twice(c.BP, c.BPAgain, c.RestingPulse, c.RestingPulseAgain)
	p.add(c.Orthostatic != nil, "on standing up (from %s) %s", value(c.Orthostatic).From, fall(c.Orthostatic))
	p.add(c.SupinePulse > 0, "pulse lying at rest %d a minute", c.SupinePulse)
	p.add(c.SpO2 > 0, "oxygen saturation %d %%", c.SpO2)
	p.add(c.SpO2Again > 0, "after a rest %d %%", c.SpO2Again)
	p.add(!c.Glucose.IsZero(), "glucose %s", c.Glucose)
	p.add(!c.GlucoseAgain.IsZero(), "then, after sugar, %s", c.GlucoseAgain)
	p.add(c.Ketones != 0, "ketones %s", c.Ketones)
	p.add(c.BloodKetones != nil, "ketones in the blood %g mmol/L", value(c.BloodKetones))
	p.add(c.Weight != nil, "weight changed by %s in %s", value(c.Weight).Mass, page.Counted(value(c.Weight).Days, "day"))
	p.counts(c.Counts)
	return p
}

func fall(o *screening.OrthostaticDrop) string {
	d := value(o)
	return fmt.Sprintf("pressure fell by %d systolic and %d diastolic mmHg", d.Systolic, d.Diastolic)
}

// value is what v points to, or the zero value.
func value[T any](v *T) T {
	if v == nil {
		return *new(T)
	}
	return *v
}
