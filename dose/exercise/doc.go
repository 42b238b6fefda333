// Package exercise is the catalogue of exercises: what each trains, what it is
// done with and how that is held, what it demands of the body, and which
// variants are easier and harder.
//
// The standard catalogue holds the 90 exercises of the list behind it, with
// each implement that the list names, and the steps that a dumbbell programme
// for older adults needs beside them. Callers add their own with
// [Catalogue.With].
//
// # Ladders
//
// Each exercise stands in a ladder of variants, easiest first, which begins
// without a weight. Where ladders part, the upper one's first step points down
// to where they part, and that exercise points up along its own: the abdominal
// crunch stands above the dead bug in this way, the leg press above the
// sit-to-stand.
//
// # Implements and holds
//
// An exercise has one hold, and the implements that are held so. Machines and
// cables move a stack, an ankle weight sits on the limb, a band has no mass.
// Unloaded means nothing but the body: a band is not unloaded.
//
// No mass is known of a band, and no colour tells one. [Catalogue.WithBands] makes an
// exercise of each band in the order of its user, the next one the harder variant;
// [Catalogue.WithHeights] does so for lower seats and higher steps, of which only the
// order is used as well.
//
// # What has to be there
//
// An exercise names the things that have to stand there for it, as its line for the
// client does: a chair, a counter, a step. What machines and cables bring along is not
// named, nor a wall, the floor and a mat. Which stack belongs to which machine is not
// known here.
//
// # Demands
//
// Demands err on the side of naming too much, since a demand can only rule an
// exercise out: any weight in the hand counts as resisted work of wrist, elbow
// and shoulder. A hinge with a straight back counts as compression of the
// spine, not as bending it. Weights are taken from chair height, and bars from
// a rack, unless the demands say otherwise.
//
// # Sources
//
// Muscle roles and their bases come from studies and textbooks; variants that
// the list of those lacks take the muscles of the nearest listed exercise.
// Demands are facts of the trade or, where their fact says so, of this module's
// own design, as counts and first weights are. No share of body mass that an exercise
// lifts was found published: the shares stated are choices, and most exercises
// state none. Each row names its facts.
package exercise
