// Package visit runs a first visit for the example programs: it reads a case,
// screens it, estimates strength from its test sets and plans a first week.
// It shows how the library's packages fit together and holds no rules of its own.
package visit
