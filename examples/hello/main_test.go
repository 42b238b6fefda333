package main

// Golden: our own output, and no published figure.
func Example() {
	hello()
	// Output:
	// An invented woman of 66, who has never trained.
	// Whom to ask first: none – meanwhile: within limits
	// one-arm dumbbell row: 1 set of 10 with a 3 kg dumbbell in one hand
	// - Pain, as opposed to muscular effort, ends the exercise.
	// - Weights are taken from and returned to chair height; the demands do not include a lift from the floor.
	// - Phase: familiarise, taken from the training status; none was asked for.
	// - Follows the row acsm2011-older-start, made for older or sedentary adults starting resistance exercise; chosen here by goal, training and age, none was asked for.
	// - Repetitions: 10 to 15.
	// - Sets: 1 now, to build to 3; fewer repetitions in a later set are acceptable.
	// - Rest between sets: 120 to 180 seconds.
	// - Days a week: 2 to 3.
	// - Repetitions in reserve: more than 5, not countable.
	// - Two seconds down, two seconds up.
	// - Load by the row: 40 % to 50 %.
	// - Load-finding without a step up within the visit: limits, the band of the row or the kit end at 3 kg.
	// - Best estimate 8 kg; the dose starts from its cautious end, 6.8 kg.
	// - Delivered share 37.5 % lies under 60 %, the floor of the source for the goal strength: right for learning, too light to build.
	// No medical device: local rules and a licensed clinician decide.
}
