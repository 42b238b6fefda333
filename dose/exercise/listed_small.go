package exercise

import "example.org/posology/units/body"

// listedSmall are the listed rotations, what trains mainly elbow and wrist, carries and the trunk,
// as testdata/published/exercise-muscles.csv has them.
var listedSmall = []listing{
	{"shoulder external rotation", []listedMuscle{
		{body.RotatorCuff, Prime, ""},
		{body.PosteriorDeltoid, Synergist, ""},
		{body.TrapeziusMiddleLower, Stabiliser, ""},
	}},
	{"shoulder internal rotation", []listedMuscle{
		{body.RotatorCuff, Prime, ""},
		{body.PectoralisMajor, Synergist, ""},
		{body.LatissimusDorsi, Synergist, ""},
		{body.AnteriorDeltoid, Synergist, ""},
	}},
	{"biceps curl", []listedMuscle{
		{body.BicepsBrachii, Prime, ""},
		{body.BrachialisBrachioradialis, Synergist, ""},
		{body.ForearmGrip, Stabiliser, ""},
		{body.AnteriorDeltoid, Stabiliser, ""},
	}},
	{"hammer curl", []listedMuscle{
		{body.BrachialisBrachioradialis, Prime, ""},
		{body.BicepsBrachii, Synergist, ""},
		{body.ForearmGrip, Stabiliser, ""},
	}},
	{"overhead triceps extension", []listedMuscle{
		{body.TricepsBrachii, Prime, ""},
		{body.RotatorCuff, Stabiliser, ""},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
	{"lying triceps extension", []listedMuscle{
		{body.TricepsBrachii, Prime, ""},
		{body.RotatorCuff, Stabiliser, ""},
	}},
	{"triceps kickback", []listedMuscle{
		{body.TricepsBrachii, Prime, ""},
		{body.PosteriorDeltoid, Stabiliser, ""},
		{body.ErectorSpinae, Stabiliser, ""},
	}},
	{"triceps pushdown", []listedMuscle{
		{body.TricepsBrachii, Prime, ""},
		{body.LatissimusDorsi, Stabiliser, ""},
		{body.ForearmGrip, Stabiliser, ""},
	}},
	{"wrist curl", []listedMuscle{
		{body.WristFlexors, Prime, ""},
		{body.ForearmGrip, Synergist, ""},
	}},
	{"wrist extension", []listedMuscle{
		{body.WristExtensors, Prime, ""},
	}},
	{"farmer's carry", []listedMuscle{
		{body.ForearmGrip, Prime, ""},
		{body.TrapeziusUpper, Prime, ""},
		{body.ErectorSpinae, Synergist, ""},
		{body.Obliques, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
		{body.GluteusMedius, Stabiliser, ""},
		{body.Gastrocnemius, Stabiliser, ""},
		{body.Quadriceps, Stabiliser, ""},
	}},
	{"suitcase carry", []listedMuscle{
		{body.ForearmGrip, Prime, ""},
		{body.Obliques, Prime, ""},
		{body.QuadratusLumborum, Prime, ""},
		{body.TrapeziusUpper, Synergist, ""},
		{body.ErectorSpinae, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
		{body.GluteusMedius, Stabiliser, ""},
	}},
	{"plank", []listedMuscle{
		{body.RectusAbdominis, Prime, ""},
		{body.Obliques, Synergist, ""},
		{body.SerratusAnterior, Stabiliser, ""},
		{body.GluteusMaximus, Stabiliser, ""},
		{body.Quadriceps, Stabiliser, ""},
	}},
	{"side plank", []listedMuscle{
		{body.Obliques, Prime, ""},
		{body.QuadratusLumborum, Prime, ""},
		{body.GluteusMedius, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
		{body.ErectorSpinae, Stabiliser, ""},
	}},
	{"bird dog", []listedMuscle{
		{body.ErectorSpinae, Prime, ""},
		{body.GluteusMaximus, Synergist, ""},
		{body.Obliques, Stabiliser, ""},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
	{"dead bug", []listedMuscle{
		{body.RectusAbdominis, Prime, ""},
		{body.Obliques, Synergist, ""},
		{body.HipFlexors, Synergist, ""},
	}},
	{"abdominal crunch", []listedMuscle{
		{body.RectusAbdominis, Prime, ""},
		{body.Obliques, Synergist, ""},
	}},
	{"anti-rotation press", []listedMuscle{
		{body.Obliques, Prime, ""},
		{body.RectusAbdominis, Synergist, ""},
		{body.ErectorSpinae, Stabiliser, ""},
		{body.GluteusMedius, Stabiliser, ""},
	}},
}
