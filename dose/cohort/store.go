package cohort

import (
	"crypto/sha256"
	"encoding/json"
)

// sum is a digest of all that makes two counters count alike.
func (c *Counter) sum() [32]byte {
	type entry struct {
		ID, Measure         string
		OneSided, MovesBody bool
		Share               string
		Primes, Synergists  []string
	}
	var list []entry
	for _, e := range c.exercises {
		x := entry{ID: string(e.id), Measure: e.measure.String(), OneSided: e.oneSided, MovesBody: e.movesBody, Share: e.share.String()}
		for _, m := range e.primes {
			x.Primes = append(x.Primes, m.String())
		}
		for _, m := range e.synergists {
			x.Synergists = append(x.Synergists, m.String())
		}
		list = append(list, x)
	}
	text, _ := json.Marshal(struct { // of texts, and of options that were checked
		Options   Options
		Exercises []entry
	}{c.options, list})
	return sha256.Sum256(text)
}
