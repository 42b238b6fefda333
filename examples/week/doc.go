// Command week plans a week and shows it as a calendar, as weekly sets of each
// muscle, and against six published guidelines at once.
//
//	go run ./examples/week [-case FILE] [-class] [-json]
//
// Without -case it runs on an invented case; a case is that of firstvisit, with
// a phase and who saw the technique. With -class it plans for a class that
// shares its dumbbells: who lifts what when, and which one purchase would help
// most. With -json it writes the whole result.
//
// It is an example of the library, not a medical device. It gives nobody leave
// to train: local rules and a licensed clinician decide.
package main
