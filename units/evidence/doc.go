// Package evidence ties every number to where it comes from and every decision
// to its reason.
//
// A [Source] is a publication. A [Fact] is one statement of it, or of the
// trade, or of this module, with the [Basis] on which it is known here. A
// [Reason] is why something was decided: a stable code, the values at hand and
// the facts behind it. A [Lexicon] turns reasons into sentences for a client and for
// a clinician; [Lexicon.In] prints the values as another language does, and
// [Words.Missing] says what a translation lacks. An [Arg] keeps its value with kind and unit: nothing has to be
// parsed out of a sentence.
//
// # How a fact is known
//
// [Published] means that the source's own text, table or abstract was seen;
// [Secondary] that another publication reports it; [FromMemory] that it is
// believed but was not found; [CommonPractice] that the trade does so and no
// source is claimed; [Computed] that it was worked out from other facts, and is
// known no better than the weakest of them; [Design] that it is this module's
// own cautious choice. Nobody raises a basis without having read the text. What
// is known from memory or by design may forbid or lighten; it never permits more.
//
// # Where facts live
//
// Each package lists its own facts, from the very tables that its code uses, by
// a function Facts. Sources stand here, once for all.
package evidence
