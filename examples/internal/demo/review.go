package demo

import _ "embed"

//go:embed home-review.json
var homeReview []byte

// HomeReview returns the JSON of a man who has trained at home for five weeks,
// with few dumbbells far apart, and of what he did. It is invented.
func HomeReview() []byte { return append([]byte(nil), homeReview...) }

//go:embed home-review-refer.json
var homeReviewRefer []byte

// HomeReviewRefer returns the JSON of a woman who has trained at home for three
// weeks, and whose last visit is for somebody else to look at. It is invented.
func HomeReviewRefer() []byte { return append([]byte(nil), homeReviewRefer...) }

//go:embed beginner.json
var beginner []byte

// Beginner returns the JSON of a simulated beginner: what is true of her and
// under what she trains. It is invented.
func Beginner() []byte { return append([]byte(nil), beginner...) }
