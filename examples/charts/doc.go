// Command charts draws what the library says, for people who would rather look than read.
//
//	cd examples/charts && go run . [-out FOLDER] [-chart NAME] [-case FILE] [-week FILE] [-curves FILE] [-bench FILE]
//
// It draws how strength goes over the visits of a record, which weights there are and
// which comes next, the weekly sets of a plan beside what guidelines ask for, policies
// compared on virtual people, and an equation against open data: each as SVG and PNG.
// Without -out it prints what each picture says, which stands in the SVG for who does
// not see it.
//
// Pictures are as wide as a phone, where their texts then have their own size, and say on
// their face whose data they show. They are drawn in black, greys and one dark blue; lines
// differ by dashes, points by shape, and names stand on what they name. It is a module of its
// own, so that who imports the library gets no drawing library with it.
//
// The people of the shipped cases and curves are invented. No picture gives leave to
// lift anything.
package main
