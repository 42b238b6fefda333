// Package letter writes to a person's doctor, surgeon or falls service for the example programs: what was
// read and found, on which day, which limits are in force, and what is asked. It
// puts the library's findings into a letter's words and holds no rules of its own.
package letter
