package field

import (
	"bytes"
	"encoding/json"
	"fmt"
	"iter"
	"strconv"
	"strings"
	"unicode/utf16"
	"unicode/utf8"
)

// maxNesting is how deep arrays and objects may stand in one another; no
// honest document comes near it, and it keeps the stack small.
const maxNesting = 200

// A node is one value of a JSON text and knows where it stands.
type node struct {
	parent      *node
	first, next *node  // of the members of an object or the elements of an array; the one that follows this
	size        int    // how many members or elements there are
	name        []byte // of a member of an object
	index       int    // in the parent
	raw         []byte // the value as written
	at          int    // where the value begins, in bytes
	kind        byte   // one of the kinds below; 0 for a value that could not be read
	cut         bool   // reading broke off inside
}

// Kinds of JSON value.
const (
	jsonNull   = 'n'
	jsonBool   = 'b'
	jsonNumber = '0'
	jsonText   = '"'
	jsonArray  = '['
	jsonObject = '{'
)

var pointerEscape = strings.NewReplacer("~", "~0", "/", "~1")

// pointer returns the JSON Pointer of n (RFC 6901). It is put together only
// when asked for: a long name above many elements would cost too much.
func (n *node) pointer() string {
	size := 0
	for at := n; at.parent != nil; at = at.parent {
		size++
	}
	tokens := make([]string, size+1) // the first stays empty, for the leading slash
	for at := n; at.parent != nil; at = at.parent {
		tokens[size] = at.token()
		size--
	}
	return strings.Join(tokens, "/")
}

// token is the part of the pointer that n has below its parent.
func (n *node) token() string {
	if n.parent.kind == jsonObject {
		return pointerEscape.Replace(string(n.name))
	}
	return strconv.Itoa(n.index)
}

// items yields the members of an object or the elements of an array, as they come.
func (n *node) items() iter.Seq[*node] {
	return func(yield func(*node) bool) {
		for item := n.first; item != nil && yield(item); item = item.next {
		}
	}
}

// text returns the characters of a text.
func (n *node) text() []byte {
	end := len(n.raw) - 1
	text, _ := unescape(n.raw[1:end:end]) // it is one that can be read
	return text
}

// got returns the value as written, on one line and shortened.
func (n *node) got() string {
	line := strings.Join(strings.Fields(string(n.raw)), " ")
	if short := fmt.Sprintf("%.40s", line); short != line {
		return short + "…"
	}
	return line
}

// find returns the node of a pointer below n, or the nearest one above it.
func (n *node) find(pointer string) *node {
	for _, token := range strings.Split(pointer, "/")[1:] {
		item := n.first
		for ; item != nil && item.token() != token; item = item.next {
		}
		if item == nil {
			return n
		}
		n = item
	}
	return n
}

// parse reads data as one JSON value (RFC 8259). Of a malformed text it keeps
// the part before the error as well.
func parse(data []byte) *parser {
	p := &parser{data: data}
	p.root = p.node()
	if bytes.HasPrefix(data, []byte("\uFEFF")) {
		p.fail(p.root, "a text in UTF-8 without a byte order mark")
		p.root.cut = true
		return p
	}
	p.value(p.root, 1)
	p.next()
	if p.pos < len(data) {
		p.fail(p.root, "nothing after the value")
	}
	p.root.cut = p.err != nil
	return p
}

type parser struct {
	data   []byte
	root   *node
	fresh  []node // made and not used yet
	made   int    // how many were made last
	pos    int
	err    *Error // the first error; it ends the reading
	failed int    // where it stands
}

// node returns a new node. They are made many at a time, more of them in a longer text.
func (p *parser) node() *node {
	if len(p.fresh) == 0 {
		p.made = min(max(2*p.made, 8), 256)
		p.fresh = make([]node, p.made)
	}
	n := &p.fresh[0]
	p.fresh = p.fresh[1:]
	return n
}

// fail reports that something else than allowed stands at the current place.
func (p *parser) fail(n *node, allowed string) {
	if p.err != nil {
		return
	}
	got := "the end of the text"
	if p.pos < len(p.data) {
		got = fmt.Sprintf("%.20q", p.data[p.pos:min(len(p.data), p.pos+80)])
	}
	p.err, p.failed = New(n.pointer(), got, allowed, ErrSyntax), min(p.pos, len(p.data))
}

// next skips white space and returns the byte that follows, 0 at the end.
func (p *parser) next() byte {
	for ; p.pos < len(p.data); p.pos++ {
		switch c := p.data[p.pos]; c {
		case ' ', '\t', '\r', '\n':
		default:
			return c
		}
	}
	return 0
}

