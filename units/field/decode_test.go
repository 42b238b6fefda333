package field_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"example.org/posology/units"
	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

// base is embedded in log, and its Note is hidden by that of log.
type base struct {
	ID   string
	Note string `json:"note"`
}

// set is one kind of everything that DecodeJSON reads.
type set struct {
	Reps  int64                  `json:"reps"`
	Load  units.Mass             `json:"load"`
	RIR   units.Range[units.RIR] `json:"rir,omitzero"`
	RPE   units.Effort           `json:"rpe,omitzero"`
	Tags  []string               `json:"tags,omitempty"`
	Tempo [3]uint8               `json:"tempo"`
}

type log struct {
	base
	Day     units.Day                   `json:"day"`
	Sets    []set                       `json:"sets"`
	Best    *set                        `json:"best,omitempty"`
	Share   float32                     `json:"share"`
	Exact   float64                     `json:"exact"`
	Small   int8                        `json:"small"`
	Count   uint16                      `json:"count"`
	Done    bool                        `json:"done"`
	Note    string                      `json:"note"`
	Rack    map[string]units.Marked     `json:"rack,omitempty"`
	Heavier map[units.Day]*units.Marked `json:"heavier,omitempty"`
	Extra   any                         `json:"extra,omitempty"`
	Later   json.RawMessage             `json:"later,omitempty"`
	Hidden  int                         `json:"-"`
	//lint:ignore SA5008 a field named "-" is what is tested
	Dash int `json:"-,"`
	//lint:ignore U1000 that it is passed over is what is tested
	private int
}

var compareLogs = cmp.Options{
	cmp.AllowUnexported(log{}, base{}, units.Range[units.RIR]{}, units.Effort{}),
	cmpopts.EquateEmpty(),
}

func anyLog() *rapid.Generator[log] {
	return rapid.Custom(func(t *rapid.T) log {
		sets := rapid.SliceOfN(anySet(), 0, 3).Draw(t, "sets")
		l := log{
			base:    base{ID: rapid.String().Draw(t, "id")},
			Day:     anyDay().Draw(t, "day"),
			Sets:    sets,
			Share:   rapid.Float32().Draw(t, "share"),
			Exact:   rapid.Float64().Draw(t, "exact"),
			Small:   rapid.Int8().Draw(t, "small"),
			Count:   rapid.Uint16().Draw(t, "count"),
			Done:    rapid.Bool().Draw(t, "done"),
			Note:    rapid.String().Draw(t, "note"),
			Rack:    map[string]units.Marked{rapid.String().Draw(t, "name"): {Mass: anyMass().Draw(t, "mass"), Unit: units.LB}},
			Heavier: map[units.Day]*units.Marked{anyDay().Draw(t, "when"): nil},
			Extra:   map[string]any{"list": []any{1.5, "two", nil, true}},
			Later:   json.RawMessage(`{"a":[1,2]}`),
			Dash:    rapid.Int().Draw(t, "dash"),
		}
		if len(sets) > 0 {
			l.Best = &sets[0]
		}
		return l
	})
}

func anySet() *rapid.Generator[set] {
	return rapid.Custom(func(t *rapid.T) set {
		return set{
			Reps:  rapid.Int64().Draw(t, "reps"),
			Load:  anyMass().Draw(t, "load"),
			RIR:   units.AtLeast(units.RIR(rapid.IntRange(0, 5).Draw(t, "rir"))),
			RPE:   units.Must(units.RPE(float64(rapid.IntRange(1, 10).Draw(t, "rpe")))),
			Tags:  rapid.SliceOf(rapid.String()).Draw(t, "tags"),
			Tempo: [3]uint8{rapid.Uint8().Draw(t, "down"), 0, 255},
		}
	})
}

func TestDecodeJSONAgreesWithStandard(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := anyLog().Draw(t, "log")
		data, err := json.Marshal(l)
		if err != nil {
			t.Fatal(err)
		}
		var got, want log
		if err := field.Decode(data, &got, field.Strict); err != nil {
			t.Fatalf("%s: %v", data, err)
		}
		if err := json.Unmarshal(data, &want); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(want, got, compareLogs); diff != "" {
			t.Fatalf("%s (-json +units):\n%s", data, diff)
		}
		if diff := cmp.Diff(l, got, compareLogs); diff != "" {
			t.Fatalf("%s (-before +after):\n%s", data, diff)
		}
	})
}

