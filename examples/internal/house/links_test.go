package house_test

import (
	"go/doc/comment"
	"go/types"
	"regexp"
	"strings"
	"testing"
)

// docLink is a link of a doc comment to a name of its own package or of another, such as
// [Estimate.Relation], [*field.Error] and [encoding/json.Unmarshaler].
var docLink = regexp.MustCompile(`(?:^|[\s("'])\[\*?(?:((?:[a-z][\w.-]*/)*[a-z]\w*)\.)?([A-Z]\w*)(?:\.([A-Z]\w*))?\]`)

// A name in brackets that go doc does not find is printed with its brackets.
func TestDocLinksResolve(t *testing.T) {
	for _, p := range libraries(t) {
		for _, f := range p.files {
			for _, group := range f.Comments {
				for _, link := range docLink.FindAllStringSubmatch(group.Text(), -1) {
					if !p.resolves(link[1], link[2], link[3]) {
						t.Errorf("%s: %s leads nowhere", p.where(group), strings.TrimSpace(link[0]))
					}
				}
			}
		}
	}
}

// resolves reports whether a link leads to a name of the package, or of one that it
// imports, and to a field or method of that name where it says one. Names of standard
// packages that are not imported are taken to be right.
func (p *pkg) resolves(from, name, member string) bool {
	in := p.types
	if from != "" {
		in = nil
		for _, imported := range p.types.Imports() {
			if imported.Path() == from || imported.Name() == from {
				in = imported
			}
		}
		if in == nil {
			_, standard := comment.DefaultLookupPackage(from)
			return standard || strings.Contains(from, "/") && !strings.Contains(from, ".")
		}
	}
	object := in.Scope().Lookup(name)
	if object == nil || member == "" {
		return object != nil
	}
	found, _, _ := types.LookupFieldOrMethod(object.Type(), true, in, member)
	return found != nil
}
