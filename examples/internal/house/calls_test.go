package house_test

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// A wrongCall is a way to call a program that it does not take, with the status that
// it ends with and the first line of what it says.
type wrongCall struct {
	program, args string
	status        int
	says          string
}

// Cases that cannot be read end with 1, calls with 2; screencases alone, which
// tells agreement by its status, has 2 for both.
var calls = []wrongCall{
	{"accuracy", "-data none.csv", 1, "accuracy: the data cannot be used:"},
	{"accuracy", "-level 0.2", 2, "accuracy: -level 0.2: it takes 0.5 to 0.99"},
	{"accuracy", "-level NaN", 2, "accuracy: -level NaN: it takes 0.5 to 0.99"},
	{"accuracy", "-level much", 2, `accuracy: invalid value "much" for flag -level: parse error`},
	{"clinic", "list", 2, "clinic: -dir is needed: the folder of the records"},
	{"clinic", "-dir", 2, "clinic: flag needs an argument: -dir"},
	{"clinic", "-dir people dance ann", 2, `clinic: "dance" is no step: there are list, new, ask, visit, week, check, log, change, review, test, end, show and replay`},
	{"clinic", "-dir people log", 2, "clinic: log of whom? it takes STEP NAME"},
	{"clinic", "-dir people log ann tuesday", 2, `clinic: "tuesday" is one argument too many: it takes STEP NAME`},
	{"clinic", "-dir people log ann -day tuesday", 2, `clinic: -day "tuesday": it takes a day such as 2026-11-25`},
	{"clinic", "-dir people show ann -for nurse", 2, `clinic: -for "nurse": it takes client, file, doctor, surgeon, falls-service, diary or glucose`},
	{"clinic", "-dir people show ann -for client -json", 2, "clinic: -json and -for do not go together: -json writes everything, -for the paper of one reader"},
	{"clinic", "-dir people log ann -diary", 2, "clinic: flag needs an argument: -diary"},
	{"clinic", "-dir people review ann -html -diary d.csv", 2, "clinic: -diary goes with log alone"},
	{"clinic", "-dir people end ann -for diary", 2, "clinic: end has no paper for diary: -for takes client, file or doctor"},
	{"clinic", "-dir people log ann", 1, "clinic: there is no people/ann.json; new ann begins with somebody"},
	{"clinic", "-dir people log Ann", 1, `clinic: "Ann" cannot name a record: small letters, digits and single dashes between them, 40 at most`},
	{"clinic", "-dir people new ann -answers none.txt", 1, "clinic: open none.txt: no such file or directory"},
	{"firstvisit", "-case none.json", 1, "firstvisit: the case cannot be used:"},
	{"firstvisit", "-case", 2, "firstvisit: flag needs an argument: -case"},
	{"firstvisit", "-for nurse", 2, `firstvisit: -for "nurse": it takes client, file, doctor, surgeon, falls-service, diary or glucose`},
	{"firstvisit", "-html", 2, "firstvisit: -html goes with -for and a paper other than that for the file"},
	{"firstvisit", "-html=perhaps", 2, `firstvisit: invalid boolean value "perhaps" for -html: parse error`},
	{"firstvisit", "-for client -json", 2, "firstvisit: -json and -for do not go together: -json writes everything, -for the paper of one reader"},
	{"intake", "-answers none.txt", 1, "intake: open none.txt: no such file or directory"},
	{"intake", "-day today", 2, `intake: -day "today": it takes a day such as 2026-11-25`},
	{"intake", "-for doctor", 2, `intake: -for "doctor": it takes client or clinician`},
	{"intake", "-json -for clinician", 2, "intake: -json and -for do not go together: -json writes everything, -for the paper of one reader"},
	{"policies", "-kit castle", 2, `policies: -kit "castle": no kit has that in its name`},
	{"policies", "-people 0", 2, "policies: -people 0: it takes 1 to 100000"},
	{"policies", "-policy none", 2, `policies: -policy "none": no policy has that in its name`},
	{"policies", "-population ants", 2, `policies: -population "ants": no people have that in their name`},
	{"policies", "-weeks 3", 2, "policies: -weeks 3: it takes 9 to 104"},
	{"population", "-n 0", 2, "population: -n 0: it takes 1 to 1000000 people"},
	{"population", "-n many", 2, `population: invalid value "many" for flag -n: parse error`},
	{"population", "-unknown 3", 2, "population: -unknown 3: it takes 1 to 2"},
	{"review", "-case none.json", 1, "review: the case cannot be used:"},
	{"review", "-for nurse", 2, `review: -for "nurse": it takes client, file, doctor, surgeon, falls-service, diary or glucose`},
	{"review", "-html -for file", 2, "review: -html goes with -for and a paper other than that for the file"},
	{"review", "-html -json", 2, "review: -html goes with -for and a paper other than that for the file"},
	{"review", "-json -for doctor", 2, "review: -json and -for do not go together: -json writes everything, -for the paper of one reader"},
	{"review", "-simulate -case none.json", 1, "review: the case cannot be used:"},
	{"review", "-simulate -for client", 2, "review: -simulate prints no paper: it goes without -for"},
	{"screencases", "a b", 2, `screencases: "b" is one argument too many: it takes [FILE]`},
	{"screencases", "none.csv", 2, "screencases: open none.csv: no such file or directory"},
	{"week", "-case none.json", 1, "week: the case cannot be used:"},
	{"week", "-json=perhaps", 2, `week: invalid boolean value "perhaps" for -json: parse error`},
}

