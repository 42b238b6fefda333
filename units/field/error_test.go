package field_test

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

func TestFieldErrorText(t *testing.T) {
	tests := []struct {
		err  *field.Error
		want string
	}{
		{field.New("/reps", 40, "1 to 30", field.ErrOutOfRange), "out of range: /reps = 40, allowed: 1 to 30"},
		{field.New("/reps", nil, "1 to 30", field.ErrMissing), "not given: /reps, allowed: 1 to 30"},
		{field.Bad(nil, "", field.ErrMissing), "not given: value"},
		{&field.Error{}, "bad field: value"},
	}
	for _, tt := range tests {
		if got := tt.err.Error(); got != tt.want {
			t.Errorf("Error() = %q, want %q", got, tt.want)
		}
	}
}

func TestFieldErrorsAreSeen(t *testing.T) {
	var all field.Errors
	all.Add("/a", field.New("/b", 1, "2", field.ErrOutOfRange))
	all.Add("/c", units.ErrNoRIR)
	err := fmt.Errorf("while reading: %w", all.Err())
	for _, want := range []error{field.ErrOutOfRange, units.ErrNoRIR} {
		if !errors.Is(err, want) {
			t.Errorf("%v is not seen in %v", want, err)
		}
	}
	if errors.Is(err, field.ErrSyntax) {
		t.Errorf("%v is seen in %v", field.ErrSyntax, err)
	}
	want := "out of range: /a/b = 1, allowed: 2\n" + units.ErrNoRIR.Error() + ": /c"
	if got := all.Error(); got != want {
		t.Errorf("Error() = %q, want %q", got, want)
	}
}

func paths(err error) []string {
	var all field.Errors
	all.Add("", err)
	got := make([]string, len(all))
	for i, f := range all {
		got[i] = f.Path
	}
	return got
}

func TestFieldErrorsAdd(t *testing.T) {
	a := field.New("/a", nil, "", field.ErrMissing)
	b := field.New("/b", nil, "", field.ErrUnknown)
	plain := errors.New("plain")
	tests := []struct {
		name string
		err  error
		want []string
	}{
		{"nil", nil, nil},
		{"a nil *FieldError", (*field.Error)(nil), nil},
		{"no fields", field.Errors{}, nil},
		{"one", a, []string{"/x/a"}},
		{"one wrapped", fmt.Errorf("so: %w", a), []string{"/x/a"}},
		{"two", field.Errors{a, b}, []string{"/x/a", "/x/b"}},
		{"two wrapped", fmt.Errorf("so: %w", field.Errors{a, b}), []string{"/x/a", "/x/b"}},
		{"joined", errors.Join(a, plain, field.Errors{b, a}), []string{"/x/a", "/x", "/x/b", "/x/a"}},
		{"no field", plain, []string{"/x"}},
		{"joined, no field", errors.Join(plain, plain), []string{"/x"}},
	}
	for _, tt := range tests {
		got := field.At("/x", tt.err)
		if diff := cmp.Diff(tt.want, paths(got), cmpopts.EquateEmpty()); diff != "" {
			t.Errorf("%s: paths (-want +got):\n%s", tt.name, diff)
		}
		if (got == nil) != (len(tt.want) == 0) {
			t.Errorf("%s: At = %v", tt.name, got)
		}
	}
	if a.Path != "/a" {
		t.Errorf("At changed the error it was given: %v", a)
	}
	if err := field.At("/x", plain); !errors.Is(err, plain) {
		t.Errorf("%v does not unwrap to the plain error", err)
	}
}

// Refuse adds what Add of New adds, and nothing where nothing is wrong.
func TestErrorsRefuse(t *testing.T) {
	for _, got := range []any{nil, 0, 1.5, "x"} {
		var one, other field.Errors
		one.Refuse(true, "/a", got, "none", field.ErrConflict)
		other.Add("/a", field.Bad(got, "none", field.ErrConflict))
		if one.Error() != other.Error() || !errors.Is(one, field.ErrConflict) {
			t.Errorf("%v: %v, want %v", got, one, other)
		}
		one.Refuse(false, "/b", got, "none", field.ErrConflict)
		if len(one) != 1 {
			t.Errorf("%v: %v", got, one)
		}
	}
}

func TestAtPrefixes(t *testing.T) {
	path := rapid.StringMatching(`(/[a-z0-9~]{0,3}){0,3}`)
	rapid.Check(t, func(t *rapid.T) {
		var inner field.Errors
		var want []string
		outer, middle := path.Draw(t, "outer"), path.Draw(t, "middle")
		for _, p := range rapid.SliceOf(path).Draw(t, "inner") {
			inner.Add(p, field.ErrMissing)
			want = append(want, outer+middle+p)
		}
		got := field.At(outer, field.At(middle, inner.Err()))
		if !slices.Equal(paths(got), want) {
			t.Fatalf("paths %q, want %q", paths(got), want)
		}
		if !slices.Equal(paths(got), paths(field.At(outer+middle, inner.Err()))) {
			t.Fatalf("two steps and one give different paths: %q", paths(got))
		}
	})
}

func TestMust(t *testing.T) {
	if got := units.Must(units.Kilograms(2)); got != 2*units.Kilogram {
		t.Errorf("Must = %v, want 2 kg", got)
	}
	defer func() {
		if err, _ := recover().(error); err == nil || !strings.Contains(err.Error(), "malformed") {
			t.Errorf("Must panics with %v, want its error", err)
		}
	}()
	units.Must(units.ParseMass("two kilos"))
	t.Error("Must did not panic")
}
