package function

import (
	"fmt"
	"iter"
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
	"example.org/posology/units/field"
)

// BatteryBand is a band of the total of the battery, rising: "very low" is 0 to 3 points,
// "low" 4 to 6, "moderate" 7 to 9 and "high" 10 to 12.
type BatteryBand uint8

// Bands, rising.
const (
	_            BatteryBand = iota // not given or not scored
	bandVeryLow                     // "very low": 0 to 3 points
	bandLow                         // "low": 4 to 6 points
	bandModerate                    // "moderate": 7 to 9 points
	bandHigh                        // "high": 10 to 12 points
)

var bandTexts = field.NewVocabulary[BatteryBand]("band", "", "very low", "low", "moderate", "high")

// BatteryBands yields every band.
func BatteryBands() iter.Seq[BatteryBand] { return bandTexts.All() }

// String returns the band's name, such as "moderate".
func (b BatteryBand) String() string { return bandTexts.Text(b) }

// MarshalText writes what String returns.
func (b BatteryBand) MarshalText() ([]byte, error) { return bandTexts.Marshal(b) }

// UnmarshalText reads what MarshalText writes.
func (b *BatteryBand) UnmarshalText(text []byte) error { return bandTexts.Unmarshal(text, b) }

// Stand is one of the standing positions of the battery. The zero value is "not
// tried".
type Stand struct {
	How  HowDone `json:"how,omitzero"`
	Time Amount  `json:"time,omitzero"` // held, in seconds; needed if done
}

// check returns nil if it is told how s went, and for how long where it was held.
func (s Stand) check() error {
	r := Result{Test: FourStageBalance, How: s.How, Value: s.Time}
	var bad field.Errors
	bad.Add("/how", r.checkHow())
	bad.Add("/time", r.checkValue())
	return bad.Err()
}

// Battery holds the parts of the short physical performance battery (Guralnik
// 1994). Stands are tried in order: one that was tried after another was not
// held for 10 s may be left out.
type Battery struct {
	Day        units.Day `json:"day,omitzero"`
	SideBySide Stand     `json:"side_by_side"`
	SemiTandem Stand     `json:"semi_tandem,omitzero"`
	Tandem     Stand     `json:"tandem,omitzero"`
	// Walk is a walk over 4 m, 3 m or 8 ft in seconds; each course has limits
	// of its own, and none serves for another.
	Walk   Result `json:"walk"`
	Stands Result `json:"stands"` // five sit-to-stands
}

// walkLimits names the limits of each course. They must never be swapped: see
// the fact function.trap.course.
var walkLimits = map[Test]Measure{Walk4m: batteryWalk4m, Walk3m: batteryWalk3m, Walk8ft: batteryWalk8ft}

// Validate returns every bad field of b at once. A walk given as a speed is a
// [field.ErrConflict], since the limits are times; so is a part of another day.
func (b Battery) Validate() error {
	var bad field.Errors
	if b.Day != 0 {
		bad.Add("/day", b.Day.Check())
	}
	b.checkStands(&bad)
	b.checkPart(&bad, "/walk", b.Walk, Walk4m, Walk3m, Walk8ft)
	if u := b.Walk.Value.unit; u == MetresPerSecond {
		bad.Add("/walk/value", field.Bad(b.Walk.Value, "a time in s, as the limits are", field.ErrConflict))
	}
	b.checkPart(&bad, "/stands", b.Stands, FiveSitToStands)
	return bad.Err()
}

// checkStands asks for each stand unless the one before was not held.
func (b Battery) checkStands(bad *field.Errors) {
	needed := true
	for _, s := range b.balance() {
		if s.stand == (Stand{}) && !needed {
			continue
		}
		bad.Add(s.path, s.stand.check())
		full, _ := points(s.measure, s.stand.Time)
		needed = s.stand.How == Done && full > 0
	}
}

func (b Battery) checkPart(bad *field.Errors, path string, r Result, tests ...Test) {
	bad.Add(path, r.Validate())
	if r.Test.check() == nil && !slices.Contains(tests, r.Test) {
		bad.Add(path+"/test", field.Bad(r.Test, fmt.Sprint(tests), field.ErrConflict))
	}
	bad.Refuse(r.Day != 0 && r.Day != b.Day, path+"/day", r.Day, "the day of the battery", field.ErrConflict)
}

// A position is one of the standing positions with its limits.
type position struct {
	path    string
	measure Measure
	stand   Stand
}

func (b Battery) balance() [3]position {
	return [3]position{
		{"/side_by_side", batterySideBySide, b.SideBySide},
		{"/semi_tandem", batterySemiTandem, b.SemiTandem},
		{"/tandem", batteryTandem, b.Tandem},
	}
}

// A BatteryScore is what a battery counts for. A part that is not scored leaves
// the total not scored too; the reasons say which and why.
type BatteryScore struct {
	Day     units.Day         `json:"day,omitzero"`
	Balance Amount            `json:"balance,omitzero"` // 0 to 4 points
	Walk    Amount            `json:"walk,omitzero"`    // 0 to 4 points
	Stands  Amount            `json:"stands,omitzero"`  // 0 to 4 points
	Total   Amount            `json:"total,omitzero"`   // 0 to 12 points
	Band    BatteryBand       `json:"band,omitzero"`    // of the total
	Course  Test              `json:"course"`           // of the walk
	Reasons []evidence.Reason `json:"reasons"`
}

