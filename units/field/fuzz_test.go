package field_test

import (
	"encoding/json"
	"testing"

	"example.org/posology/units/field"
	"github.com/google/go-cmp/cmp"
)

func FuzzDecode(f *testing.F) {
	for _, s := range []string{
		`{}`, `null`, `{"day":"2026-11-25","sets":[{"reps":5,"load":"100 kg","rir":{"min":2},"rpe":"rpe 8","tempo":[3,0,1]}]}`,
		`{"rack":{"a":"25 lb"},"heavier":{"2026-11-25":"1 kg"},"extra":[1,"\ud83d\ude00",null,{"a":{}}],"later":[1, 2]}`,
		`{"ID":"x","-":1,"small":-128,"count":65535,"share":1e38,"exact":-0.5,"done":true}`,
		`{"note":"\ud800"}`, `{"a":1,"a":2}`, "{\"note\":\"\xff\"}", `[[[[[[`, `{"sets":[{"rir":{"min":`, `{"best":{"reps":1e2}} x`,
		`{"sets":[{"tempo":[1,0,1,2`,
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var got, standard, again log
		if err := field.Decode(data, &got, field.Strict); err != nil {
			if diff := cmp.Diff(log{}, got, compareLogs); diff != "" {
				t.Errorf("%q fails with %v and changes the value:\n%s", data, err, diff)
			}
			return
		}
		if err := json.Unmarshal(data, &standard); err != nil {
			t.Fatalf("%q: %v", data, err)
		}
		if diff := cmp.Diff(standard, got, compareLogs); diff != "" {
			t.Errorf("%q (-json +units):\n%s", data, diff)
		}
		written, err := json.Marshal(got)
		if err != nil {
			t.Fatalf("%q: %v", data, err)
		}
		if err := field.Decode(written, &again, field.Strict); err != nil {
			t.Errorf("%q, written as %q: %v", data, written, err)
		}
	})
}
