package main

import (
	"fmt"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units"
)

func on(day string) units.Day { return units.Must(units.ParseDay(day)) }

// Who names nobody has not looked, neither at a visit nor at an exercise that was stopped.
func TestNobodyHasLooked(t *testing.T) {
	from := begun(t)
	base := copied(t, from)
	base.step(0, "2027-01-05", "log", calm)
	base.step(0, "2027-01-06", "review", "new: none\n")
	base.step(0, "2027-01-08", "log", strings.Replace(trained, "Physiotherapist E", "nobody", 1)+"showed: chest symptom\n")
	if r := recordOf(t, base.folder); r.Visits[1].Observer != "" {
		t.Errorf("watched by %q", r.Visits[1].Observer)
	}
	for _, who := range []string{"no", "No.", "nobody", "not yet", "myself", "none", "don't know",
		"nobody yet", "no doctor", "ask later", "himself", "the client", "will ask Doctor K tomorrow", "Not Doctor K", "?", "12", "Doctor M\nlooked_at: no"} {
		w := copied(t, base.folder)
		w.says(w.step(0, "2027-01-09", "review", "new: none\nlooked_by: the doctor\nlooked: "+who+"\n"), "Doses none")
		w.says(w.step(0, "2027-01-09", "list", ""), lately)
		if r := recordOf(t, w.folder); len(r.Looked) > 0 {
			t.Errorf("%s: looked at by %+v", who, r.Looked)
		}
	}
}

// Whoever types is asked first whether somebody has looked, by yes who it was, and what they
// are: of whom screening does not name for what stands no look is kept, and it says who it takes.
func TestLookedIsAsked(t *testing.T) {
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", calm)
	base.step(0, "2027-01-06", "review", "new: none\n")
	base.step(0, "2027-01-08", "log", trained+"showed: chest symptom\n")
	for lines, want := range map[string]string{"no\n": "", "\n": "", "Doctor K\nno\n": "", "yes\nnobody yet\n": "", "yes\nDoctor K\nthe doctor\n": "Doctor K, the doctor", "y\nthe GP, doctor K\n3\n": "the GP, doctor K, the doctor",
		"yes\nAmbulance\nthe emergency services\n": "Ambulance, the emergency services", "yes\nDoctor K\n\n": "", "yes\nDoctor K\nthe person\n": "", "yes\nPhysiotherapist H\nthe physiotherapist\n": ""} {
		w := copied(t, base.folder)
		said, r := typedIn(t, w.folder, "review", "2027-01-09", "none\n"+lines+strings.Repeat("\n", 30))
		who := ""
		if len(r.Looked) > 0 {
			who = r.Looked[0].Who
		}
		if who != want || !strings.Contains(said, "Has somebody looked at it since") {
			t.Errorf("%q: looked at by %q, not %q\n%s", lines, who, want, said)
		}
		if asked := strings.Contains(said, "What are they?"); asked && (want == "") != strings.Contains(strings.Join(strings.Fields(said), " "), "is not kept, and it stands: it takes the doctor") {
			t.Errorf("%q: not said whose look it takes\n%s", lines, said)
		}
	}
}

// After a fall what is not known of the head and of passing out counts as so on a blood
// thinner, and is else told as not known (Design; that a fall on one is seen the same day is
// common practice).
func TestFallNotKnown(t *testing.T) {
	base := copied(t, begun(t))
	base.step(0, "2027-01-05", "log", calm)
	base.step(0, "2027-01-06", "review", "new: none\n")
	w := copied(t, base.folder)
	w.says(w.step(0, "2027-01-07", "review", "new: fall\nfall_head: don't know\nfall_out: no\n"), "it is not known whether the head was hit", "not known whether they passed out", "not TO BE SEEN TODAY")
	base.step(0, "2027-01-06", "ask", strings.Replace(asked, "areas: none\n", "", 1)+"areas: pressure medicines\nmedicines: anticoagulant\n")
	for lines, want := range map[string]string{"fall_out: no\n": "TO BE SEEN TODAY: knock on the head", "fall_head: no\n": "TO BE SEEN TODAY: faint", "fall_head: no\nfall_out: no\n": "not TO BE SEEN TODAY"} {
		w := copied(t, base.folder)
		w.step(0, "2027-01-07", "review", "new: fall\n"+lines)
		w.says(w.step(0, "2027-01-07", "list", ""), want)
	}
}

