package evidence

// functionSources are the publications behind the functional tests. DOIs were
// not printed in what was seen; they are from memory and unchecked.
var functionSources = []Source{
	{ID: "riklijones1999", Citation: "Rikli RE, Jones CJ. Functional fitness normative scores for community-residing older adults, ages 60-94. J Aging Phys Act 1999;7(2):162-181", DOI: "10.1123/japa.7.2.162"},
	{ID: "cdc_stand2017", Citation: "CDC STEADI, 30-Second Chair Stand assessment sheet (2017)"},
	{ID: "cdc_balance2017", Citation: "CDC STEADI, 4-Stage Balance Test sheet (2017)"},
	{ID: "bohannon2006_stands", Citation: "Bohannon RW. Reference values for the five-repetition sit-to-stand test: a descriptive meta-analysis of data from elders. Percept Mot Skills 2006;103(1):215-222", DOI: "10.2466/pms.103.1.215-222"},
	{ID: "bohannon2006_tug", Citation: "Bohannon RW. Reference values for the timed up and go test: a descriptive meta-analysis. J Geriatr Phys Ther 2006;29(2):64-68", DOI: "10.1519/00139143-200608000-00004"},
	{ID: "bohannon2011_gait", Citation: "Bohannon RW, Williams Andrews A. Normal walking speed: a descriptive meta-analysis. Physiotherapy 2011;97(3):182-189", DOI: "10.1016/j.physio.2010.12.004"},
	{ID: "bohannon2019_grip", Citation: "Bohannon RW. Minimal clinically important difference for grip strength: a systematic review. J Phys Ther Sci 2019;31(1):75-78", DOI: "10.1589/jpts.31.75"},
	{ID: "buatois2008", Citation: "Buatois, 2008 (five sit-to-stands and recurrent falls; further details were not recorded)"},
	{ID: "lusardi2017", Citation: "Lusardi, 2017 (tests that tell the risk of falls; further details were not recorded)"},
	{ID: "ewgsop2_2019", Citation: "Cruz-Jentoft AJ et al. Sarcopenia: revised European consensus on definition and diagnosis (EWGSOP2). Age Ageing 2019;48(1):16-31", DOI: "10.1093/ageing/afy169"},
	{ID: "sdoc2020", Citation: "Cawthon PM et al. Putative cut-points in sarcopenia components and incident adverse health outcomes: an SDOC analysis. J Am Geriatr Soc 2020;68(7):1429-1437 (PMC7508260)", DOI: "10.1111/jgs.16517"},
	{ID: "awgs2019", Citation: "Chen LK et al. Asian Working Group for Sarcopenia: 2019 consensus update. J Am Med Dir Assoc 2020;21(3):300-307", DOI: "10.1016/j.jamda.2019.12.012"},
	{ID: "charls2021", Citation: "Reference values for five-repetition chair stand test among middle-aged and elderly community-dwelling Chinese adults (CHARLS), 2021 (PMC8096929)"},
	{ID: "china2020", Citation: "China National Physical Fitness surveillance 2020, older-adult indicators, reprinted in PMC8961805 Table 4 (2022)"},
	{ID: "goldberg2012", Citation: "Goldberg A et al. The five-times-sit-to-stand test: validity, reliability and detectable change in older females. Aging Clin Exp Res 2012;24(4):339-344", DOI: "10.1007/BF03325265"},
	{ID: "alghadir2015", Citation: "Alghadir A et al. The reliability and minimal detectable change of Timed Up and Go test in individuals with grade 1-3 knee osteoarthritis. BMC Musculoskelet Disord 2015;16:174", DOI: "10.1186/s12891-015-0637-8"},
	{ID: "gill2022", Citation: "Gill S et al. Thirty second chair stand test: test-retest reliability, agreement and minimum detectable change in people with early-stage knee osteoarthritis. Physiother Res Int 2022"},
	{ID: "wright2011", Citation: "Wright AA et al. A comparison of 3 methodological approaches to defining major clinically important improvement of 4 performance measures in patients with hip osteoarthritis. J Orthop Sports Phys Ther 2011;41(5):319-327", DOI: "10.2519/jospt.2011.3515"},
	{ID: "perera2006", Citation: "Perera S et al. Meaningful change and responsiveness in common physical performance measures in older adults. J Am Geriatr Soc 2006;54(5):743-749", DOI: "10.1111/j.1532-5415.2006.00701.x"},
	{ID: "kwon2009", Citation: "Kwon S et al. What is a meaningful change in physical performance? Findings from a clinical trial in older adults (the LIFE-P study). J Nutr Health Aging 2009;13(6):538-544", DOI: "10.1007/s12603-009-0104-z"},
	{ID: "japanmdc2021", Citation: "Minimal detectable change in handgrip strength and usual and maximum gait speed scores in community-dwelling Japanese older adults requiring long-term care/support. Geriatr Nurs 2021", DOI: "10.1016/j.gerinurse.2021.07.004"},
	{ID: "guralnik1994", Citation: "Guralnik JM et al. A short physical performance battery assessing lower extremity function. J Gerontol 1994;49(2):M85-M94", DOI: "10.1093/geronj/49.2.m85"},
	{ID: "sppb3m", Citation: "3-m conversion of the SPPB walk"},
	{ID: "urology2008", Citation: "Urology 2008;72(2):422-427, Table 3 (PMC3032402)"},
	{ID: "dodds2014", Citation: "Dodds RM et al. Grip strength across the life course: normative data from twelve British studies. PLoS ONE 2014;9(12):e113637", DOI: "10.1371/journal.pone.0113637"},
	{ID: "wang2018", Citation: "Wang YC et al. Hand-grip strength: normative reference values and equations for individuals 18 to 85 years of age residing in the United States. J Orthop Sports Phys Ther 2018;48(9):685-693", DOI: "10.2519/jospt.2018.7851"},
	{ID: "malmstrom2013", Citation: "Malmstrom TK, Morley JE. SARC-F: a simple questionnaire to rapidly diagnose sarcopenia. J Am Med Dir Assoc 2013;14(8):531-532", DOI: "10.1016/j.jamda.2013.05.018"},
}
