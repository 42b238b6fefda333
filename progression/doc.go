// Package progression decides what changes from one session to the next.
//
// So far it looks at the step to the next weight: how large it is, on the mass
// held and on the mass moved, whether it lies within the published 2 to 10 per
// cent, and how many repetitions bridge it.
package progression
