package folder

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"

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
	Papers    []Page // to be written beside the record; none is read
	read      []byte // as it stood in the folder; nil: it is new
}

// A Page is a paper as a file of its own.
type Page struct {
	Name string // of the file, such as "hall-2027-01-05-handout.html"
	Data []byte
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

func (f Folder) interview(name string) string {
	return filepath.Join(string(f), "interviews", name+".txt")
}

// older is the name of the older record of a number, from 1.
func (f Folder) older(name string, n int) string {
	return filepath.Join(string(f), "older", fmt.Sprintf("%s.%04d.json.gz", name, n))
}

// File returns where the record of a name is kept.
func (f Folder) File(name string) string { return filepath.Join(string(f), name+".json") }

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
	data, err := os.ReadFile(f.File(name))
	if errors.Is(err, fs.ErrNotExist) {
		return p, nil
	}
	if err != nil {
		return p, err
	}
	p.read = data
	if p.Record, err = record.Decode(data, field.Strict); err != nil {
		return p, fmt.Errorf("%s cannot be used:\n%w", f.File(name), err)
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
		data, err := unpacked(f.older(name, n))
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

// unpacked reads a file that was packed, whole.
func unpacked(name string) ([]byte, error) {
	file, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	zip, err := gzip.NewReader(file)
	if err != nil {
		return nil, err
	}
	return io.ReadAll(zip)
}

func packed(data []byte) []byte {
	var out bytes.Buffer
	zip := gzip.NewWriter(&out)
	zip.Write(data) // a buffer takes everything
	zip.Close()
	return out.Bytes()
}

// A Change is what is to be written of a person.
type Change struct {
	Person
	Lines []string // what is new, other or gone, by its place in the record
	is    []byte
}

// Change says what would be written of a person beside what stands in the folder. A record that could not be read back is an error.
func (p Person) Change() (Change, error) {
	text, err := p.Record.Value()
	if err != nil {
		return Change{}, fmt.Errorf("nothing is written, since this could not be read back:\n%w", err)
	}
	c := Change{Person: p, is: fmt.Append(nil, text, "\n")}
	c.Lines, err = changes(p.read, c.is)
	for _, one := range p.Papers {
		c.Lines = append(c.Lines, "+ "+filepath.Join("papers", one.Name))
	}
	return c, err
}

// Write keeps a person: first the interview and the record that is to be replaced,
// then the record itself, and its papers last, since they can be printed again from it. An interview that is newer than its record is taken for
// what was answered last time, which is what it is.
func (f Folder) Write(c Change) error {
	if c.Interview != "" {
		if err := whole(f.interview(c.Name), []byte(c.Interview)); err != nil {
			return err
		}
	}
	now, err := os.ReadFile(f.File(c.Name))
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if !bytes.Equal(now, c.read) || (err == nil) == c.IsNew() {
		return ErrChanged
	}
	if err := f.replace(c); err != nil {
		return err
	}
	for _, one := range c.Papers {
		if err := whole(filepath.Join(string(f), "papers", one.Name), one.Data); err != nil {
			return err
		}
	}
	return nil
}

// replace puts the new record in the place of the one that was read, if it is another.
func (f Folder) replace(c Change) error {
	if bytes.Equal(c.is, c.read) {
		return nil
	}
	if !c.IsNew() {
		if err := f.keep(c.Name, c.read); err != nil {
			return err
		}
	}
	return whole(f.File(c.Name), c.is)
}

// keep puts a record with the older ones, unless it is the last of them: kept by somebody who was then stopped.
func (f Folder) keep(name string, data []byte) error {
	n := 1
	for ; ; n++ {
		if _, err := os.Stat(f.older(name, n)); errors.Is(err, fs.ErrNotExist) {
			break
		} else if err != nil {
			return err
		}
	}
	if n > 1 {
		last, err := unpacked(f.older(name, n-1))
		if err != nil || bytes.Equal(last, data) {
			return err
		}
	}
	return whole(f.older(name, n), packed(data))
}
