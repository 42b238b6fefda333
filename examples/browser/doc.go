// Package browser holds a test that opens the papers of the example programs in a
// real browser, at the width of a telephone and as they are printed. It is a module of
// its own, so that the rest needs Go alone; run .ci/browser.
package browser