// badLog has a mistake of every kind, badFields what is to be said of them.
const badLog = `{
		"day": "2026-02-30",
		"Day": "2026-02-03",
		"sets": [
			{"reps": 5.5, "load": "100", "tempo": [3, 0]},
			{"reps": 99999999999999999999, "rir": {"min": 3, "max": 2, "mid": 1}, "tempo": [1, 256, -1]},
			null,
			7
		],
		"best": null,
		"share": 1e39,
		"exact": -1e999,
		"small": -129,
		"count": "12",
		"done": 1,
		"done": true,
		"note": null,
		"rack": {"a/b~": "25 lb", "a/b~": "25 lb", "c": 12, "~": "25 stone"},
		"heavier": {"2026-11-25": "1 kg", "someday": "2 kg"},
		"extra": {"x": {"y": 1, "y": 2}},
		"Hidden": 1,
		"private": 1,
		"-": 1
	}`

var badFields = []struct {
	path, got, allowed string
	category           error
}{
	{"/day", "2026-02-30", "1 to 28, as February 2026 has", field.ErrOutOfRange},
	{"/Day", `"2026-02-03"`, "the names: day, sets, best,", field.ErrUnknown},
	{"/sets/0/reps", "5.5", "a whole number that fits 64 bits", field.ErrSyntax},
	{"/sets/0/load", `"100"`, "a unit", field.ErrMissing},
	{"/sets/0/tempo", "[3, 0]", "a list of 3", field.ErrSyntax},
	{"/sets/1/reps", "99999999999999999999", "a whole number that fits 64 bits", field.ErrOverflow},
	{"/sets/1/rir/mid", "1", "the names: min, max", field.ErrUnknown},
	{"/sets/1/tempo/1", "256", "0 to 255", field.ErrOverflow},
	{"/sets/1/tempo/2", "-1", "0 to 255", field.ErrOverflow},
	{"/sets/2", "null", "a value", field.ErrMissing},
	{"/sets/3", "7", "an object", field.ErrSyntax},
	{"/share", "1e39", "32 bits", field.ErrOverflow},
	{"/exact", "-1e999", "64 bits", field.ErrOverflow},
	{"/small", "-129", "-128 to 127", field.ErrOverflow},
	{"/count", `"12"`, "0 to 65535", field.ErrSyntax},
	{"/done", "1", "true or false", field.ErrSyntax},
	{"/done", "true", "each name once", field.ErrDuplicate},
	{"/note", "null", "a value", field.ErrMissing},
	{"/rack/a~1b~0", `"25 lb"`, "each name once", field.ErrDuplicate},
	{"/rack/c", "12", "a text", field.ErrSyntax},
	{"/rack/~0", `"25 stone"`, "such as", field.ErrSyntax},
	{"/heavier/someday", `"someday"`, "a day", field.ErrSyntax},
	{"/extra/x/y", "2", "each name once", field.ErrDuplicate},
	{"/Hidden", "1", "the names: day, sets, best, share, exact, small, count, done, note, rack, heavier, extra, later, -, ID$", field.ErrUnknown},
	{"/private", "1", "the names: ", field.ErrUnknown},
}

func TestDecodeJSONReportsEveryField(t *testing.T) {
	l := log{Note: "old"}
	err := field.Decode([]byte(badLog), &l, field.Strict)
	var got field.Errors
	if !errors.As(err, &got) {
		t.Fatalf("error is a %T: %v", err, err)
	}
	for i, w := range badFields {
		if i >= len(got) {
			t.Errorf("missing: %s, %v", w.path, w.category)
			continue
		}
		g := got[i]
		if g.Path != w.path || g.Got != w.got || !strings.Contains(g.Allowed+"$", w.allowed) || !errors.Is(g, w.category) {
			t.Errorf("got %v\nwant %s = %s, allowed: …%s…, %v", g, w.path, w.got, w.allowed, w.category)
		}
	}
	if len(got) > len(badFields) {
		t.Errorf("unexpected: %v", got[len(badFields):])
	}
	if diff := cmp.Diff(log{Note: "old"}, l, compareLogs); diff != "" {
		t.Errorf("the value was changed (-old +new):\n%s", diff)
	}
}

