package dose

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.org/posology/dose/guideline"
	"example.org/posology/dose/internal/given"
	"example.org/posology/screening"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

var (
	figure  = regexp.MustCompile(`[0-9]+(\.[0-9]+)?`)
	figures = map[string]float64{"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "eight": 8, "twelve": 12}
)

// numbersIn lists the numbers of a text, those written out too but for one, which
// is more often a pronoun.
func numbersIn(text string) []float64 {
	var list []float64
	for word := range strings.FieldsFuncSeq(text, func(r rune) bool { return strings.ContainsRune(" ,;:", r) }) {
		if n, ok := figures[strings.ToLower(word)]; ok {
			list = append(list, n)
		} else if digits := figure.FindString(word); digits != "" && digits == word {
			n, _ := strconv.ParseFloat(digits, 64)
			list = append(list, n)
		}
	}
	return list
}

// weeksOf is how days are printed.
func weeksOf(days int) float64 { return float64(days) / 7 }

// TestFactsFollowConstants holds that the numbers in the text of each fact are
// those that the code goes by, so that neither changes without the other. The
// numbers are this module's own, or stand beside it with their source.
func TestFactsFollowConstants(t *testing.T) {
	ends := func(r interface {
		Min() (int, bool)
		Max() (int, bool)
	}) []float64 {
		low, _ := r.Min()
		high, _ := r.Max()
		return []float64{float64(low), float64(high)}
	}
	want := map[evidence.FactID][]float64{
		factOlder:       {float64(given.Older)},
		factStart:       {float64(given.Older)},
		factAims:        {float64(given.Older)},
		factYoung:       {float64(given.Older)},
		factRest:        ends(usualRest),
		factDays:        ends(usualDays),
		factReserve:     {float64(startReserve[body.Novice]), float64(startReserve[body.Intermediate]), float64(startReserve[body.Advanced])},
		factUncountable: {float64(uncountable)},
		// The last two are what the published band says.
		factIntensity:    {float64(intensityReserve[screening.Moderate]), float64(intensityReserve[screening.Light]), 1, 3},
		factSteps:        {findingSteps, smallSteps, float64(smallStep) * 100},
		factShareDone:    {aboutTen, float64(reserveError), float64(uncountable - reserveError)},
		factUnknownShare: {leastFirstMass.Kilograms()},
		factTempo:        {tempo.Lowering, tempo.Lifting},
		factFast:         {fastTempo.Lifting, fastTempo.Lowering},
		factMaintain:     {maintainDays, maintainSets, maintainMostSets},
		factHeld:         ends(heldOrWalked),
		factPace:         {walkingPace},
		factMostMissed:   {MostMissed},
		factFirstSeen:    {firstSeen},
		factBreath:       {float64(breathReserve), longSet, float64(uncountable)},
		factWorks:        {fewestSparing, soonGained * 100, 6},
		factSold:         soldKg(),
		factFarAlone:     {float64(farStep) * 100},
		factSparing:      {fewestSparing, float64(mostSparing) * 100, weeksOf(seenDays), float64(mostSparing) * 100},
		factFeel:         {weeksOf(seenDays), fewestSparing, float64(nearlyAll) * 100},
		factFew:          {leastAtLightest, 100 * float64(mostForFew), leastAtLightest + 1},
		factEnds:         {float64(topOf(workable)), mostBridged},
		// Published, and what the constants above rest on: they stay as they were read.
		factReserveBand: {1, 3, 15, 18, 6, 20},
		factPressure:    {13, 4, 20},
		factBrief:       {briefSeconds, briefRest},
		factBandUneven:  {80, 2, 5.1},
		factBandPrinted: {5, 8},
		factBandReps:    {15},
		factHackett:     {float64(reserveError), 0, float64(uncountable), 2, 7, 10},
	}
	for f := range Facts() {
		if got := numbersIn(f.Value); !slices.Equal(got, want[f.ID]) {
			t.Errorf("%s: %v in %q, want %v", f.ID, got, f.Value, want[f.ID])
		}
	}
}

func soldKg() (list []float64) {
	for _, tenths := range sold {
		list = append(list, float64(tenths)/10)
	}
	return list
}

// TestChoicesHaveFacts holds that the choice of rows prints every entry of the
// tables that the code uses.
func TestChoicesHaveFacts(t *testing.T) {
	text := map[evidence.FactID]string{}
	for f := range Facts() {
		text[f.ID] = f.Value
	}
	if !strings.Contains(text[factStart], string(startRow)) {
		t.Errorf("%q does not name %s", text[factStart], startRow)
	}
	for goal, row := range aims {
		if !strings.Contains(text[factAims], goal.String()+" to "+string(row)) {
			t.Errorf("%q does not lead from %s to %s", text[factAims], goal, row)
		}
	}
	for status, row := range youngRows {
		if !strings.Contains(text[factYoung], status.String()+" "+string(row)) {
			t.Errorf("%q does not lead from %s to %s", text[factYoung], status, row)
		}
	}
}

// TestReasonsNameTheChoice holds that a reason that rests on the choice of a row
// names it, below and from the age at which rows for older adults begin.
func TestReasonsNameTheChoice(t *testing.T) {
	for _, tt := range []struct {
		age      body.Age
		training body.Training
		want     []evidence.FactID
	}{
		{given.Older - 1, body.Novice, []evidence.FactID{factOlder, factYoung}},
		{given.Older, body.Novice, []evidence.FactID{factOlder, factStart}},
		{given.Older, body.Advanced, []evidence.FactID{factOlder, factAims}},
	} {
		var r Request
		r.Goal = guideline.Strength
		r.Screening.Who.Age, r.Screening.Who.Training = tt.age, tt.training
		var g guide
		g.fill(&r, fewReasons)
		i := slices.IndexFunc(g.Reasons, func(why evidence.Reason) bool { return why.Code == "dose.guideline-assumed" })
		if i < 0 || !slices.Equal(g.Reasons[i].Facts, tt.want) {
			t.Errorf("%d years, %s: %v, want %v", tt.age, tt.training, g.Reasons, tt.want)
		}
	}
}

// TestRowsAreThere holds that every row that this package goes to by name is one of
// the guideline's: rowOf says so without an error.
func TestRowsAreThere(t *testing.T) {
	ids := []guideline.ID{startRow, nscaStart}
	for goal := range guideline.Goals() {
		ids = append(ids, aims[goal])
	}
	for training := range body.Trainings() {
		ids = append(ids, youngRows[training])
	}
	for _, id := range ids {
		if row := rowOf(id); row == nil || row.ID != id {
			t.Errorf("no row %q", id)
		}
	}
}
