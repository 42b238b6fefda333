// Command store keeps values of the library in a database, in a log and on paper as
// a clinic's own program would, and fails on anything that does not come back as it
// was. It is a module of its own, since the library needs no database.
package main

import (
	"bytes"
	"context"
	"database/sql"
	"encoding/json"
	"errors"
	"fmt"
	"log"
	"log/slog"
	"strings"

	_ "modernc.org/sqlite"

	"example.org/posology/dose/equipment"
	"example.org/posology/dose/onerm"
	"example.org/posology/progression/record"
	"example.org/posology/screening"
	"example.org/posology/units"
	"example.org/posology/units/field"
)

func main() {
	log.SetFlags(0)
	if err := run(context.Background()); err != nil {
		log.Fatal(err)
	}
}

func run(ctx context.Context) error {
	db, err := sql.Open("sqlite", ":memory:")
	if err != nil {
		return err
	}
	defer db.Close()
	db.SetMaxOpenConns(1) // each connection would have a database of its own
	s := store{ctx, db}
	r, err := trained()
	if err != nil {
		return err
	}
	for _, check := range []func() error{
		func() error { return s.values(r.Kit) },
		s.refusals,
		s.enumerations,
		func() error { return s.record(&r) },
		func() error { return logged(r.Entries[0].Items[0]) },
		func() error { return explained(r.Entries[0].Items[0]) },
		worked,
	} {
		if err := check(); err != nil {
			return err
		}
	}
	return nil
}

// A store is a database, with what most calls want.
type store struct {
	ctx context.Context
	db  *sql.DB
}

func (s store) exec(query string, args ...any) error {
	_, err := s.db.ExecContext(s.ctx, query, args...)
	return err
}

