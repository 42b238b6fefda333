// Package house holds tests that look at the whole module at once: what each
// package may import, what none may do, that everything exported is explained,
// that every fact has a source and a use, that every decision has words, that
// no page or case can be taken for a real person's, and that what the README
// shows compiles.
// There is nothing to import.
package house
