package student

import "math"

// Within returns the number that Student's t with so many degrees of freedom, 1 or more,
// stays within, on both sides, with a probability above 0 and below 1.
//
// Up to 400 degrees the probability is a finite sum of cosines (Abramowitz and Stegun
// 1964, 26.7.3 and 26.7.4), which is halved down to the last digit; above, the
// expansion about the normal quantile (26.7.5) is as near.
func Within(level float64, freedom int) float64 {
	if freedom > mostSummed {
		return expanded(math.Sqrt2*math.Erfinv(level), float64(freedom))
	}
	low, high := 0.0, math.Pi/2
	for range 100 {
		middle := (low + high) / 2
		if middle == low || middle == high {
			break
		}
		if probability(middle, freedom) < level {
			low = middle
		} else {
			high = middle
		}
	}
	return math.Sqrt(float64(freedom)) * math.Tan((low+high)/2)
}

const mostSummed = 400

// probability of staying within √ν·tan θ, for ν degrees of freedom.
func probability(theta float64, freedom int) float64 {
	sin, cos := math.Sin(theta), math.Cos(theta)
	square := cos * cos
	sum, term := 0.0, 1.0
	if freedom%2 == 1 {
		term = cos
	}
	for k := freedom % 2; k <= freedom-2; k += 2 {
		sum += term
		term *= square * float64(k+1) / float64(k+2)
	}
	if freedom%2 == 1 {
		return 2 / math.Pi * (theta + float64(sin*sum))
	}
	return sin * sum
}

// expanded is the quantile from the normal one, for many degrees of freedom.
func expanded(z, freedom float64) float64 {
	q := z * z
	first := z * (q + 1) / 4
	second := z * (float64((float64(5*q)+16)*q) + 3) / 96
	third := z * (float64((float64((float64(3*q)+19)*q)+17)*q) - 15) / 384
	return z + (first+(second+third/freedom)/freedom)/freedom
}
