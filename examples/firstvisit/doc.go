// Command firstvisit goes from the answers of a first visit, a submaximal test
// and the weights that are really there to screening findings, limits and a
// first week in which every load can be picked up.
//
//	go run ./examples/firstvisit [-case FILE] [-for READER] [-html | -json]
//
// Without -case it runs on an invented case. The note of a case says whose it
// is, and every page repeats it. With -for it prints one of the papers: what to do,
// for the client; everything with its reasons, for the file; what was found and what
// is asked, for the doctor, surgeon or falls-service; the diary or glucose page. With
// -html it prints it as one HTML file, with -json it writes the whole result.
//
// It is an example of the library, not a medical device. It gives nobody leave
// to train: local rules and a licensed clinician decide.
package main
