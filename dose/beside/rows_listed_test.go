package beside_test

// listed are the rows that no code rests on, each with the reason.
var listed = map[string]string{
	"bal-01": "the same threshold by the older review; bal-02 is newer and seen in the source", "bal-03": "effect by kind: decides no dose",
	"bal-04": "effect: decides no dose", "bal-05": "superseded by bal-01 and bal-02", "bal-08": "known from memory only",
	"bal-10": "attendance and effect of a trial", "bal-11": "a whole home programme, lifting with it", "bal-12": "effect of the same trial",
	"bal-13": "how a programme was taught: visits and calls", "bal-14": "known from memory only", "bal-15": "who is asked about falls: screening's",
	"bal-16": "effect after the end of programmes", "bal-17": "effect in Parkinson's and cognitive impairment",
	"imp-01": "a lifting dose under supervision: that of the lifts", "imp-02": "a lifting dose under supervision: that of the lifts",
	"imp-03": "effect; said beside each impact item as what impact with heavy lifting did", "imp-04": "known from memory only",
	"imp-05": "effect in men", "imp-08": "no number: frailty asks for support, and then there is no impact", "imp-10": "known from memory only, not to be gated on",
	"imp-13": "the count of imp-06; the effect is from memory", "imp-16": "effect on strength in men", "imp-20": "star and stride jumps are no item here: 5.4 body weights lie above those that are",
	"imp-21": "hardest hopping: no item asks for the hardest", "imp-22": "a step class is no item here", "imp-23": "common figures, no text seen: orders kinds only",
	"imp-24": "not shown after menopause", "imp-27": "ordinary classes: no item here",
	"pow-01": "effect: decides no dose", "pow-02": "effect: decides no dose", "pow-05": "effect of load; pow-03 joins the trials", "pow-06": "2 or 3 days alike: within the row's days",
	"pow-08": "women of 37 to 55; pow-07 is of older people", "pow-09": "weighted vests are not in the kit", "pow-10": "effect of fast ankle work with bands: no item is fast with a band",
	"pow-11": "a test of power, no dose", "pow-12": "a test of power, no dose", "pow-14": "known from memory only",
	"aer-02": "vigorous: no item asks for it", "aer-04": "sitting: no number is given", "aer-05": "where gain begins: no bound; the aim is that of aer-01",
	"aer-08": "cadence above moderate: no item asks for it", "aer-09": "102 at 41 to 60 years: said as about 100 for the older", "aer-10": "steps a day: no item counts them",
	"aer-11": "thresholds of the talk test, in laboratory terms", "aer-12": "marks of a scale that is not used", "aer-14": "sources disagree, no clock is kept", "aer-15": "sources disagree, no clock is kept",
	"aer-16": "weight: no goal here",

	"con-st-01": "of a rehabilitation after a stroke: shares of the reserve of the pulse are not asked for", "con-co-01": "of a programme for the lungs: breathlessness in marks that are not used",
	"con-hr-02": "of a programme for the heart: its minutes begin above the first step here, and go on to within the aim",
	"con-pa-01": "walking to leg pain and again is another kind of bout, and no item; screening says it beside the finding", "con-hf-01": "a lifting dose under supervision: that of the lifts",
	"con-hf-04": "known from memory only", "diz-06": "gaze work: its dose is known from memory only", "ban-08": "a dose of bands, and what it did for the stance",
	"mai-05": "one fast set a week keeps speed: a phase of the lifts", "mai-11": "effect of a programme of once a week", "cha-05": "a whole programme in a group, of one trial",
	"cha-06": "when to leave the chair: rises from it are not among what is known; the first steps have both hands on", "ses-08": "four exercises a day: the choice of few rests on it, no item here",
}
