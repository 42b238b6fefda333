// Command review looks back on several weeks of training: what was asked for,
// what was done, and what becomes of every exercise at the next visit.
//
//	go run ./examples/review [-case FILE] [-for READER] [-html | -json] [-simulate]
//
// Without -case it runs on an invented case; a case is that of week, with what
// was asked for and a log (see examples/internal/demo/home-review.json). With
// -for it prints one of the papers: how it goes on, for the client; everything
// with its gates, reasons and facts, for the file; what was found and what is
// asked, for the doctor, surgeon or falls-service; the diary or glucose page. With
// -html it prints it as one HTML file, with -json it writes the whole result. With
// -simulate it lets a virtual beginner train for 16 weeks
// instead, visit by visit. What is overdue stands first: the days of a plan run
// from its first session, which a case may give (began), and by a plan that has
// ended nothing is prescribed.
//
// It is an example of the library, not a medical device. It gives nobody leave
// to train: local rules and a licensed clinician decide.
package main