// values stores one of each kind that a visit consists of, in columns that a
// database might turn into numbers and times, and reads them back.
func (s store) values(kit equipment.Kit) error {
	if err := s.exec(`CREATE TABLE sets (day DATE, until DATE, load NUMERIC, effort NUMERIC, unrated TEXT, marked TEXT, setting INTEGER, kit TEXT)`); err != nil {
		return err
	}
	day, err := units.NewDay(2026, 11, 25)
	if err != nil {
		return err
	}
	effort, err := units.InReserve(2)
	if err != nil {
		return err
	}
	marked, err := units.ParseMarked("12.5 lb")
	if err != nil {
		return err
	}
	load := 6*units.Kilogram + units.Gram/4
	err = s.exec(`INSERT INTO sets VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
		day, units.Day(0), load, effort, units.Effort{}, marked, screening.InGroup, field.Column[equipment.Kit]{V: kit})
	if err != nil {
		return err
	}
	var (
		day2, until = units.Day(0), day
		load2       units.Mass
		effort2     units.Effort
		unrated     = effort
		marked2     units.Marked
		setting     screening.Setting
		kit2        field.Column[equipment.Kit]
		kinds       string
	)
	row := s.db.QueryRowContext(s.ctx, `SELECT *, typeof(day)||' '||typeof(until)||' '||typeof(load)||' '||typeof(effort)||' '||typeof(unrated)||' '||
		typeof(marked)||' '||typeof(setting)||' '||typeof(kit) FROM sets`)
	if err := row.Scan(&day2, &until, &load2, &effort2, &unrated, &marked2, &setting, &kit2, &kinds); err != nil {
		return err
	}
	same, err := sameJSON(kit, kit2.V)
	switch {
	case err != nil:
		return err
	case day2 != day, until != 0, load2 != load, effort2 != effort, !unrated.IsZero(), marked2 != marked, setting != screening.InGroup, !same:
		return fmt.Errorf("stored and read back: %v %v %v %v %v %v %v %v", day2, until, load2, effort2, unrated, marked2, setting, kit2.V)
	case kinds != "text null text text null text text text":
		return fmt.Errorf("stored as: %s", kinds)
	}
	fmt.Printf("stored: %s, %s, %s, %s, %s, a kit of %d dumbbells\n", day2, load2, effort2, marked2, setting, len(kit2.V.Dumbbells))
	return nil
}

// refusals reads bare numbers, as a version before this one, or another program,
// may have stored them.
func (s store) refusals() error {
	var day units.Day
	var load units.Mass
	var effort units.Effort
	var setting screening.Setting
	for _, into := range []any{&day, &load, &effort, &setting, &field.Column[equipment.Kit]{}, &record.Record{}} {
		var bad *field.Error
		if err := s.db.QueryRowContext(s.ctx, `SELECT 3`).Scan(into); !errors.As(err, &bad) || !errors.Is(err, field.ErrSyntax) {
			return fmt.Errorf("a number read into %T: %w", into, err)
		}
	}
	fmt.Println("refused: bare numbers")
	return nil
}

// record keeps a person's whole file with a decision in it, reads it back, and
// works the decision out again to the same bytes.
func (s store) record(r *record.Record) error {
	entry, err := r.Decide(r.Visits[len(r.Visits)-1].Day + 4)
	if err != nil {
		return err
	}
	r.Entries = append(r.Entries, entry)
	if err := s.exec(`CREATE TABLE files (id INTEGER PRIMARY KEY, file TEXT)`); err != nil {
		return err
	}
	if err := s.exec(`INSERT INTO files VALUES (1, ?)`, *r); err != nil {
		return err
	}
	var back record.Record
	if err := s.db.QueryRowContext(s.ctx, `SELECT file FROM files`).Scan(&back); err != nil {
		return err
	}
	if same, err := sameJSON(*r, back); err != nil || !same {
		return fmt.Errorf("the record does not come back as it was stored: %w", err)
	}
	again := back.Replay()[0]
	if again.Err != nil {
		return again.Err
	}
	if same, err := sameJSON(entry, again.Now); err != nil || !same {
		return fmt.Errorf("the decision is worked out otherwise: %w", err)
	}
	fmt.Println("replayed:", again.Now.Items[0].Exercise, again.Now.Items[0].Decision.Action, "to the same bytes")
	return nil
}

func sameJSON(a, b any) (bool, error) {
	was, err := json.Marshal(a)
	if err != nil {
		return false, err
	}
	is, err := json.Marshal(b)
	return bytes.Equal(was, is), err
}

// logged writes a decision, and errors, as text in a log.
func logged(item record.Decided) error {
	var b bytes.Buffer
	var bad field.Errors
	bad.Add("/sets/0/reps", field.Bad(0, "1 or more", field.ErrOutOfRange))
	bad.Add("/sets/1/load", field.Bad(nil, "a mass", field.ErrMissing))
	drop := func(groups []string, a slog.Attr) slog.Attr {
		if len(groups) == 0 && a.Key == slog.TimeKey {
			return slog.Attr{}
		}
		return a
	}
	slog.New(slog.NewTextHandler(&b, &slog.HandlerOptions{ReplaceAttr: drop})).Info("decided", "item", item, "err", bad.Err())
	line := strings.TrimSuffix(b.String(), "\n")
	if strings.Contains(line, "0x") || strings.Contains(line, "\n") || strings.Contains(line, "{") || len(line) > 600 {
		return fmt.Errorf("a decision in a log: %s", line)
	}
	fmt.Println(line)
	return nil
}

// explained goes from a number on a page down to who says so.
func explained(item record.Decided) error {
	ledger, err := record.Ledger()
	if err != nil {
		return err
	}
	words, err := record.Words()
	if err != nil {
		return err
	}
	sources := 0
	for _, why := range item.Decision.Reasons {
		fmt.Println(words.Clinician(why))
		for _, line := range ledger.Explain(why.Facts...) {
			fmt.Println("  ", line)
			if !line.Known {
				return fmt.Errorf("%s rests on %s, which is not in the ledger", why.Code, line.Fact.ID)
			}
			if line.Source.Citation != "" {
				sources++
			}
		}
	}
	if sources == 0 {
		return errors.New("no reason comes down to a source")
	}
	return nil
}

// worked prints an estimate as a line to be checked by hand.
func worked() error {
	w, err := onerm.Epley.Work(6*units.Kilogram, 10)
	if err != nil {
		return err
	}
	if got, want := w.String(), "6 kg × (1 + 10/30) = 8 kg"; got != want {
		return fmt.Errorf("%s, want %s", got, want)
	}
	fmt.Println(w)
	return nil
}
