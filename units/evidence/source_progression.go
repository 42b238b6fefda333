package evidence

// progressionSources are the publications behind session length and progression.
// No DOI was seen printed; those given are unchecked.
var progressionSources = []Source{
	{ID: "schoenfeld2019", Citation: "Schoenfeld BJ, Contreras B, Krieger J, et al. Resistance training volume enhances muscle hypertrophy but not strength in trained men. Med Sci Sports Exerc 2019;51(1):94-103", DOI: "10.1249/MSS.0000000000001764"},
	{ID: "spiering2021", Citation: "Spiering BA, et al. J Strength Cond Res 2021;35(5):1449-1458"},
	{ID: "kraemer2002", Citation: "Kraemer WJ, et al. (American College of Sports Medicine). Med Sci Sports Exerc 2002;34(2):364-380"},

	// Schemes, set by set.
	{ID: "delorme1948", Citation: "DeLorme TL, Watkins AL. Technics of progressive resistance exercise. Arch Phys Med Rehabil 1948;29:263-273; and their book, Progressive resistance exercise, 1951"},
	{ID: "zinovieff1951", Citation: "Zinovieff AN. Heavy-resistance exercises: the Oxford technique. Br J Phys Med 1951;14:129-132"},
	{ID: "fish2003", Citation: "Fish DE, et al. Am J Phys Med Rehabil 2003;82:903-909", DOI: "10.1097/01.PHM.0000098505.57264.DB"},
	{ID: "macqueen1954", Citation: "MacQueen IJ. Recent advances in the technique of progressive resistance exercise. Br Med J 1954;2:1193-1198", DOI: "10.1136/bmj.2.4898.1193"},
	{ID: "knight1979", Citation: "Knight KL. Am J Sports Med 1979;7:336-337", DOI: "10.1177/036354657900700607"},
	{ID: "knight1985", Citation: "Knight KL. Med Sci Sports Exerc 1985;17:646-650"},
	{ID: "mann2010", Citation: "Mann JB, Thyfault JP, Ivey PA, Sayers SP. J Strength Cond Res 2010;24(7):1718-1723 (scheme after Siff and Verkhoshansky)", DOI: "10.1519/JSC.0b013e3181def4a6"},

	// When and by how much to raise the load.
	{ID: "hostler2001", Citation: "Hostler D, Crill MT, Hagerman FC, Staron RS. The effectiveness of 0.5-lb increments in progressive resistance exercise. J Strength Cond Res 2001;15(1):86-91, and its congress abstract"},
	{ID: "gearhart2009", Citation: "Gearhart RF, et al. J Strength Cond Res 2009;23(3):1011-1015, and a congress abstract on the same leg-press trial", DOI: "10.1519/JSC.0b013e3181a2ec41"},
	{ID: "buskard2019", Citation: "Buskard ANL, et al. Med Sci Sports Exerc 2019;51(11):2224-2233", DOI: "10.1249/MSS.0000000000002038"},
	{ID: "homeprotocol", Citation: "Protocol of home exercise in rehabilitation, PMC7783996, Table 2 (authors, title and year were not recorded)"},
	{ID: "chaves2024", Citation: "Chaves TS, et al. Effects of resistance training overload progression protocols on strength and muscle mass. Int J Sports Med 2024;45(7):504-510", DOI: "10.1055/a-2256-5857"},
	{ID: "concurrent2024", Citation: "Trial of concurrent training. J Hum Kinet 2024;91(Spec Issue):87-103 (authors and title were not recorded)", DOI: "10.5114/jhk/185637"},
	{ID: "helms2018", Citation: "Helms ER, et al. Front Physiol 2018;9:247", DOI: "10.3389/fphys.2018.00247"},

	// Pain.
	{ID: "ageberg2010", Citation: "Ageberg E, Link A, Roos EM. Feasibility of neuromuscular training in patients with severe hip or knee OA. BMC Musculoskelet Disord 2010;11:126", DOI: "10.1186/1471-2474-11-126"},
	{ID: "perry2005", Citation: "Perry MC, et al. Knee Surg Sports Traumatol Arthrosc 2005;13:357-369"},

	// Effort scales.
	{ID: "robertson2003", Citation: "Robertson RJ, et al. Med Sci Sports Exerc 2003 (volume and pages were not recorded)", DOI: "10.1249/01.MSS.0000048831.15016.2A"},
	{ID: "buckley2011", Citation: "Buckley JP, Borg GAV. Borg's scales in strength training. Appl Physiol Nutr Metab 2011;36(5):682-692", DOI: "10.1139/h11-078"},
	{ID: "cotter2017", Citation: "Cotter JA, et al. Ratings of perceived exertion during acute resistance exercise at imposed and self-selected loads in recreationally trained women. J Strength Cond Res 2017"},

	// Missed time, illness, planned lighter weeks.
	{ID: "bosquet2013", Citation: "Bosquet L, et al. Scand J Med Sci Sports 2013 (meta-analysis of strength after time off)", DOI: "10.1111/sms.12047"},
	{ID: "taaffe1997", Citation: "Taaffe DR, Marcus R. Clin Physiol 1997;17(3):311-324 (the second author is from memory)", DOI: "10.1111/j.1365-2281.1997.tb00010.x"},
	{ID: "gjovaag2016", Citation: "Gjovaag T et al. J Sports Med Phys Fitness 2016;56(5):616-623"},
	{ID: "caterisano2019", Citation: "Caterisano A, et al. Strength Cond J 2019 (consensus on the return of college athletes to training)", DOI: "10.1519/SSC.0000000000000477"},
	{ID: "salman2021", Citation: "Salman D, et al. Returning to physical activity after covid-19. BMJ 2021;372:m4721", DOI: "10.1136/bmj.m4721"},
	{ID: "rogerson2024", Citation: "Rogerson D, et al. Deloading practices in strength and physique sports. Sports Med Open 2024;10:26", DOI: "10.1186/s40798-024-00691-y"},
	{ID: "bell2022", Citation: "Bell L, et al. Front Sports Act Living 2022 (interviews with 18 coaches)", DOI: "10.3389/fspor.2022.1073223"},
	{ID: "coleman2024", Citation: "Coleman M, et al. PeerJ 2024;12:e16777"},

	// Expected gains.
	{ID: "churchwardvenne2015", Citation: "Churchward-Venne TA, et al. There are no nonresponders to resistance-type exercise training in older men and women. J Am Med Dir Assoc 2015;16:400-411", DOI: "10.1016/j.jamda.2015.01.071"},
	{ID: "steele2022", Citation: "Steele J, et al. Long-term time-course of strength adaptation to minimal dose resistance training. Res Q Exerc Sport 2022, pp. 913-930", DOI: "10.1080/02701367.2022.2070592"},
	{ID: "steele2023", Citation: "Steele J, et al. J Sports Sci 2023;41(17):1617-1634, open extraction of randomised trials listed by Polito et al. 2021", DOI: "10.1080/02640414.2023.2286748"},
	{ID: "bergamasco2022", Citation: "Bergamasco JGA, et al. J Strength Cond Res 2022;36(5):1209-1215", DOI: "10.1519/JSC.0000000000003632"},
	{ID: "hammarstrom2020", Citation: "Hammarström D, et al. J Physiol 2020;598(3):543-565, and its open data", DOI: "10.1113/JP278455"},
	{ID: "kneeextension2007", Citation: "Trial of rests between sets of knee extension. Rev Bras Med Esporte 2007;13(5) (authors and title were not recorded)"},
	{ID: "refalo2023b", Citation: "Refalo MC, et al. Sports Med Open 2023;9 (six sets of the bench press; pages were not recorded)", DOI: "10.1186/s40798-023-00554-y"},
	{ID: "manas2021", Citation: "Mañas A, et al. Ageing Res Rev 2021;69:101368", DOI: "10.1016/j.arr.2021.101368"},
	{ID: "steelealone", Citation: "Steele J, Fisher J, Dettmann T. Preprint on effort under supervision (year was not recorded)"},
	{ID: "steele2026", Citation: "Steele J, et al. SportRxiv preprint 2026 (differences between people in the response to training)", DOI: "10.51224/SportRxiv.783"},

	// Whether a change is real.
	{ID: "hopkins2000", Citation: "Hopkins WG. Measures of reliability in sports medicine and science. Sports Med 2000;30(1):1-15", DOI: "10.2165/00007256-200030010-00001"},
	{ID: "phillips2004", Citation: "Phillips WT, et al. Reliability of maximal strength testing in older adults. Arch Phys Med Rehabil 2004", DOI: "10.1016/j.apmr.2003.05.010"},
	{ID: "levinger2009", Citation: "Levinger I, et al. The reliability of the 1RM strength test for untrained middle-aged individuals. J Sci Med Sport 2009;12(2):310-316"},
}
