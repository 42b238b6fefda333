// Package folder keeps the records of people in a folder, one JSON file a person,
// NAME.json, which is a record of package progression/record and nothing else.
// Beside it lie, in folders of their own, what was answered in the interview,
// every older record, packed, and the papers that were asked for.
//
// A record is written whole or not at all: whoever is stopped on the way, by loss
// of power too, finds the old record or the new one. Somebody who changes a record
// that was changed since it was read is refused. It locks nothing: of two who
// write within the same moment the later one wins, and the other's record lies with
// the older ones only if it was whole by then.
package folder
