package simulate

import "math/rand/v2"

// A purpose is what is left to chance.
type purpose uint64

const (
	ofMissing purpose = iota
	ofDay
	ofPain
	ofSign
	ofForm
	ofWatching
	ofTelling
	ofSlip
	ofWhichSlip
)

// draws holds what chance has in store for one trainee. A draw is found by what it is
// for, its planned day and its set, and not by how many came before it: the same
// source gives the same days, errors and misses, whatever the doses are.
type draws struct {
	key [2]uint64
	pcg rand.PCG
	rng *rand.Rand
}

func newDraws(src rand.Source) *draws {
	d := &draws{key: [2]uint64{src.Uint64(), src.Uint64()}}
	d.rng = rand.New(&d.pcg)
	return d
}

// of returns what is drawn from for a purpose on the planned day of that number, in a
// set of a side where there are several; day and set are 0 or more.
func (d *draws) of(what purpose, day, set int) *rand.Rand {
	at := uint64(what)<<48 | uint64(day)<<16 | uint64(set)
	d.pcg.Seed(mixed(d.key[0]+at), mixed(d.key[1]^at))
	return d.rng
}

// mixed is the finaliser of splitmix64, so that neighbouring draws have nothing in common.
func mixed(x uint64) uint64 {
	x = (x ^ x>>30) * 0xbf58476d1ce4e5b9
	x = (x ^ x>>27) * 0x94d049bb133111eb
	return x ^ x>>31
}
