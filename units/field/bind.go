package field

import (
	"bytes"
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// maxBadFields ends the list of bad fields of a hostile document.
const maxBadFields = 1000

// A binder sets Go values from nodes and gathers what is wrong.
type binder struct {
	how  How
	root *node
	text places
	errs Errors
}

func (b *binder) refuse(n *node, allowed string, category error) {
	if len(b.errs) < maxBadFields {
		b.errs = append(b.errs, b.placed(New(n.pointer(), n.got(), allowed, category), n.at))
	}
}

// accept takes in what a type's own method said of n.
func (b *binder) accept(n *node, err error) {
	if err == nil {
		return
	}
	var known *Error
	if !errors.As(err, &known) {
		err = Bad(n.got(), "", err)
	}
	before := len(b.errs)
	b.errs.Add(n.pointer(), err)
	b.errs = b.errs[:min(len(b.errs), maxBadFields)]
	for _, e := range b.errs[min(before, len(b.errs)):] {
		e.Line, e.Column = b.text.place(n.at)
	}
}

// is reports whether n is of the kind wanted and refuses it if not.
func (b *binder) is(n *node, kind byte, allowed string) bool {
	if n.kind != kind {
		b.refuse(n, allowed, ErrSyntax)
	}
	return n.kind == kind
}

// bind sets v, which is addressable and zero, from n.
func (b *binder) bind(n *node, v reflect.Value) {
	switch {
	case n.kind == 0 || len(b.errs) >= maxBadFields:
	case n.kind == jsonNull && v.Type() != reflect.TypeFor[json.RawMessage]():
		b.bindNull(n, v)
	case v.Kind() == reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		b.bind(n, v.Elem())
	case !b.bindMethod(n, v):
		b.bindKind(n, v)
	}
}

// bindNull leaves v nil, if it can be.
func (b *binder) bindNull(n *node, v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer, reflect.Slice, reflect.Map, reflect.Interface:
	default:
		b.refuse(n, "a value; null stands only for what may be left out", ErrMissing)
	}
}

// bindMethod lets v read n itself; it is false if v has no method for that.
func (b *binder) bindMethod(n *node, v reflect.Value) bool {
	switch u := v.Addr().Interface().(type) {
	case json.Unmarshaler:
		if !n.cut { // the error in the rest is reported already
			b.accept(n, u.UnmarshalJSON(n.raw))
		}
	case encoding.TextUnmarshaler:
		if b.is(n, jsonText, "a text") {
			b.accept(n, u.UnmarshalText(n.text()))
		}
	default:
		return false
	}
	return true
}

func (b *binder) bindKind(n *node, v reflect.Value) {
	switch k := v.Kind(); {
	case k == reflect.Bool:
		if b.is(n, jsonBool, "true or false") {
			v.SetBool(n.raw[0] == 't')
		}
	case k == reflect.String:
		if b.is(n, jsonText, "a text") {
			v.SetString(string(n.text()))
		}
	case v.CanInt():
		b.bindInt(n, v)
	case v.CanUint():
		b.bindUint(n, v)
	case v.CanFloat():
		b.bindFloat(n, v)
	case k == reflect.Struct:
		b.bindStruct(n, v)
	case k == reflect.Slice:
		if b.is(n, jsonArray, "a list") {
			v.Set(reflect.MakeSlice(v.Type(), n.size, n.size))
			b.bindItems(n, v)
		}
	case k == reflect.Array:
		b.bindArray(n, v)
	case k == reflect.Map:
		b.bindMap(n, v)
	default:
		b.bindAny(n, v)
	}
}

// wholeNumber begins what is allowed of an integer.
const wholeNumber = "a whole number"

func (b *binder) bindInt(n *node, v reflect.Value) {
	bits := v.Type().Bits()
	x, err := strconv.ParseInt(string(n.raw), 10, bits)
	allowed := func() string {
		if bits == 64 { // the ends of it say nothing to anybody
			return wholeNumber + " that fits 64 bits"
		}
		least := int64(math.MinInt64) >> (64 - bits)
		return fmt.Sprintf("%s from %d to %d", wholeNumber, least, ^least)
	}
	if b.isNumber(n, err, allowed) {
		v.SetInt(x)
	}
}

func (b *binder) bindUint(n *node, v reflect.Value) {
	bits := v.Type().Bits()
	digits, negative := bytes.CutPrefix(n.raw, []byte("-"))
	x, err := strconv.ParseUint(string(digits), 10, bits)
	if negative && err == nil {
		x, err = 0, strconv.ErrRange
	}
	allowed := func() string {
		if bits == 64 {
			return wholeNumber + " of 0 or more that fits 64 bits"
		}
		return fmt.Sprintf("%s from 0 to %d", wholeNumber, uint64(1)<<bits-1)
	}
	if b.isNumber(n, err, allowed) {
		v.SetUint(x)
	}
}

func (b *binder) bindFloat(n *node, v reflect.Value) {
	if b.is(n, jsonNumber, "a number") {
		bits := v.Type().Bits()
		x, err := strconv.ParseFloat(string(n.raw), bits)
		b.isNumber(n, err, func() string { return fmt.Sprintf("a number that fits %d bits", bits) })
		v.SetFloat(x)
	}
}

