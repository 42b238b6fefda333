package main

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/posology/examples/internal/folder"
	"example.org/posology/units"
)

// A tryer takes steps with the invented woman of [begun], and returns what was said.
type tryer struct {
	*testing.T
	folder folder.Folder
}

func (t tryer) step(want int, day, step, lines string, args ...string) string {
	t.Helper()
	call := []string{"-dir", string(t.folder), "-day", day, step}
	if step != "list" {
		call = append(call, "hall", "-yes", "-answers", answers(t.T, "# invented\n"+lines))
	}
	status, out, errs := calls("", append(call, args...)...)
	if status != want {
		t.Fatalf("%s, %s: %d, %s\n%s", step, day, status, errs, out)
	}
	return strings.Join(strings.Fields(out+" "+errs), " ")
}

// says fails where one of the texts is not said, or is and stands behind "not ".
func (t tryer) says(said string, texts ...string) {
	t.Helper()
	for _, text := range texts {
		text, not := strings.CutPrefix(text, "not ")
		if strings.Contains(said, text) == not {
			t.Errorf("said %v: %q\n%.900s", !not, text, said)
		}
	}
}

const (
	trained = "goblet-squat: 10@9\nrange_lost: no\nform_lost: no\nobserver: Physiotherapist E\npain: no\n"
	calm    = trained + "showed: none\n"
	asked   = well + "blood_pressure: 130/80\npulse: 66\ntoday: no\n"
	lately  = "Nobody is known to have looked"
	looked  = "looked: Doctor M\nlooked_by: the doctor\n"
)

// What was told at a review and is no event stands until somebody has looked: in the record,
// on the list, before a log, on every page; who has looked stands there too.
func TestToldStands(t *testing.T) {
	from := begun(t)
	for told, first := range map[string][2]string{ // the longest way for one of them
		"faint": {"TO BE SEEN TODAY: faint", "ee a doctor today"}, "new symptom": {"TO BE LOOKED AT FIRST: new symptom", "Somebody has to look at this first"},
		"injury": {"TO BE LOOKED AT FIRST: injury", "Somebody has to look at this first"}, "pain flare": {"TO BE LOOKED AT FIRST: pain flare", "Somebody has to look at this first"},
	} {
		w := copied(t, from)
		w.step(0, "2027-01-05", "log", calm)
		w.says(w.step(0, "2027-01-06", "review", "new: none\n"), "not "+lately)
		// decided for the 8th; on the 7th something is told
		w.says(w.step(0, "2027-01-07", "review", "new: "+told+"\n"), first[0], `+ /happened/0: {"kind":"`+told+`"`, "stop and refer", "Doses none")
		w.says(w.step(0, "2027-01-07", "show", "", "-for", "client"), first[1], "o exercise")
		if told != "faint" {
			continue
		}
		w.says(w.step(0, "2027-01-07", "show", "", "-for", "doctor"), told+", on Thursday 7 January 2027", "Until I hear from you: no exercise")
		w.says(w.step(0, "2027-01-07", "list", ""), first[0], lately, "Next: review")
		w.says(w.step(1, "2027-01-08", "log", ""), first[0], "Next: review")
		w.says(w.step(1, "2027-01-08", "test", "tests: goblet-squat 4 kg 8@2\n"), "stopped", first[0])
		// an assessment looks at nobody
		w.step(0, "2027-01-08", "ask", asked)
		w.says(w.step(0, "2027-01-08", "review", "new: none\n"), first[0], "Doses none")
		said := w.step(0, "2027-01-09", "review", "new: none\n"+looked)
		w.says(said, "not "+first[0], "not Doses none", "Doctor M", `+ /looked/0: {"who":"Doctor M, the doctor","day":"2027-01-09"`)
		w.says(w.step(0, "2027-01-09", "show", "", "-for", "doctor"), told, "Doctor M")
		w.says(w.step(0, "2027-01-09", "list", ""), "not "+lately, "Next: log")
		w.step(0, "2027-01-12", "log", calm)
		w.says(w.step(0, "2027-01-12", "replay", ""), "not another answer")
	}
}

