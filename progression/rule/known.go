package rule

import "example.org/posology/units/evidence"

// knownFacts are what was found beside the rules and what nothing here acts on:
// returns after illness, lighter weeks, maps between effort and load, gains. They
// are kept for people who look things up.
var knownFacts = []evidence.Fact{
	{ID: "progression.athletes-ramp", Value: "college athletes after 2 or more weeks off: limits for the first 2 to 4 weeks", Source: "caterisano2019", Basis: evidence.Published},
	{ID: "progression.athletes-ramp-numbers", Value: "volume cut by 50, 30, 20 and 10 % in weeks 1 to 4, at most 3 and 4 sessions in weeks 1 and 2, sets × repetitions × fraction of 1RM within 11 to 30", Source: "caterisano2019", Basis: evidence.FromMemory},
	{ID: "progression.covid", Value: "after covid-19 with symptoms: at least 7 days without symptoms, then at least 14 days at very low effort; for no other illness was such a number found", Source: "salman2021", Basis: evidence.Published},
	{ID: "progression.covid-effort", Value: "phases of at least 7 days at 6 to 8, 6 to 11 and 12 to 14 on the scale from 6 to 20", Source: "salman2021", Via: "later summaries", Basis: evidence.Secondary},
	{ID: "progression.covid-assess", Value: "a severe course, symptoms that last, or signs from the heart are assessed first", Source: "salman2021", Basis: evidence.Published},
	{ID: "progression.no-deload", Value: "nothing was found on planned lighter weeks in older adults: none by default; pain, soreness and stalled repetitions decide", Basis: evidence.Design},
	{ID: "progression.week-off", Value: "a full week off brought no benefit and slightly less strength of the legs", Source: "coleman2024", Basis: evidence.FromMemory},
	{ID: "progression.deload-athletes", Value: "246 competitive strength and physique athletes: 6.4 (SD 1.7) days every 5.6 (2.3) weeks", Source: "rogerson2024", Basis: evidence.Published},
	{ID: "progression.deload-coaches", Value: "18 strength and physique coaches: 5 to 7 days every 4 to 6 weeks", Source: "bell2022", Basis: evidence.Published},

	{ID: "progression.omni-leg-press", Value: "older adults, about 64 years, leg press: mean share of 1RM and SD in % at ratings of 4, 6 and 8 of 10 were 36.84 (11.23), 54.72 (10.56) and 72.58 (12.22) before, 61.08 (14.91), 74.07 (11.14) and 86.56 (8.43) after 12 weeks of training, the same people", Source: "gearhart2009", Locator: "congress abstract", Basis: evidence.Published},
	{ID: "progression.map-drifts", Value: "after 12 weeks of training ratings of 4, 6 and 8 stood for 24.2, 19.4 and 14.0 points more of the 1RM: a fixed map is wrong over time; use ratings to hold an effort, not to infer a load", Basis: evidence.Computed, From: []evidence.FactID{"progression.omni-leg-press"}},
	{ID: "progression.omni-65-percent", Value: "young adults, ratings of 10 after 4 and 12 repetitions at 65 % of 1RM: arm curl 3.6 and 8.2 in the working muscle, 2.4 and 6.7 in the whole body; knee extension 5.1 and 9.6, 4.2 and 7.6: they depend on the repetitions, not on the load alone", Source: "robertson2003", Basis: evidence.Published},
	{ID: "progression.cr10", Value: "a younger group, after 2 repetitions: ratings of 3 to 6 stand for 40 to 70 % of 1RM", Source: "buckley2011", Basis: evidence.Published},
	{ID: "progression.cr10-drift", Value: "the rating rises by 1 in 3 to 4 repetitions from 4 to 6; above 6 after 2 the load is too heavy for 12 to 15", Source: "buckley2011", Basis: evidence.Published},
	{ID: "progression.borg-young-women", Value: "trained young women, mean rating and SD: 11.26 (1.95) at 40 %, 13.94 (1.58) at 57 %, 15.52 (2.05) at 70 % of 1RM", Source: "cotter2017", Basis: evidence.Published},
	{ID: "progression.cardiac-stages", Value: "cardiac rehabilitation, ratings from 6 to 20, shares of 1RM and repetitions: at most 11, 30 % and more, 5 to 10; 12 to 13, 30 to 50 %, 10 to 15; 14 to 15, 40 to 60 %, 8 to 15; 60 to 80 %, 8 to 10; the 15 of the third rating is inferred from a print cut short", Source: "cardiacrehab2021", Locator: "Table 4", Basis: evidence.Published},

	{ID: "progression.mean-gain", Value: "47 trials, 1079 people from 50 years: leg press 29 (2) %, chest press 24 (2) %; of what kind the uncertainty is was not seen", Source: "peterson2010", Locator: abstract, Basis: evidence.Published},
	{ID: "progression.mean-gain-knee-and-pull", Value: "knee extension 33 (3) %, lat pull 25 (2) %; which share belongs to which is from memory in one reading", Source: "peterson2010", Locator: abstract, Basis: evidence.FromMemory},
	{ID: "progression.gain-ranges", Value: "older men and women, gains in kg, mean (SE), least to most: leg press at 12 weeks 33 (2), -36 to 87, at 24 weeks 50 (3), -28 to 145; leg extension at 12 weeks 20 (1), -22 to 56, at 24 weeks 29 (2), -19 to 60; the minus signs of the minima were lost in what was read and put back", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: "progression.gain-everyone", Value: "every participant improved in at least one outcome", Source: "churchwardvenne2015", Basis: evidence.Published},
	{ID: "progression.response-noise", Value: "102 trials, 3784 people: real differences between people in the response could hardly be told from noise: nobody is labelled by them", Source: "steele2026", Locator: "abstract of the preprint", Basis: evidence.Published},
}
