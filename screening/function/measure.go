package function

import (
	"iter"

	"example.org/posology/units/field"
)

// Measure is what a published figure is about. [Test.Measure] has that of a test; the
// walks share one, usual gait speed, unless a figure names its course.
//
//   - of tests: "chair_stand_30s", "five_times_sit_to_stand", "timed_up_and_go",
//     "four_stage_balance" (its tandem hold), "gait_speed_usual", "sppb_total",
//     "grip_strength" (either hand or the better), "arm_curl_30s", "sarc_f",
//     "falls_self_score_12" and "frailty_level"
//   - parts of the battery: "sppb_chair_stand", "sppb_gait_4m", "sppb_gait_3m",
//     "sppb_gait_8ft", "sppb_balance_side_by_side", "sppb_balance_semitandem" and
//     "sppb_balance_tandem"
//   - one hand's grip: "grip_strength_dominant" and "grip_strength_nondominant"
//   - of no test here: "gait_speed_max", "walk_400m", and appendicular lean mass by DXA,
//     "asm_dxa" or "asmi_dxa" over height squared, and "calf_circumference"
type Measure uint8

const (
	_ Measure = iota // not given
	chairStands
	fiveStandsTime
	upAndGoTime
	balanceStages
	usualGait
	fastGait
	batteryTotal
	batteryStands
	batteryWalk4m
	batteryWalk3m
	batteryWalk8ft
	batterySideBySide
	batterySemiTandem
	batteryTandem
	gripForce
	gripDominant
	gripNonDominant
	armCurls
	sarcopeniaTotal
	fallsTotal
	frailtyNumber
	muscleIndex
	muscleMass
	calfGirth
	walk400m
)

var measures = field.NewVocabulary[Measure]("measure", "",
	"chair_stand_30s", "five_times_sit_to_stand", "timed_up_and_go", "four_stage_balance",
	"gait_speed_usual", "gait_speed_max", "sppb_total", "sppb_chair_stand",
	"sppb_gait_4m", "sppb_gait_3m", "sppb_gait_8ft",
	"sppb_balance_side_by_side", "sppb_balance_semitandem", "sppb_balance_tandem",
	"grip_strength", "grip_strength_dominant", "grip_strength_nondominant",
	"arm_curl_30s", "sarc_f", "falls_self_score_12", "frailty_level",
	"asmi_dxa", "asm_dxa", "calf_circumference", "walk_400m")

// Measures yields every measure.
func Measures() iter.Seq[Measure] { return measures.All() }

// String returns the measure's code, such as "gait_speed_usual".
func (m Measure) String() string { return measures.Text(m) }

// MarshalText writes what String returns.
func (m Measure) MarshalText() ([]byte, error) { return measures.Marshal(m) }

// UnmarshalText reads what MarshalText writes.
func (m *Measure) UnmarshalText(text []byte) error { return measures.Unmarshal(text, m) }
