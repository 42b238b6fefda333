package simulate

import (
	"math"

	"example.org/posology/units/field"
)

// Misjudged is how a reserve is told: by how much what is left truly differs from what
// is told, the more the further the set is from failure. Between told 1, 4 and 8 left it
// goes in a straight line, beyond them it stays.
type Misjudged struct {
	Near   Misjudgement `json:"near,omitzero"`   // told 1 left
	Midway Misjudgement `json:"midway,omitzero"` // told 4
	Far    Misjudgement `json:"far,omitzero"`    // told 8
}

// Misjudgement is how many repetitions more are left than told: on average, from -5 to
// 5, and the SD from set to set, from 0 to 5.
type Misjudgement struct {
	More float64 `json:"more"`
	SD   float64 `json:"sd"`
}

// anchors are the reserves told at which an error is given.
var anchors = [...]float64{1, 4, 8}

// usualTelling is what sources say of other people, at an age at which nobody measured it.
var usualTelling = Misjudged{Near: Misjudgement{0.3, 1}, Midway: Misjudgement{1, 1.7}, Far: Misjudgement{2.5, 3}}

// leastRise keeps a set that is one repetition longer from being told as easier.
const leastRise = 0.1

func (m Misjudged) list() [len(anchors)]Misjudgement {
	return [...]Misjudgement{m.Near, m.Midway, m.Far}
}

// shifted returns m for somebody who tells so many fewer still, with the SD times wide.
func (m Misjudged) shifted(more, wide float64) Misjudged {
	list := m.list()
	for i := range list {
		list[i].More = min(max(list[i].More+more, -mostError), mostError)
		list[i].SD = min(float64(list[i].SD*wide), mostError)
	}
	return Misjudged{list[0], list[1], list[2]}
}

// validate returns every bad field of m at once.
func (m Misjudged) validate() error {
	var bad field.Errors
	for i, one := range m.list() {
		path := [...]string{"/near", "/midway", "/far"}[i]
		within(&bad, path+"/more", one.More, -mostError, mostError, "-5 to 5 repetitions")
		within(&bad, path+"/sd", one.SD, 0, mostError, "0 to 5 repetitions")
	}
	return bad.Err()
}

// A teller tells the reserve of one set.
type teller [len(anchors)]float64 // what is left truly where an anchor is told

// teller returns how the reserve of a set is told, z standard deviations off.
func (m Misjudged) teller(z float64) (t teller) {
	for i, one := range m.list() {
		t[i] = anchors[i] + one.More + float64(one.SD*z)
		if i > 0 {
			t[i] = max(t[i], t[i-1]+float64(leastRise*(anchors[i]-anchors[i-1])))
		}
	}
	return t
}

// told returns what is told where so many are left truly.
func (t teller) told(left float64) float64 { return along(left, t[:], anchors[:]) }

// left returns how many are left truly where that is told.
func (t teller) left(told float64) float64 { return along(told, anchors[:], t[:]) }

// along returns the y of x on the line through the points, which rise; beyond them it
// goes on with slope 1.
func along(x float64, xs, ys []float64) float64 {
	last := len(xs) - 1
	switch {
	case x <= xs[0]:
		return ys[0] + x - xs[0]
	case x >= xs[last]:
		return ys[last] + x - xs[last]
	}
	return between(x, xs, ys)
}

// between returns the y of x on the line through the points, whose xs rise; beyond
// them the nearest y.
func between(x float64, xs, ys []float64) float64 {
	for i := 1; i < len(xs); i++ {
		if x < xs[i] {
			share := math.Max(0, (x-xs[i-1])/(xs[i]-xs[i-1]))
			return ys[i-1] + float64(share*(ys[i]-ys[i-1]))
		}
	}
	return ys[len(ys)-1]
}
