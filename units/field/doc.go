// Package field names what is wrong with an input, field by field: errors that
// carry a path, the value and what is allowed; sentinels for their kinds;
// vocabularies, which are the texts of enumerations; and the strict decoding of
// JSON at the door of a program.
//
// # Errors
//
// An [*Error] names one bad field by a JSON Pointer and unwraps to a sentinel, so
// that [errors.Is] sorts them; [Errors] are all of one input. A check gathers
// them with [Errors.Add], which moves them below the path of their field:
//
//	var bad field.Errors
//	bad.Add("/day", day.Check())
//	return bad.Err()
//
// # Decoding
//
// [encoding/json] passes over unknown names and takes the second of two. Types of
// this module have no decoder of their own that says otherwise, so that they can
// be embedded in other types: [Decode] is strict for the whole text, or passes
// over unknown names where the caller chooses, and never over a name that stands
// twice. [DecodeChecked] tells in the same round what a check refuses.
//
// # Databases
//
// Types with a text form are stored as that text, and "not given" as NULL, by their
// own methods, which are calls of [Value] and [Scan]; a number is refused on the way
// back. A [Column] keeps anything else, as JSON.
package field
