package function

// Figure is the kind of statistics that describe people.
const Figure = figure

// Kind is what s is used for.
func (s Statistic) Kind() statisticKind { return s.kind() }
