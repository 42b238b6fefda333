package house_test

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// A page is what a program prints for these arguments, with a word that says
// that nobody in it is real, or whose data it is.
type page struct {
	program, args, says string
}

const (
	invented = "invented"
	openData = "public repository"
)

// pages are those of every program; files are named from the module's root.
var pages = []page{
	{"accuracy", "", openData},
	{"accuracy", "-json", openData},
	{"clinic", "", invented},
	{"cohort", "", invented},
	{"cohort", "-json", invented},
	{"firstvisit", "-for client", invented},
	{"firstvisit", "-for file", invented},
	{"firstvisit", "-for doctor", invented},
	{"firstvisit", "-for diary", invented},
	{"firstvisit", "-for client -html", invented},
	{"firstvisit", "-json", invented},
	{"hello", "", invented},
	{"intake", "-answers examples/intake/answers.txt -for client", invented},
	{"intake", "-answers examples/intake/answers.txt -for clinician", invented},
	{"intake", "-answers examples/intake/answers.txt -json", invented},
	{"policies", "-people 1 -facts", invented},
	{"population", "-n 100", invented},
	{"review", "-for client", invented},
	{"review", "-for file", invented},
	{"review", "-for doctor", invented},
	{"review", "-for diary -html", invented},
	{"review", "-json", invented},
	{"review", "-simulate", invented},
	{"review", "-simulate -json", invented},
	{"review", "-simulate", "simulated"},
	{"review", "-simulate -json", "simulated"},
	{"screencases", "", invented},
	{"screencases", "examples/screencases/testdata/invented-cases.csv", invented},
	{"week", "", invented},
	{"week", "-json", invented},
	{"week", "-class", invented},
	{"week", "-class -json", invented},
}

// No page of a program may be taken for a real person's.
func TestPagesSayWhoseTheyAre(t *testing.T) {
	folder := built(t)
	seen := map[string]bool{}
	for _, p := range pages {
		seen[p.program] = true
		cmd := exec.Command(filepath.Join(folder, p.program), strings.Fields(p.args)...)
		cmd.Dir = root()
		var errs bytes.Buffer
		cmd.Stderr = &errs
		out, err := cmd.Output()
		if err != nil || errs.Len() > 0 {
			t.Errorf("%s %s: %v, %s", p.program, p.args, err, errs.Bytes())
		}
		words := strings.Join(strings.Fields(strings.ToLower(string(out))), " ") // a page breaks its lines
		if !strings.Contains(words, p.says) {
			t.Errorf("%s %s does not say %q", p.program, p.args, p.says)
		}
		if people := strings.Contains(p.args, "-for client") || strings.Contains(p.args, "-for doctor"); people && coded.MatchString(words) {
			t.Errorf("%s %s: somebody reads %q", p.program, p.args, coded.FindString(words))
		}
	}
	for _, p := range packages(t) {
		if p.name == "main" && !seen[path.Base(p.path)] {
			t.Errorf("no page of %s is looked at", p.path)
		}
	}
}

// programs is the folder that every program is built into, once for all tests; empty
// until then.
var programs string

func TestMain(m *testing.M) {
	status := m.Run()
	os.RemoveAll(programs)
	os.Exit(status)
}

var build = sync.OnceValue(func() (err error) {
	if programs, err = os.MkdirTemp("", "programs-"); err != nil {
		return err
	}
	cmd := exec.Command("go", "build", "-o", programs+string(filepath.Separator), "./examples/...")
	cmd.Dir = root()
	if out, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("%w\n%s", err, out)
	}
	return nil
})

// built returns the folder that every program lies in.
func built(t *testing.T) string {
	t.Helper()
	if err := build(); err != nil {
		t.Fatal(err)
	}
	return programs
}