// What showed in training is said at once, and first everywhere, with the strictest route; a
// new assessment alone brings nothing back, nor a look alone; both do, gently.
func TestShowedStands(t *testing.T) {
	for _, tt := range []struct {
		showed, lead, client, doctor string
		orders                       []string
	}{
		{"chest symptom, pale bluish or clammy", "CALL FOR HELP NOW, unless somebody has looked since: pain in the chest", "call the emergency services now (112 in Europe", "Emergency services were called for, or are to be", []string{"ask first"}},
		{"dizzy or swaying", "TO BE SEEN TODAY: dizzy or swaying", "Please see a doctor today", "direct them to be seen, today", []string{"look first"}},
	} {
		for _, order := range tt.orders {
			w := tryer{t, begun(t)}
			w.step(0, "2027-01-05", "log", calm)
			w.step(0, "2027-01-06", "review", "new: none\n")
			w.says(w.step(0, "2027-01-08", "log", trained+"showed: "+tt.showed+"\n"), tt.lead, "Next: review")
			w.says(w.step(0, "2027-01-18", "list", ""), tt.lead, lately, "Next: review")
			w.says(w.step(0, "2027-01-18", "review", "new: none\nabsence: no\n"), tt.lead, "Doses none", "meanwhile nothing")
			client := w.step(0, "2027-01-18", "show", "", "-for", "client")
			w.says(client, tt.client, "not how strong you are", "not we will tell you whom to ask")
			if at := strings.Index(client, tt.client); at < 0 || at > 250 {
				t.Errorf("the client reads it late:\n%s", client)
			}
			doctor := w.step(0, "2027-01-18", "show", "", "-for", "doctor")
			w.says(doctor, tt.doctor, "on Friday 8 January 2027", "not OVERDUE")
			w.says(w.step(1, "2027-01-18", "log", ""), tt.lead, "Next: review")
			look := "new: none\nabsence: no\n" + looked
			if order == "ask first" {
				w.step(0, "2027-01-19", "ask", asked)
				w.says(w.step(0, "2027-01-19", "review", "new: none\nabsence: no\n"), tt.lead, "Doses none")
			} else {
				w.says(w.step(0, "2027-01-19", "review", look), "not "+tt.lead, "Doctor M", "Doses none")
				w.says(w.step(0, "2027-01-19", "list", ""), "not "+lately, "Doctor M", "Next: ask")
				w.step(0, "2027-01-19", "ask", asked)
				look = "new: none\nabsence: no\n"
			}
			w.says(w.step(0, "2027-01-19", "list", ""), "Next: review")
			said := w.step(0, "2027-01-19", "review", look)
			w.says(said, "not "+tt.lead, "not Doses none", "goblet squat ease")
			w.says(w.step(0, "2027-01-19", "list", ""), "Next: log")
			w.step(0, "2027-01-19", "log", calm)
			w.says(w.step(0, "2027-01-19", "replay", ""), "not another answer")
		}
	}
}

// next is the step that list names, and the day from which on.
func (t tryer) next(day units.Day) (step string, from units.Day) {
	t.Helper()
	said := t.step(0, day.String(), "list", "")
	_, rest, found := strings.Cut(said, "Next: ")
	words := strings.FieldsFunc(rest, func(r rune) bool { return r == ' ' || r == ',' || r == ';' || r == '.' })
	if !found || steps[words[0]] == nil && words[0] != "new" {
		t.Fatalf("%s: list names no step: %s", day, said)
	}
	if from = day; words[1] == "from" {
		from = max(day, units.Must(units.ParseDay(words[2])))
	}
	return words[0], from
}

// all is a calm visit at which all was done that was asked for.
func (t tryer) all(day units.Day) string {
	p, err := t.folder.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	lines := "showed: none\nrange_lost: no\nform_lost: no\npain: no\n"
	list, paused := p.Record.AskedOn(day)
	for _, a := range list {
		if !paused[a.Exercise] {
			lines += string(a.Exercise) + ": all\n"
		}
	}
	return lines
}

