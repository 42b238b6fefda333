package folder_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/examples/internal/folder"
	"example.org/posology/progression/record"
	"example.org/posology/testdata/programtest"
	"example.org/posology/units/field"
)

const note = "an invented case, the second time it was written"

// A process that is to be killed writes the second record and dies at the change
// of the disk that the environment names.
func TestMain(m *testing.M) {
	programtest.Killable(m, &folder.Reached, func() int {
		f := folder.Folder(os.Getenv("KILLED_IN"))
		p, err := f.Read("ann")
		if err == nil {
			p.Record.Note, p.Interview = note, "age: 68\n"
			err = write(f, p)
		}
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		return 0
	})
}

func write(f folder.Folder, p folder.Person) error {
	c, err := p.Change()
	if err != nil {
		return err
	}
	return f.Write(c)
}

// invented is the record of an invented person, new in a folder.
func invented(t *testing.T, f folder.Folder) folder.Person {
	t.Helper()
	p, err := f.Read("ann")
	if err != nil || !p.IsNew() {
		t.Fatal(err, p.IsNew())
	}
	if p.Record, err = record.Decode(demo.VillageHall(), field.Strict); err != nil {
		t.Fatal(err)
	}
	p.Interview = "age: 67\n"
	return p
}

// Killed at any change of the disk, the folder has the old record or the new one,
// whole, and once the new one stands, the old one lies with the older ones.
func TestKilledAtAnyWrite(t *testing.T) {
	killed, oldOnes, newOnes := 0, 0, 0
	for at := 1; ; at++ {
		f := folder.Folder(t.TempDir())
		if err := write(f, invented(t, f)); err != nil {
			t.Fatal(err)
		}
		out, err := programtest.Killed(t, at, "KILLED_IN="+string(f)).CombinedOutput()
		p, readErr := f.Read("ann")
		names, namesErr := f.Names()
		older, olderErr := f.Older("ann")
		if readErr != nil || namesErr != nil || olderErr != nil || fmt.Sprint(names) != "[ann]" {
			t.Fatalf("killed at change %d: %v, %v, %v, %v", at, readErr, namesErr, olderErr, names)
		}
		switch p.Record.Note {
		case note:
			newOnes++
			if len(older) != 1 || older[0].Note == note {
				t.Errorf("killed at change %d: the new record stands, and %d older ones", at, len(older))
			}
		default:
			oldOnes++
		}
		// Whoever comes next can write.
		p.Record.Client = "Client A, after it"
		if err := write(f, p); err != nil {
			t.Errorf("killed at change %d: %v", at, err)
		}
		if err == nil {
			break
		}
		if killed++; len(out) > 0 {
			t.Fatalf("change %d: %s", at, out)
		}
	}
	t.Logf("killed at %d changes: %d times the old record, %d times the new one", killed, oldOnes, newOnes)
	if killed < 8 || oldOnes < 6 || newOnes < 2 {
		t.Errorf("killed at %d changes: %d times the old record, %d times the new one", killed, oldOnes, newOnes)
	}
}

// What is changed meanwhile is not overwritten, what could not be read back is not
// written, and a new person takes nobody's place.
func TestRefused(t *testing.T) {
	f := folder.Folder(filepath.Join(t.TempDir(), "hall"))
	if names, err := f.Names(); len(names) > 0 || err != nil {
		t.Errorf("no folder yet: %v, %v", names, err)
	}
	first := invented(t, f)
	if err := write(f, first); err != nil {
		t.Fatal(err)
	}
	if err := write(f, first); !errors.Is(err, folder.ErrChanged) {
		t.Errorf("new once more: %v", err)
	}
	a, _ := f.Read("ann")
	b, _ := f.Read("ann")
	a.Record.Client, b.Record.Client = "A", "B"
	if err := write(f, a); err != nil {
		t.Error(err)
	}
	if err := write(f, b); !errors.Is(err, folder.ErrChanged) {
		t.Errorf("changed meanwhile: %v", err)
	}
	if b, _ = f.Read("ann"); b.Record.Client != "A" || b.Interview != "age: 67\n" {
		t.Errorf("%q, %q", b.Record.Client, b.Interview)
	}
	b.Record.Profile.Age = 0
	if err := write(f, b); err == nil || !strings.Contains(err.Error(), "/profile/age") {
		t.Errorf("no age: %v", err)
	}
	for _, name := range []string{"", "..", "a/b", "Ann", "ann.json", "-a", "a--b", strings.Repeat("a", 41)} {
		if _, err := f.Read(name); err == nil {
			t.Errorf("%q names a record", name)
		}
	}
}

// Parts that somebody left long ago are swept away; those of now may be written to.
func TestSweep(t *testing.T) {
	f := folder.Folder(t.TempDir())
	long, now := filepath.Join(string(f), ".ann.json.part-1"), filepath.Join(string(f), ".ann.json.part-2")
	for _, name := range []string{long, now} {
		if err := os.WriteFile(name, []byte(`{"vers`), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Chtimes(long, time.Time{}, time.Now().Add(-2*time.Hour)); err != nil {
		t.Fatal(err)
	}
	if err := write(f, invented(t, f)); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(long); err == nil {
		t.Error("a part of two hours ago is still there")
	}
	if _, err := os.Stat(now); err != nil {
		t.Error("a part that may be written to is gone")
	}
}

// What will be written is said before: what is new, other and gone, by its place.
func TestChanges(t *testing.T) {
	f := folder.Folder(t.TempDir())
	p := invented(t, f)
	if err := write(f, p); err != nil {
		t.Fatal(err)
	}
	p, err := f.Read("ann")
	if err != nil {
		t.Fatal(err)
	}
	if c, err := p.Change(); len(c.Lines) > 0 || err != nil {
		t.Errorf("nothing was changed: %q, %v", c.Lines, err)
	}
	p.Record.Client, p.Record.Tests, p.Record.Minutes = "Client B", p.Record.Tests[:4], 0
	p.Record.Visits = []record.TrainingDay{{Day: p.Record.Profile.Day}}
	c, err := p.Change()
	want := `~ /client: "Client A, 67, a woman" -> "Client B"
- /minutes: 45
- /tests/4: {"day":"2026-11-25","exercise":"one-arm-shoulder-press","side":"left","hold":"one hand","load":"2 kg","reps":12,"effort":"rir 6"}
+ /visits/0: {"day":"2026-11-25"}`
	if got := strings.Join(c.Lines, "\n"); got != want || err != nil {
		t.Errorf("%v\n%s", err, got)
	}
}
