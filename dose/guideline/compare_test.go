package guideline_test

import (
	"fmt"
	"testing"

	"example.org/posology/dose/guideline"
)

// Rows side by side, field by field: what one of them does not state stays silent.
func ExampleRecommendation_Stated() {
	fields := []guideline.Field{guideline.FieldDays, guideline.FieldSets, guideline.FieldReps}
	for _, id := range []guideline.ID{"who2020-older", "acsm2011-older-start", "nsca2019-older-healthy"} {
		r, err := guideline.Get(id)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Print(id)
		for _, f := range fields {
			if text, ok := r.Stated(f); ok {
				fmt.Printf(" | %s (%s)", text, r.BasisOf(f))
			}
		}
		fmt.Println()
	}
	// Output:
	// who2020-older | days a week: at least 2 (secondary)
	// acsm2011-older-start | days a week: 2 to 3 (published) | sets per exercise: at least 1 (from memory) | repetitions per set: 10 to 15 (from memory)
	// nsca2019-older-healthy | days a week: 2 to 3 (from memory) | sets per exercise: 2 to 3 (secondary)
}

// Every field that a row can state is stated by one and says what it is about.
func TestEveryFieldIsStated(t *testing.T) {
	stated := map[guideline.Field]bool{}
	for r := range guideline.All() {
		for f := range guideline.Fields() {
			text, ok := r.Stated(f)
			stated[f] = stated[f] || ok
			if ok && len(text) <= len(f.About()+": ") {
				t.Errorf("%s of %s: %q", f, r.ID, text)
			}
		}
	}
	for f := range guideline.Fields() {
		if f.About() == "" || stated[f] != (f < guideline.FieldPushPull) {
			t.Errorf("%s is about %q, stated: %v", f, f.About(), stated[f])
		}
	}
	if (guideline.Field(0)).About() != "" || (guideline.Field(99)).About() != "" {
		t.Error("what is no field is about something")
	}
}
