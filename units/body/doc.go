// Package body names what a dose belongs to: a person with age, sex and training
// status, and an opaque key, a side, a region or a muscle, the demands that an exercise makes, and
// the way a weight is held.
//
// All are small enumerations. Their zero value is "not given" and is refused
// where it matters; their text is what is stored and exchanged.
package body
