package screening_test

import (
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

// Tests of strength say something from the day after the last event on; from the
// visit on where that is no earlier, or where a day is not known. Which events end
// them is this module's design (the fact events-end).
func TestTestsFrom(t *testing.T) {
	tests := []struct {
		name       string
		events     []screening.Event
		conditions screening.Checklist
		want       units.Day
	}{
		{"nothing happened", nil, screening.AskedFor("osteoporosis"), 0},
		{"a fall", []screening.Event{{Code: "fall", Day: visit - 30}}, screening.AskedFor(), visit - 29},
		{"the last of two", []screening.Event{{Code: "hospital_stay", Day: visit - 9}, {Code: "fall", Day: visit - 30}}, screening.AskedFor(), visit - 8},
		{"the day itself", []screening.Event{{Code: "fall", Day: visit}}, screening.AskedFor(), visit},
		{"no day", []screening.Event{{Code: "operation"}}, screening.AskedFor(), visit},
		{"one of two without a day", []screening.Event{{Code: "fall", Day: visit - 30}, {Code: "operation"}}, screening.AskedFor(), visit},
		{"a new joint without a day", nil, screening.AskedFor("total_hip_replacement"), visit},
		{"one that may be", nil, screening.Checklist{Asked: true, Unsure: []screening.Code{"total_hip_replacement"}}, visit},
		{"a new joint with its day", []screening.Event{{Code: "total_hip_replacement", Day: visit - 200}}, screening.AskedFor("total_hip_replacement"), visit - 199},
		{"another's day", []screening.Event{{Code: "fall", Day: visit - 200}}, screening.AskedFor("total_hip_replacement"), visit},
	}
	for _, tt := range tests {
		p := blank()
		p.Events, p.Conditions = tt.events, tt.conditions
		o := assess(t, p)
		if o.TestsFrom != tt.want {
			t.Errorf("%s: from %v, want %v", tt.name, o.TestsFrom, tt.want)
		}
		later := mustToday(t, screening.Check{Day: visit + 5, Setting: screening.InClinic, Events: []screening.Event{{Code: "fall", Day: visit + 2}}}, o)
		if later.TestsFrom != visit+3 {
			t.Errorf("%s, and a fall since: from %v, want %v", tt.name, later.TestsFrom, visit+3)
		}
		quiet := mustToday(t, screening.Check{Day: visit + 5, Setting: screening.InClinic}, o)
		if quiet.TestsFrom != tt.want {
			t.Errorf("%s, and nothing since: from %v, want %v", tt.name, quiet.TestsFrom, tt.want)
		}
	}
}
