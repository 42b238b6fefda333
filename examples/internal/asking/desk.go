package asking

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"iter"
	"maps"
	"slices"
	"strconv"
	"strings"

	"example.org/posology/examples/internal/page"
	"example.org/posology/screening"
	"example.org/posology/screening/interview"
	"example.org/posology/units"
)

// ErrStopped: whoever was asked stopped, or the lines ended.
var ErrStopped = errors.New("stopped: nothing is written")

// A Desk asks what is not known yet: of whoever types lines, or of a file.
type Desk struct {
	lines *bufio.Scanner
	out   io.Writer
	file  *Answers
}

// Typed returns a desk at which somebody types.
func Typed(in io.Reader, out io.Writer) Desk { return Desk{lines: bufio.NewScanner(in), out: out} }

// Filed returns a desk that finds its answers in a file. What has no line there is taken for an empty answer.
func Filed(a Answers) Desk { return Desk{file: &a} }

// IsTyped reports whether somebody types.
func (d Desk) IsTyped() bool { return d.file == nil }

// Ask asks until an answer can be read, which may be the empty one. An answer of a file that cannot be read is an error with its line.
func (d Desk) Ask(key, text, hint string, read func(answer string) error) error {
	if !d.IsTyped() {
		if err := read(d.file.Take(key)); err != nil {
			return d.file.Wrong(key, err.Error())
		}
		return nil
	}
	for {
		fmt.Fprintln(d.out)
		page.Wrap(d.out, "", text)
		page.Wrap(d.out, "", "("+hint+")")
		fmt.Fprint(d.out, "> ")
		if !d.lines.Scan() {
			fmt.Fprintln(d.out)
			return errors.Join(ErrStopped, d.lines.Err())
		}
		answer := strings.TrimSpace(d.lines.Text())
		if strings.EqualFold(answer, "stop") {
			return ErrStopped
		}
		err := read(answer)
		if err == nil {
			return nil
		}
		page.Wrap(d.out, "", "Sorry, "+err.Error()+".")
	}
}

// Text asks for words; those that are needed cannot be left out.
func (d Desk) Text(key, text, hint string, needed bool) (words string, err error) {
	err = d.Ask(key, text, hint, func(answer string) error {
		if answer == "" && needed {
			return errors.New("this is needed")
		}
		words = answer
		return nil
	})
	return words, err
}

// Interview asks on with what was known before, and does not ask what is settled.
func (d Desk) Interview(day units.Day, known Known) (interview.Interview, error) {
	if !d.IsTyped() {
		known.Answers = maps.Clone(known.Answers)
		maps.Copy(known.Answers, known.Settled)
		return d.file.Interview(day, known)
	}
	fmt.Fprintln(d.out, Welcome)
	return Converse(day, d.lines, d.out, known)
}

// Unused says of each line of a file that nothing asked for it.
func (d Desk) Unused() []string {
	if d.IsTyped() {
		return nil
	}
	return d.file.Unused()
}

// OneOf asks for one of several values, by number or name. The zero value is that nothing was answered or is not known, where that may be.
func OneOf[T fmt.Stringer](d Desk, key, text string, all iter.Seq[T], needed bool) (one T, err error) {
	list := slices.Collect(all)
	err = d.Ask(key, text+numbered(list), "one number or name", func(answer string) error {
		if (answer == "" || isUnsure(answer)) && !needed {
			return nil
		}
		i, err := among(list, answer)
		if err == nil {
			one = list[i]
		}
		return err
	})
	return one, err
}

// SeveralOf asks for any of several values, by number or name, or "none" of them. An empty answer means that it was not asked.
func SeveralOf[T fmt.Stringer](d Desk, key, text string, all iter.Seq[T]) (some []T, asked bool, err error) {
	list := slices.Collect(all)
	err = d.Ask(key, text+numbered(list), `numbers or names with commas between them; "none"`, func(answer string) error {
		some, asked = nil, answer != ""
		if answer == "" || strings.EqualFold(answer, "none") {
			return nil
		}
		for word := range strings.SplitSeq(answer, ",") {
			i, err := among(list, strings.TrimSpace(word))
			switch {
			case err != nil:
				return err
			case slices.ContainsFunc(some, func(one T) bool { return one.String() == list[i].String() }):
				return fmt.Errorf("%s stands there twice", list[i])
			}
			some = append(some, list[i])
		}
		return nil
	})
	return some, asked, err
}

func numbered[T fmt.Stringer](list []T) string {
	var text strings.Builder
	for i, one := range list {
		fmt.Fprintf(&text, " %d %s;", i+1, one)
	}
	return strings.TrimSuffix(text.String(), ";") + "."
}

func among[T fmt.Stringer](list []T, answer string) (int, error) {
	if n, err := strconv.Atoi(answer); err == nil && n >= 1 && n <= len(list) {
		return n - 1, nil
	}
	if i := slices.IndexFunc(list, func(one T) bool {
		return strings.EqualFold(strings.TrimPrefix(one.String(), "the "), strings.TrimPrefix(answer, "the "))
	}); i >= 0 {
		return i, nil
	}
	return 0, fmt.Errorf("%q is none of%s", answer, strings.TrimSuffix(numbered(list), "."))
}

// YesNo asks for yes, no or "don't know", which an empty answer is too.
func (d Desk) YesNo(key, text string) (screening.Answer, error) { return d.yesNo(key, text, false) }

// Plainly asks for yes, no or "don't know", where an empty answer is none of them.
func (d Desk) Plainly(key, text string) (screening.Answer, error) { return d.yesNo(key, text, true) }

func (d Desk) yesNo(key, text string, needed bool) (yes screening.Answer, err error) {
	err = d.Ask(key, text, hints[interview.YesNo], func(answer string) (err error) {
		if answer == "" && !needed || isUnsure(answer) {
			return nil
		}
		yes, err = readYesNo(answer)
		return err
	})
	return yes, err
}