func (p *parser) value(n *node, depth int) {
	c := p.next()
	start := p.pos
	n.at = start
	switch {
	case depth > maxNesting:
		p.fail(n, fmt.Sprintf("at most %d values in one another", maxNesting))
	case c == '{':
		n.kind = jsonObject
		p.items(n, '}', depth)
	case c == '[':
		n.kind = jsonArray
		p.items(n, ']', depth)
	case c == '"':
		if _, ok := p.text(n); ok {
			n.kind = jsonText
		}
	default:
		p.literal(n)
	}
	n.raw = p.data[start:p.pos]
	n.cut = p.err != nil
}

// items reads the members of an object or the elements of an array.
func (p *parser) items(n *node, closing byte, depth int) {
	p.pos++ // the opening bracket
	if p.next() == closing {
		p.pos++
		return
	}
	for last := &n.first; ; {
		child := p.node()
		child.parent, child.index = n, n.size
		if n.kind == jsonObject && !p.name(child) {
			return
		}
		*last, last = child, &child.next
		n.size++
		p.value(child, depth+1)
		if p.err != nil {
			return
		}
		switch p.next() {
		case ',':
			p.pos++
		case closing:
			p.pos++
			return
		default:
			p.fail(n, fmt.Sprintf(`"," or "%c"`, closing))
			return
		}
	}
}

// name reads the name of a member and the colon.
func (p *parser) name(child *node) bool {
	if p.next() != '"' {
		p.fail(child.parent, "a name in quotation marks")
		return false
	}
	name, ok := p.text(child.parent)
	if !ok {
		return false
	}
	child.name = name
	if p.next() != ':' {
		p.fail(child, `":" after the name`)
		return false
	}
	p.pos++
	return true
}

// literal reads a number, true, false or null; those rules are left to
// encoding/json.
func (p *parser) literal(n *node) {
	end := p.pos
	for end < len(p.data) && strings.IndexByte(" \t\r\n,:[]{}\"", p.data[end]) < 0 {
		end++
	}
	raw := p.data[p.pos:end]
	if !json.Valid(raw) {
		p.fail(n, "a value")
		return
	}
	switch raw[0] {
	case 'n':
		n.kind = jsonNull
	case 't', 'f':
		n.kind = jsonBool
	default:
		n.kind = jsonNumber
	}
	p.pos += len(raw)
}

// text reads a string. Unlike encoding/json it refuses invalid UTF-8 and half
// surrogate pairs instead of replacing them.
func (p *parser) text(n *node) ([]byte, bool) {
	raw := p.data[p.pos+1:]
	end := 0
	for end < len(raw) && raw[end] != '"' {
		if raw[end] == '\\' {
			end++
		}
		end++
	}
	if end >= len(raw) {
		p.pos = len(p.data)
		p.fail(n, "a closing quotation mark")
		return nil, false
	}
	text, ok := unescape(raw[:end])
	if !ok {
		p.fail(n, "a text in UTF-8 with the escapes of JSON")
		return nil, false
	}
	p.pos += end + 2
	return text, true
}

// unescape returns the characters between the quotation marks of a JSON string: raw
// itself where none is escaped.
func unescape(raw []byte) ([]byte, bool) {
	if !utf8.Valid(raw) {
		return nil, false
	}
	plain := 0 // so many bytes at the start stand for themselves
	for plain < len(raw) && raw[plain] >= ' ' && raw[plain] != '\\' {
		plain++
	}
	if plain == len(raw) {
		return raw, true
	}
	text := append(make([]byte, 0, len(raw)), raw[:plain]...)
	raw = raw[plain:]
	for len(raw) > 0 {
		switch c := raw[0]; {
		case c < ' ':
			return nil, false
		case c != '\\':
			text = append(text, c)
			raw = raw[1:]
		case raw[1] == 'u':
			r, size := unicodeEscape(raw)
			if size == 0 {
				return nil, false
			}
			text = utf8.AppendRune(text, r)
			raw = raw[size:]
		default:
			i := strings.IndexByte(`"\/bfnrt`, raw[1])
			if i < 0 {
				return nil, false
			}
			text = append(text, "\"\\/\b\f\n\r\t"[i])
			raw = raw[2:]
		}
	}
	return text, true
}

// unicodeEscape reads \u and four digits, or two such for a surrogate pair, from the
// start of raw; size is the bytes read, 0 if there is no such escape.
func unicodeEscape(raw []byte) (r rune, size int) {
	high, ok := hexEscape(raw)
	switch {
	case !ok:
		return 0, 0
	case !utf16.IsSurrogate(high):
		return high, 6
	}
	low, ok := hexEscape(raw[6:])
	r = utf16.DecodeRune(high, low)
	if !ok || r == utf8.RuneError {
		return 0, 0
	}
	return r, 12
}

func hexEscape(raw []byte) (rune, bool) {
	if len(raw) < 6 || raw[0] != '\\' || raw[1] != 'u' {
		return 0, false
	}
	v, err := strconv.ParseUint(string(raw[2:6]), 16, 16)
	return rune(v), err == nil
}
