package function

import (
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

const (
	fromTable     = "recalled from the paper's table, not in its abstract"
	needingCare   = "Japanese community-dwelling people in need of care or support"
	urology2008   = "Urology 2008;72(2):422-427, Table 3 (PMC3032402)"
	summary4m     = "summary of a later paper that proposes norms for the 4-m walk"
	japaneseStudy = "Japan 2021"
)

// walkTables: usual and fast walking speed, and the 400-m walk.
var walkTables = []table{
	{measure: UsualGait, unit: CentimetresPerSecond, body: "Bohannon 2011", source: "bohannon2011_gait", basis: evidence.FromMemory, entries: []entry{
		{sex: body.Male, from: 60, to: 69, statistic: "mean", value: 133.9, note: fromTable},
		{sex: body.Male, from: 70, to: 79, statistic: "mean", value: 126.2, note: fromTable},
		{sex: body.Male, from: 80, to: 99, statistic: "mean", value: 96.8, note: fromTable},
		{sex: body.Female, from: 60, to: 69, statistic: "mean", value: 124.1, note: fromTable},
		{sex: body.Female, from: 70, to: 79, statistic: "mean", value: 113.2, note: fromTable},
		{sex: body.Female, from: 80, to: 99, statistic: "mean", value: 94.3, basis: evidence.Published},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.Secondary, via: ewgsopTable, entries: []entry{
		{from: 60, statistic: "low_performance_if_le", value: 0.8},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "SDOC", source: "sdoc2020", basis: evidence.Published, entries: []entry{
		{from: 65, statistic: "slow_if_less_than", value: 0.8},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, course: "6-m walk", entries: []entry{
		{from: 60, statistic: "low_performance_if_less_than", value: 1.0},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "World guidelines 2022", source: "monteroodasso2022", basis: evidence.FromMemory, entries: []entry{
		{from: 65, statistic: "fall_risk_if_le", value: 0.8},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "Perera 2006", source: "perera2006", basis: evidence.Published, entries: []entry{
		{from: 65, statistic: "mcid_small", value: 0.05, note: "range 0.04 to 0.06 m/s"},
		{from: 65, statistic: "mcid_substantial", value: 0.10},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: "Kwon 2009", source: "kwon2009", basis: evidence.Published, entries: []entry{
		{from: 70, to: 89, statistic: "mcid_small_low", value: 0.03},
		{from: 70, to: 89, statistic: "mcid_small_high", value: 0.05},
		{from: 70, to: 89, statistic: "mcid_substantial", value: 0.08},
	}},
	{measure: UsualGait, unit: MetresPerSecond, body: japaneseStudy, source: "japanmdc2021", basis: evidence.Published, people: "111 " + needingCare, entries: []entry{
		{from: 65, statistic: "mdc95", value: 0.18},
	}},
	{measure: FastGait, unit: MetresPerSecond, body: japaneseStudy, source: "japanmdc2021", basis: evidence.Published, people: needingCare, entries: []entry{
		{from: 65, statistic: "mdc95", value: 0.23},
	}},
	{measure: Walk400m, unit: Minutes, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.FromMemory, entries: []entry{
		{from: 60, statistic: "low_performance_if_ge", value: 6, note: "or the walk was not completed"},
	}},
}

// batteryTables: points of the short physical performance battery, its total
// and changes of that.
var batteryTables = []table{
	{measure: BatteryStands, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.Secondary, via: urology2008 + ", which rounds the limits", entries: []entry{
		{from: 65, statistic: "score4_if_le", value: 11.19},
		{from: 65, statistic: "score3_if_le", value: 13.69},
		{from: 65, statistic: "score2_if_le", value: 16.69},
		{from: 65, statistic: "score1_if_ge", value: 16.7},
		{from: 65, statistic: "score0_if_greater_than", value: 60, basis: evidence.FromMemory},
	}},
	{measure: BatteryWalk4m, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.FromMemory, course: Walk4m.String(), entries: []entry{
		{from: 65, statistic: "score4_if_less_than", value: 4.82, basis: evidence.Secondary, via: summary4m},
		{from: 65, statistic: "score3_if_le", value: 6.2},
		{from: 65, statistic: "score2_if_le", value: 8.7, basis: evidence.Secondary, via: summary4m},
		{from: 65, statistic: "score1_if_greater_than", value: 8.7},
	}},
	{measure: BatteryWalk3m, unit: Seconds, body: "3-m conversion", source: "sppb3m", basis: evidence.FromMemory, course: Walk3m.String(), entries: []entry{
		{from: 65, statistic: "score4_if_less_than", value: 3.62, note: "one paper prints the 3-m limits under the heading of a 4-m walk"},
		{from: 65, statistic: "score3_if_le", value: 4.65},
		{from: 65, statistic: "score2_if_le", value: 6.52},
	}},
	{measure: BatteryWalk8ft, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.FromMemory, course: Walk8ft.String(), entries: []entry{
		{from: 71, statistic: "score4_if_le", value: 3.1},
		{from: 71, statistic: "score3_if_le", value: 4.0},
		{from: 71, statistic: "score2_if_le", value: 5.6},
		{from: 71, statistic: "score1_if_ge", value: 5.7},
	}},
	{measure: BatterySideBySide, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.Secondary, via: urology2008, entries: []entry{
		{from: 65, statistic: "score1_if_ge", value: 10},
	}},
	{measure: BatterySemiTandem, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.Secondary, via: urology2008, entries: []entry{
		{from: 65, statistic: "score1_if_ge", value: 10},
	}},
	{measure: BatteryTandem, unit: Seconds, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.Secondary, via: urology2008, entries: []entry{
		{from: 65, statistic: "score2_if_ge", value: 10},
		{from: 65, statistic: "score1_if_ge", value: 3},
	}},
	{measure: BatteryTotal, unit: Points, body: "Guralnik 1994", source: "guralnik1994", basis: evidence.Secondary, via: reportsOfBattery, entries: []entry{
		{from: 65, statistic: "high_if_ge", value: 10},
		{from: 65, statistic: "moderate_if_ge", value: 7},
		{from: 65, statistic: "low_if_ge", value: 4},
		{from: 65, statistic: "very_low_if_ge", value: 0},
	}},
	{measure: BatteryTotal, unit: Points, body: "EWGSOP2", source: "ewgsop2_2019", basis: evidence.FromMemory, entries: []entry{
		{from: 60, statistic: "low_performance_if_le", value: 8},
	}},
	{measure: BatteryTotal, unit: Points, body: "AWGS 2019", source: "awgs2019", basis: evidence.Secondary, via: monograph, entries: []entry{
		{from: 60, statistic: "low_performance_if_le", value: 9},
	}},
	{measure: BatteryTotal, unit: Points, body: "Perera 2006", source: "perera2006", basis: evidence.Published, entries: []entry{
		{from: 65, statistic: "mcid_small", value: 0.5, note: "the paper says that this is not detectable in one person"},
		{from: 65, statistic: "mcid_substantial", value: 1.0},
	}},
	{measure: BatteryTotal, unit: Points, body: "Kwon 2009", source: "kwon2009", basis: evidence.Published, entries: []entry{
		{from: 70, to: 89, statistic: "mcid_small_low", value: 0.3},
		{from: 70, to: 89, statistic: "mcid_small_high", value: 0.8},
		{from: 70, to: 89, statistic: "mcid_substantial_low", value: 0.4},
		{from: 70, to: 89, statistic: "mcid_substantial_high", value: 1.5},
	}},
}

const reportsOfBattery = "reports of the battery; the place was not recorded"