// follow takes the step that list names; it is accepted in every state. It returns the day.
func (t tryer) follow(day units.Day, more map[string]string) (string, units.Day) {
	t.Helper()
	step, day := t.next(day)
	lines := map[string]string{
		"ask": asked, "log": t.all(day), "review": "new: none\nabsence: no\n", "week": "new: none\nabsence: no\nreached: no\n",
		"visit": fmt.Sprintf("days: %s %s\n", day+1, day+4), "check": sugar + "7.5 mmol/L\n",
	}[step]
	for key, line := range more {
		if at := strings.Index("\n"+lines, "\n"+key+":"); at >= 0 { // in place of the usual one
			_, behind, _ := strings.Cut(lines[at:], "\n")
			lines = lines[:at] + behind
		}
		if line != "" {
			lines += key + ": " + line + "\n"
		}
	}
	t.step(0, day.String(), step, lines)
	return step, day
}

// In every state list names a step, and the step that it names is accepted; it leads to
// training again, save where the plan has ended.
func TestStates(t *testing.T) {
	const trial = "2027-01-08"
	from := begun(t)
	begin := func(w tryer) {
		w.step(0, "2027-01-05", "log", calm)
		w.step(0, "2027-01-06", "review", "new: none\n")
	}
	for _, tt := range []struct {
		state string
		leads string // the steps that list names one after the other
		enter func(w tryer)
		more  map[string]string
	}{
		{"asked", "log", func(tryer) {}, nil},
		{"trained", "log", begin, nil},
		{"not reviewed", "review log", func(w tryer) { w.step(0, "2027-01-05", "log", calm) }, nil},
		{"assessed after the plan", "visit week log", func(w tryer) { w.step(0, "2027-01-04", "ask", asked+"age: 69\n") }, nil},
		{"stopped by a check before the first visit", "log", func(w tryer) {
			w.step(0, "2027-01-04", "check", strings.Replace(sugar, "febrile: no", "febrile: yes", 1)+"7.5 mmol/L\n")
		}, nil},
		{"away", "review log", begin, nil},
		{"stopped by the check of yesterday", "review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "check", strings.Replace(sugar, "febrile: no", "febrile: yes", 1)+"7.5 mmol/L\n")
			w.says(w.step(0, trial, "review", "new: none\n"), "Doses none")
		}, nil},
		{"fallen", "ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "review", "new: fall\n")
		}, nil},
		{"fallen beside lifting", "review ask review log", func(w tryer) {
			w.step(0, "2027-01-05", "log", calm)
			w.step(0, "2027-01-07", "review", fmt.Sprintf("new: none\nfall_out: yes\nbeside_%s: 1 days, least 10, fell\n", recordOf(w.T, w.folder).Beside.InForce[0].Track))
		}, map[string]string{"looked": "Doctor M", "looked_by": "the doctor"}},
		{"told before the first visit", "review ask visit week log", func(w tryer) { w.step(0, "2027-01-04", "review", "new: faint\n") }, map[string]string{"looked": "Doctor M", "looked_by": "the doctor"}},
		{"stopped whole by a sign", "review ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "log", trained+"showed: chest symptom\n")
		}, map[string]string{"looked": "Doctor M", "looked_by": "the doctor"}},
		{"stopped whole by a pain", "review ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "log", "goblet-squat: 10@9\npain: yes\npain_kind: chest\npain_in: goblet-squat\n")
		}, map[string]string{"looked": "Doctor M", "looked_by": "the doctor"}},
		{"told", "review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "review", "new: medicine changed\n")
		}, map[string]string{"looked": "Doctor M", "looked_by": "the doctor"}},
		{"an event", "ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "review", "new: hospital stay\n")
		}, nil},
		{"held by an assessment", "review ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "ask", strings.Replace(asked, "symptoms: none", "symptoms: dyspnoea_rest_or_mild_exertion", 1))
		}, map[string]string{"no_longer": "dyspnoea_rest_or_mild_exertion"}},
		{"ill", "review ask review log", func(w tryer) {
			begin(w)
			w.step(0, trial, "log", calm)
		}, map[string]string{"absence": "yes"}},
		{"ended", "show", func(w tryer) {
			begin(w)
			w.step(0, trial, "end", "")
		}, nil},
	} {
		t.Run(tt.state, func(t *testing.T) {
			w := copied(t, from)
			tt.enter(w)
			day, led := units.Must(units.ParseDay(trial)), []string{}
			if strings.Contains(tt.state, "before") || strings.Contains(tt.state, "after the plan") {
				day -= 4
			}
			if tt.state == "ill" || tt.state == "away" {
				day += 20
			}
			if strings.Contains(tt.state, "yesterday") {
				day++
			}
			for range 6 {
				step, at := w.follow(day, tt.more)
				if led = append(led, step); step == "log" || step == "show" {
					break
				}
				day = at + 1
			}
			if got := strings.Join(led, " "); got != tt.leads {
				t.Errorf("%s leads by %s, not by %s", tt.state, got, tt.leads)
			}
		})
	}
}

