package main

import (
	_ "embed"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"example.org/posology/examples/internal/demo"
	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// Written by examples/policies; a test there compares it.
//
//go:embed policies.csv
var policiesData []byte

// Of testdata/published; a test compares it.
//
//go:embed bench-rtf.csv
var benchData []byte

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// sources are what is drawn from.
type sources struct{ reviewed, planned, curves, bench []byte }

// charts are all pictures, by name.
var charts = []struct {
	name string
	draw func(sources) (figure, error)
}{
	{"strength", func(s sources) (figure, error) { return ofRecord(s.reviewed, strength) }},
	{"ladder", func(s sources) (figure, error) { return ofRecord(s.reviewed, ladder) }},
	{"sets", func(s sources) (figure, error) { return ofRecord(s.planned, weekly) }},
	{"policies", func(s sources) (figure, error) { return compared(s.curves) }},
	{"equation", func(s sources) (figure, error) { return equation(s.bench) }},
}

// noted says whose record it is, where that is written, and what no picture of one is.
func noted(r record.Record) string {
	const caution = "No medical device: a licensed clinician decides."
	if r.Note == "" {
		return caution
	}
	return r.Note + ". " + caution
}

func ofRecord(data []byte, draw func(record.Record) (figure, error)) (figure, error) {
	r, err := record.Decode(data, field.Strict)
	if err != nil {
		return figure{}, err
	}
	return draw(r)
}

// run returns the exit status: 0, 1 for what cannot be drawn, 2 for bad flags.
func run(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("charts", flag.ContinueOnError)
	flags.SetOutput(stderr)
	out := flags.String("out", "", "write SVG and PNG into this `folder`, which must be there")
	only := flags.String("chart", "", "draw this one alone: `name` strength, ladder, sets, policies or equation")
	s := sources{demo.HomeReview(), demo.VillageHallBuild(), policiesData, benchData}
	files := map[string]*[]byte{"case": &s.reviewed, "week": &s.planned, "curves": &s.curves, "bench": &s.bench}
	names := map[string]*string{}
	for name, what := range map[string]string{
		"case": "the record with visits, for strength and ladder", "week": "the record that a week is planned for",
		"curves": "what examples/policies -curves wrote", "bench": "the table of sets to failure",
	} {
		names[name] = flags.String(name, "", "read "+what+" from this `file`")
	}
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 0 {
		fmt.Fprintln(stderr, "charts: there are no other arguments")
		return 2
	}
	for name, file := range names {
		if *file == "" {
			continue
		}
		data, err := os.ReadFile(*file)
		if err != nil {
			fmt.Fprintln(stderr, "charts:", err)
			return 1
		}
		*files[name] = data
	}
	drawn := 0
	for _, c := range charts {
		if *only != "" && *only != c.name {
			continue
		}
		drawn++
		f, err := c.draw(s)
		if err == nil {
			err = f.put(*out, stdout)
		}
		if err != nil {
			fmt.Fprintf(stderr, "charts: %s: %v\n", c.name, err)
			return 1
		}
	}
	if drawn == 0 {
		fmt.Fprintf(stderr, "charts: no picture is named %q\n", *only)
		return 2
	}
	return 0
}

const dpi = 216

// put writes the picture into a folder, or what it says where there is none.
func (f figure) put(folder string, w io.Writer) error {
	if folder == "" {
		_, err := fmt.Fprintf(w, "%s\n%s\n\n", f.title, f.text())
		return err
	}
	for ending, write := range map[string]func(io.Writer) error{
		"svg": f.svg,
		"png": func(w io.Writer) error { return f.png(w, dpi) },
	} {
		file, err := os.Create(filepath.Join(folder, f.name+"."+ending))
		if err != nil {
			return err
		}
		if err := write(file); err != nil {
			file.Close()
			return err
		}
		if err := file.Close(); err != nil {
			return err
		}
	}
	return nil
}