// Once somebody has looked at chest pain, a clearance from before it does not come back with
// the next assessment; one from after it does.
func TestClearanceFromBeforeASign(t *testing.T) {
	f := begun(t)
	step := tryer{t, f}.step
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	agreed := "no_longer: hypertension_treated\nareas: heart\nheart: exertional_angina\nclearance: yes\nclearance_who: Dr K\nclearance_when: %s\nclearance_scope: exertional_angina\nclearance_effort: moderate\n"
	p.Interview = strings.Replace(p.Interview, "areas: pressure\n", "", 1)
	if c, err := p.Change(); err != nil || f.Write(c) != nil {
		t.Fatal(err)
	}
	step(0, "2027-01-05", "log", calm)
	step(0, "2027-01-06", "ask", asked+fmt.Sprintf(agreed, "2026-12-10"))
	step(0, "2027-01-06", "review", "new: none\n")
	if o, err := recordOf(t, f).Screening(on("2027-01-08")); err != nil || len(o.Clearances) != 1 {
		t.Fatalf("%v: %+v", err, o.Clearances)
	}
	step(0, "2027-01-08", "log", trained+"showed: chest symptom\n")
	step(0, "2027-01-09", "review", "new: none\n"+looked)
	tryer{t, f}.says(step(0, "2027-01-10", "ask", asked), "Clearance by Dr K of 2026-12-10 not counted: what showed or hurt at the visit on 2027-01-08 has ended it")
	said := step(0, "2027-01-10", "review", "new: none\n", "-for", "doctor")
	tryer{t, f}.says(said, "Agreement by Dr K of Thursday 10 December 2026 does not count: what showed or hurt at the visit on", "has ended it", "not in force until")
	tryer{t, f}.says(step(0, "2027-01-10", "list", ""), "Held until there is an answer: the doctor, with a clearance; with it: ask.")
	tryer{t, f}.says(step(0, "2027-01-12", "ask", asked+fmt.Sprintf(agreed, "2027-01-11")), "Clearance by Dr K of 2027-01-11, in force until")
}

