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
	{ID: "squatvariants2022", Citation: "Differences in the muscle activities of the quadriceps femoris and hamstrings while performing various squat exercises. BMC Sports Sci Med Rehabil 2022;14:12 (EMG)"},
	{ID: "contreras2015", Citation: "Contreras B, Vigotsky AD, Schoenfeld BJ, et al. J Appl Biomech 2015;31(6):452-458 (EMG, squat and hip thrust)"},
	{ID: "martinfuentes2020press", Citation: "Martin-Fuentes I, Oliva-Lozano JM, Muyor JM. Int J Environ Res Public Health 2020;17(13):4626 (EMG systematic review, leg press)"},
	{ID: "stastny2017", Citation: "Stastny P, Golas A, Blazek D, et al. PLoS One 2017;12(2):e0171632 (EMG systematic review, bench press)"},
	{ID: "rodriguezridao2020", Citation: "Rodriguez-Ridao D, Antequera-Vique JA, Martin-Fuentes I, Muyor JM. Int J Environ Res Public Health 2020;17(19):7339 (EMG, bench inclination)"},
	{ID: "botton2013", Citation: "Botton CE, Wilhelm EN, Ughini CC, et al. Med Sport 2013;17(2):67-71 (EMG, deltoid)"},
	{ID: "lehman2004", Citation: "Lehman GJ, Buchan DD, Lundy A, et al. Dyn Med 2004;3:4 (EMG, pulldown and row)"},
	{ID: "sperandei2009", Citation: "Sperandei S, Barros MAP, Silveira-Junior PCS, Oliveira CG. J Strength Cond Res 2009;23(7):2033-2038 (EMG, lat pull-down)"},
}