func TestDecodeJSONEndsHostileLists(t *testing.T) {
	name := strings.Repeat("x", 100_000)
	list := `["` + name + `"` + strings.Repeat(`,"x"`, 3000) + `]`
	unknown := strings.ReplaceAll(list, `,"x"`, `,{"x":1,"x":2}`)
	ranges := `[` + strings.Repeat(`{"x":1,"y":2,"z":3},`, 3000) + `0]`
	for _, tt := range []struct {
		data string
		v    any
	}{{list, new([]int)}, {unknown, new([]struct{})}, {ranges, new([]units.Range[int])}} {
		err := field.Decode([]byte(tt.data), tt.v, field.Strict)
		var all field.Errors
		if !errors.As(err, &all) || len(all) != 1000 {
			t.Errorf("%T: %d errors, want 1000", tt.v, len(all))
		}
	}
	err := field.Decode([]byte(list), new([]int), field.Strict)
	var f *field.Error
	if !errors.As(err, &f) || f.Got != `"`+name[:39]+"…" {
		t.Errorf("the long text is not shortened: %.200v", err)
	}
}

func TestDecodeJSONNull(t *testing.T) {
	type nullable struct {
		P *int
		S []int
		M map[string]int
		A any
		R json.RawMessage
	}
	got := nullable{P: new(int), S: []int{1}, M: map[string]int{}, A: 1}
	err := field.Decode([]byte(`{"P":null,"S":null,"M":null,"A":null,"R":null}`), &got, field.Strict)
	want := nullable{R: json.RawMessage("null")}
	if diff := cmp.Diff(want, got); err != nil || diff != "" {
		t.Errorf("%v (-want +got):\n%s", err, diff)
	}
	for _, v := range []any{new(int), new(string), new(bool), new(float64), new(uint), new(set), new([1]int), new(units.Mass), new(units.Range[int])} {
		if err := field.Decode([]byte("null"), v, field.Strict); !errors.Is(err, field.ErrMissing) {
			t.Errorf("null into %T: %v, want %v", v, err, field.ErrMissing)
		}
	}
}

func TestDecodeJSONTargets(t *testing.T) {
	for _, v := range []any{nil, 1, log{}, (*log)(nil), map[string]int{}, []int{1}, func() {}} {
		if err := field.Decode([]byte("{}"), v, field.Strict); !errors.Is(err, field.ErrMissing) {
			t.Errorf("into %T: %v, want %v", v, err, field.ErrMissing)
		}
	}
	for _, v := range []any{new(chan int), new(func()), new(complex128), new(fmt.Stringer)} {
		if err := field.Decode([]byte(`{}`), v, field.Strict); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("into %T: %v, want %v", v, err, field.ErrUnknown)
		}
	}
	var keyed map[int]string
	if err := field.Decode([]byte(`{"1":"x"}`), &keyed, field.Strict); !errors.Is(err, field.ErrSyntax) || keyed != nil {
		t.Errorf("map with numbers as keys: %v, %v, want %v", keyed, err, field.ErrSyntax)
	}
	if err := field.Decode([]byte(`[1]`), &keyed, field.Strict); !errors.Is(err, field.ErrSyntax) || keyed != nil {
		t.Errorf("a list into a map: %v, %v, want %v", keyed, err, field.ErrSyntax)
	}
	var p **int
	if err := field.Decode([]byte("3"), &p, field.Strict); err != nil || **p != 3 {
		t.Errorf("pointer to pointer: %v", err)
	}
}

