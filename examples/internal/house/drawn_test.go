package house_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
)

// Beside the changes that are written out there are drawn ones: of kit, limits,
// company, what was seen and what is the matter with the invented person.
const drawnCases = 20

func init() {
	r := rand.New(rand.NewPCG(2026, 11))
	written := slices.Sorted(maps.Keys(changes))
	for i := range drawnCases {
		c := change{}
		for range r.IntN(3) { // of several changes of one place the last holds
			maps.Copy(c, changes[written[r.IntN(len(written))]])
		}
		maps.Copy(c, drawnChange(r))
		changes[fmt.Sprintf("drawn %d", i+1)] = c
	}
}

// drawnChange draws what the written changes do not vary enough.
func drawnChange(r *rand.Rand) change {
	c := change{"kit": inJSON(map[string]any{"dumbbells": drawnDumbbells(r)}), "tests": `[]`}
	if r.IntN(2) == 0 {
		c["profile/restrictions"] = inJSON(drawnLimits(r))
	}
	setting := inJSON([]string{"alone", "with a helper", "in a group", "in a clinic"}[r.IntN(4)])
	if r.IntN(2) == 0 {
		c["profile/setting"], c["today/setting"], c["checks/setting"] = setting, setting, setting
	}
	if r.IntN(3) == 0 {
		c["seen"] = `[]`
	}
	if r.IntN(3) == 0 {
		conditions := []string{"falls_risk", "parkinsons", "vertigo", "osteoporosis", "cfs_level_5", "pacemaker", "hernia", "nephropathy", "lung_disease"}
		c["profile/conditions"] = inJSON(map[string]any{"asked": true, "present": []string{conditions[r.IntN(len(conditions))]}})
	}
	c["profile/age"] = fmt.Sprint(50 + r.IntN(40))
	return c
}

func drawnDumbbells(r *rand.Rand) []any {
	var list []any
	for _, half := range r.Perm(24)[:1+r.IntN(6)] {
		list = append(list, map[string]any{"mass": fmt.Sprintf("%g kg", float64(half+1)/2), "count": 1 + r.IntN(2)})
	}
	return list
}

func drawnLimits(r *rand.Rand) []any {
	var list []any
	for i := range 1 + r.IntN(2) {
		list = append(list, map[string]any{
			"author": []string{"Surgeon B", "Doctor C"}[i], "side": []string{"left", "right", "both"}[r.IntN(3)],
			"region":   []string{"shoulder", "elbow", "wrist and hand", "lower back", "hip", "knee"}[r.IntN(6)],
			"max_mass": fmt.Sprintf("%g kg", float64(1+r.IntN(24))/2),
		})
	}
	return list
}

func inJSON(v any) string {
	text, err := json.Marshal(v)
	if err != nil {
		panic(err) // of texts, numbers and lists alone
	}
	return string(text)
}
