package screening

import (
	"fmt"

	"example.org/posology/units/evidence"
)

// Codes of what a measurement showed at the lower edge of its band.
const (
	pressureLowest Code = "systolic_le_70"
	pressureLow    Code = "bp_lt_90_or_40"
	pressureLowish Code = "bp_lt_100_or_50"
	pulseLow       Code = "hr_le_40"
	pulseLowish    Code = "hr_le_50"
)

// measuredAgain is the question that asks for a second reading of what a first
// one met.
var measuredAgain = map[Code]Code{
	pressureAbsolute: askAgain, pressureRelative: askAgain, pressureToday: askAgain, untreatedHigh: askAgain, exertionHigh: askAgain,
	pressureLowest: askAgain, pressureLow: askAgain, pressureLowish: askAgain,
	pulseToday: askPulseAgain, pulseLow: askPulseAgain, pulseLowish: askPulseAgain,
	saturationSevere: askSpO2Again, saturationFloor: askSpO2Again,
}

func jarm(says string) provenance {
	return provenance{says: says + ": no active exercise, in patients of rehabilitation", source: "jarm2006", via: "teaching pages", basis: evidence.Secondary}
}

// lowEntries are the lower edges, each as tight as the one above it. What is usual for the
// person a doctor says, with a clearance that names it.
var lowEntries = []entry{
	{code: pressureLowest, kind: Reading, meaning: "systolic pressure of 70 mmHg or below at rest; lie down, rest and measure again", effect: seeToday.with(withSupport), balance: true, also: []evidence.FactID{againFact},
		from: jarm(fmt.Sprintf("systolic at or below %d mmHg", lowestSystolic))},
	{code: pressureLow, kind: Reading, meaning: "resting pressure below 90 systolic or 40 diastolic; rest and measure again", effect: askNothing.with(withSupport), released: &supported, balance: true, also: []evidence.FactID{againFact},
		from: ours(fmt.Sprintf("systolic below %d or diastolic below %d mmHg: not today; no figure for outpatients was found", lowSystolic, lowDiastolic))},
	{code: pressureLowish, kind: Reading, meaning: "resting pressure of 90 to 99 systolic or 40 to 49 diastolic; whether it is usual is asked", effect: supported, balance: true,
		from: ours(fmt.Sprintf("systolic below %d or diastolic below %d mmHg: usual for the person and without signs, seated work first and no fast rises", lowishSystolic, lowishDiastolic))},
	{code: pulseLow, kind: Reading, meaning: "resting pulse of 40 a minute or below; rest and count again", effect: askNothing.with(withSupport), released: &supported, balance: true, also: []evidence.FactID{againFact},
		from: jarm(fmt.Sprintf("a resting pulse of %d a minute or below", lowPulse))},
	{code: pulseLowish, kind: Reading, meaning: "resting pulse of 41 to 50 a minute; whether it is usual is asked", effect: tell,
		from: ours(fmt.Sprintf("a resting pulse of %d a minute or below: well, fit or on a beta-blocker and without change, training goes on", lowishPulse))},
}
