package main

import (
	"bytes"
	"database/sql"
	"fmt"
	"iter"
	"os"
	"reflect"
	"regexp"
	"slices"

	"example.org/posology/dose"
	"example.org/posology/dose/beside"
	"example.org/posology/dose/choice"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/exercise"
	"example.org/posology/dose/guideline"
	"example.org/posology/dose/onerm"
	"example.org/posology/dose/onerm/published"
	"example.org/posology/dose/rota"
	"example.org/posology/dose/volume"
	"example.org/posology/progression"
	"example.org/posology/progression/programme"
	"example.org/posology/progression/protocol"
	"example.org/posology/progression/rule"
	"example.org/posology/progression/track"
	"example.org/posology/progression/visit"
	"example.org/posology/screening"
	"example.org/posology/screening/function"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/evidence"
)

// enumerations stores every value of every enumeration, "not given" too, and reads
// them back. Those that the recorded API lists are all here.
func (s store) enumerations() error {
	if err := s.exec(`CREATE TABLE codes (code INTEGER)`); err != nil {
		return err
	}
	done := map[string]int{}
	for _, some := range []error{
		each(s, done, beside.Holdings()),
		each(s, done, beside.ItemKinds()),
		each(s, done, beside.Troubles()),
		each(s, done, choice.Concerns()),
		each(s, done, choice.TaskTrials()),
		each(s, done, choice.Tasks()),
		each(s, done, dose.Flags()),
		each(s, done, dose.Modes()),
		each(s, done, dose.Phases()),
		each(s, done, equipment.PartKinds()),
		each(s, done, exercise.Implements()),
		each(s, done, exercise.DoseUnits()),
		each(s, done, exercise.Patterns()),
		each(s, done, exercise.Roles()),
		each(s, done, exercise.Things()),
		each(s, done, guideline.Conditions()),
		each(s, done, guideline.EffectUnits()),
		each(s, done, guideline.Fields()),
		each(s, done, guideline.Goals()),
		each(s, done, guideline.Verdicts()),
		each(s, done, published.Charts()),
		each(s, done, onerm.Forms()),
		each(s, done, onerm.Formulas()),
		each(s, done, onerm.Grades()),
		each(s, done, published.Regressions()),
		each(s, done, rota.Proofs()),
		each(s, done, volume.Conventions()),
		each(s, done, volume.TallyKinds()),
		each(s, done, progression.Actions()),
		each(s, done, progression.Changes()),
		each(s, done, programme.Criteria()),
		each(s, done, programme.CriterionStates()),
		each(s, done, programme.Exits()),
		each(s, done, programme.HappeningKinds()),
		each(s, done, programme.Standings()),
		each(s, done, protocol.Schemes()),
		each(s, done, rule.LoadAdvices()),
		each(s, done, rule.Names()),
		each(s, done, track.TrendKinds()),
		each(s, done, visit.EveryGate()),
		each(s, done, screening.EveryMeans()),
		each(s, done, screening.EveryStrictness()),
		each(s, done, screening.Lifters()),
		each(s, done, screening.ListChoices()),
		each(s, done, screening.Answers()),
		each(s, done, screening.Branches()),
		each(s, done, screening.DayPlans()),
		each(s, done, screening.EveryKetones()),
		each(s, done, screening.EveryMeanwhile()),
		each(s, done, screening.Intensities()),
		each(s, done, screening.Kinds()),
		each(s, done, screening.ContraindicationLevels()),
		each(s, done, screening.Needs()),
		each(s, done, screening.PainKinds()),
		each(s, done, screening.PainZones()),
		each(s, done, screening.Postures()),
		each(s, done, screening.Referrals()),
		each(s, done, screening.Routes()),
		each(s, done, screening.Settings()),
		each(s, done, screening.StopActions()),
		each(s, done, screening.Trends()),
		each(s, done, screening.Variants()),
		each(s, done, function.BatteryBands()),
		each(s, done, function.EveryShown()),
		each(s, done, function.Hands()),
		each(s, done, function.EveryHowDone()),
		each(s, done, function.Measures()),
		each(s, done, function.Positions()),
		each(s, done, function.Tests()),
		each(s, done, function.Units()),
		each(s, done, interview.ReplyForms()),
		each(s, done, units.Scales()),
		each(s, done, body.EveryDemand()),
		each(s, done, body.EveryStated()),
		each(s, done, body.Holds()),
		each(s, done, body.Muscles()),
		each(s, done, body.Regions()),
		each(s, done, body.Sexes()),
		each(s, done, body.Sides()),
		each(s, done, body.Trainings()),
		each(s, done, evidence.Bases()),
	} {
		if some != nil {
			return some
		}
	}
	if err := complete(done); err != nil {
		return err
	}
	values := 0
	for _, n := range done {
		values += n
	}
	fmt.Printf("listed: %d enumerations, %d values\n", len(done), values)
	return nil
}

// each stores the values of one enumeration, and first its zero value.
func each[E comparable, P interface {
	*E
	sql.Scanner
}](s store, done map[string]int, all iter.Seq[E]) error {
	var zero E
	of := reflect.TypeFor[E]()
	name := of.PkgPath() + "." + of.Name()
	for _, v := range append([]E{zero}, slices.Collect(all)...) {
		done[name]++
		if err := s.exec(`DELETE FROM codes`); err != nil {
			return err
		}
		if err := s.exec(`INSERT INTO codes VALUES (?)`, v); err != nil {
			return err
		}
		var back E
		var kind string
		if err := s.db.QueryRowContext(s.ctx, `SELECT code, typeof(code) FROM codes`).Scan(P(&back), &kind); err != nil {
			return fmt.Errorf("%s, %v: %w", name, v, err)
		}
		if back != v || kind != "text" && (kind != "null" || v != zero) {
			return fmt.Errorf("%s: %v comes back as %v, stored as %s", name, v, back, kind)
		}
	}
	if done[name] < 2 {
		return fmt.Errorf("%s has no values", name)
	}
	return nil
}

// complete compares what was stored with the enumerations of the recorded API:
// types with a text that a function yields.
func complete(done map[string]int) error {
	api, err := os.ReadFile("../api.txt")
	if err != nil {
		return err
	}
	for _, m := range regexp.MustCompile(`(?m)^(\S+): func \w+\(\) iter\.Seq\[(\w+)\]$`).FindAllSubmatch(api, -1) {
		text := fmt.Appendf(nil, "\n%s: method (%s) MarshalText(", m[1], m[2])
		if name := fmt.Sprintf("example.org/posology/%s.%s", m[1], m[2]); bytes.Contains(api, text) && done[name] == 0 {
			return fmt.Errorf("%s is an enumeration that is not listed here", name)
		}
	}
	return nil
}
