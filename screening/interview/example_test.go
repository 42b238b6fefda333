package interview_test

import (
	"fmt"

	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// A form asks by the form of each question; here an invented person of 71 with a
// hernia answers.
func ExampleInterview() {
	texts := map[string]string{"age": "71", "activity": "0", "blood_pressure": "134/80", "pulse": "68"}
	choices := map[string]screening.Code{"setting": "in a group", "wanted": "light"}
	lists := map[string][]screening.Code{"areas": {"belly"}, "belly": {"hernia"}}

	day, _ := units.ParseDay("2026-11-25")
	talk := interview.On(day)
	for q, more := talk.Next(); more; q, more = talk.Next() {
		var r interview.Reply
		switch q.Form {
		case interview.YesNo:
			r.YesNo = screening.No
		case interview.OneOf:
			r.Choice = choices[q.Key]
		case interview.SeveralOf:
			r.List = screening.AskedFor(lists[q.Key]...)
		default:
			r.Text = texts[q.Key]
		}
		if q.Because != "" {
			fmt.Printf("%s (because of %s)\n", q.Client, q.Because)
		}
		after, err := talk.Answer(q.Key, r)
		if err != nil {
			fmt.Println(err)
			return
		}
		talk = after
	}
	o, err := screening.Assess(talk.Profile())
	fmt.Println(o.Route, "–", o.Meanwhile, err)
	// Output:
	// Does the hernia hurt, bulge a lot, or has a doctor called it large? (because of hernia)
	// tell – within limits <nil>
}

// A form that was left half done goes on where it stood, and one may go back.
func ExampleResume() {
	day := units.Must(units.NewDay(2026, 11, 25))
	talk, err := interview.On(day).Answer("age", interview.Reply{Text: "71"})
	if err != nil {
		fmt.Println(err)
	}
	again, err := interview.Resume(day, talk.Given()) // kept as JSON in between
	if err != nil {
		fmt.Println(err)
	}
	q, _ := again.Next()
	fmt.Println(len(again.Given()), "answered, next:", q.Key)
	before, _ := again.Back()
	q, _ = before.Next()
	fmt.Println("back to:", q.Key)
	// Output:
	// 1 answered, next: setting
	// back to: age
}

// A form asks back before a no takes away what cannot go away, and keeps what stood where
// somebody stops.
func ExampleInterview_Forgets() {
	day := units.Must(units.NewDay(2027, 3, 9))
	was := screening.Profile{Day: day - 60, Age: 71, Diseases: screening.AskedFor("diabetes_t2")}
	talk := interview.On(day)
	for q, more := talk.Next(); more && q.Key != "diseases"; q, more = talk.Next() {
		r := map[string]interview.Reply{"age": {Text: "71"}, "setting": {Choice: "alone"}, "back_at_all": {YesNo: screening.No}}[q.Key]
		if q.Form == interview.SeveralOf {
			r.List = screening.AskedFor()
		}
		talk = units.Must(talk.Answer(q.Key, r))
	}
	gone, kept := talk.Forgets(interview.Reply{List: screening.AskedFor()}, was)
	fmt.Println(gone, kept.List.Present)
	// Output:
	// [diabetes_t2] [diabetes_t2]
}

// Somebody stops after the age, and only the age is other than before.
func ExampleInterview_Since() {
	day := units.Must(units.NewDay(2027, 3, 9))
	was := screening.Profile{Day: day - 60, Age: 71, Diseases: screening.AskedFor("diabetes_t2")}
	talk := units.Must(interview.On(day).Answer("age", interview.Reply{Text: "72"}))
	is := talk.Since(was)
	fmt.Println(is.Day, is.Age, is.Diseases.Present)
	// Output:
	// 2027-01-08 72 [diabetes_t2]
}

// On the day of a session only how somebody is now is asked; what the assessment knows
// already is not new.
func ExampleInterview_CheckSince() {
	day := units.Must(units.NewDay(2027, 3, 9))
	was := screening.Profile{Day: day - 60, Age: 71, Symptoms: screening.AskedFor("ankle_oedema"), RedFlags: screening.AskedFor()}
	talk := interview.On(day)
	for q, more := talk.Next(); more && q.Key != "back_at_all"; q, more = talk.Next() {
		r := map[string]interview.Reply{"age": {Text: "71"}, "setting": {Choice: "alone"}}[q.Key]
		if q.Form == interview.SeveralOf {
			r.List = screening.AskedFor()
		}
		if q.Key == "symptoms" {
			r.List.Present = []screening.Code{"ankle_oedema", "dizziness_or_syncope"}
		}
		talk = units.Must(talk.Answer(q.Key, r))
	}
	fmt.Println(talk.CheckSince(was).New.Present)
	// Output:
	// [dizziness_or_syncope]
}
