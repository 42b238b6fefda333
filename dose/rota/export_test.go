package rota

// Proofs.
const (
	BestFound    = bestFound
	BestOfAll    = bestOfAll
	LeastWaiting = leastWaiting
)
