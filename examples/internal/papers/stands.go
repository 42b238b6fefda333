package papers

import (
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
	"example.org/posology/units"
)

// Alarm says to a clinician what stands against training and what to do now; "" where
// nothing stands.
func Alarm(list []record.Stand) string {
	words, err := record.Words()
	if err != nil {
		return err.Error()
	}
	var texts []string
	for _, s := range list {
		text := words.Clinician(s.Reasons[0])
		for _, day := range []units.Day{s.Day, max(s.Day, s.LookedAt.Day)} {
			text = strings.ReplaceAll(text, day.String(), page.Day(day))
		}
		texts = append(texts, text)
	}
	return strings.Join(texts, " ")
}
