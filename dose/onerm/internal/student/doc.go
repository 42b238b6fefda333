// Package student has the quantiles of Student's t, without a library beyond the
// standard one, so that estimates need none.
package student
