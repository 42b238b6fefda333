// Package history reads the log of one exercise: who saw it, what was done, which sets
// are doubtful, and what visits and tests have shown of strength. It knows no frame and
// decides nothing.
package history
