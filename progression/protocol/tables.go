package protocol

import (
	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// The tables below are as printed, in tenths of a kilogram and of a pound. The
// kilograms restate the pounds and are no conversions.

var both = []units.MassUnit{units.KG, units.LB}

// dapreFourth: Knight 1979, change of the fourth set by the third's
// repetitions. The row 3-4 is from memory: it is left out in what was read, and
// the later 6RM form agrees.
var dapreFourth = &table{name: "dapre.fourth-set", units: both, facts: fromKnight, rows: []band{
	{0, 2, ends{-50, -25}, ends{-100, -50}, evidence.Secondary},
	{3, 4, ends{-25, 0}, ends{-50, 0}, evidence.FromMemory},
	{5, 6, ends{0, 0}, ends{0, 0}, evidence.Secondary},
	{7, 10, ends{25, 50}, ends{50, 100}, evidence.Secondary},
	{11, 0, ends{50, 75}, ends{100, 150}, evidence.Secondary},
}}

// dapreNext: Knight 1979, change of the working weight by the fourth set's
// repetitions.
var dapreNext = &table{name: "dapre.next-session", units: both, facts: fromKnight, rows: []band{
	{0, 2, ends{-50, -25}, ends{-100, -50}, evidence.Secondary},
	{3, 4, ends{0, 0}, ends{0, 0}, evidence.Secondary},
	{5, 6, ends{25, 50}, ends{50, 100}, evidence.Secondary},
	{7, 10, ends{25, 75}, ends{50, 150}, evidence.Secondary},
	{11, 0, ends{50, 100}, ends{100, 200}, evidence.Secondary},
}}

var pounds = []units.MassUnit{units.LB}

// apre10, apre6 and apre3: Mann 2010 after earlier authors, in pounds alone. The
// same table serves the fourth set and, from memory, the next session. Below 4
// repetitions on the 10RM form, and at none on the 3RM form, no row was printed.
var (
	apre10 = &table{name: "apre-10", units: pounds, facts: fromMann, rows: []band{
		{4, 6, ends{}, ends{-100, -50}, evidence.Secondary},
		{7, 8, ends{}, ends{-50, 0}, evidence.Secondary},
		{9, 11, ends{}, ends{0, 0}, evidence.Secondary},
		{12, 16, ends{}, ends{50, 100}, evidence.FromMemory},
		{17, 0, ends{}, ends{100, 150}, evidence.FromMemory},
	}}
	apre6 = &table{name: "apre-6", units: pounds, facts: fromMann, rows: []band{
		{0, 2, ends{}, ends{-100, -50}, evidence.Secondary},
		{3, 4, ends{}, ends{-50, 0}, evidence.Secondary},
		{5, 7, ends{}, ends{0, 0}, evidence.FromMemory},
		{8, 12, ends{}, ends{50, 100}, evidence.FromMemory},
		{13, 0, ends{}, ends{100, 150}, evidence.FromMemory},
	}}
	apre3 = &table{name: "apre-3", units: pounds, facts: fromMann, rows: []band{
		{1, 2, ends{}, ends{-100, -50}, evidence.Secondary},
		{3, 4, ends{}, ends{0, 0}, evidence.Secondary},
		{5, 6, ends{}, ends{50, 100}, evidence.FromMemory},
		{7, 0, ends{}, ends{100, 150}, evidence.Secondary},
	}}
)

// tables are all of them, for their facts.
var tables = []*table{dapreFourth, dapreNext, apre10, apre6, apre3}
