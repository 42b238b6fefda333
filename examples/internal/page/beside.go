package page

import (
	"fmt"
	"slices"

	"example.org/posology/dose/beside"
	"example.org/posology/units/evidence"
)

// ClinicianBeside prints for the file what is done beside lifting, with reasons and facts, and what is not begun.
func (p *Paper) ClinicianBeside(items []beside.Item, barred []beside.Barred) {
	var said []evidence.Reason
	for _, item := range items {
		p.Line("%s: %s", item.Kind, item.Name)
		p.Clinicians("- ", Only(item.Reasons, said))
		said = append(said, item.Reasons...)
	}
	for _, b := range barred {
		p.Line("%s, not begun: %s", b.Kind, b.Track)
		p.Clinicians("- ", append(slices.Clone(b.Reasons), b.Free...))
	}
}

// BesideText says one item in a few words.
func BesideText(i beside.Item) string {
	switch {
	case i.Paused:
		return i.Name + ": paused"
	case i.Kind == beside.Balance:
		return fmt.Sprintf("%s, %d minutes", i.Name, i.Minutes)
	case i.Kind == beside.Aerobic && i.Brisk > 0:
		return fmt.Sprintf("%d x %d minutes of walking, %d brisk", i.Sets, i.Minutes, i.Brisk)
	case i.Kind == beside.Aerobic:
		return fmt.Sprintf("%d x %d minutes of easy walking", i.Sets, i.Minutes)
	case i.Kind == beside.Impact:
		return fmt.Sprintf("%d %s", i.Sets*i.Count, i.Name)
	}
	return i.Name
}
