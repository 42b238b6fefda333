package evidence

// volumeSources are the publications behind the counting of volume. DOIs not
// printed in what was seen are from memory and unchecked.
var volumeSources = []Source{
	{ID: "pelland2024", Citation: "Pelland JC, Remmert JF, Robinson ZP, Hinson SR, Zourdos MC. The resistance training dose-response: meta-regressions exploring the effects of weekly volume and frequency on muscle hypertrophy and strength gain. SportRxiv preprint 2024 (published since in Sports Med)"},
	{ID: "schoenfeld2017", Citation: "Schoenfeld BJ, Ogborn D, Krieger JW. Dose-response relationship between weekly resistance training volume and increases in muscle mass. J Sports Sci 2017;35(11):1073-1082", DOI: "10.1080/02640414.2016.1210197"},
	{ID: "bazvalle2022", Citation: "Baz-Valle E, Balsalobre-Fernandez C, Alix-Fages C, Santos-Concejero J. J Hum Kinet 2022;81:199-210", DOI: "10.2478/hukin-2022-0017"},
	{ID: "ladlow2022", Citation: "Ladlow P, Conway D, Hayhurst D, et al. Integration of strength training into UK Defence Rehabilitation practice: current trends and future challenges. BMJ Mil Health 2022;168(4):314-319", DOI: "10.1136/bmjmilitary-2020-001590"},
	{ID: "kraft2014", Citation: "Kraft JA, Green JM, Gast TM. Work distribution influences session ratings of perceived exertion response during resistance exercise matched for total volume. J Strength Cond Res 2014;28(7):2042-2046"},
	{ID: "foster2001", Citation: "Foster C, Florhaug JA, Franklin J, et al. A new approach to monitoring exercise training. J Strength Cond Res 2001;15(1):109-115"},
	{ID: "foster1998", Citation: "Foster C. Monitoring training in athletes with reference to overtraining syndrome. Med Sci Sports Exerc 1998;30(7):1164-1168"},
}
