package folder

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"example.org/posology/examples/internal/command"
	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// ErrChanged: the record was changed since it was read.
var ErrChanged = errors.New("the record was changed by somebody else since it was read: nothing is written")

// A Folder keeps records.
type Folder string

// A Person is a record with its name in the folder.
type Person struct {
	Name      string
	Record    record.Record
	Interview string // lines of answers; empty if there are none
	read      []byte // as it stood in the folder; nil: it is new
}

// IsNew reports whether the folder has no such person yet.
func (p Person) IsNew() bool { return p.read == nil }

// allowed are names that are file names on every system.
var allowed = regexp.MustCompile(`^[a-z0-9]+(-[a-z0-9]+)*$`)

// Named checks a name of a person; it had better name nobody.
func Named(name string) error {
	if !allowed.MatchString(name) || len(name) > 40 {
		return fmt.Errorf("%q cannot name a record: small letters, digits and single dashes between them, 40 at most", name)
	}
	return nil
}

func (f Folder) file(name string) string { return filepath.Join(string(f), name+".json") }

func (f Folder) interview(name string) string {
	return filepath.Join(string(f), "interviews", name+".txt")
}

// older is the name of the older record of a number, from 1.
func (f Folder) older(name string, n int) string {
	return filepath.Join(string(f), "older", fmt.Sprintf("%s.%04d.json", name, n))
}

// File returns where the record of a name is kept.
func (f Folder) File(name string) string { return f.file(name) }

// Names lists the people, in the order of their names.
func (f Folder) Names() ([]string, error) {
	list, err := os.ReadDir(string(f))
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	var names []string
	for _, e := range list {
		name, isRecord := strings.CutSuffix(e.Name(), ".json")
		if isRecord && Named(name) == nil {
			names = append(names, name)
		}
	}
	return names, err
}

// Read returns a person, an empty one where the folder has none of that name.
func (f Folder) Read(name string) (Person, error) {
	p := Person{Name: name, Record: record.Record{Version: record.Version}}
	if err := Named(name); err != nil {
		return p, err
	}
	data, err := os.ReadFile(f.file(name))
	if errors.Is(err, fs.ErrNotExist) {
		return p, nil
	}
	if err != nil {
		return p, err
	}
	p.read = data
	if p.Record, err = record.Decode(data, field.Strict); err != nil {
		return p, fmt.Errorf("%s cannot be used:\n%w", f.file(name), err)
	}
	text, err := os.ReadFile(f.interview(name))
	if errors.Is(err, fs.ErrNotExist) {
		err = nil
	}
	p.Interview = string(text)
	return p, err
}

// Older returns the records that a person had before, the oldest first.
func (f Folder) Older(name string) ([]record.Record, error) {
	var list []record.Record
	for n := 1; ; n++ {
		data, err := os.ReadFile(f.older(name, n))
		if errors.Is(err, fs.ErrNotExist) {
			return list, nil
		}
		if err != nil {
			return list, err
		}
		r, err := record.Decode(data, field.Strict)
		if err != nil {
			return list, fmt.Errorf("%s: %w", f.older(name, n), err)
		}
		list = append(list, r)
	}
}

// Changes says what would be written of a person beside what stands in the folder:
// a line for each thing that is new, other or gone.
func (p Person) Changes() ([]string, error) {
	is, err := p.text()
	if err != nil {
		return nil, err
	}
	return changes(p.read, is)
}

// text is the record as it is kept. One that could not be read back is refused.
func (p Person) text() ([]byte, error) {
	var out bytes.Buffer
	if err := command.JSON(&out, p.Record); err != nil {
		return nil, err
	}
	if _, err := record.Decode(out.Bytes(), field.Strict); err != nil {
		return nil, fmt.Errorf("nothing is written, since this could not be read back:\n%w", err)
	}
	return out.Bytes(), nil
}

// Write keeps a person: first the interview and the record that is to be replaced,
// then the record itself. An interview that is newer than its record is taken for
// what was answered last time, which is what it is.
func (f Folder) Write(p Person) error {
	is, err := p.text()
	if err != nil {
		return err
	}
	if p.Interview != "" {
		if err := whole(f.interview(p.Name), []byte(p.Interview)); err != nil {
			return err
		}
	}
	now, err := os.ReadFile(f.file(p.Name))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if !bytes.Equal(now, p.read) || (err == nil) == p.IsNew() {
		return ErrChanged
	}
	if !p.IsNew() {
		if err := f.keep(p.Name, p.read); err != nil {
			return err
		}
	}
	return whole(f.file(p.Name), is)
}

// keep puts a record with the older ones, once.
func (f Folder) keep(name string, data []byte) error {
	for n := 1; ; n++ {
		was, err := os.ReadFile(f.older(name, n))
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return whole(f.older(name, n), data)
		case err != nil:
			return err
		case slices.Equal(was, data): // kept by somebody who was then stopped
			return nil
		}
	}
}
