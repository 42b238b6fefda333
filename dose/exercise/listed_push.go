package exercise

import "example.org/posology/units/body"

// listedPush are the listed pushes, as
// testdata/published/exercise-muscles.csv has them.
var listedPush = []listing{
	{"barbell bench press", []listedMuscle{
		{body.PectoralisMajor, Prime, "stastny2017"},
		{body.TricepsBrachii, Synergist, "stastny2017"},
		{body.AnteriorDeltoid, Synergist, "stastny2017"},
		{body.SerratusAnterior, Stabiliser, ""},
		{body.RotatorCuff, Stabiliser, ""},
	}},
	{"dumbbell bench press", []listedMuscle{
		{body.PectoralisMajor, Prime, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
		{body.SerratusAnterior, Stabiliser, ""},
		{body.RotatorCuff, Stabiliser, ""},
		{body.BicepsBrachii, Stabiliser, ""},
	}},
	{"dumbbell floor press", []listedMuscle{
		{body.PectoralisMajor, Prime, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
		{body.SerratusAnterior, Stabiliser, ""},
		{body.RotatorCuff, Stabiliser, ""},
	}},
	{"incline dumbbell press", []listedMuscle{
		{body.PectoralisMajor, Prime, "rodriguezridao2020"},
		{body.AnteriorDeltoid, Synergist, "rodriguezridao2020"},
		{body.TricepsBrachii, Synergist, "rodriguezridao2020"},
		{body.SerratusAnterior, Stabiliser, ""},
		{body.RotatorCuff, Stabiliser, ""},
	}},
	{"chest press machine", []listedMuscle{
		{body.PectoralisMajor, Prime, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
		{body.SerratusAnterior, Stabiliser, ""},
	}},
	{"push-up", []listedMuscle{
		{body.PectoralisMajor, Prime, "pushupbench2019"},
		{body.TricepsBrachii, Synergist, "pushupbench2019"},
		{body.AnteriorDeltoid, Synergist, "pushupbench2019"},
		{body.SerratusAnterior, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
		{body.Obliques, Stabiliser, ""},
	}},
	{"wall push-up", []listedMuscle{
		{body.PectoralisMajor, Prime, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
		{body.SerratusAnterior, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
	{"dumbbell fly", []listedMuscle{
		{body.PectoralisMajor, Prime, ""},
		{body.AnteriorDeltoid, Synergist, "campos2020"},
		{body.BicepsBrachii, Stabiliser, ""},
		{body.RotatorCuff, Stabiliser, ""},
	}},
	{"chair dip", []listedMuscle{
		{body.TricepsBrachii, Prime, ""},
		{body.PectoralisMajor, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
		{body.Rhomboids, Stabiliser, ""},
	}},
	{"dumbbell shoulder press", []listedMuscle{
		{body.AnteriorDeltoid, Prime, "campos2020"},
		{body.LateralDeltoid, Prime, "campos2020"},
		{body.TricepsBrachii, Synergist, ""},
		{body.TrapeziusUpper, Synergist, ""},
		{body.SerratusAnterior, Synergist, ""},
		{body.RotatorCuff, Stabiliser, ""},
		{body.PosteriorDeltoid, Stabiliser, "campos2020"},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
	{"machine shoulder press", []listedMuscle{
		{body.AnteriorDeltoid, Prime, "botton2013"},
		{body.LateralDeltoid, Synergist, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.TrapeziusUpper, Synergist, ""},
		{body.SerratusAnterior, Synergist, ""},
	}},
	{"single-arm dumbbell shoulder press", []listedMuscle{
		{body.AnteriorDeltoid, Prime, ""},
		{body.LateralDeltoid, Prime, ""},
		{body.TricepsBrachii, Synergist, ""},
		{body.TrapeziusUpper, Synergist, ""},
		{body.SerratusAnterior, Synergist, ""},
		{body.RotatorCuff, Stabiliser, ""},
		{body.Obliques, Stabiliser, ""},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
}
