// Package setlog holds the one type for a performed set, and reads and writes
// logs of sets. What was prescribed is another record, in package dose; the two
// are never mixed.
//
// # Logs
//
// [ReadCSV] and [ReadJSONLines] yield one set after another and hold one line
// at a time, so a log may be longer than memory. A bad row is reported once, as
// a [*RowError] with its line and column and all its bad fields, and the
// reading goes on with the next.
//
// The first line of a CSV file names the columns, in any order:
//
//	person       key of the person; may be empty or left out
//	day          2026-11-25; may be empty or left out
//	exercise     ID of the exercise
//	side         left, right or both
//	hold         one hand, one in each hand, both hands on one, on a bar, on a stack,
//	             on a limb, on a band or unloaded
//	load         12.5 kg or 25 lb, each row in its own unit; empty only if nothing is held
//	stated       per hand or total, where two weights are held; else may be empty or left out
//	reps         done, 1 to 1000
//	effort       rir 2, rpe 8.5, omni 6, ...; may be empty or left out
//	rep_seconds  seconds of one repetition; may be empty or left out
//
// A [Reader] reads logs with other columns, by a map.
//
// Cells are parted by commas and may stand in double quotes, within which a
// double quote is written twice. No cell spans lines, so that one bad quote
// cannot swallow the rows after it. Lines end in LF or CR LF, blank lines are
// passed over, and text is UTF-8. JSON Lines hold one object a line, with the
// fields of [Set]; the load must be there where the hold has a weight.
package setlog
