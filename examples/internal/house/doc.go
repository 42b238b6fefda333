// Package house holds tests that look at the whole module at once: what each
// package may import, what none may do, that everything exported is explained,
// that every fact has a source and a use, and that every decision has words.
// There is nothing to import.
package house
