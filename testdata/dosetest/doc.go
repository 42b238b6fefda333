// Package dosetest makes what a dose is asked with: invented people without a caution,
// a hall with pairs of dumbbells, sets that were done. Only tests import it.
package dosetest
