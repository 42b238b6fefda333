package demo

import _ "embed"

//go:embed village-hall.json
var villageHall []byte

// VillageHall returns the JSON of the first visit of a woman who joins a
// strength class in a village hall. It is invented.
//
// Her exercises follow from her task, and take every large region once. Stairs
// ask for stepping up, the child for standing up from a seat and for the hinge,
// the shopping for a carry and for elbows that bear it; pulling, pushing and
// pressing overhead, calves, and the side of the hip on one leg make up the
// whole. Legs and arms take turns, so that one rests while the other works.
func VillageHall() []byte { return append([]byte(nil), villageHall...) }
