package screening_test

import (
	"encoding/json"
	"fmt"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/field"
)

func FuzzProfileJSON(f *testing.F) {
	f.Add([]byte(`{"day":"2026-11-25","age":66,"diseases":{"asked":true,"present":["cardiac"]},"bp":{"systolic":130,"diastolic":80}}`))
	f.Add([]byte(`{"day":"2026-11-25","age":66,"events":[{"code":"fracture","day":"0001-01-01","region":"knee"}],"clearances":[{"who":"A","day":"9999-12-31","scope":["renal"]}]}`))
	f.Add([]byte(`{"answers":{"clearance":"yes"},"restrictions":[{"region":"hip","max_mass":"2 kg"}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var p screening.Profile
		if field.Decode(data, &p, field.Strict) != nil {
			return
		}
		first, err := json.Marshal(p)
		if err != nil {
			t.Fatalf("%v cannot be written: %v", p, err)
		}
		var again screening.Profile
		if err := field.Decode(first, &again, field.Strict); err != nil {
			t.Fatalf("%s cannot be read back: %v", first, err)
		}
		o, err := screening.Assess(p)
		if (err == nil) != (p.Validate() == nil) || err == nil && !o.Screened() {
			t.Fatalf("Assess(%s) = %+v, %v", first, o, err)
		}
	})
}

func FuzzCheckJSON(f *testing.F) {
	f.Add([]byte(`{"day":"2026-11-25","glucose":"4.6 mmol/L","ketones":"large","febrile":"no","new":{"asked":true}}`))
	f.Add([]byte(`{"day":"2026-11-25","pain":{"during":3,"after":9},"orthostatic_drop":{"from":"lying","systolic":20,"diastolic":1}}`))
	o, err := screening.Assess(blank())
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var c screening.Check
		if field.Decode(data, &c, field.Strict) != nil {
			return
		}
		got, err := screening.Today(c, o)
		if err != nil {
			return
		}
		if got.Meanwhile < o.Meanwhile || !got.Limits.AsTightAs(o.Limits) || got.Route < o.Route {
			t.Fatalf("Today(%s) loosens %+v to %+v", data, o, got)
		}
	})
}

func FuzzParseGlucose(f *testing.F) {
	for _, s := range []string{"82 mg/dL", "4.6 mmol/L", "4,65 mmol/L", "0082.10 mg/dL", "82", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		g, err := screening.ParseGlucose(s)
		if err != nil {
			return
		}
		if back, err := screening.ParseGlucose(g.String()); err != nil || back != g {
			t.Fatalf("ParseGlucose(%q) = %v, read back as %v, %v", s, g, back, err)
		}
	})
}

func FuzzMomentJSON(f *testing.F) {
	f.Add([]byte(`{"signs":["chest_symptom"],"bp":{"systolic":251,"diastolic":121},"spo2":88,"pain":6,"systolic_fall":11}`))
	f.Add([]byte(`{"signs":["glaucoma",""],"spo2":101,"pain":-1}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var m screening.Moment
		if field.Decode(data, &m, field.Strict) != nil {
			return
		}
		got, err := screening.During(m)
		if (err == nil) != (m.Validate() == nil) || err == nil && got.Action == 0 {
			t.Fatalf("During(%s) = %+v, %v", data, got, err)
		}
		if (len(got.Findings) > 0) != (got.Action > screening.CarryOn) {
			t.Fatalf("During(%s): %v with %d findings", data, got.Action, len(got.Findings))
		}
	})
}

// ExampleDuring shows three tables that disagree at 255/100 mmHg.
func ExampleDuring() {
	answer, _ := screening.During(screening.Moment{BP: &screening.BloodPressure{Systolic: 255, Diastolic: 100}})
	fmt.Println(answer.Action)
	for _, f := range answer.Findings {
		fmt.Println(f.Reason.Code)
	}
	// Output:
	// stop for today
	// screening.stop_bp_ge_250_or_115
	// screening.stop_bp_gt_250_or_120
}
