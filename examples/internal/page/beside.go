package page

import (
	"fmt"
	"slices"
	"strings"

	"example.org/posology/dose/beside"
	"example.org/posology/units/evidence"
)

// besideHeads are what the kinds of work beside lifting are called on a page.
var besideHeads = map[beside.ItemKind]string{
	beside.Balance: "Balance", beside.Aerobic: "Moving about", beside.Impact: "For your bones", beside.Power: "Fast on the way up",
}

// ClientBeside prints what a client does beside lifting, kind by kind: what goes for all
// items of a kind once, before them; then each.
func (p *Paper) ClientBeside(items []beside.Item, barred []beside.Barred) {
	for kind := range beside.ItemKinds() {
		of := ofKind(items, kind)
		if len(of) == 0 {
			continue
		}
		p.Heading(besideHeads[kind])
		var shared []string
		if len(of) > 1 {
			shared = inAll(of, func(i beside.Item) []string { return p.ClientTexts(i.Reasons) }, slices.Contains)
			p.Each("- ", shared)
			p.Line("")
		}
		for _, item := range of {
			p.Line("%s", strings.ToUpper(item.Name))
			p.Each("   ", p.ClientTexts(item.Reasons), shared...)
			p.Line("")
		}
	}
	for _, b := range barred {
		p.Clients("- ", append(slices.Clone(b.Reasons), b.Free...))
	}
}

// ClinicianBeside prints the same for the file, with reasons and facts, and what is not begun.
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

func ofKind(items []beside.Item, kind beside.ItemKind) []beside.Item {
	return slices.DeleteFunc(slices.Clone(items), func(i beside.Item) bool { return i.Kind != kind })
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
