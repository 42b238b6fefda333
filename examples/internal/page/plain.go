package page

import (
	"fmt"
	"strings"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// plain says to a client what a demand is.
var plain = map[body.Demand]string{
	body.SpinalCompression: "weights that press down on your back",
	body.LoadedSpinalFlex:  "rounding your back with a weight, or far forward",
	body.SpinalTwist:       "turning your back with a weight, or far round",
	body.FloorTransfer:     "getting down to the floor",
	body.PickUpFromFloor:   "lifting things from the floor",
	body.Overhead:          "weights above your shoulders",
	body.OverFace:          "weights above your face",
	body.LyingSupine:       "lying on your back",
	body.HeadDown:          "holding your head low",
	body.FreeStanding:      "standing without a hand on something firm",
	body.SingleLegStance:   "standing on one leg",
	body.DeepKneeBend:      "deep knee bends with a weight",
	body.ShoulderResisted:  "weights that work the shoulder",
	body.ElbowResisted:     "weights that work the elbow",
	body.WristResisted:     "weights that work the wrist",
	body.HipResisted:       "weights that work the hip",
	body.KneeResisted:      "weights that work the knee",
	body.AnkleResisted:     "weights that work the ankle",
	body.FirmGrip:          "gripping hard",
	body.Impact:            "jumping and stamping",
	body.AbdominalPressure: "straining with your belly",
	body.FastMovement:      "moving as fast as you can",
}

// LeaveOut says what a client leaves out for now, "" if nothing.
func LeaveOut(l screening.Limits) string {
	var list []string
	for i, avoid := range [...]body.Demands{l.Avoid, l.AvoidLeft, l.AvoidRight} {
		for d := range avoid.All() {
			list = append(list, plain[d]+[...]string{"", ", on your left side", ", on your right side"}[i])
		}
	}
	if len(list) == 0 {
		return ""
	}
	return "Until we say otherwise, please leave out: " + strings.Join(list, "; ") + "."
}

// Counted prints "1 set" and "3 sets".
func Counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
