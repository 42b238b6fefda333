package papers

import (
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/progression/record"
)

// Alarms says to a clinician what stands against training and what to do now; "" where
// nothing stands.
func Alarms(list []record.Alarm) string {
	words, err := record.Words()
	if err != nil {
		return err.Error()
	}
	var texts []string
	for _, s := range list {
		texts = append(texts, page.Dated(words.Clinician(s.Reasons[0])))
	}
	if len(list) > 0 && list[0].Open {
		texts = append(texts, "Nobody is known to have looked, and nothing goes on.")
	}
	return strings.Join(texts, " ")
}
