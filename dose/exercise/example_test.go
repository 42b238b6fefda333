package exercise_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/dose/exercise"
	"example.org/posology/units/field"
)

func ExampleCatalogue_Ladder() {
	for _, e := range exercise.Standard().Ladder("goblet-squat") {
		fmt.Printf("%s (%s)\n", e.Name, e.Hold)
	}
	// Output:
	// sit-to-stand with hands (unloaded)
	// sit-to-stand (unloaded)
	// sit-to-stand holding a dumbbell (both hands on one)
	// goblet squat (both hands on one)
	// dumbbell squat (one in each hand)
	// split squat with dumbbells (one in each hand)
}

func ExampleCatalogue_Lookup() {
	_, err := exercise.Standard().Lookup("goblet sqat")
	fmt.Println(err)
	// Output: unknown: value = "goblet sqat", allowed: did you mean goblet-squat
}

func FuzzLookup(f *testing.F) {
	for _, s := range []string{"", "plank", "PLANK ", "plonk", "\xff\xfe", "farmer’s carry"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, name string) {
		e, err := exercise.Standard().Lookup(name)
		if (err == nil) != (e.ID != "") {
			t.Errorf("Lookup(%q) = %q, %v: want an exercise or an error", name, e.ID, err)
		}
	})
}

func FuzzCatalogueJSON(f *testing.F) {
	text, err := json.Marshal(exercise.Standard().Ladder("plank"))
	if err != nil {
		f.Fatal(err)
	}
	f.Add(text)
	f.Add([]byte(`[{"id":"a","easier":"a"}]`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var c exercise.Catalogue
		if field.Decode(data, &c, field.Strict) != nil {
			return
		}
		once, err := json.Marshal(c)
		if err != nil {
			t.Fatalf("what was read cannot be written: %v", err)
		}
		var again exercise.Catalogue
		if err := field.Decode(once, &again, field.Strict); err != nil || again.Len() != c.Len() {
			t.Fatalf("%s does not come back: %v", once, err)
		}
		for e := range again.All() {
			if len(again.Ladder(e.ID)) > again.Len() {
				t.Fatalf("the ladder of %s runs in a ring", e.ID)
			}
		}
	})
}

func BenchmarkLookup(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		if _, err := c.Lookup("Goblet Squat"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSuggest(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		if _, err := c.Lookup("goblet sqat"); err == nil {
			b.Fatal("found what is not there")
		}
	}
}

func BenchmarkAll(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		n := 0
		for range c.All() {
			n++
		}
		if n != c.Len() {
			b.Fatal(n)
		}
	}
}

func BenchmarkGet(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		if _, ok := c.Get("goblet-squat"); !ok {
			b.Fatal("lost")
		}
	}
}

func BenchmarkPattern(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		if c.Pattern("goblet-squat") != exercise.Squat {
			b.Fatal("lost")
		}
	}
}

func BenchmarkInstead(b *testing.B) {
	b.ReportAllocs()
	c := exercise.Standard()
	for b.Loop() {
		if slices.Collect(c.Instead("goblet-squat")) == nil {
			b.Fatal("nothing stands in")
		}
	}
}

func ExampleExercise_MusclesAs() {
	e, err := exercise.Standard().Lookup("goblet squat")
	if err != nil {
		fmt.Println(err)
		return
	}
	for m := range e.MusclesAs(exercise.Prime) {
		fmt.Println(m)
	}
	// Output:
	// quadriceps
	// gluteus_maximus
}
