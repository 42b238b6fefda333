// Command intake is a first interview in plain text, for trying the rules of
// screening by hand. It asks what everybody is asked, and of the rest only what
// an answer makes necessary, and ends in the outcome in words.
//
//	go run ./examples/intake [-answers FILE] [-day DAY] [-for client|clinician] [-json]
//
// Every question takes "don't know"; "back" returns to the question before,
// "stop" ends the interview, "?" explains. Where the input ends, the outcome is
// told with what is still open.
//
// With -answers the answers come from a file of lines such as "age: 71"; a
// question that has no line is not known, and "?" names the key of a question.
// A line "note: ..." says where the answers come from, such as that they are
// invented; every form of the outcome repeats it.
// With -for clinician the outcome is told with rules and reasons, with -json it
// is written as the library's own type beside the note, and the questions go to standard error.
//
// It is an example of the library, not a medical device. It gives nobody leave
// to train: local rules and a licensed clinician decide.
package main
