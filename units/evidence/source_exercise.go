package evidence

// exerciseSources are the publications behind the exercise catalogue, worded
// as the collection of rows on muscles and roles words them. The textbooks
// were not opened.
var exerciseSources = []Source{
	{ID: "neumann2017", Citation: "Neumann DA. Kinesiology of the musculoskeletal system. 3rd ed. Elsevier; 2017; and Haff GG, Triplett NT, eds. Essentials of strength training and conditioning. 4th ed. Human Kinetics; 2016"},
	{ID: "krauseneto2020", Citation: "Krause Neto W, Soares EG, Vieira TL, et al. J Sports Sci Med 2020;19(1):195-203 (EMG systematic review, gluteus maximus)"},
	{ID: "martinfuentes2020", Citation: "Martin-Fuentes I, Oliva-Lozano JM, Muyor JM. PLoS One 2020;15(2):e0229507 (EMG systematic review, deadlift)"},
	{ID: "kinoshita2023", Citation: "Kinoshita M, Maeo S, Kobayashi Y, et al. Front Physiol 2023;14:1272106 (MRI, calf raise training)"},
	{ID: "pushupbench2019", Citation: "Comparison of kinematics and muscle activation between push-up and bench press. Int J Sports Med 2019 (doi 10.1055/a-1001-2526)", DOI: "10.1055/a-1001-2526", DOISeen: true},
	{ID: "campos2020", Citation: "Campos YAC, Vianna JM, Guimaraes MP, et al. J Hum Kinet 2020;75:5-14 (EMG, deltoid)"},
	{ID: "coratella2020", Citation: "Coratella G, Tornatore G, Longo S, Esposito F, Ce E. Int J Environ Res Public Health 2020;17(17):6015 (EMG, lateral and frontal raise)"},
}
