// Package track follows strength over time: a level with its trend out of noisy
// estimates, whether a change is more than noise, and a modest look ahead. It
// describes, and permits nothing: no dose goes by it.
//
// # Model
//
// A [Reading] is a value with the variance of its own error: of strength the
// natural logarithm of the 1RM in kg ([FromEstimate]), but any unit will do. A
// [Model] says how the level moves from day to day: as a random walk, with a trend,
// or with a trend that fades, which is the default for strength ([StrengthModel]). Days
// may be missing and may hold several readings, which share the error of their day.
//
// A [State] learns one reading at a time, in constant time and without allocation.
// A [Track] runs over a whole series and looks back from its end too, which is
// called smoothing. The start is exactly diffuse: nothing is known of the level
// before the first reading, nor of the trend unless the model says so, and no large
// number stands for that (Durbin and Koopman 2012, chapter 5). [MostLikely] finds
// variances by maximum likelihood, with standard errors.
//
// # Width
//
// The model's variances are right up to a common factor, which is learned from how
// well the readings were foreseen; it begins at one, held as firmly as [Model].Firm
// readings would. Intervals are then Student's t. Where Firm is 0 the variances are
// taken as they are and intervals are normal.
//
// [Track.Width] is that of a whole series, [Likelihood.Width] that of a [State] so far.
// They hold what they promise where people do as the model does, and nearly so where errors
// have long tails, days differ one and a half times as much, or a rise stops after six
// weeks or ten. Where it stops in the first three weeks or never began, a look ahead is too
// wide: of such intervals at 90 % some 99 % hold.
//
// # Numbers of one's own
//
// Who has days and kg alone makes each [Reading] by hand: Value math.Log(kg), Variance
// 0.018² for a 1RM that was lifted, 0.036² for one that was worked out from a set, beside which
// [StrengthModel] has the day's. [Belief.OneRM] turns what comes out into masses.
//
// # Likelihood
//
// [Likelihood].Diffuse is the diffuse log-likelihood of Durbin and Koopman: every
// reading but the first ones, which only begin the level and the trend, has its
// ½·ln 2π.
//
// # Change
//
// [RealChange] compares tests, [Track.Since] two days of a track. One test of an
// older beginner cannot show anything below 12 to 25 %; many readings can. What
// somebody gains by learning the test counts as learning. Nobody is said not to
// respond: noise hides most differences between people.
//
// # Without a model
//
// [MannKendall] and [Sen] ask for order alone. A line of least squares is that of gonum:
// stat.LinearRegression, weighted if asked.
//
// # Errors
//
// Bad input gives a *field.Error, or all of them as field.Errors. Nothing is
// clamped. Sums are worked out in float64 without fused multiply-add; logarithms and
// quantiles agree between machines to 1e-12.
package track