// isNumber reports whether n is a number, and refuses it if it is none or is what
// strconv said: out of range, or not whole.
func (b *binder) isNumber(n *node, err error, allowed func() string) bool {
	switch {
	case n.kind == jsonNumber && errors.Is(err, strconv.ErrRange):
		b.refuse(n, allowed(), ErrOverflow)
	case n.kind != jsonNumber, err != nil:
		b.refuse(n, allowed(), ErrSyntax)
	}
	return n.kind == jsonNumber
}

func (b *binder) bindItems(n *node, v reflect.Value) {
	for item := range n.items() {
		b.bind(item, v.Index(item.index))
	}
}

func (b *binder) bindArray(n *node, v reflect.Value) {
	switch {
	case n.kind != jsonArray, n.size > v.Len(), n.size < v.Len() && !n.cut:
		b.refuse(n, fmt.Sprintf("a list of %d", v.Len()), ErrSyntax)
	default:
		b.bindItems(n, v)
	}
}

// bindAny sets an empty interface; it refuses Go types that JSON has no form for.
func (b *binder) bindAny(n *node, v reflect.Value) {
	if v.Kind() != reflect.Interface || v.NumMethod() > 0 {
		b.refuse(n, fmt.Sprintf("nothing: the Go type %s has no form in JSON", v.Type()), ErrUnknown)
		return
	}
	fresh := reflect.New(dynamic[n.kind]).Elem()
	b.bind(n, fresh)
	v.Set(fresh)
}

// dynamic is what an empty interface holds of each kind.
var dynamic = map[byte]reflect.Type{
	jsonBool:   reflect.TypeFor[bool](),
	jsonNumber: reflect.TypeFor[float64](),
	jsonText:   reflect.TypeFor[string](),
	jsonArray:  reflect.TypeFor[[]any](),
	jsonObject: reflect.TypeFor[map[string]any](),
}

func (b *binder) bindMap(n *node, v reflect.Value) {
	if !b.is(n, jsonObject, "an object") {
		return
	}
	v.Set(reflect.MakeMapWithSize(v.Type(), n.size))
	for item := range n.items() {
		key := reflect.New(v.Type().Key()).Elem()
		switch {
		case !b.bindName(item, key):
		case v.MapIndex(key).IsValid(): // two spellings of one key count too
			b.refuse(item, "each name once", ErrDuplicate)
		default:
			value := reflect.New(v.Type().Elem()).Elem()
			b.bind(item, value)
			v.SetMapIndex(key, value)
		}
	}
}

// bindName sets the key of a map from the name of item, as if it were a text
// that stands there.
func (b *binder) bindName(item *node, key reflect.Value) bool {
	before := len(b.errs)
	raw, _ := json.Marshal(string(item.name)) // a string has no way to fail
	b.bind(&node{parent: item.parent, name: item.name, kind: jsonText, raw: raw, at: item.at}, key)
	return len(b.errs) == before
}

func (b *binder) bindStruct(n *node, v reflect.Value) {
	if !b.is(n, jsonObject, "an object") {
		return
	}
	fields := fieldsOf(v.Type())
	seen := make([]bool, len(fields))
	var others map[string]bool // names that are not known
	next := 0                  // the fields mostly come in their order
	for item := range n.items() {
		i := place(fields, item.name, next)
		switch {
		case i >= 0 && seen[i], others[string(item.name)]:
			b.refuse(item, "each name once", ErrDuplicate)
		case i >= 0:
			seen[i], next = true, i+1
			b.bind(item, v.FieldByIndex(fields[i].index))
		default:
			if others == nil {
				others = make(map[string]bool)
			}
			others[string(item.name)] = true
			if b.how != PassOver {
				b.refuse(item, allowedNames(fields), ErrUnknown)
			}
		}
	}
}

// place returns the place of the field of a name, -1 if there is none, looked for from
// one place on.
func place(fields []member, name []byte, from int) int {
	for i := range fields {
		if at := (from + i) % len(fields); fields[at].name == string(name) {
			return at
		}
	}
	return -1
}

func allowedNames(fields []member) string {
	names := make([]string, len(fields))
	for i, f := range fields {
		names[i] = f.name
	}
	return "the names: " + strings.Join(names, ", ")
}

// A member is a field of a struct or of one embedded in it.
type member struct {
	name  string
	index []int
}

// membersOf remembers the members of every struct met so far, by its type: what it holds
// follows from the program alone.
var membersOf sync.Map

func fieldsOf(t reflect.Type) []member {
	if fields, ok := membersOf.Load(t); ok {
		return fields.([]member)
	}
	fields := members(t)
	membersOf.Store(t, fields)
	return fields
}

// members lists the fields of t, its own before those of embedded structs.
func members(t reflect.Type) []member {
	var own, embedded []member
	for f := range t.Fields() {
		tag := f.Tag.Get("json")
		name, _, _ := strings.Cut(tag, ",")
		switch {
		case tag == "-":
		case f.Anonymous && name == "" && f.Type.Kind() == reflect.Struct:
			for _, e := range members(f.Type) {
				embedded = append(embedded, member{e.name, append(slices.Clone(f.Index), e.index...)})
			}
		case f.IsExported() && name == "":
			own = append(own, member{f.Name, f.Index})
		case f.IsExported():
			own = append(own, member{name, f.Index})
		}
	}
	for _, e := range embedded {
		if !slices.ContainsFunc(own, func(f member) bool { return f.name == e.name }) {
			own = append(own, e)
		}
	}
	return own
}
