package evidence

// effortSources are the publications behind the effort scales.
var effortSources = []Source{
	{ID: "zourdos2016", Citation: "Zourdos MC, et al. J Strength Cond Res 2016;30(1):267-275", DOI: "10.1519/JSC.0000000000001049"},
	{ID: "prediabetes2021", Citation: "Effectiveness of resistance training and associated program characteristics in patients at risk for type 2 diabetes: systematic review and meta-analysis. Sports Med Open 2021", DOI: "10.1186/s40798-021-00321-x"},
	{ID: "zourdos2021", Citation: "Zourdos MC, et al. J Strength Cond Res 2021;35(Suppl 1):S158-S165", DOI: "10.1519/JSC.0000000000002995", DOISeen: true},
}

// loadRepsSources are the publications behind the load–repetition equations.
// DOIs not printed in what was seen are from memory and unchecked.
var loadRepsSources = []Source{
	{ID: "epley1985", Citation: "Epley B. Poundage chart. Lincoln, NE: Body Enterprises; 1985"},
	{ID: "brzycki1993", Citation: "Brzycki M. Strength testing: predicting a one-rep max from reps-to-fatigue. J Phys Educ Recreat Dance 1993;64(1):88-90", DOI: "10.1080/07303084.1993.10606684"},
	{ID: "lander1985", Citation: "Lander J. Maximums based on reps. NSCA Journal 1985;6(6):60-61"},
	{ID: "lombardi1989", Citation: "Lombardi VP. Beginning Weight Training. Dubuque: WC Brown; 1989"},
	{ID: "mayhew1992", Citation: "Mayhew JL, Ball TE, Arnold MD, Bowen JC. Relative muscular endurance performance as a predictor of bench press strength in college men and women. J Appl Sport Sci Res 1992;6(4):200-206"},
	{ID: "oconner1989", Citation: "O'Conner B, Simmons J, O'Shea P. Weight Training Today. St Paul: West; 1989"},
	{ID: "wathen1994", Citation: "Wathen D. Load assignment. In: Baechle TR, ed. Essentials of Strength Training and Conditioning. Champaign: Human Kinetics; 1994:435-446"},
	{ID: "adams1994", Citation: "Adams GM. Exercise Physiology Laboratory Manual; 1994 (the year is disputed: also cited as 1998 and 2000)"},
	{ID: "kemmler2006", Citation: "Kemmler, Lauber, Wassermann, Mayhew. J Strength Cond Res 2006;20(4):838-842", DOI: "10.1519/R-18905.1"},
	{ID: "roberts2024", Citation: "Roberts et al. J Strength Cond Res 2024, ahead of print (cross-validation in bench press and leg extension)"},
	{ID: "mayhew1995", Citation: "Mayhew et al. J Sports Med Phys Fitness 1995;35(2):108-113"},
	{ID: "knutzen1999", Citation: "Knutzen, Brilla, Caine. Validity of 1RM prediction equations for older adults. J Strength Cond Res 1999;13(3):242-246", DOI: "10.1519/00124278-199908000-00011"},
	{ID: "braith1993", Citation: "Braith, Graves, Leggett, Pollock. Med Sci Sports Exerc 1993;25(1):132-138", DOI: "10.1249/00005768-199301000-00018", DOISeen: true},
	{ID: "nascimento2007", Citation: "Nascimento et al. Rev Bras Med Esporte 2007;13(1):47-50 (pages from memory)", DOI: "10.1590/S1517-86922007000100011", DOISeen: true},
	{ID: "abadie2000", Citation: "Abadie, Wentworth. JEPonline 2000;3(3), also cited as 4(2):1-6"},
	{ID: "simonsen2024", Citation: "Simonsen et al. Sport Sci Health 2024", DOI: "10.1007/s11332-024-01264-y", DOISeen: true},
	{ID: "hutchins2010", Citation: "Hutchins, Gearhart. JEPonline 2010;13(3):32-39"},
	{ID: "meneses2013", Citation: "Meneses et al. Rev Bras Ativ Fis Saude 2013 (year from memory)"},
	{ID: "grgic2020", Citation: "Grgic, Lazinica, Schoenfeld, Pedisic. Sports Med Open 2020;6:31", DOI: "10.1186/s40798-020-00260-z", DOISeen: true},
	{ID: "schroeder2007", Citation: "Schroeder et al. J Gerontol A 2007;62A(5):543-549"},
	{ID: "halperin2022", Citation: "Halperin et al. Sports Med 2022;52(2):377-390", DOI: "10.1007/s40279-021-01559-x", DOISeen: true},
	{ID: "hackett2017", Citation: "Hackett et al. J Strength Cond Res 2017;31(8):2162-2168", DOI: "10.1519/JSC.0000000000001683", DOISeen: true},
	{ID: "kemmler2024", Citation: "Developing accurate repetition prediction equations for trained older adults with osteopenia. Sports (Basel) 2024;12(9):233", DOI: "10.3390/sports12090233", DOISeen: true},
	{ID: "reynolds2006", Citation: "Reynolds, Gordon, Robergs. J Strength Cond Res 2006;20(3):584-592", DOI: "10.1519/R-15304.1", DOISeen: true},
	{ID: "roberts2024b", Citation: "Roberts et al. Am J Sports Sci Med 2024;12(2):29-35", DOI: "10.12691/ajssm-12-2-2", DOISeen: true},
	{ID: "macht2016", Citation: "Macht, Abel, Mullineaux, Yates. J Strength Cond Res 2016;30(10):2901-2906", DOI: "10.1519/JSC.0000000000001385", DOISeen: true},
	{ID: "baechle2000", Citation: "Baechle TR, Groves BR; 2000 (title from memory: Weight Training: Steps to Success)"},
	{ID: "lacio2010", Citation: "Lacio et al. Motricidade 2010;6(3):31-37", DOI: "10.6063/motricidade.6(3).143", DOISeen: true},
	{ID: "lesuer1997", Citation: "LeSuer et al. J Strength Cond Res 1997;11(4):211-213"},
	{ID: "refalo2023", Citation: "Refalo et al. J Strength Cond Res, online 2023", DOI: "10.1519/JSC.0000000000004653", DOISeen: true},
	{ID: "infante2021", Citation: "Infante et al. J Strength Cond Res 2021;35(12):3513-3517", DOI: "10.1519/JSC.0000000000004143", DOISeen: true},
	{ID: "nscachart", Citation: "National Strength and Conditioning Association. Training load chart (percent of 1RM by maximal repetitions)"},
	{ID: "nscatextbook", Citation: "Haff GG, Triplett NT, eds. Essentials of strength training and conditioning. 4th ed. Human Kinetics; 2016 (edition of the table not checked)"},
	{ID: "mitter2022", Citation: "Mitter B, Csapo R, Bauer P, Tschan H. Reproducibility of strength performance and strength-endurance profiles: a test-retest study. PLOS ONE 2022;17(5):e0268074", DOI: "10.1371/journal.pone.0268074"},
	{ID: "mitter2024", Citation: "Mitter B, et al. Data collection for strength-endurance profiles: can assessments be completed within a single session? Public repository BeniSportSci/Testing-for-strength-endurance-profiles-, rawdata.xlsx of 2024-03-23, commit a392ed35"},
}
