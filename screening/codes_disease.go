package screening

import "example.org/posology/units/evidence"

// figureVia is where the preparticipation rule was read.
const figureVia = "exam-revision notes and a study question that print the figure's boxes"

func diseaseFrom(says string) provenance {
	return provenance{says: says, source: "riebe2015", via: figureVia, basis: evidence.Secondary}
}

// diseaseEntries are the known diseases of the preparticipation rule. What follows
// from them alone is told by its branch; the effect here is of the code itself.
var diseaseEntries = []entry{
	{code: "cardiac", kind: Disease, meaning: "known heart disease", from: diseaseFrom("heart disease counts as known disease"), effect: tell},
	{code: "peripheral_vascular", kind: Disease, meaning: "known disease of the arteries of the limbs", from: diseaseFrom("peripheral vascular disease counts as known disease"), effect: tell},
	{code: "cerebrovascular", kind: Disease, meaning: "known disease of the vessels of the brain", from: diseaseFrom("cerebrovascular disease counts as known disease"), effect: tell},
	{code: "diabetes_t1", kind: Disease, meaning: "type 1 diabetes", from: diseaseFrom("type 1 diabetes counts as known disease"),
		effect: askLight, released: &tell, level: Relative, as: "diabetes", dropped: true, also: []evidence.FactID{successorFact}},
	{code: "diabetes_t2", kind: Disease, meaning: "type 2 diabetes", from: diseaseFrom("type 2 diabetes counts as known disease"),
		effect: askLight, released: &tell, level: Relative, as: "diabetes", dropped: true, also: []evidence.FactID{successorFact}},
	{code: "renal", kind: Disease, meaning: "known kidney disease", from: diseaseFrom("renal disease counts as known disease"), effect: tell},
}
