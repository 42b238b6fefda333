package screening

import (
	"fmt"

	"example.org/posology/units"
)

// Numbers of the rules. The facts print them from these very constants: see the
// tables of codes and numberFacts.
const (
	// Regularly active, preparticipation rule.
	activeDays    = 3  // a week, at least
	activeMinutes = 30 // a day, at least
	activeMonths  = 3  // at least

	assessmentMonths = 12 // after which a person is assessed again
	clearanceMonths  = 12 // for which a clearance counts before vigorous exercise

	// List of contraindications; strictly above, and either pressure is enough.
	absoluteSystolic, absoluteDiastolic = 180, 110 // mmHg
	relativeSystolic, relativeDiastolic = 160, 100 // mmHg
	severePAP                           = 55       // mmHg, strictly above
	lowMETs                             = 4.0      // strictly below

	// Session-day checks.
	daySystolic, dayDiastolic         = 180, 100 // mmHg, at or above
	dayPulse                          = 100      // beats a minute, strictly above
	lyingSystolic, lyingDiastolic     = 20, 10   // mmHg of fall, at or above
	sittingSystolic, sittingDiastolic = 15, 7    // mmHg of fall, at or above
	lyingHighSystolic                 = 30       // mmHg of fall where the pressure lying down is high
	lowestSystolic                    = 70       // mmHg, at or below
	lowSystolic, lowDiastolic         = 90, 40   // mmHg, strictly below
	lowishSystolic, lowishDiastolic   = 100, 50  // mmHg, strictly below: with care
	lowPulse, lowishPulse             = 40, 50   // beats a minute, at or below
	exertionSystolic                  = 160      // mmHg, strictly above: nothing of high intensity
	spo2Severe, spo2Floor             = 89, 90   // per cent, strictly below
	lowPlatelets, lowHaemoglobin      = 50, 100  // × 10⁹/L and g/L, strictly below
	bloodKetones                      = 1.5      // mmol/L, at or above: no exercise; below it light effort

	// Chronic heart failure.
	gainMass                   = units.Kilogram * 18 / 10 // at or above
	gainMinDays, gainMaxDays   = 1, 3
	worseMinDays, worseMaxDays = 3, 5
	supinePulse                = 100 // beats a minute, at or above
	infarctionWeeks            = 3   // after which a heart attack no longer bars

	// Disease of the whole body out of control; strictly above.
	highHbA1c         = 10.0 // per cent
	untreatedSystolic = 170  // mmHg

	// Pain and soreness.
	painLimit               = 5.0      // of 10, allowed
	painLow, painLowVariant = 2.0, 3.0 // where the zones are cut
	sorenessDays            = 3        // by which soreness has passed its peak

	// Falls.
	fallsAge                           = 65     // from which everybody is screened
	fallsScore                         = 4      // of the self-score, at or above
	fallsMinFollowUp, fallsMaxFollowUp = 30, 90 // days

	// A lighter session.
	lighterSets              = 1
	lighterReserve units.RIR = 2

	repairWeeks    = 12 // before which no resistance follows a rotator cuff repair
	fractureMonths = 6  // in which a fracture bars loading of its region

	replacementWeeks  = 12 // in which a replaced joint counts as recent
	replacementMonths = 12 // after which nobody asks about a replaced hip or knee
	deviceWeeks       = 12 // in which no work pulls at the wound of a pacemaker or defibrillator
	eyeWeeks          = 2  // after a cataract operation, in which the eye clinic is asked
	eyeFreeWeeks      = 4  // after which nothing is left of it unless told otherwise
	eyeMonths         = 12 // after which any operation of an eye lies far back
	pastMonths        = 12 // after which a heart attack or stroke is past
	pressureDays      = 14 // in which a pressure that was not measured is taken
	spineLeastCount   = 8  // repetitions of a set at least
	fallMonths        = 12 // in which a fall counts

	flagsTogether = 2 // signs that point to one cause, at least

	// Loads.
	highIntensity  units.Fraction = 0.80 // of the 1RM, from which retinopathy bars loading
	belowIntensity units.Fraction = 0.79 // the last whole per cent below it
	lightFraction  units.Fraction = 0.40 // of the 1RM, light for this group
	lightReserve   units.RIR      = 4    // repetitions left undone at least
)

// glucoseThreshold is a threshold as printed in either unit.
type glucoseThreshold struct{ mgDL, tenthsMmolL int32 }

// String prints the threshold in both units.
func (t glucoseThreshold) String() string {
	return fmt.Sprintf("%d mg/dL (%d.%d mmol/L)", t.mgDL, t.tenthsMmolL/10, t.tenthsMmolL%10)
}

// Thresholds of glucose at the start of a session.
var (
	glucoseNone     = glucoseThreshold{52, 29}   // below: no exercise
	glucoseTreat    = glucoseThreshold{70, 40}   // below: treat first; printed as 52–69 and 2.9–3.9
	glucoseEat      = glucoseThreshold{90, 50}   // below: carbohydrate first
	glucoseKetones  = glucoseThreshold{250, 139} // from here: ketone test
	glucoseVeryHigh = glucoseThreshold{350, 194} // from here: consider insulin as well
)
