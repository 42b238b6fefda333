package volume

// Monotony is what SpreadOf divides, for tables that print a mean and a deviation.
var Monotony = monotony
