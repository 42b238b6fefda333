package exercise_test

import (
	"fmt"

	"example.org/posology/dose/exercise"
)

// The catalogue that comes along, and what one exercise asks of a person.
func ExampleStandard() {
	catalogue := exercise.Standard()
	squat, err := catalogue.Lookup("goblet-squat")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(squat.Name, "–", squat.Pattern, "–", squat.Hold, "–", squat.Demands)
	_, err = catalogue.Lookup("goblet squats")
	fmt.Println(err)
	// Output:
	// goblet squat – squat – both hands on one – spinal compression, free standing, deep knee bend, resisted shoulder, resisted elbow, resisted wrist, resisted hip, resisted knee, resisted ankle, abdominal pressure
	// unknown: value = "goblet squats", allowed: did you mean goblet-squat, dumbbell-squat, dumbbell-split-squat, bodyweight-squat or wall-squat
}
