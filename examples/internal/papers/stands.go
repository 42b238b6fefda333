package papers

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
)

// An order is what is read first, by clinicians and clients, on a route.
type order struct{ lead, client string }

const number = "(112 in Europe, elsewhere the number for emergencies there)"

var orders = map[screening.Route]order{
	screening.Emergency: {"CALL FOR HELP NOW", "Please call the emergency services now " + number + ", unless a doctor has seen you since."},
	screening.SameDay:   {"TO BE SEEN TODAY", "Please see a doctor today, and call the emergency services " + number + " at once if it comes again or gets worse."},
	screening.AskFirst:  {"TO BE LOOKED AT FIRST", "Before you train again somebody has to look at what came up."},
}

// Open returns of what stands against training what nobody has looked at, the gravest first.
func Open(list []record.Stand) []record.Stand {
	list = slices.DeleteFunc(slices.Clone(list), func(s record.Stand) bool { return s.LookedAt.Made() })
	slices.SortStableFunc(list, func(a, b record.Stand) int { return cmp.Compare(b.Route, a.Route) })
	return list
}

// Alarm says to a clinician what stands, where the person is to be sent, and who has looked;
// "" where nothing stands.
func Alarm(list []record.Stand) string {
	open := Open(list)
	switch {
	case len(open) > 0:
		return fmt.Sprintf("%s: %s. Nobody is known to have looked, and nothing goes on.", orders[open[0].Route].lead, What(open))
	case len(list) > 0:
		return fmt.Sprintf("Looked at by %s, on %s: %s. Nothing goes on until an assessment has followed.", list[0].LookedAt.Who, page.Day(list[0].LookedAt.Day), What(list))
	}
	return ""
}

// toClient says the same to the client.
func toClient(list []record.Stand) []string {
	open := Open(list)
	if len(open) == 0 {
		return nil
	}
	return []string{fmt.Sprintf("%s It is about %s: as far as we know nobody has looked yet. No exercise until somebody has.", orders[open[0].Route].client, page.Day(open[0].Day))}
}

// What says what stands, and since when.
func What(list []record.Stand) string {
	var texts []string
	for _, s := range list {
		slices.SortStableFunc(s.Findings, func(a, b screening.Finding) int { return cmp.Compare(b.Route, a.Route) })
		names := []string{s.Told.String()}
		if s.Told == 0 {
			names = nil
			for _, f := range s.Findings {
				if term, ok := screening.LookUp(f.Code); ok && f.Route > screening.Tell {
					names = append(names, term.Meaning)
				}
			}
		}
		if len(names) == 0 {
			names = []string{"what came up in training"}
		}
		texts = append(texts, strings.Join(names, "; ")+", on "+page.Day(s.Day))
	}
	return strings.Join(texts, "; ")
}
