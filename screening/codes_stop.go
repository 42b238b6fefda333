package screening

import (
	"fmt"

	"example.org/posology/units/evidence"
)

// Codes of what is measured during a set. Each of three tables has its own
// threshold of pressure; they are not merged.
const (
	stopPressureA   Code = "stop_bp_ge_250_or_115"
	stopPressureB   Code = "stop_bp_gt_260_or_115"
	stopPressureC   Code = "stop_bp_gt_250_or_120"
	stopFall        Code = "stop_systolic_fall_gt_10"
	stopSaturation  Code = "stop_spo2_lt_89"
	stopSaturation2 Code = "stop_spo2_lt_90"
)

// stopPressure is the pressure at which a table ends exercise.
type stopPressure struct {
	code                Code
	systolic, diastolic int
	reached             bool // systolic and diastolic at the threshold are enough
	source              evidence.SourceID
}

// stopPressures are the tables' own thresholds, in mmHg.
var stopPressures = [...]stopPressure{
	{stopPressureA, 250, 115, true, "hfrev2023"},
	{stopPressureB, 260, 115, false, "jssm_t7"},
	{stopPressureC, 250, 120, false, "pmj_t5"},
}

// Thresholds of one table only.
const (
	stopSystolicFall = 10 // mmHg of fall while work rises, strictly above
)

// says prints the threshold.
func (s stopPressure) says() string {
	compared := "above"
	if s.reached {
		compared = "at or above"
	}
	return fmt.Sprintf("systolic %s %d or diastolic %s %d mmHg: stop", compared, s.systolic, compared, s.diastolic)
}

// met reports whether the pressure is one at which the table stops.
func (s stopPressure) met(b *BloodPressure) bool {
	if b == nil {
		return false
	}
	if s.reached {
		return b.Systolic >= s.systolic || b.Diastolic >= s.diastolic
	}
	return b.Systolic > s.systolic || b.Diastolic > s.diastolic
}

// stopTable is a row of a table of reasons to end an exercise test, carried
// over to training.
func stopTable(source evidence.SourceID, says string) provenance {
	return reported(source, "tables of reasons to end an exercise test, adapted from others and carried over to training", says)
}

// Effects that end a set: for a rest, or for the day.
var (
	endSet   = tell
	endToday = seeToday
)

// stops are the signs and readings that end a set.
var stops = []entry{
	{code: "chest_symptom", kind: Sign, meaning: "pain in the chest, or any symptom like angina", from: stopTable("hfrev2023", "any chest symptom: stop"), effect: emergency},
	{code: "dizzy_or_swaying", kind: Sign, meaning: "dizzy or swaying", from: stopTable("jssm_t7", "dizzy or swaying: stop"), effect: endToday, balance: true},
	{code: "pale_bluish_or_clammy", kind: Sign, meaning: "skin pale, bluish, or cold and damp", from: stopTable("jssm_t7", "skin pale, bluish, or cold and damp: stop"), effect: emergency},
	{code: "feels_sick", kind: Sign, meaning: "feels sick", from: stopTable("jssm_t7", "feels sick: stop"), effect: endToday},
	{code: "confused_or_uncoordinated", kind: Sign, meaning: "confused, or movements no longer coordinated", from: stopTable("pmj_t5", "confused, or movements no longer coordinated: stop"), effect: emergency},
	{code: "breathless_or_wheezing", kind: Sign, meaning: "far more out of breath than the work explains, or wheezing", from: stopTable("jssm_t7", "far more out of breath than the work explains, or wheezing: stop"), effect: endToday},
	{code: "leg_cramp", kind: Sign, meaning: "cramp or claudication in a leg", from: stopTable("jssm_t7", "cramp or claudication in a leg: stop"), effect: endSet},
	{code: "exhausted", kind: Sign, meaning: "exhausted", from: stopTable("jssm_t7", "exhausted: stop"), effect: endSet},
	{code: "rhythm_disturbed", kind: Sign, meaning: "heart rhythm newly disturbed or getting worse", from: stopTable("hfrev2023", "a rhythm newly disturbed or getting worse: stop"), effect: endToday},
	{code: "asks_to_stop", kind: Sign, meaning: "asks to stop", from: stopTable("jssm_t7", "the person asks to stop: stop"), effect: endSet},
	{code: "monitor_stopped", kind: Sign, meaning: "the monitor stopped working", from: stopTable("jssm_t7", "the monitor stops working: stop"), effect: endSet},

	{code: stopPressureA, kind: Reading, meaning: "pressure on effort, Heart Fail Rev 2023", from: stopTable(stopPressures[0].source, stopPressures[0].says()), effect: endToday},
	{code: stopPressureB, kind: Reading, meaning: "pressure on effort, J Sports Sci Med", from: stopTable(stopPressures[1].source, stopPressures[1].says()), effect: endToday},
	{code: stopPressureC, kind: Reading, meaning: "pressure on effort, Postgrad Med J", from: stopTable(stopPressures[2].source, stopPressures[2].says()), effect: endToday},
	{code: stopFall, kind: Reading, meaning: "systolic pressure falls while work rises", from: stopTable("hfrev2023", fmt.Sprintf("systolic pressure falls by more than %d mmHg as work rises: stop", stopSystolicFall)), effect: endToday},
	{code: stopSaturation, kind: Reading, meaning: "oxygen saturation below 89 % on effort", from: said("garvey2012", evidence.Published, fmt.Sprintf("below %d %% is severe desaturation on effort", spo2Severe)), effect: endToday},
	{code: stopSaturation2, kind: Reading, meaning: "oxygen saturation below 90 % on effort", from: said("", evidence.FromMemory, fmt.Sprintf("programmes of rehabilitation commonly keep it at or above 88 to %d %%", spo2Floor)), effect: endSet},
}
