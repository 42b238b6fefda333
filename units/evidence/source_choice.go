package evidence

// choiceSources are the publications on choosing exercises and tests by task and
// condition, and on what they are done with. DOIs not printed in what was seen are from memory and unchecked.
var choiceSources = []Source{
	{ID: "thastrength2015", Citation: "Muscular strength after total hip arthroplasty: prospective comparison of 3 surgical approaches. Acta Orthop 2015", DOI: "10.3109/17453674.2015.1068032"},
	{ID: "winther2018", Citation: "Winther SB, Foss OA, Husby OS, et al. Maximal strength training in 60 patients undergoing total hip arthroplasty: RCT. Acta Orthop 2018;89(3):295-301", DOI: "10.1080/17453674.2018.1441362"},
	{ID: "ng226", Citation: "National Institute for Health and Care Excellence. Osteoarthritis in over 16s, NG226, 2022"},
	{ID: "cbedelphi2014", Citation: "Developing the principles of chair based exercise for older people: modified Delphi. BMC Geriatr 2014;14:65", DOI: "10.1186/1471-2318-14-65"},
	{ID: "kanaley2022", Citation: "Kanaley JA, Colberg SR, Corcoran MH, et al. Exercise/physical activity in individuals with type 2 diabetes: ACSM consensus statement. Med Sci Sports Exerc 2022;54(2):353-368"},
	{ID: "floorreview2020", Citation: "Impact of the backward chaining method in older adults at risk of falling: a systematic review. Aging Clin Exp Res 2020;32(6):985-997", DOI: "10.1007/s40520-019-01459-1"},
	{ID: "reece1996", Citation: "Reece AC, Simpson JM. Teaching older people to cope after a fall. Physiotherapy 1996"},
	{ID: "kurth2025", Citation: "Kurth JD, Sciamanna CN, Danilovich MK, et al. Interest in brief resistance training workouts among older US adults. PLoS One 2025;20(8):e0329684", DOI: "10.1371/journal.pone.0329684"},
	{ID: "fouraday", Citation: "Randomised trial of four 30-second exercises a day for 12 weeks in older adults with mobility disability (meeting abstract; authors and year were not seen)"},
	{ID: "stairtimes2011", Citation: "Stair ascent and descent times in adults of 70 and over. Arch Phys Med Rehabil 2011;92(12):2006-2011", DOI: "10.1016/j.apmr.2011.07.193"},

	// Elastic bands.
	{ID: "colado2014", Citation: "Colado JC, Garcia-Masso X, Triplett NT, et al. Construct and concurrent validation of an effort scale for elastic bands. J Sports Sci Med 2014;13:758"},
	{ID: "lopes2019", Citation: "Lopes JSS, Machado AF, Micheletti JK, et al. Effects of training with elastic resistance versus conventional resistance on muscular strength. SAGE Open Med 2019;7 (arm and leg figures were printed the other way round in one place)", DOI: "10.1177/2050312119831116"},
	{ID: "bandtension2009", Citation: "Mechanical evaluation of the resistance of elastic bands. Rev Bras Fisioter 2009;13(6)"},
	{ID: "bandtension2016", Citation: "Elastic band tension: reference values for physical activity. J Phys Ther Sci 2016;28:1266", DOI: "10.1589/jpts.28.1266"},
}