// A fall told of the work beside lifting stands as one that was told, and is asked about;
// what sends to be seen today stands first.
func TestFallBesideLifting(t *testing.T) {
	from := begun(t)
	for _, tt := range []struct {
		happened string
		more     string
		want     []string
	}{
		{"fell", "", []string{"TO BE ASSESSED AGAIN: fall, on Thursday 7 January 2027"}},
		{"dizzy", "", []string{"TO BE SEEN TODAY: dizzy spells or blackouts, on Thursday 7 January 2027"}},
		{"fell, dizzy", "fall_head: yes\n", []string{"TO BE SEEN TODAY: knock on the head", "TO BE ASSESSED AGAIN: fall"}},
		{"fell", "fall_out: yes\n", []string{"TO BE SEEN TODAY: faint"}},
		{"nearly fell", "", nil},
	} {
		w := copied(t, from)
		w.step(0, "2027-01-05", "log", calm)
		track := recordOf(t, w.folder).Beside.InForce[0].Track
		w.step(0, "2027-01-07", "review", fmt.Sprintf("new: none\nbeside_%s: 1 days, least 10, %s\n%s", track, tt.happened, tt.more))
		list := w.step(0, "2027-01-07", "list", "")
		w.says(list, tt.want...)
		if said := w.step(0, "2027-01-07", "show", "", "-for", "doctor"); len(tt.want) > 0 {
			w.says(said, tt.want...)
			w.says(said, "not nothing in what was recorded")
		}
		if tt.happened == "dizzy" { // as at a visit: a look alone, or an assessment alone, frees nobody
			w.step(0, "2027-01-08", "ask", asked)
			w.says(w.step(0, "2027-01-08", "list", ""), tt.want[0], "Next: review")
			w.step(0, "2027-01-08", "review", "new: none\n"+looked)
			w.says(w.step(0, "2027-01-08", "list", ""), "not "+lately, "Next: log")
			w = copied(t, from)
			w.step(0, "2027-01-05", "log", calm)
			w.step(0, "2027-01-07", "check", well+"blood_pressure: 130/80\npulse: 66\ntoday: yes\nhurt: no\nfebrile: no\n")
			w.step(0, "2027-01-07", "review", fmt.Sprintf("new: none\nbeside_%s: 1 days, least 10, dizzy\n", track))
			w.step(0, "2027-01-08", "review", "new: none\n"+looked)
			w.says(w.step(0, "2027-01-08", "list", ""), "What came up on Thursday 7 January 2027 was looked at by Doctor M, the doctor", "Next: ask")
		}
		if tt.more != "" {
			w.says(w.step(0, "2027-01-07", "show", "", "-for", "client"), "o exercise until somebody has looked")
		}
	}
	w := copied(t, from)
	w.step(0, "2027-01-05", "log", calm)
	track := recordOf(t, w.folder).Beside.InForce[0].Track
	w.step(0, "2027-01-07", "review", fmt.Sprintf("new: none\nbeside_%s: 1 days, least 10, fell\n", track))
	w.step(0, "2027-01-08", "ask", asked)
	w.says(w.step(0, "2027-01-08", "review", "new: none\n", "-for", "falls-service"), "LETTER TO THE FALLS SERVICE", "Would you look at what may lie behind a fall")
	w = copied(t, from)
	w.step(0, "2027-01-05", "log", calm)
	w.says(w.step(0, "2027-01-07", "review", "new: fall\nfall_head: no\nfall_out: don't know\n"), "TO BE ASSESSED AGAIN: fall", "not knock on")
}

// A day whose check stops all stops no week that was begun: nothing new is planned on it.
func TestWeekOutlastsAStoppedDay(t *testing.T) {
	w := copied(t, begun(t))
	asked := recordOf(t, w.folder).Asked
	w.step(0, "2027-01-04", "check", strings.Replace(sugar, "febrile: no", "febrile: yes", 1)+"7.5 mmol/L\n")
	w.says(w.step(1, "2027-01-04", "visit", "days: 2027-01-05 2027-01-08\n"), "nothing new is planned on a day whose check stops all", "The check of 2027-01-04 says: meanwhile nothing, on this day; check takes a second reading, where it asks for one. Next: log, from 2027-01-05 on.")
	if r := recordOf(t, w.folder); len(asked) == 0 || len(r.Asked) != len(asked) {
		t.Errorf("%d lines of what is asked for, of %d", len(r.Asked), len(asked))
	}
	w.step(0, "2027-01-05", "log", calm)
}

// A letter of a day that its check alone stops says so, and not that something came up in training or
// that anything waits; nobody has to look.
func TestLetterOfAStoppedDay(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-08", "check", strings.Replace(sugar, "febrile: no", "febrile: yes", 1)+"7.5 mmol/L\n")
	w.step(0, "2027-01-08", "review", "new: none\n")
	w.says(w.step(0, "2027-01-08", "show", "", "-for", "doctor"), "FOUND TODAY, FRIDAY 8 JANUARY 2027 - Feverish illness.", "No exercise on Friday 8 January 2027, by the check of that day.", "not Nothing is prescribed", "not Until I hear")
	w.says(w.step(0, "2027-01-08", "show", "", "-for", "file"), "The check of this day stops all on it. Review again for the next day of training.", "not until somebody has looked")
	w.step(0, "2027-01-10", "review", "new: medicine changed\n")
	w.says(w.step(0, "2027-01-10", "show", "", "-for", "doctor"), "Until I hear from you: no exercise", "not by the check of that day")
}

