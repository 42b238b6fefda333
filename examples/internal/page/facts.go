package page

import (
	"fmt"

	"example.org/posology/progression/record"
	"example.org/posology/progression/track"
	"example.org/posology/units/evidence"
)

// Facts lists every fact that a reason names, once, with how it is known, and
// then the sources.
func (p *Paper) Facts(reasons []evidence.Reason) error {
	doses, err := record.Ledger()
	if err != nil {
		return err
	}
	ledger, err := evidence.NewLedger(doses.All(), track.Facts())
	if err != nil {
		return err
	}
	used := map[evidence.FactID]bool{}
	for _, reason := range reasons {
		for _, id := range reason.Facts {
			used[id] = true
		}
	}
	cited := map[evidence.SourceID]bool{}
	p.Heading("Facts behind it, and how each is known")
	for f := range ledger.All() {
		if used[f.ID] {
			p.Say("- ", describe(f, ledger))
			cited[f.Source] = true
		}
	}
	p.Heading("Sources")
	for s := range evidence.Sources() {
		if cited[s.ID] {
			p.Say("- ", fmt.Sprintf("%s: %s", s.ID, s.Citation))
		}
	}
	return nil
}

func describe(f evidence.Fact, ledger *evidence.Ledger) string {
	basis := f.Basis.String()
	if weakest, err := ledger.Basis(f.ID); err == nil && weakest != f.Basis {
		basis += ", resting on " + weakest.String()
	}
	text := fmt.Sprintf("%s: %s (%s", f.ID, f.Value, basis)
	if f.Source != "" {
		text += "; " + string(f.Source)
	}
	if f.Via != "" {
		text += "; via " + f.Via
	}
	return text + ")"
}
