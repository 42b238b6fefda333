// Package demand says what an exercise demands that the limits of a screening rule out.
package demand
