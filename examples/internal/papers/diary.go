package papers

import (
	"fmt"
	"slices"
	"strconv"

	"example.org/posology/dose"
	"example.org/posology/dose/exercise"
	"example.org/posology/examples/internal/document"
	"example.org/posology/examples/internal/page"
	"example.org/posology/units/body"
)

// The columns of a diary that is typed in, and the rows that are no set.
const (
	typedColumns = "day,row,weight,done,more"
	noPain       = "no pain"
	painDuring   = "pain"
	painMorning  = "next morning"
)

// A diaryRow is one set on one side.
type diaryRow struct {
	item dose.Prescription
	side body.Side
	set  int
}

// diaryRows lists the sets of a day in the order of the sheet: both sides of a set
// below each other.
func diaryRows(items []dose.Prescription) []diaryRow {
	var rows []diaryRow
	for _, item := range items {
		sides := []body.Side{item.Side}
		if item.OneSided && item.Side == body.Both {
			sides = []body.Side{body.Left, body.Right}
		}
		for set := range item.Sets {
			for _, side := range sides {
				rows = append(rows, diaryRow{item, side, set + 1})
			}
		}
	}
	return rows
}

const (
	none  = "–"
	ofTen = "/10" // behind how hard it was to hold or carry
	blank = "____________________"
)

// Diary returns a sheet for one day, to be filled in by hand. [Visit.ReadDiary] reads
// what is typed in from it.
func (v Visit) Diary() document.Document {
	d := document.Document{Title: "Diary of one day of training", Under: page.Under(v.day, v.note)[1:], Large: true}
	d.Say("Name: "+v.client, "Day: "+blank)
	d.Section("How to fill it in")
	d.Points("One line is one set. Write what you really did; fewer is fine.",
		"Weight: only if it was another one than asked. Of two weights, what one of them weighs.",
		"More: how many more you could have done. 6 stands for more than 5. Where it says /10: how hard it was, from 0 to 10.",
		"Stop, and write it down below, if something hurts or feels wrong. Chest pain, faintness or sudden breathlessness: stop and call for help.")
	d.Section("Your sets")
	t := document.Table{Head: []string{"Row, exercise", "Asked", "Weight", "Done", "More"}}
	for i, r := range diaryRows(v.items) {
		name := fmt.Sprintf("%d. %s, set %d", i+1, upper(r.item.Name), r.set)
		if r.side != body.Both {
			name += ", " + r.side.String()
		}
		weight, more := none, ""
		asked := strconv.Itoa(r.item.Count)
		if r.item.Measure != exercise.Repetitions {
			asked, more = asked+" "+r.item.Measure.String(), "__"+ofTen
		}
		if r.item.Mode != dose.WithoutLoad {
			weight, asked = "", r.item.Load.Each().String()+" × "+asked
		}
		t.Rows = append(t.Rows, []string{name, asked, weight, "", more})
	}
	d.Table(t)
	other := "Anything else: a fall, a new medicine, something that felt wrong"
	if slices.Contains(v.outcome.EachDay, "oxygen_saturation") {
		other += "; your oxygen before you began, in %"
	}
	d.Section("How it was")
	d.Table(document.Table{Head: []string{"Question", "Your answer"}, Rows: [][]string{
		{"No pain at all: in training, next morning, or on the days before? Yes or no", ""},
		{"If there was: the worst pain in training, 0 to 10", ""},
		{"Pain the next morning, 0 to 10", ""},
		{other, ""},
	}})
	d.Section("For whoever types it in")
	d.Say(fmt.Sprintf("Columns: %s. A line for each set, such as 2026-12-14,1,,10,4 (set 1 as asked, 10 done, 4 more); how hard it was as 6/10. The questions are the rows “%s”, “%s” and “%s”, with the answer in the column done. What kind of pain it was, and anything else, is for you to ask.",
		typedColumns, noPain, painDuring, painMorning))
	return d
}
