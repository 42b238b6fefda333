package body_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"testing"

	"example.org/posology/units/body"
	"example.org/posology/units/field"
	"pgregory.net/rapid"
)

// demandSets draws sets as a list, so that the test has a second form of them.
var demandSets = rapid.SliceOfDistinct(rapid.Custom(func(t *rapid.T) body.Demand {
	return body.Demand(rapid.IntRange(1, int(body.FastMovement)).Draw(t, "demand"))
}), func(d body.Demand) body.Demand { return d })

// TestDemandsLaws compares the set with lists.
func TestDemandsLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := demandSets.Draw(t, "a"), demandSets.Draw(t, "b")
		s, u := body.DemandSet(a...), body.DemandSet(b...)
		for d := range body.EveryDemand() {
			inA, inB := slices.Contains(a, d), slices.Contains(b, d)
			if s.Has(d) != inA || s.Union(u).Has(d) != (inA || inB) || s.Both(u).Has(d) != (inA && inB) {
				t.Fatalf("%v in %v and %v: %v, union %v, both %v", d, a, b, s.Has(d), s.Union(u), s.Both(u))
			}
		}
		if s.Len() != len(a) || s.Union(u) != u.Union(s) || s.Both(u) != u.Both(s) || s.Union(s) != s || s.Both(s) != s {
			t.Fatalf("laws of %v and %v", s, u)
		}
		if s.Union(u).Len()+s.Both(u).Len() != s.Len()+u.Len() || s.Both(s.Union(u)) != s || s.Union(s.Both(u)) != s {
			t.Fatalf("laws of %v and %v", s, u)
		}
		list := slices.Collect(s.All())
		if !slices.IsSorted(list) || body.DemandSet(list...) != s {
			t.Fatalf("%v lists as %v", a, list)
		}
	})
}

func TestDemandsJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := body.DemandSet(demandSets.Draw(t, "set")...)
		text, err := json.Marshal(s)
		if err != nil {
			t.Fatal(err)
		}
		var back body.Demands
		if err := field.Decode(text, &back, field.Strict); err != nil || back != s {
			t.Fatalf("%s comes back as %v, %v", text, back, err)
		}
	})
	tests := []struct {
		text string
		path string
		want error
	}{
		{`["overhead","overhead"]`, "", field.ErrDuplicate},
		{`["overhead","upside down"]`, "/1", field.ErrUnknown},
		{`["overhead",""]`, "", field.ErrDuplicate}, // "not given" is no demand
		{`["overhead",7]`, "/1", field.ErrSyntax},
		{`{"overhead":true}`, "", field.ErrSyntax},
		{`"overhead"`, "", field.ErrSyntax},
	}
	for _, tt := range tests {
		s := body.DemandSet(body.Impact)
		err := field.Decode([]byte(tt.text), &s, field.Strict)
		var f *field.Error
		if !errors.As(err, &f) || !errors.Is(err, tt.want) || f.Path != tt.path || s != body.DemandSet(body.Impact) {
			t.Errorf("Unmarshal(%s) = %v, %v, want %v at %q and no change", tt.text, s, err, tt.want, tt.path)
		}
	}
}

func TestDemandsEdges(t *testing.T) {
	if s := body.DemandSet(0, body.FastMovement+1, 63, 64, 255); s != 0 {
		t.Errorf("set of what is no demand = %v, want empty", s)
	}
	var none body.Demands
	if none.String() != "none" || none.Len() != 0 || none.Has(0) || none.Has(255) {
		t.Errorf("the empty set is %v", none)
	}
	if got := body.DemandSet(body.FastMovement, body.Overhead).String(); got != "overhead, fast movement" {
		t.Errorf("String = %q", got)
	}
	var all []body.Demand
	for d := range body.EveryDemand() {
		all = append(all, d)
	}
	if s := body.DemandSet(all...); s.Len() != len(all) || s.Len() != int(body.FastMovement) {
		t.Errorf("the set of all %d holds %d", len(all), s.Len())
	}
	for d := range body.DemandSet(all...).All() {
		if d != body.SpinalCompression {
			t.Errorf("%v stands first", d)
		}
		break
	}
}

func ExampleDemands() {
	s := body.DemandSet(body.Overhead, body.FreeStanding)
	text, _ := json.Marshal(s)
	fmt.Println(string(text), s.Has(body.Overhead), s.Has(body.Impact))
	// Output: ["overhead","free standing"] true false
}

func FuzzDemandsJSON(f *testing.F) {
	f.Add([]byte(`["overhead","free standing"]`))
	f.Add([]byte(`null`))
	f.Fuzz(func(t *testing.T, data []byte) {
		var s, back body.Demands
		if field.Decode(data, &s, field.Strict) != nil {
			return
		}
		text, err := json.Marshal(s)
		if err != nil || field.Decode(text, &back, field.Strict) != nil || back != s {
			t.Errorf("%s: %s, %v, comes back as %v", data, text, err, back)
		}
	})
}

func BenchmarkDemandsHas(b *testing.B) {
	b.ReportAllocs()
	s := body.DemandSet(body.Overhead, body.FastMovement)
	for b.Loop() {
		if !s.Has(body.FastMovement) {
			b.Fatal("lost")
		}
	}
}
