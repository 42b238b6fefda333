package rule

// A name that only tests ask for.
const (
	NameSetToSetPercent = nameSetToSetPercent
)