// Score returns the points of each part and the total, or the errors of
// Validate. Unable scores 0; a tandem stand that was refused or not tried scores
// 0, as the source has it. No source says what arms used, a refusal or a stop
// score elsewhere: they are not scored. A time between two printed limits takes
// the lower score.
func (b Battery) Score() (BatteryScore, error) {
	if err := b.Validate(); err != nil {
		return BatteryScore{}, err
	}
	s := BatteryScore{Day: b.Day, Course: b.Walk.Test}
	s.Balance = nought
	for _, p := range b.balance() {
		s.Balance = sum(s.Balance, s.part(p.measure, p.stand.How, p.stand.Time))
	}
	s.Walk = s.part(walkLimits[b.Walk.Test], b.Walk.How, b.Walk.Value)
	s.Stands = s.part(batteryStands, b.Stands.How, b.Stands.Value)
	s.Total = sum(sum(s.Balance, s.Walk), s.Stands)
	if s.Total.IsZero() {
		return s, nil
	}
	var fact evidence.FactID
	s.Band, fact = band(s.Total)
	s.Reasons = append(s.Reasons, evidence.Because("function.battery.total", fact).With(s.Total.arg("value"), evidence.Term("band", s.Band.String())))
	return s, nil
}

var nought = Amount{0, Points}

// sum adds points; what is not scored leaves the sum not scored.
func sum(a, b Amount) Amount {
	if a.IsZero() || b.IsZero() {
		return Amount{}
	}
	return a.plus(b)
}

// part returns the points of one part and adds the reason for them.
func (s *BatteryScore) part(m Measure, how HowDone, value Amount) Amount {
	tell := func(code evidence.ReasonCode, facts ...evidence.FactID) {
		s.Reasons = append(s.Reasons, evidence.Because(code, facts...).With(evidence.Term("part", m.String()), evidence.Term("how", how.String())))
	}
	switch {
	case how == Done:
		n, facts := points(m, value)
		if m == batteryWalk4m || m == batteryWalk3m {
			facts = append(facts, factCourseTrap)
		}
		got := Amount{int64(n) * perUnit, Points}
		s.Reasons = append(s.Reasons, evidence.Because("function.battery.part", facts...).With(evidence.Term("part", m.String()), value.arg("value"), got.arg("points")))
		return got
	case how == 0:
		tell(codePartNotTried, untriedFact(m))
	case how == Unable:
		tell("function.battery.unable", unableFact(m))
	case how == Refused && m == batteryTandem:
		tell(codePartNotTried, factNotTried)
	default:
		tell("function.battery.not-scored", factNotScored)
		return Amount{}
	}
	return nought
}

// unableFact names the fact by which unable scores 0 in a part.
func unableFact(m Measure) evidence.FactID {
	switch m {
	case batteryWalk4m, batteryWalk3m, batteryWalk8ft:
		return factUnableWalk
	case batteryStands:
		return factUnableStands
	}
	return untriedFact(m)
}

// untriedFact names the fact by which a stand not tried scores 0.
func untriedFact(m Measure) evidence.FactID {
	if m == batteryTandem {
		return factNotTried
	}
	return factNotHeld
}

// points returns the points of a time by the limits of m, and the facts of the
// limits that decided. Limits come in falling order of points.
func points(m Measure, a Amount) (int, []evidence.FactID) {
	longer := m == batterySideBySide || m == batterySemiTandem || m == batteryTandem
	for _, n := range limits[m] {
		if n.holds(a) && (longer || statistics[n.Statistic].bound != atLeast) {
			return n.points(), []evidence.FactID{n.Fact}
		}
	}
	last := limits[m][len(limits[m])-1]
	if longer {
		return 0, []evidence.FactID{last.Fact}
	}
	for _, n := range limits[m] {
		if n.points() == 1 {
			last = n
		}
	}
	facts := []evidence.FactID{last.Fact}
	if !last.holds(a) || last.points() != 1 {
		facts = append(facts, factBetween)
	}
	return 1, facts
}

func (n Norm) points() int { return statistics[n.Statistic].points }

// limits are the norms that turn parts of the battery into points, and the
// floors of the bands of its total.
var limits = scoreLimits()

func scoreLimits() map[Measure][]Norm {
	all := map[Measure][]Norm{}
	for n := range Norms() {
		if k := n.Statistic.kind(); k == scoreLimit || k == bandFloor {
			all[n.Measure] = append(all[n.Measure], n)
		}
	}
	return all
}

// band returns the band of a total, and its fact.
func band(total Amount) (BatteryBand, evidence.FactID) {
	for _, n := range limits[batteryTotal] {
		if n.holds(total) {
			return BatteryBand(n.points()), n.Fact
		}
	}
	return 0, ""
}

// Result returns the total as a result, with the course of the walk as its
// protocol, so that totals over two courses are not compared; false if the
// total is not scored.
func (s BatteryScore) Result() (Result, bool) {
	if s.Total.IsZero() {
		return Result{}, false
	}
	return Result{Test: PhysicalPerformance, Day: s.Day, How: Done, Value: s.Total, Protocol: s.Course.String()}, true
}