// What every program says of a call that it does not take, and what it ends with;
// -h says what it does, which is no wrong call.
func TestCalls(t *testing.T) {
	folder := built(t)
	for _, p := range packages(t) {
		if name := path.Base(p.path); p.name == "main" {
			calls = append(calls, wrongCall{name, "-nonsense", 2, name + ": flag provided but not defined: -nonsense"})
			if out, errs, status := called(t, folder, name, "-h"); status != 0 || errs != "" || !strings.HasPrefix(out, "Command "+name+" ") {
				t.Errorf("%s -h: status %d, %q, %q", name, status, out, errs)
			}
			if name != "screencases" && name != "clinic" {
				calls = append(calls, wrongCall{name, "extra", 2, name + `: "extra" is one argument too many: it takes flags alone`})
			}
		}
	}
	for _, c := range calls {
		out, errs, status := called(t, folder, c.program, strings.Fields(c.args)...)
		first, rest, _ := strings.Cut(errs, "\n")
		if status != c.status || first != c.says || out != "" {
			t.Errorf("%s %s: status %d, %q, %q; want %d, %q", c.program, c.args, status, errs, out, c.status, c.says)
		}
		if more := fmt.Sprintf("(%s -h says what it does and takes)\n", c.program); c.status == 2 && rest != more && c.program != "screencases" {
			t.Errorf("%s %s: %q", c.program, c.args, errs)
		}
	}
}

// called runs a program in an empty folder.
func called(t *testing.T, folder, program string, args ...string) (out, errs string, status int) {
	t.Helper()
	cmd := exec.Command(filepath.Join(folder, program), args...)
	cmd.Dir = t.TempDir()
	var stdout, stderr bytes.Buffer
	cmd.Stdout, cmd.Stderr = &stdout, &stderr
	var ended *exec.ExitError
	if err := cmd.Run(); err != nil && !errors.As(err, &ended) {
		t.Fatal(err)
	}
	return stdout.String(), stderr.String(), cmd.ProcessState.ExitCode()
}

// A long run that is stopped leaves nothing, and says nothing to a pipe.
func TestStoppedOnTheWay(t *testing.T) {
	folder := built(t)
	for program, args := range map[string]string{"population": "-n 1000000", "policies": "-people 10000"} {
		name := filepath.Join(t.TempDir(), "out.txt")
		file, err := os.Create(name)
		if err != nil {
			t.Fatal(err)
		}
		defer file.Close()
		cmd := exec.Command(filepath.Join(folder, program), strings.Fields(args)...)
		var stderr bytes.Buffer
		cmd.Stdout, cmd.Stderr = file, &stderr
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(time.Second)
		if err := cmd.Process.Signal(os.Interrupt); err != nil {
			t.Fatal(err)
		}
		if err := cmd.Wait(); err == nil {
			t.Errorf("%s: it was stopped, and says that all went well", program)
		}
		if text, err := os.ReadFile(name); err != nil || len(text) > 0 || stderr.Len() > 0 {
			t.Errorf("%s: it left %q and said %q, %v", program, text, stderr.String(), err)
		}
	}
}
