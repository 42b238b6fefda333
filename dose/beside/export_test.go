package beside

// What the hands hold on to.
const (
	BothHandsOn = bothHandsOn
	HandsNear   = handsNear
	OneHandOn   = oneHandOn
)
