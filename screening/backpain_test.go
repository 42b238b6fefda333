package screening_test

import (
	"testing"

	"pgregory.net/rapid"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// aches is a day on which an ordinary pain is told.
func aches(usual, during, next float64, at body.Region) screening.Check {
	c := quiet()
	c.Pain = &screening.Pain{Kind: screening.OrdinaryPain, Site: at, Usual: score(usual), During: score(during), After: score(during), NextMorning: score(next), WeeklyTrend: screening.StablePain}
	return c
}

// New back pain of somebody with osteoporosis may be a broken bone of the spine: a
// doctor is asked (this module's design; that such pain is looked at for a fracture is
// common practice). Pain elsewhere, pain that is as usual, and other people's are not.
func TestNewBackPainWithWeakBones(t *testing.T) {
	weak := well()
	weak.Conditions = screening.AskedFor("osteoporosis")
	o := assess(t, weak)
	for _, tt := range []struct {
		name  string
		of    screening.Outcome
		check screening.Check
		holds bool
	}{
		{"new, lower back", o, aches(0, 5, 5, body.LowerBack), true},
		{"at its worst the next morning", o, aches(0, 1, 3, body.UpperBack), true},
		{"nobody said where", o, aches(0, 5, 5, 0), true},
		{"the knee", o, aches(0, 5, 5, body.Knee), false},
		{"a light ache", o, aches(0, 2, 2, body.LowerBack), false},
		{"as on most days", o, aches(4, 5, 4, body.LowerBack), false},
		{"worse than on most days", o, aches(4, 6, 6, body.LowerBack), true},
		{"of which nobody knows whether they broke", assess(t, made(unsure("vertebral_fracture"), has("osteoporosis_uk"))), aches(0, 5, 5, body.LowerBack), true},
		{"all over", o, aches(0, 5, 5, body.WholeBody), true},
		{"cancer in the bones, agreed", assess(t, made(has("bone_metastases"), agreed("bone_metastases"))), aches(0, 5, 5, body.LowerBack), true},
		{"a hip that broke long ago", assess(t, made(has("hip_fracture"))), aches(0, 5, 5, body.LowerBack), true},
		{"sound bones", assess(t, well()), aches(0, 5, 5, body.LowerBack), false},
	} {
		got := mustToday(t, tt.check, tt.of)
		f, held := finding(got, "screening.pain_spinal_fracture.lesser")
		if held != tt.holds || held && (f.Route != screening.AskFirst || f.Meanwhile != screening.Nothing || f.Exit.Who != screening.TheDoctor) {
			t.Errorf("%s: %+v", tt.name, got.Findings)
		}
	}
	for _, code := range []screening.Code{"osteoporosis", "osteoporosis_uk", "osteoporosis_essa", "osteoporosis_essa_dose", "osteoporosis_with_vertebral_fracture", "vertebral_fracture", "hip_fracture", "bone_metastases"} {
		p := made(has(code), agreed(code))
		if code[:3] == "ost" && code != "osteoporosis_with_vertebral_fracture" {
			no("vertebral_fracture")(&p) // else the spine that nobody has seen says the same
		}
		if !assess(t, p).MayBeFracture(*aches(0, 5, 5, body.LowerBack).Pain) {
			t.Errorf("%s: who has it would train on a spine that may just have broken", code)
		}
	}
}

// Worse, or less told of the session, is never less of a sign; the next morning may lie ahead.
func TestMayBeFractureMonotone(t *testing.T) {
	weak := well()
	weak.Conditions = screening.AskedFor("osteoporosis")
	o := assess(t, weak)
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 10)
		usual, during, next := n.Draw(t, "usual"), n.Draw(t, "during"), n.Draw(t, "next")
		p := *aches(float64(usual), float64(during), float64(next), rapid.SampledFrom([]body.Region{body.LowerBack, body.UpperBack, body.Knee}).Draw(t, "site")).Pain
		worse := p
		switch rapid.IntRange(0, 4).Draw(t, "worse") {
		case 0:
			worse.During = score(float64(min(10, during+n.Draw(t, "more"))))
		case 1:
			worse.NextMorning = score(float64(min(10, next+n.Draw(t, "more"))))
		case 2:
			worse.During = nil
		case 3:
			worse.Usual = nil
		case 4:
			worse.Site = 0
		}
		if o.MayBeFracture(p) && !o.MayBeFracture(worse) {
			t.Fatalf("%+v may be one, %+v not", p, worse)
		}
	})
}