func TestDecodeJSONNumbers(t *testing.T) {
	type number struct {
		I int64
		U uint64
		F float64
	}
	tests := []struct {
		data string
		want number
		err  error
	}{
		{`{"I":-9223372036854775808,"U":18446744073709551615,"F":-1.7976931348623157e308}`, number{math.MinInt64, math.MaxUint64, -math.MaxFloat64}, nil},
		{`{"I":-0,"U":0,"F":1E2}`, number{0, 0, 100}, nil},
		{`{"F":1e-999}`, number{}, nil},
		{`{"I":9223372036854775808}`, number{}, field.ErrOverflow},
		{`{"U":18446744073709551616}`, number{}, field.ErrOverflow},
		{`{"U":-1}`, number{}, field.ErrOverflow},
		{`{"F":1e309}`, number{}, field.ErrOverflow},
		{`{"I":1e2}`, number{}, field.ErrSyntax},
		{`{"I":1.0}`, number{}, field.ErrSyntax},
		{`{"U":0.5}`, number{}, field.ErrSyntax},
		{`{"U":-0.5}`, number{}, field.ErrSyntax},
		{`{"I":true}`, number{}, field.ErrSyntax},
	}
	for _, tt := range tests {
		var got number
		if err := field.Decode([]byte(tt.data), &got, field.Strict); !errors.Is(err, tt.err) || got != tt.want {
			t.Errorf("%s gives %+v, %v, want %+v, %v", tt.data, got, err, tt.want, tt.err)
		}
	}
}

// kit has the method that other packages write.
type kit struct {
	Bar    units.Mass   `json:"bar"`
	Plates []units.Mass `json:"plates"`
}

func (k *kit) UnmarshalJSON(data []byte) error {
	type plain kit
	return field.Decode(data, (*plain)(k), field.Strict)
}

func TestUnmarshalJSONIsStrict(t *testing.T) {
	var gyms map[string]kit
	good := []byte(`{"home":{"bar":"20 kg","plates":["25 lb"]}}`)
	for name, decode := range map[string]func([]byte, any) error{"json.Unmarshal": json.Unmarshal, "Decode": strict} {
		gyms = nil
		if err := decode(good, &gyms); err != nil || gyms["home"].Plates[0] != 25*units.Pound {
			t.Errorf("%s: %+v, %v", name, gyms, err)
		}
		var k kit
		for data, want := range map[string]error{
			`{"Bar":"20 kg"}`:               field.ErrUnknown,
			`{"bar":"20 kg","bar":"20 kg"}`: field.ErrDuplicate,
			`{"bar":20}`:                    field.ErrSyntax,
		} {
			if err := decode([]byte(data), &k); !errors.Is(err, want) {
				t.Errorf("%s: %s: %v, want %v", name, data, err, want)
			}
		}
	}
	err := field.Decode([]byte(`{"hall":{"bar":"20","plates":["25 lb",25]}}`), &gyms, field.Strict)
	if diff := cmp.Diff([]string{"/hall/bar", "/hall/plates/1"}, paths(err)); diff != "" {
		t.Errorf("paths (-want +got):\n%s", diff)
	}
}

var errStubborn = errors.New("stubborn")

// stubborn fails with an error that names no field.
type stubborn struct{}

func (*stubborn) UnmarshalText([]byte) error { return errStubborn }

func TestDecodeJSONForeignErrors(t *testing.T) {
	var v struct{ A []stubborn }
	err := field.Decode([]byte(`{"A":["so"]}`), &v, field.Strict)
	var f *field.Error
	if !errors.Is(err, errStubborn) || !errors.As(err, &f) || f.Path != "/A/0" || f.Got != `"so"` {
		t.Errorf("got %v, want %v at /A/0 with the value", err, errStubborn)
	}
}

// Two spellings of one key are one name given twice.
func TestDecodeJSONEqualKeys(t *testing.T) {
	var v map[units.Mass]int
	err := field.Decode([]byte(`{"1 kg":1,"1000 g":2}`), &v, field.Strict)
	if diff := cmp.Diff([]string{"/1000 g"}, paths(err)); !errors.Is(err, field.ErrDuplicate) || diff != "" {
		t.Errorf("%v, want %v (-want +got):\n%s", err, field.ErrDuplicate, diff)
	}
}

func TestDecodeJSONReplacesAll(t *testing.T) {
	l := log{Note: "old", Done: true}
	if err := field.Decode([]byte(`{"done":false,"ID":"x","-":3}`), &l, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(log{base: base{ID: "x"}, Dash: 3}, l, compareLogs); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

func strict(data []byte, v any) error { return field.Decode(data, v, field.Strict) }