var sequences = flag.Int("sequences", 1, "how many random sequences of steps are taken")

// However steps follow each other, list names one, and that is accepted; nothing of a person
// whom something stands against is asked for, and every decision comes out again.
func TestAnySteps(t *testing.T) {
	from, insulin := begun(t), onInsulin(t).folder
	for seed := range *sequences {
		chance := rand.New(rand.NewPCG(uint64(seed), 7))
		if seed%2 == 1 {
			from, insulin = insulin, from
		}
		w, day := copied(t, from), units.Must(units.NewDay(2027, 1, 5))
		for range 8 {
			one := [][2]string{
				{"log", strings.Replace(w.all(day), "showed: none", "showed: "+oneOf(chance, "chest symptom", "dizzy or swaying", "leg cramp", "none"), 1)},
				{"log", strings.Replace(w.all(day), "pain: no", "pain: yes\npain_during: 7\npain_kind: "+oneOf(chance, "ordinary", "chest"), 1)},
				{"review", "new: " + oneOf(chance, "none", "faint", "injury", "fall") + "\nabsence: " + oneOf(chance, "no", "yes") + "\n"},
				{"ask", strings.Replace(asked, "symptoms: none", "symptoms: "+oneOf(chance, "none", "dyspnoea_rest_or_mild_exertion"), 1)},
				{"check", sugar + oneOf(chance, "3.5", "7.5", "17") + " mmol/L\nketones: none\n"}, {"week", "new: none\nabsence: no\n"}, {"test", "tests: goblet-squat 2 kg 8@2\n"}, {"list", ""},
			}[chance.IntN(8)]
			if one[0] != "list" { // taken or refused
				_, _, _ = calls("", "-dir", string(w.folder), "-day", day.String(), one[0], "hall", "-yes", "-answers", answers(t, "# invented\n"+one[1]))
			}
			t.Logf("seed %d, %s %s: %.60q", seed, day, one[0], one[1])
			_, at := w.follow(day+units.Day(chance.IntN(2)), map[string]string{"looked": oneOf(chance, "Doctor M", ""), "looked_by": oneOf(chance, "the doctor", "the physiotherapist"), "no_longer": "dyspnoea_rest_or_mild_exertion diabetes_t2"})
			w.heeds(at)
			day = at + 1 + units.Day(chance.IntN(3)+chance.IntN(8)/7*60)
		}
		w.says(w.step(0, day.String(), "replay", ""), "not comes out again")
	}
}

// copied is a copy of a folder to take steps in.
func copied(t *testing.T, from folder.Folder) tryer {
	t.Helper()
	w := tryer{t, folder.Folder(filepath.Join(t.TempDir(), "hall"))}
	if err := os.CopyFS(string(w.folder), os.DirFS(string(from))); err != nil {
		t.Fatal(err)
	}
	return w
}

func oneOf(chance *rand.Rand, list ...string) string { return list[chance.IntN(len(list))] }

// heeds fails where something stands and something is asked for.
func (t tryer) heeds(day units.Day) {
	t.Helper()
	p, err := t.folder.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	stands, err := p.Record.Alarms(day)
	last := p.Record.Entries[len(p.Record.Entries)-1]
	if err != nil || len(stands) > 0 && len(last.Items) > 0 && !news(p.Record, last) && !idle(p.Record, last.Day) {
		t.Errorf("%v: decided in spite of %+v", err, stands)
	}
}