// What happened can be told on any day: before the first day of a phase that was decided
// ahead, too, at a review or with a new week.
func TestToldBeforeAPhaseBegins(t *testing.T) {
	from := begun(t)
	base := copied(t, from)
	base.step(0, "2027-01-05", "log", calm)
	base.step(0, "2027-01-06", "week", "new: none\ndays: 2027-01-12 2027-01-15\n")
	for _, kind := range []string{"fall", "faint", "hospital stay"} {
		for _, step := range []string{"review", "week"} {
			w := copied(t, base.folder)
			w.says(w.step(0, "2027-01-07", step, "new: "+kind+"\n"), kind+", on 2027-01-07", "Doses none")
		}
	}
}

// The same record gives the same papers at the goodbye and ever after, asks nothing again and
// keeps its alarm: logged and ended on one day, and with something that stands.
func TestGoodbyeComesAgain(t *testing.T) {
	from := begun(t)
	for showed, stands := range map[string]bool{"none": false, "chest symptom": true} {
		for day, readers := range map[string][]string{"2027-01-08": {"client", "file"}, "2027-01-30": {"doctor"}} {
			for _, reader := range readers {
				w := copied(t, from)
				w.step(0, "2027-01-05", "log", calm)
				w.step(0, "2027-01-06", "review", "new: none\n")
				w.step(0, "2027-01-08", "log", trained+"showed: "+showed+"\n")
				paper := func(day, step, lines string) string {
					paper, _, _ := strings.Cut(w.step(0, day, step, lines, "-for", reader), " TO BE WRITTEN")
					return strings.TrimSuffix(paper, " Nothing is to be written.")
				}
				was := paper(day, "end", "reached: no\nabsence: no\n")
				for _, step := range []string{"show", "end"} {
					if again := paper("2027-03-01", step, ""); again != was {
						t.Errorf("%s, ended on %s, %s for %s: another paper\n%s\n%s", showed, day, step, reader, was, again)
					}
				}
				said := w.step(0, "2027-03-01", "list", "")
				if w.says(said, "Ended on "+day); strings.Contains(said, lately) != stands {
					t.Error(said)
				}
				if status, out, errs := calls("", "-dir", string(w.folder), "-day", "2027-03-01", "show", "hall", "-for", reader); status != 0 || strings.Contains(out, "> ") {
					t.Errorf("show asks: %d, %s, %s", status, errs, out)
				}
			}
		}
	}
}

// More than a week after the last visit what was decided before is not for today: list, show
// and log say so, and what was really done is logged.
func TestOldDecisions(t *testing.T) {
	w := copied(t, begun(t))
	w.step(0, "2027-01-05", "log", calm)
	w.step(0, "2027-01-06", "review", "new: none\n")
	const old = "The last visit was on Tuesday 5 January 2027: what was decided before is not for "
	for day, isOld := range map[string]bool{"2027-01-12": false, "2027-01-13": true, "2027-03-01": true} {
		not := map[bool]string{false: "not "}[isOld]
		w.says(w.step(0, day, "list", ""), not+old)
		w.says(w.step(0, day, "show", "", "-for", "client"), not+old)
	}
	w.says(w.step(0, "2027-03-01", "list", ""), "Next: review.")
	log := copied(t, w.folder)
	log.says(log.step(0, "2027-03-01", "log", calm), old, "Written.")
	w.step(0, "2027-03-01", "review", "new: none\nabsence: no\n")
	w.says(w.step(0, "2027-03-01", "list", ""), "not "+old, "Next: log")
}

