// Package told holds what package progression says of its decisions, and the names of
// the facts that it rests on: tables, apart from what decides.
package told
