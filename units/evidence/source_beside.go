package evidence

// besideSources are the publications on what belongs beside lifting: balance, impact,
// power, aerobic work. DOIs not printed in what was seen are from memory and unchecked.
var besideSources = []Source{
	{ID: "sherrington2011", Citation: "Sherrington C, Tiedemann A, Fairhall N, Close JCT, Lord SR. Exercise to prevent falls in older adults: an updated meta-analysis and best practice recommendations. N S W Public Health Bull 2011;22(3-4):78-83", DOI: "10.1071/NB10056"},
	{ID: "sherrington2020", Citation: "Sherrington C, Fairhall N, Kwok W, et al. Evidence on physical activity and falls prevention for people aged 65+ years. Int J Behav Nutr Phys Act 2020;17:144", DOI: "10.1186/s12966-020-01041-3"},
	{ID: "bassey1998", Citation: "Bassey EJ, Rothwell MC, Littlewood JJ, Pye DW. Pre- and postmenopausal women have different bone mineral density responses to the same high-impact exercise. J Bone Miner Res 1998;13(12):1805-1813", DOI: "10.1359/jbmr.1998.13.12.1805"},
	{ID: "watson2018", Citation: "Watson SL, Weeks BK, Weis LJ, et al. High-intensity resistance and impact training in postmenopausal women with osteopenia and osteoporosis. J Bone Miner Res 2018;33(2):211-220", DOI: "10.1002/jbmr.3284"},
	{ID: "ryan2021", Citation: "Ryan CMC, Clissold TL, Winwood PW. The quantification, autoregulation and reliability of the stomp as an osteogenic exercise. Sports Injr Med 2021;5:168", DOI: "10.29011/2576-9596.100068"},
	{ID: "heeldrop2021", Citation: "The osteogenic quantification and reliability of the heel drop and press up drop. Int J Sci Technol Soc 2021;9(6):294-300", DOI: "10.11648/j.ijsts.20210906.16"},
	{ID: "hoplandings2022", Citation: "Multidirectional hop landings exceed osteogenic thresholds in premenopausal women. Am J Sports Sci 2022", DOI: "10.11648/j.ajss.20221001.12"},
	{ID: "allison2015", Citation: "Allison SJ, Poole KES, Treece GM, et al. The influence of high-impact exercise on the proximal femur in older men: a randomized controlled unilateral intervention. J Bone Miner Res 2015", DOI: "10.1002/jbmr.2499"},
	{ID: "marques2020", Citation: "Marques DL, Neiva HP, Marinho DA, Marques MC. Monitoring the volume in older adults: the role of movement velocity. Int J Environ Res Public Health 2020;17(20):7557", DOI: "10.3390/ijerph17207557"},
	{ID: "powerintensity2023", Citation: "Chronic effects of different intensities of power training in older people: systematic review with meta-analysis. Sports Med Open 2023", DOI: "10.1186/s40798-023-00646-9"},
	{ID: "tudorlocke2021", Citation: "Tudor-Locke C, Mora-Gonzalez J, Ducharme SW, et al. Walking cadence and intensity in 61-85-year-old adults. Int J Behav Nutr Phys Act 2021", DOI: "10.1186/s12966-021-01199-4"},
	{ID: "cdc_intensity", Citation: "US Centers for Disease Control and Prevention, pages on measuring the intensity of physical activity"},
}
