package evidence

// progressionSources are the publications behind session length and progression.
var progressionSources = []Source{
	{ID: "schoenfeld2019", Citation: "Schoenfeld BJ, Contreras B, Krieger J, et al. Resistance training volume enhances muscle hypertrophy but not strength in trained men. Med Sci Sports Exerc 2019;51(1):94-103", DOI: "10.1249/MSS.0000000000001764"},
	{ID: "spiering2021", Citation: "Spiering BA, et al. J Strength Cond Res 2021;35(5):1449-1458"},
	{ID: "kraemer2002", Citation: "Kraemer WJ, et al. (American College of Sports Medicine). Med Sci Sports Exerc 2002;34(2):364-380"},
}
