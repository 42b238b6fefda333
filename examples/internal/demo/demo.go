package demo

import "embed"

//go:embed village-hall.json home-review.json home-review-refer.json beginner.json village-hall-build.json class.json
var files embed.FS

func file(name string) []byte {
	data, _ := files.ReadFile(name) // it is embedded
	return data
}

// VillageHall returns the JSON of the first visit of a woman who joins a
// strength class in a village hall. It is invented.
//
// Her exercises follow from her task, and take every large region once. Stairs
// ask for stepping up, the child for standing up from a seat and for the hinge,
// the shopping for a carry and for elbows that bear it; pulling, pushing and
// pressing overhead, calves, and the side of the hip on one leg make up the
// whole. Legs and arms take turns, so that one rests while the other works.
func VillageHall() []byte { return file("village-hall.json") }

// HomeReview returns the JSON of a man who has trained at home for five weeks,
// with few dumbbells far apart, and of what he did. It is invented.
func HomeReview() []byte { return file("home-review.json") }

// HomeReviewRefer returns the JSON of a woman who has trained at home for three
// weeks, and whose last visit is for somebody else to look at. It is invented.
func HomeReviewRefer() []byte { return file("home-review-refer.json") }

// Beginner returns the JSON of a simulated beginner: what is true of her and
// under what she trains. It is invented.
func Beginner() []byte { return file("beginner.json") }

// VillageHallBuild returns the JSON of the same woman two weeks later, when she
// knows the movements and begins to get stronger. It is invented.
func VillageHallBuild() []byte { return file("village-hall-build.json") }

// Class returns the JSON of eight people who share one rack of dumbbells. It is
// invented.
func Class() []byte { return file("class.json") }
