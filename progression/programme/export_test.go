package programme

// Exits and the last criterion, and what is remembered of keeping strength.
const (
	ToBuild       = toBuild
	ToPower       = toPower
	ToMaintain    = toMaintain
	ToDischarge   = toDischarge
	CriterionGoal = criterionGoal
)

var Maintenances = maintenances
