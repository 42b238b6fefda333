// Package equipment answers which weights can really be lifted with the
// dumbbells, handles, bars, plates and stacks at hand, how each is put
// together, and which of them a calculated weight is rounded to.
//
// A [Kit] is plain data. [Kit.Compile] lists every [Load] that it makes for one
// way of holding a weight; the [Table] answers questions about them.
//
// # Scope
//
// Two hands are loaded alike, and so are the ends of a handle or bar: uneven
// loads are never made up here. A load that can be made is not a load that
// suits the person; limits come from elsewhere and enter as a ceiling.
//
// Kettlebells and ankle weights are lists of their own; [Kit.CompileFor] makes what an
// exercise's implements are. Bands have an order and no mass. What stands there is told
// as a whole ([Kit.Things]), or nobody asked. [Kit.Fit] fits a catalogue to all that.
// Candidates to buy are dumbbells, handles and plates alone, and [Advise] takes every
// weight of a hold as one that serves, a kettlebell too.
//
// # Representation and units
//
// Masses are exact, so that plates marked in kilograms and in pounds mix on one
// handle. A weight is meant per implement ([Load.Each]); the total of two
// dumbbells is given beside it. Parts print in the unit that is marked on them;
// a mass without a unit counts as marked in kilograms.
//
// # Rounding
//
// [Table.Nearest], and [Kit.Nearest] without a table, go down unless the [RoundingRule] says otherwise. Going up, or to
// the closest, needs a ceiling, and no result exceeds a ceiling.
//
// # Errors
//
// A kit's bad fields are reported all at once as [field.Errors]. Sentinels
// of this package name what a good kit cannot do. Nothing panics.
//
// # Sources
//
// There are no clinical numbers here. The largest masses and counts that a kit
// may state are guards against slips of the keyboard.
package equipment
