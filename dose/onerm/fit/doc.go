// Package fit finds a person's own load–repetition curve from sets of one
// exercise: from one set on, with the published equations for a beginning, and
// the more its own the more sets there are.
//
// # Curve
//
// A [onerm.Form] ties the load to the repetitions that can be done with it to
// failure. The 1RM is its load at one repetition. [Fit] fits it to [Point]s. The
// [onerm.Curve] gives loads, repetitions and the 1RM, and can be stored and asked
// without this package. [LoadWithin], [OneRMWithin] and [RepsWithin] add a
// prediction interval. Where the curve fits worse than the sets' errors allow, the
// intervals widen.
//
// # Method
//
// The logarithm of the load is fitted by least squares weighted with each set's
// error; sets of one day share half of the variance. The errors are known only
// up to a common factor, which is estimated along.
//
// The population prior is one belief for all forms: by how much the logarithm
// of the load falls from one repetition to ten. The logarithm of that fall is
// normal; its mean is that of nine published equations, its width their spread
// and the spread of people about them, the latter from published errors of
// prediction. A floor has a wide prior of its own. The 1RM has none unless one
// is expected: whatever is proper must be centred on some mass, and none suits
// both a curl and a leg press. The common factor of the errors begins at one,
// held as firmly as if seen in four sets. This is conjugate but for the curve's
// bend, so that the intervals are Student's t; alone, without the prior, they
// are those of ordinary nonlinear regression, with n − p degrees of freedom.
//
// The least sum of squares is found by the Levenberg–Marquardt method, which
// the tests hold against certified values of the National Institute of
// Standards and Technology.
//
// # What it is not
//
// Intervals are for the form being right, and extrapolation, as to the 1RM from
// sets of eight, trusts the form most. [onerm.Curve.Studied] says where the sets lie.
// The prior rests on equations known mostly from memory, none made with
// dumbbells or in people with pain; its width is this module's design. A curve
// describes what sets showed and permits nothing by itself.
//
// # Representation and rounding
//
// Masses are [units.Mass]; the curve is worked out in float64. Loads are rounded
// once, to the nearest nanogram, the lower end of an interval down and the upper
// up. No result depends on the order of the points, a clock or chance.
//
// # Errors
//
// Bad input gives [field.Errors] that name every bad field. Sets that do
// not support the form give a [*field.Error] for "/points" with one of
// [field.ErrOutOfRange] (too few), [field.ErrConflict] (they do not tell the parameters
// apart), [onerm.ErrNotFalling] and [ErrNoConvergence]. Nothing is clamped.
package fit
