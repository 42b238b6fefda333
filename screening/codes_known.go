package screening

// A listedDisease is a code of another list that names a disease of the preparticipation
// rule.
type listedDisease struct {
	diseases []Code // which a clearance may name in its place
	memory   bool   // that the rule counts it is from memory: it may forbid, and is not the rule's own answer
}

// Diseases that codes of other lists name.
var (
	ofHeart    = listedDisease{diseases: []Code{"cardiac"}}
	ofVessels  = listedDisease{diseases: []Code{"cerebrovascular"}}
	ofEither   = listedDisease{diseases: []Code{"cardiac", "cerebrovascular"}}
	ofDiabetes = listedDisease{diseases: diabetesCodes}
	ofKidneys  = listedDisease{diseases: append([]Code{"renal"}, diabetesCodes...)}
	recalled   = listedDisease{diseases: []Code{"cardiac"}, memory: true}
)

// knownDiseases are by code. Whoever has one has the disease, whichever list it
// was told in.
var knownDiseases = map[Code]listedDisease{
	heartFailure: ofHeart, "decompensated_hf": ofHeart, "heart_failure_nyha_iv": ofHeart,
	recentHeartAttack: ofHeart, "acute_mi": ofHeart, "unstable_chd": ofHeart, "left_main_disease_untreated": ofHeart,
	"severe_valve_disease": ofHeart, "severe_symptomatic_aortic_stenosis": ofHeart,
	"acute_myocarditis": ofHeart, "acute_endocarditis": ofHeart, "acute_pericarditis": ofHeart,
	"uncontrolled_arrhythmia": ofHeart, "new_atrial_fibrillation": ofHeart,

	"recent_intracranial_bleed": ofVessels, afterAttackOrStroke: ofEither,

	anyDiabetes: ofDiabetes, "nephropathy": ofKidneys,
	"npdr_moderate_or_worse": ofDiabetes, "diabetic_retinopathy_severe": ofDiabetes, retinopathyHigh: ofDiabetes,

	"exertional_angina": recalled, "pacemaker": recalled, "icd": recalled,
	"aortic_or_cerebral_aneurysm": {diseases: []Code{"cardiac", "cerebrovascular", "peripheral_vascular"}, memory: true},
}

const anyDiabetes Code = "diabetes"

// diabetesSigns are consequences of diabetes alone: who has one has diabetes.
var diabetesSigns = []Code{"nephropathy", "npdr_moderate_or_worse", "diabetic_retinopathy_severe", retinopathyHigh}

// diabetesTold are the codes by which diabetes may have been told.
var diabetesTold = append(diabetesCodes[:len(diabetesCodes):len(diabetesCodes)], diabetesSigns...)
