package demo

import _ "embed"

//go:embed village-hall-build.json
var villageHallBuild []byte

// VillageHallBuild returns the JSON of the same woman two weeks later, when she
// knows the movements and begins to get stronger. It is invented.
func VillageHallBuild() []byte { return append([]byte(nil), villageHallBuild...) }

//go:embed class.json
var class []byte

// Class returns the JSON of eight people who share one rack of dumbbells. It is
// invented.
func Class() []byte { return append([]byte(nil), class...) }
