package main

// Golden: our own output, and no published figure.
func Example() {
	hello()
	// Output:
	// An invented woman of 66, who has never trained.
	// Whom to ask first: none – meanwhile: within limits
	// one-arm dumbbell row: 1 set of 15 with a 4 kg dumbbell in one hand
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
	// - With 4 kg at most 20 repetitions: whoever does them all and does not stop by feel has fewer left than the reserve asked less one in at most 10 % of sets, and none left in at most 5 %.
	// - Known of strength: a 1RM of about 8.2 kg, where one repetition more counts as left than was told; the load is 48.8 % of it.
	// - Delivered share 48.8 % lies under 60 %, the floor of the source for the goal strength: right for learning, too light to build.
	// - Load from the band, 48.8 % of what is known: beyond the equation's studied range.
	// No medical device: local rules and a licensed clinician decide.
}
