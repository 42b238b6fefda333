// Package exercise is the catalogue of exercises: what each trains, how its
// weight is held, what it demands of the body, and which variants are easier
// and harder.
//
// The standard catalogue holds what a dumbbell programme for older adults
// needs. Callers add their own with [Catalogue.With].
//
// # Ladders
//
// Each exercise stands in a ladder of variants, easiest first, which nearly
// always begins without a weight. Where two ladders part, the upper one's first
// step points down to where they part, and that exercise points up along its
// own: the abdominal crunch stands above the dead bug in this way.
//
// # Demands
//
// Demands err on the side of naming too much, since a demand can only rule an
// exercise out: any weight in the hand counts as resisted work of wrist, elbow
// and shoulder. A hinge with a straight back counts as compression of the
// spine, not as bending it. Weights are taken from chair height unless the
// demands say otherwise.
//
// # Sources
//
// Muscle roles and their bases come from studies and textbooks; variants that
// the list of those lacks take the muscles of the nearest listed exercise.
// Demands, counts and first weights are facts of the trade or, where their fact
// says so, of this module's own design. Each row names its facts.
package exercise
