package setlog

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"example.org/posology/dose/exercise"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

// checkDays checks the form and the range of days.
func (rd *Reader) checkDays() error {
	var bad field.Errors
	if _, ok := dayFormOf(rd.DayForm); !ok {
		bad.Add("/day_form", field.Bad(fmt.Sprintf("%.40q", rd.DayForm), "day, month and year in any order, parted by a point, slash, hyphen or space", field.ErrSyntax))
	}
	for _, end := range [...]struct {
		path string
		day  units.Day
	}{{"/from", rd.From}, {"/until", rd.Until}} {
		if end.day != 0 {
			bad.Add(end.path, end.day.Check())
		}
	}
	bad.Refuse(len(bad) == 0 && rd.Until != 0 && rd.Until < rd.From, "/until", rd.Until, rd.From.String()+" or later", field.ErrConflict)
	return bad.Err()
}

// checkNames checks what the log calls things: each once, and by check.
func checkNames[T any](names map[string]T, check func(name string, is T) error) error {
	var bad field.Errors
	seen := map[string]bool{}
	for _, name := range slices.Sorted(maps.Keys(names)) {
		path := "/" + strings.NewReplacer("~", "~0", "/", "~1").Replace(name)
		switch small := folded(name); {
		case small == "":
			bad.Add(path, field.Bad(nil, "a text of the log", field.ErrMissing))
		case seen[small]:
			bad.Add(path, field.Bad(fmt.Sprintf("%.40q", name), "each text once, whatever its case", field.ErrDuplicate))
		default:
			seen[small] = true
			bad.Add(path, check(small, names[name]))
		}
	}
	return bad.Err()
}

func (rd *Reader) checkSide(name string, is body.Side) error {
	if own, err := parse[body.Side](name); err == nil && own != is {
		return field.Bad(is, "the side itself, "+name, field.ErrConflict)
	}
	return is.Check()
}

func (rd *Reader) checkExercise(_ string, id exercise.ID) error {
	if id == "" {
		return field.Bad(nil, "the ID of an exercise", field.ErrMissing)
	}
	if _, known := rd.Catalogue.Get(id); !known && rd.Catalogue.Len() > 0 {
		return field.Bad(fmt.Sprintf("%.40q", id), "the ID of an exercise in the catalogue", field.ErrUnknown)
	}
	return nil
}

// foldedNames are names as they are compared.
func foldedNames[T any](names map[string]T) map[string]T {
	all := make(map[string]T, len(names))
	for name, is := range names {
		all[folded(name)] = is
	}
	return all
}

// side reads a side, by the log's own texts too.
func (p *parser) side(text string) (body.Side, error) {
	text = strings.ToLower(text)
	if s, named := p.sides[text]; named {
		return s, nil
	}
	return parse[body.Side](text)
}

// A dayForm is how days are written: the places of year, month and day, and what stands
// between. The zero dayForm is that of ISO 8601.
type dayForm struct {
	text    string
	seps    [2]string
	y, m, d int
}

var dayForms = regexp.MustCompile(`^(day|month|year)([./ -])(day|month|year)([./ -])(day|month|year)$`)

func dayFormOf(text string) (f dayForm, ok bool) {
	if text == "" {
		return f, true
	}
	words := dayForms.FindStringSubmatch(text)
	if words == nil {
		return f, false
	}
	order := []string{words[1], words[3], words[5]}
	f = dayForm{text, [2]string{words[2], words[4]}, slices.Index(order, "year"), slices.Index(order, "month"), slices.Index(order, "day")}
	return f, f.y >= 0 && f.m >= 0 && f.d >= 0
}

// read reads a day; an empty text is none.
func (f *dayForm) read(text string) (units.Day, error) {
	if f.text == "" || text == "" {
		return parse[units.Day](text)
	}
	first, rest, _ := strings.Cut(text, f.seps[0])
	second, third, _ := strings.Cut(rest, f.seps[1])
	numbers := [3]string{first, second, third}
	for i, digits := range numbers {
		most := 2
		if i == f.y {
			most = 4
		}
		if len(digits) < max(1, most*2-4) || len(digits) > most || strings.Trim(digits, "0123456789") != "" {
			return 0, field.Bad(fmt.Sprintf("%.40q", text), "a day in numbers as "+f.text+", the year in four digits", field.ErrSyntax)
		}
	}
	year, _ := strconv.Atoi(numbers[f.y]) // digits only: no error
	month, _ := strconv.Atoi(numbers[f.m])
	day, _ := strconv.Atoi(numbers[f.d])
	return units.NewDay(year, time.Month(month), day)
}
