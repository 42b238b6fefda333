package evidence

// guidelineSources are the publications that state doses. DOIs not printed in
// what was seen are from memory and unchecked.
var guidelineSources = []Source{
	{ID: "ratamess2009", Citation: "Ratamess NA, Alvar BA, Evetoch TK, et al. (American College of Sports Medicine). Progression models in resistance training for healthy adults. Med Sci Sports Exerc 2009;41(3):687-708", DOI: "10.1249/MSS.0b013e3181915670"},
	{ID: "nelson2007", Citation: "Nelson ME, Rejeski WJ, Blair SN, et al. Physical activity and public health in older adults: recommendation from the American College of Sports Medicine and the American Heart Association. Med Sci Sports Exerc 2007;39(8):1435-1445 (also Circulation 2007;116(9):1094-1105)", DOI: "10.1249/mss.0b013e3180616aa2"},
	{ID: "chodzkozajko2009", Citation: "Chodzko-Zajko WJ, Proctor DN, Fiatarone Singh MA, et al. Exercise and physical activity for older adults. Med Sci Sports Exerc 2009;41(7):1510-1530", DOI: "10.1249/MSS.0b013e3181a0c95c"},
	{ID: "garber2011", Citation: "Garber CE, Blissmer B, Deschenes MR, et al. Quantity and quality of exercise for developing and maintaining cardiorespiratory, musculoskeletal, and neuromotor fitness in apparently healthy adults. Med Sci Sports Exerc 2011;43(7):1334-1359", DOI: "10.1249/MSS.0b013e318213fefb"},
	{ID: "acsm2026", Citation: "American College of Sports Medicine position stand. Resistance training prescription for muscle function, hypertrophy, and physical performance in healthy adults: an overview of reviews. Med Sci Sports Exerc 2026;58(4) (S.M. Phillips, chair of the author group)"},
	{ID: "fragala2019", Citation: "Fragala MS, Cadore EL, Dorgo S, et al. Resistance training for older adults: position statement from the National Strength and Conditioning Association. J Strength Cond Res 2019;33(8):2019-2052", DOI: "10.1519/JSC.0000000000003230"},
	{ID: "bull2020", Citation: "Bull FC, Al-Ansari SS, Biddle S, et al. World Health Organization 2020 guidelines on physical activity and sedentary behaviour. Br J Sports Med 2020;54(24):1451-1462", DOI: "10.1136/bjsports-2020-102955"},
	{ID: "ukcmo2019", Citation: "UK Chief Medical Officers. UK Chief Medical Officers' physical activity guidelines. Department of Health and Social Care; 7 September 2019"},
	{ID: "usdhhs2018", Citation: "US Department of Health and Human Services. Physical activity guidelines for Americans. 2nd ed. Washington DC; 2018"},
	{ID: "gianoudis2012", Citation: "Gianoudis J, Bailey CA, Sanders KM, et al. Protocol for a community-based randomised trial of multi-modal exercise and osteoporosis education for older adults at risk of falls and fractures, Table 2. BMC Musculoskelet Disord 2012;13:78", DOI: "10.1186/1471-2474-13-78"},
	{ID: "borde2015", Citation: "Borde R, Hortobagyi T, Granacher U. Dose-response relationships of resistance training in healthy old adults: a systematic review and meta-analysis. Sports Med 2015;45(12):1693-1720", DOI: "10.1007/s40279-015-0385-9"},
	{ID: "gschwind2013", Citation: "Gschwind YJ, Kressig RW, Lacroix A, et al. A best practice fall prevention exercise program. BMC Geriatr 2013;13:105, Table 1", DOI: "10.1186/1471-2318-13-105"},
	{ID: "grgic2018", Citation: "Grgic J, Schoenfeld BJ, Skrepnik M, Davies TB, Mikulic P. Effects of rest interval duration in resistance training on measures of muscular strength: a systematic review. Sports Med 2018;48(1):137-151", DOI: "10.1007/s40279-017-0788-x"},
	{ID: "cardiacrehab2021", Citation: "Review of resistance exercise in cardiac rehabilitation, Table 4. J Clin Med 2021;10(14):3071", DOI: "10.3390/jcm10143071"},
}
