package screening_test

import (
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/evidence"
)

// whoIs says whom the client's sentence names, by who lifts it. Heart and eye doctors are
// of the specialist team as well.
var whoIs = map[screening.Lifter]*regexp.Regexp{
	screening.ThePhysio:         regexp.MustCompile(`\b[Ww]e (look|measure|talk|come back|would like)|look at it together|we look`),
	screening.TheDoctor:         regexp.MustCompile(`octor`),
	screening.TheSurgeon:        regexp.MustCompile(`surgeon|who operated|eye clinic|where it was treated`),
	screening.TheTeam:           regexp.MustCompile(`team|specialist|(heart|eye) doctor|is checked|who(ever)? checks|where it is checked|clinic that checks|check of the pacemaker`),
	screening.EmergencyServices: regexp.MustCompile(`emergency services|getting help|calling for help`),
}

// somebodyElse are all but the client and who trains them.
var somebodyElse = regexp.MustCompile(`octor|surgeon|specialist| team|clinic|who operated`)

// ownOption is an answer that is read back, in whose words a doctor may stand.
var ownOption = regexp.MustCompile(`You were not sure of this: .*?\. We`)

// namesNobody are findings that are over by themselves, or that begin a new assessment,
// whoever lifts what it finds.
var namesNobody = []evidence.ReasonCode{"screening.happened", "screening.febrile", "screening.intoxicated"}

// asked are the kinds that stand on lists.
var asked = []screening.Kind{screening.Disease, screening.Symptom, screening.RedFlag, screening.Condition}

// TestClientReadsTheWayOut holds, over the tables of codes and random visits, that the client reads of
// who lifts what holds them: nobody else where an answer or reading of theirs does.
func TestClientReadsTheWayOut(t *testing.T) {
	words, wrong := screening.Words(), map[string]bool{}
	reads := func(o screening.Outcome) {
		for _, f := range o.Findings {
			text := ownOption.ReplaceAllString(words.Client(f.Reason), "We")
			clinician := words.Clinician(f.Reason)
			right := true
			switch who := f.Exit.Who; {
			case who == 0 || text == "" || slices.Contains(namesNobody, f.Reason.Code):
				continue
			case f.Branch() != 0 && f.Known && who == screening.ThePerson: // of signs that are found beside it
				right = whoIs[screening.TheDoctor].MatchString(text)
			case who == screening.ThePerson && f.Known && f.Exit.With == screening.AnAnswer:
				// The question stands on the same page, and its answer decides whether the other is asked.
				right = misses(o, f.Exit.Ask) || slices.ContainsFunc(o.Findings, func(g screening.Finding) bool { return g.Open && g.Code == f.Exit.Ask })
			case who == screening.ThePerson:
				right = !somebodyElse.MatchString(text)
			default:
				right = whoIs[who].MatchString(text) && (who != screening.ThePhysio || !somebodyElse.MatchString(text) || f.Exit.With == screening.ADate)
			}
			if looks := strings.Contains(clinician, "Look at") || strings.Contains(clinician, "look at"); f.Exit.With == screening.ALook && !looks {
				right = false
			}
			if !right {
				wrong[string(f.Reason.Code)+" is lifted by "+f.Exit.Who.String()+" with "+f.Exit.With.String()+"; the client reads: "+text+"\n   the clinician: "+clinician] = true
			}
		}
	}
	for term := range screening.Codes() {
		if !slices.Contains(asked, term.Kind) {
			continue
		}
		for _, of := range []func(*screening.Profile){has(term.Code), unsure(term.Code)} {
			for _, more := range []func(*screening.Profile){nil, has("osteoporosis"), has("dizziness_or_syncope")} {
				p := well()
				if of(&p); more != nil {
					more(&p)
				}
				if o, err := screening.Assess(p); err == nil {
					reads(o)
				}
			}
		}
	}
	r := rand.New(rand.NewPCG(50, 77))
	for range usualCases / 4 {
		o := assess(t, randomProfile(r))
		reads(o)
		reads(mustToday(t, checkFor(r, o), o))
	}
	for text := range wrong {
		t.Error(text)
	}
}
