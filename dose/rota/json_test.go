package rota_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/posology/dose"
	"example.org/posology/dose/equipment"
	"example.org/posology/dose/rota"
	"example.org/posology/units"
	"example.org/posology/units/body"
	"example.org/posology/units/field"
)

func twoClients() rota.Class { return classOf(singles(1, 2), oneHanded(1), oneHanded(2)) }

// contradictory is a load that was stored, with a total that does not follow from it.
func contradictory(t *testing.T) (l equipment.Load) {
	t.Helper()
	if err := json.Unmarshal([]byte(`{"each": "1 kg", "total": "2 kg", "hold": "one hand"}`), &l); err != nil {
		t.Fatal(err)
	}
	return l
}

func TestPlanErrors(t *testing.T) {
	tests := []struct {
		name, path string
		category   error
		spoil      func(c *rota.Class)
	}{
		{"nobody", "/clients", field.ErrMissing, func(c *rota.Class) { c.Clients = nil }},
		{"too many", "/clients", field.ErrOutOfRange, func(c *rota.Class) { c.Clients = make([]rota.Client, 51) }},
		{"no name", "/clients/1/name", field.ErrMissing, func(c *rota.Class) { c.Clients[1].Name = "" }},
		{"long name", "/clients/1/name", field.ErrSyntax, func(c *rota.Class) { c.Clients[1].Name = strings.Repeat("x", 101) }},
		{"odd name", "/clients/1/name", field.ErrSyntax, func(c *rota.Class) { c.Clients[1].Name = "a\n" }},
		{"same name", "/clients/1/name", field.ErrDuplicate, func(c *rota.Class) { c.Clients[1].Name = "A" }},
		{"no items", "/clients/0/items", field.ErrMissing, func(c *rota.Class) { c.Clients[0].Items = nil }},
		{"many items", "/clients/0/items", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items = make([]dose.Prescription, 31) }},
		{"no exercise", "/clients/0/items/0/exercise", field.ErrMissing, func(c *rota.Class) { c.Clients[0].Items[0].Exercise = "" }},
		{"no hold", "/clients/0/items/0/hold", field.ErrMissing, func(c *rota.Class) { c.Clients[0].Items[0].Hold = 0 }},
		{"other hold", "/clients/0/items/0/load/hold", field.ErrConflict, func(c *rota.Class) { c.Clients[0].Items[0].Hold = body.OnBar }},
		{"bad load", "/clients/0/items/0/load/total", field.ErrConflict, func(c *rota.Class) { c.Clients[0].Items[0].Load = contradictory(t) }},
		{"not in kit", "/clients/1/items/0/load", field.ErrConflict, func(c *rota.Class) { c.Kit = singles(1) }},
		{"no sets", "/clients/0/items/0/sets", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items[0].Sets = 0 }},
		{"no count", "/clients/0/items/0/count", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items[0].Count = -1 }},
		{"no tempo", "/clients/0/items/0/tempo", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items[0].Tempo = dose.Tempo{} }},
		{"odd tempo", "/clients/0/items/0/tempo", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items[0].Tempo.Lifting = math.NaN() }},
		{"over an hour", "/clients/0/items/0", field.ErrOutOfRange, func(c *rota.Class) { c.Clients[0].Items[0].Count = 901 }},
		{"bad kit", "/kit/dumbbells/0/count", field.ErrMissing, func(c *rota.Class) { c.Kit.Dumbbells[0].Count = 0 }},
	}
	for _, tt := range tests {
		c := twoClients()
		tt.spoil(&c)
		table, err := rota.Schedule(c)
		var f *field.Error
		if !errors.As(err, &f) || f.Path != tt.path || !errors.Is(err, tt.category) || table.Slots != 0 {
			t.Errorf("%s: %v, want %v at %s", tt.name, err, tt.category, tt.path)
		}
		if list, err := rota.AdviseClass(c, nil); !errors.Is(err, tt.category) || list != nil {
			t.Errorf("%s: Advise: %v", tt.name, err)
		}
	}
}

func TestPlanAllowsTheLimits(t *testing.T) {
	for _, limit := range []func(c *rota.Class){
		func(c *rota.Class) { c.Clients[1].Name = strings.Repeat("x", 100) },
		func(c *rota.Class) { c.Clients[0].Items[0].Count = 900 }, // an hour exactly
	} {
		c := twoClients()
		limit(&c)
		checkRota(t, c, plan(t, c))
	}
}

func TestPlanReportsAllAtOnce(t *testing.T) {
	c := twoClients()
	c.Clients[0].Name, c.Clients[1].Items[0].Sets, c.Kit.Dumbbells[0].Count = "", 0, 0
	want := []string{"/clients/0/name", "/clients/1/items/0/sets", "/kit/dumbbells/0/count"}
	if _, err := rota.Schedule(c); !cmp.Equal(paths(err), want) {
		t.Errorf("%v, want %v", err, want)
	}
	c = twoClients()
	c.Kit, c.Clients[0].Name = singles(3), "Z" // the second by name, the first in the list
	want = []string{"/clients/0/items/0/load", "/clients/1/items/0/load"}
	if _, err := rota.Schedule(c); !cmp.Equal(paths(err), want) {
		t.Errorf("%v, want %v", err, want)
	}
}

func TestPlanJSON(t *testing.T) {
	c := eight(rack())
	c.RestApart, c.Staggered = true, true
	var back rota.Class
	if err := field.Decode(units.Must(json.Marshal(c)), &back, field.Strict); err != nil {
		t.Fatal(err)
	}
	table := plan(t, c)
	if diff := cmp.Diff(table, plan(t, back)); diff != "" {
		t.Errorf("the rota of the class that came back (-want +got):\n%s", diff)
	}
	var again rota.Timetable
	if err := field.Decode(units.Must(json.Marshal(table)), &again, field.Strict); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(table, again); diff != "" {
		t.Errorf("timetable (-want +got):\n%s", diff)
	}
	if rota.BestOfAll.String() != "best of all" || rota.Proof(9).String() != "proof(9)" {
		t.Errorf("proofs: %s, %s", rota.BestOfAll, rota.Proof(9))
	}
}

func TestPlanJSONIsStrict(t *testing.T) {
	var table rota.Timetable
	for _, text := range []string{`{"nobody":1}`, `{"slots":1,"slots":2}`, `{"proof":"certain"}`, `{"clients":[{"turns":[{"who":1}]}]}`, `{"clients":[{"who":1}]}`} {
		if err := field.Decode([]byte(text), &table, field.Strict); err == nil {
			t.Errorf("Timetable: %s is accepted", text)
		}
	}
	var c rota.Class
	for _, text := range []string{`{"members":[]}`, `{"clients":[{"age":1}]}`, `{"staggered":true,"staggered":true}`} {
		if err := field.Decode([]byte(text), &c, field.Strict); err == nil {
			t.Errorf("Class: %s is accepted", text)
		}
	}
	var turn rota.Turn
	var turns rota.ClientTurns
	var client rota.Client
	var advice rota.ClassAdvice
	for _, v := range []any{&turn, &turns, &client, &advice} {
		if err := field.Decode([]byte(`{"price":3}`), v, field.Strict); !errors.Is(err, field.ErrUnknown) {
			t.Errorf("%T: an unknown field gives %v", v, err)
		}
	}
}

func TestLogOfAClientNamesNobody(t *testing.T) {
	if got := (rota.Client{Name: "somebody", Items: make([]dose.Prescription, 3)}).LogValue().String(); got != "[items=3]" {
		t.Error(got)
	}
}
