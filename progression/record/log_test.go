package record_test

import (
	"bytes"
	"log/slog"
	"strings"
	"testing"

	"example.org/posology/progression/record"
)

// logged is what slog's text handler writes of a value, without time and level.
func logged(v any) string {
	var b bytes.Buffer
	drop := func(groups []string, a slog.Attr) slog.Attr {
		if len(groups) == 0 && a.Key != "it" {
			return slog.Attr{}
		}
		return a
	}
	slog.New(slog.NewTextHandler(&b, &slog.HandlerOptions{ReplaceAttr: drop})).Info("", "it", v)
	return b.String()
}

// What is decided on the fixture, whose person has a key, is short in a log, on one
// line, and names neither an address in memory nor the person.
func TestLogs(t *testing.T) {
	const key, client = "village-hall-7", "Somebody Invented"
	lines := map[string]string{}
	add := func(name string, v any) {
		line := logged(v)
		if strings.Count(line, "\n") != 1 || strings.Contains(line, "0x") || strings.Contains(line, key) || strings.Contains(line, client) || strings.Contains(line, "{") || len(line) > 400 {
			t.Errorf("%s: %s", name, line)
		}
		lines[name] = strings.TrimSpace(line)
	}
	r := read(t, visit)
	r.Profile.Key, r.Client, r.Task = key, client, client
	plan, err := r.Start(r.LastDay())
	if err != nil || plan.Week == nil {
		t.Fatal(plan.Stop, err)
	}
	add("outcome", plan.Screening)
	for _, e := range plan.Estimates {
		add("estimate", e)
	}
	for _, s := range plan.Week.Sessions {
		for _, p := range s.Items {
			add("dose", p)
		}
	}
	add("plan", plan)
	r = read(t, review)
	r.Profile.Key, r.Client = key, client
	for i := range r.Visits {
		r.Visits[i].Observer = client
	}
	for i := range r.Done {
		r.Done[i].Key = key
	}
	items, err := r.Next(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	add("visit of an exercise", items[0].Log[0])
	for _, item := range items {
		add("decision", item.Decision)
		add("item", item)
	}
	entry, err := r.Decide(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	looked, err := r.Assess(r.Review)
	if err != nil {
		t.Fatal(err)
	}
	add("record", r)
	add("record by its address", &r)
	add("given", r.Given)
	add("profile", r.Profile)
	add("check", r.Checks[0])
	add("visit", r.Visits[0])
	add("set", r.Done[0])
	add("entry", entry)
	add("first entry", record.Entry{Plan: &plan})
	add("review", looked)
	for name, want := range map[string]string{
		"outcome":  `it.route=tell it.meanwhile="within limits" it.day=2026-11-25 it.review_by=2027-11-25 it.findings=3 it.missing=0`,
		"estimate": `it.exercise=seated-hammer-curl it.side=both it.day=2026-11-25 it.one_rm="3.9 kg" it.low="3.2 kg" it.high="4.9 kg" it.stated="per hand" it.formula=brzycki it.grade=fair`,
		"dose":     `it.exercise=farmers-carry it.side=both it.mode="load finding" it.load="0.5 kg" it.hold="one in each hand" it.sets=1 it.count=10 it.measure=metres`,
		"decision": `it.action=hold it.change=none it.reasons=2 it.next.exercise=one-dumbbell-hinge it.next.side=both it.next.mode=continued it.next.load="6 kg" it.next.hold="both hands on one" it.next.sets=2 it.next.count=10 it.next.measure=repetitions`,
		"item":     `it.exercise=one-dumbbell-hinge it.side=both it.day=2027-03-09 it.decision.action=hold it.decision.change=none it.decision.reasons=2 it.decision.next.exercise=one-dumbbell-hinge it.decision.next.side=both it.decision.next.mode=continued it.decision.next.load="6 kg" it.decision.next.hold="both hands on one" it.decision.next.sets=2 it.decision.next.count=10 it.decision.next.measure=repetitions`,
	} {
		if lines[name] != want {
			t.Errorf("%s: %s, want %s", name, lines[name], want)
		}
	}
}
