// Package house holds tests that look at the whole module at once: what each
// package may import, what none may do, that everything exported is explained,
// that every fact has a source and a use, that every decision has words, and
// that no page or case can be taken for a real person's.
// There is nothing to import.
package house
