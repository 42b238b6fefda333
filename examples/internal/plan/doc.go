// Package plan plans a week for the example programs and holds it against six
// published recommendations at once. It shows how the library's packages fit
// together and holds no rules of its own, save which six it shows.
package plan