// Loaded test sets are neither asked for nor taken while only unloaded practice goes on.
func TestNoLoadedTestsWhileUnloaded(t *testing.T) {
	f := begun(t)
	p, err := f.Read("hall")
	if err != nil {
		t.Fatal(err)
	}
	p.Record.Profile.Activity = &screening.Activity{Intensity: screening.Idle}
	p.Record.Profile.Diseases = screening.AskedFor("cardiac")
	if o, err := p.Record.Screening(p.Record.Profile.Day); err != nil || o.Meanwhile != screening.UnloadedPractice {
		t.Fatalf("%v, meanwhile %v", err, o.Meanwhile)
	}
	if c, err := p.Change(); err != nil || f.Write(c) != nil {
		t.Fatal(err)
	}
	for _, one := range []string{"visit", "test"} {
		w := tryer{t, f}
		w.says(w.step(1, "2027-01-04", one, "tests: goblet-squat 4 kg 8@2\n"), "goblet-squat with 4 kg is not taken as a test: meanwhile unloaded practice")
		_, out, _ := calls(map[string]string{"visit": "\n"}[one]+"stop\n", "-dir", string(f), "-day", "2027-01-04", one, "hall")
		w.says(out, "Meanwhile unloaded practice: no test set is asked for.", "not goblet-squat 4 kg")
	}
}

// onInsulin is a folder in which the week of somebody on insulin has begun.
func onInsulin(t *testing.T) tryer {
	w := tryer{t, begun(t)}
	w.step(0, "2027-01-04", "ask", strings.Replace(asked, "diseases: none", "diseases: diabetes_t2\ninsulin_or_secretagogue: yes\nretinopathy_moderate_or_worse: no", 1))
	w.step(0, "2027-01-04", "visit", "days: 2027-01-05 2027-01-08\n")
	w.step(0, "2027-01-04", "week", "")
	return w
}

// sugar is a check of a day, up to the glucose.
const sugar = "signs: none\nsymptoms: none\nmore_signs: none\ntoday: yes\nblood_pressure: 134/82\npulse: 70\nhurt: no\nfebrile: no\nsevere_low_24h: no\nglucose: "

// Whose glucose every day has to bring is told to check first; a visit without is kept, and
// it is said. A check that stops the day stops no other, and leads on.
func TestChecksOfEachDay(t *testing.T) {
	w := onInsulin(t)
	const unchecked = "Each day of training needs a check"
	w.says(w.step(0, "2027-01-04", "list", ""), "Next: check, from 2027-01-05 on, on the day itself; log comes after it.")
	none := copied(t, w.folder)
	none.says(none.step(0, "2027-01-05", "log", w.all(on("2027-01-08"))), unchecked+", and of Tuesday 5 January 2027 none is kept", "Written.")
	none.step(0, "2027-01-06", "review", "new: none\n")
	none.says(none.step(0, "2027-01-06", "list", ""), "Next: check, from 2027-01-08 on")
	for _, want := range []string{"check", "review", "log"} {
		if step, _ := none.follow(on("2027-01-08"), nil); step != want {
			t.Errorf("it leads to %s, not to %s", step, want)
		}
	}
	fit := copied(t, w.folder)
	fit.step(0, "2027-01-05", "check", sugar+"7.5 mmol/L\n")
	fit.says(fit.step(0, "2027-01-05", "list", ""), "Next: log, from 2027-01-05 on.")
	fit.says(fit.step(0, "2027-01-05", "log", w.all(on("2027-01-08"))), "not "+unchecked)
	w.step(0, "2027-01-05", "check", sugar+"3.5 mmol/L\n")
	for _, step := range []string{"list", "review"} {
		w.says(w.step(0, "2027-01-05", step, "new: none\n"), "The check of 2027-01-05 says: meanwhile nothing, on this day; check takes a second reading, where it asks for one. Next: check, from 2027-01-06 on", "not Today: ask")
	}
	w.step(1, "2027-01-05", "log", w.all(on("2027-01-08")))
	w.step(0, "2027-01-06", "check", sugar+"7.5 mmol/L\n")
	w.step(0, "2027-01-06", "log", w.all(on("2027-01-08")))
}
