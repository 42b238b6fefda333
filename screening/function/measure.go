package function

import (
	"iter"

	"example.org/posology/units/field"
)

// Measure is what a published figure is about. The walks share one, usual gait
// speed, unless a figure names its course; the battery has one for each part, and grip
// one for each hand. [Test.Measure] has that of a test, and every measure its text, such
// as "gait_speed_max" or "sppb_gait_4m".
type Measure uint8

const (
	_                 Measure = iota // not given
	chairStands                      // "chair_stand_30s": stands in 30 s
	fiveStandsTime                   // "five_times_sit_to_stand": time of five sit-to-stands
	upAndGoTime                      // "timed_up_and_go": time of the timed up and go
	balanceStages                    // "four_stage_balance": tandem hold of the four-stage balance test
	usualGait                        // "gait_speed_usual": usual walking speed
	fastGait                         // "gait_speed_max": fastest walking speed; no test here
	batteryTotal                     // "sppb_total": total of the short physical performance battery
	batteryStands                    // "sppb_chair_stand": its chair stands
	batteryWalk4m                    // "sppb_gait_4m": its walk over 4 m
	batteryWalk3m                    // "sppb_gait_3m": its walk over 3 m
	batteryWalk8ft                   // "sppb_gait_8ft": its walk over 8 ft
	batterySideBySide                // "sppb_balance_side_by_side": its stand with feet side by side
	batterySemiTandem                // "sppb_balance_semitandem": its semi-tandem stand
	batteryTandem                    // "sppb_balance_tandem": its tandem stand
	gripForce                        // "grip_strength": grip, either hand or the better
	gripDominant                     // "grip_strength_dominant": grip of the dominant hand
	gripNonDominant                  // "grip_strength_nondominant": grip of the other hand
	armCurls                         // "arm_curl_30s": arm curls in 30 s
	sarcopeniaTotal                  // "sarc_f": total of the sarcopenia self-report
	fallsTotal                       // "falls_self_score_12": total of the 12-question falls self-score
	frailtyNumber                    // "frailty_level": number of the frailty level
	muscleIndex                      // "asmi_dxa": appendicular lean mass by DXA over height squared; no test here
	muscleMass                       // "asm_dxa": appendicular lean mass by DXA; no test here
	calfGirth                        // "calf_circumference": calf circumference; no test here
	walk400m                         // "walk_400m": time over 400 m; no test here
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
