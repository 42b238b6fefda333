// Package rota plans a class at one rack: who uses which weight in which slot,
// with as little waiting as can be, and which purchase would remove most of it.
//
// [Schedule] takes what [example.org/posology/dose/week.Plan] prescribes each client
// and returns a [Timetable]. All slots are as long as the longest exercise of
// anybody, so that the class changes together. It says how far it is proven: small classes are
// searched in full, larger ones within bounds that are told. [Within]
// makes a class fit its minutes, and says what gave. [AdviseClass] tries
// purchases. Nothing here makes a dose harder.
package rota
