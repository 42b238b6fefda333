package screening_test

import (
	"testing"

	"example.org/posology/screening"
)

func BenchmarkAssess(b *testing.B) {
	p := blank()
	p.Activity, p.BP = busy(), pressure(164, 92)
	p.Diseases = screening.AskedFor("diabetes_t2", "cardiac")
	p.Conditions = screening.AskedFor("osteoporosis", "hypertension_treated", "beta_blocker", "glaucoma")
	p.Clearances = []screening.Clearance{clearance("diabetes_t2", "cardiac")}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := screening.Assess(p); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkToday(b *testing.B) {
	o := assess(b, blank())
	c := quiet()
	c.BP, c.RestingPulse = pressure(130, 80), 70
	b.ReportAllocs()
	for b.Loop() {
		if _, err := screening.Today(c, o); err != nil {
			b.Fatal(err)
		}
	}
}
