//go:build race

package screening_test

// usualCases is small, since the race detector makes each case slow.
const usualCases = 2_000
