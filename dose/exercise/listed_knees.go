package exercise

import "example.org/posology/units/body"

// listedKnees are the listed what trains mainly the knees, the hip flexors and the lower legs,
// as testdata/published/exercise-muscles.csv has them.
var listedKnees = []listing{
	{"knee extension machine", []listedMuscle{
		{body.Quadriceps, Prime, ""},
	}},
	{"seated knee extension with ankle weight", []listedMuscle{
		{body.Quadriceps, Prime, ""},
	}},
	{"straight leg raise", []listedMuscle{
		{body.HipFlexors, Prime, ""},
		{body.Quadriceps, Synergist, ""},
		{body.RectusAbdominis, Stabiliser, ""},
	}},
	{"lying leg curl", []listedMuscle{
		{body.Hamstrings, Prime, ""},
		{body.Gastrocnemius, Synergist, ""},
	}},
	{"seated leg curl", []listedMuscle{
		{body.Hamstrings, Prime, ""},
		{body.Gastrocnemius, Synergist, ""},
	}},
	{"standing leg curl with ankle weight", []listedMuscle{
		{body.Hamstrings, Prime, ""},
		{body.Gastrocnemius, Synergist, ""},
		{body.GluteusMedius, Stabiliser, ""},
	}},
	{"standing calf raise", []listedMuscle{
		{body.Gastrocnemius, Prime, "kinoshita2023"},
		{body.Soleus, Prime, "kinoshita2023"},
	}},
	{"seated calf raise", []listedMuscle{
		{body.Soleus, Prime, "kinoshita2023"},
		{body.Gastrocnemius, Synergist, "kinoshita2023"},
	}},
	{"single-leg heel raise", []listedMuscle{
		{body.Gastrocnemius, Prime, ""},
		{body.Soleus, Prime, ""},
		{body.TibialisPosterior, Synergist, ""},
		{body.GluteusMedius, Stabiliser, ""},
	}},
	{"heel drop, knee straight (tendon loading)", []listedMuscle{
		{body.Gastrocnemius, Prime, ""},
		{body.Soleus, Prime, ""},
		{body.TibialisPosterior, Synergist, ""},
	}},
	{"heel drop, knee bent (tendon loading)", []listedMuscle{
		{body.Soleus, Prime, ""},
		{body.Gastrocnemius, Synergist, ""},
		{body.TibialisPosterior, Synergist, ""},
		{body.Quadriceps, Stabiliser, ""},
	}},
	{"toe raise", []listedMuscle{
		{body.TibialisAnterior, Prime, ""},
		{body.ToeExtensors, Synergist, ""},
	}},
}
