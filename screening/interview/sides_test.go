package interview

import (
	"slices"
	"strings"
	"testing"

	"example.org/posology/screening"
	"example.org/posology/units/body"
)

// sidedPeople have something of one arm or leg, by the key of the question for its side.
var sidedPeople = map[string]map[string]string{
	"pacemaker_side":                          {"areas": "heart", "heart": "pacemaker", "pacemaker_day": "2026-11-01"},
	"icd_side":                                {"areas": "heart", "heart": "icd", "icd_day": "2026-11"},
	"shoulder_replacement_side":               {"areas": "joints", "joints": "shoulder_replacement", "shoulder_replacement_day": "2020-05"},
	"rotator_cuff_repair_side":                {"areas": "joints", "joints": "rotator_cuff_repair", "rotator_cuff_repair_day": "2026-10"},
	"fracture_side":                           {"areas": "bones", "bones": "recent_fracture", "fracture_region": "wrist and hand"},
	"pain_made_worse_by_training_side":        {"areas": "joints", "joints": "pain_made_worse_by_training", "pain_made_worse_by_training_site": "knee", "worse_pain_unseen": "yes"},
	"unstable_or_injured_joint_side":          {"areas": "joints", "joints": "unstable_or_injured_joint", "unstable_or_injured_joint_site": "shoulder"},
	"acute_joint_inflammation_side":           {"areas": "joints", "joints": "acute_joint_inflammation", "acute_joint_inflammation_site": "elbow"},
	"pacemaker_side rotator_cuff_repair_side": {"areas": "heart joints", "heart": "pacemaker", "pacemaker_day": "2026-11", "joints": "rotator_cuff_repair", "rotator_cuff_repair_day": "2026-10"},
}

// and returns own with one answer more.
func and(own map[string]string, key, word string) map[string]string {
	more := map[string]string{key: word}
	for k, w := range own {
		if more[k] == "" {
			more[k] = w
		}
	}
	return more
}

// Of an arm or a leg the side is asked. A side given holds no more than both, no less than that
// side is to avoid, and the sound side goes on; not known, or both, holds either.
func TestSideIsAsked(t *testing.T) {
	for keys, own := range sidedPeople {
		for key := range strings.FieldsSeq(keys) {
			own = and(own, key, unknown)
		}
		open, _ := walk(t, well(own))
		none := outcome(t, open)
		for _, side := range []body.Side{body.Left, body.Right, body.Both} {
			with := own
			for key := range strings.FieldsSeq(keys) {
				with = and(with, key, side.String())
			}
			i, asked := walk(t, well(with))
			o := outcome(t, i)
			for n, key := range strings.Fields(keys) {
				if (n == 0 || side != body.Both) && !slices.Contains(asked, key) { // after a first both the second frees nothing
					t.Errorf("%s is not asked: %v", key, asked)
				}
			}
			switch other := map[body.Side]body.Side{body.Left: body.Right, body.Right: body.Left}[side]; {
			case !none.Limits.AsTightAs(o.Limits) || o.Route != none.Route || o.Meanwhile != none.Meanwhile:
				t.Errorf("%s, %v: %+v, not known %+v", keys, side, o.Limits, none.Limits)
			case o.Limits.Avoided(side) != none.Limits.Avoided(side):
				t.Errorf("%s: the %v is kept from %v, not known from %v", keys, side, o.Limits.Avoided(side), none.Limits.Avoided(side))
			case side != body.Both && o.Limits.Avoided(other) == o.Limits.Avoided(side):
				t.Errorf("%s: on the %v alone the other is kept from all of it: %v", keys, side, o.Limits.Avoided(other))
			}
		}
	}
}

// Nobody is asked for a side that changes nothing: of the back, of a hip, of a wound that has
// healed, of what may not be so, of a place that is not known, or where the other is kept from
// the same by something whose side nobody knows.
func TestSideIsNotAsked(t *testing.T) {
	for _, own := range []map[string]string{
		{"areas": "heart", "heart": "pacemaker", "pacemaker_day": "2020-05"}, {"areas": "heart", "heart": "pacemaker?"},
		{"areas": "joints", "joints": "total_hip_replacement", "total_hip_replacement_day": "2026-11"}, {"areas": "bones", "bones": "hip_fracture", "hip_fracture_day": "2026-09"},
		{"areas": "bones", "bones": "recent_fracture", "fracture_region": "lower back"}, {"areas": "bones", "bones": "recent_fracture"},
		{"areas": "joints", "joints": "unstable_or_injured_joint", "unstable_or_injured_joint_site": "neck"}, {"areas": "joints", "joints": "unstable_or_injured_joint"},
		{"areas": "heart joints", "heart": "pacemaker", "joints": "rotator_cuff_repair", "rotator_cuff_repair_day": "2026-10"},
		{"today": "yes", "hurt": "yes", "pain_kind": "ordinary", "pain_during": "4"}, {"today": "yes", "hurt": "yes", "pain_kind": "spreading", "pain_site": "upper back"}, {"today": "yes", "hurt": "yes", "pain_kind": "spreading"},
	} {
		if _, keys := walk(t, well(own)); slices.ContainsFunc(keys, func(key string) bool { return strings.HasSuffix(key, "_side") }) {
			t.Errorf("%v: %v", own, keys)
		}
	}
}

// Pain of the day that spreads spares its place, and of an arm or a leg its side alone. Where
// bones are weak the place of any pain is asked: one of the back may be a broken bone.
func TestPlaceAndSideOfPain(t *testing.T) {
	own := map[string]string{"today": "yes", "setting_today": "in a clinic", "hurt": "yes", "pain_kind": "spreading", "pain_during": "3", "pain_after": "1", "pain_settled": "yes", "pain_trend": "stable"}
	nowhere, _ := walk(t, well(own))
	both, keys := walk(t, well(and(own, "pain_site", "shoulder")))
	if !slices.Contains(keys, "pain_site") || !slices.Contains(keys, "pain_side") || outcome(t, nowhere).Meanwhile < outcome(t, both).Meanwhile {
		t.Errorf("%v", keys)
	}
	left, _ := walk(t, well(and(and(own, "pain_site", "shoulder"), "pain_side", "left")))
	if p := left.Check().Pain; p.Site != body.Shoulder || p.Side != body.Left {
		t.Errorf("%+v", p)
	}
	if o, l := outcome(t, both).Limits, outcome(t, left).Limits; l.Avoided(body.Left) != o.Avoided(body.Left) || l.Avoided(body.Right).Has(body.ShoulderResisted) || !l.Avoided(body.Right).Has(body.FloorTransfer) || !o.AsTightAs(l) {
		t.Errorf("%+v, not known %+v", l, o)
	}
	bones := and(and(own, "pain_kind", "ordinary"), "pain_during", "4")
	if _, keys := walk(t, well(bones)); slices.Contains(keys, "pain_site") {
		t.Errorf("bones are not weak: %v", keys)
	}
	bones = and(and(and(bones, "areas", "bones"), "bones", "osteoporosis"), "pain_site", "knee")
	if i, keys := walk(t, well(bones)); !slices.Contains(keys, "pain_site") || i.Check().Pain.Site != body.Knee {
		t.Errorf("%v", keys)
	}
}

// Each side is that of its own answer: with a device on the left and a tendon on the right both
// arms are spared, and each answer can be taken back.
func TestTwoSides(t *testing.T) {
	own := sidedPeople["pacemaker_side rotator_cuff_repair_side"]
	i, _ := walk(t, well(and(and(own, "pacemaker_side", "left"), "rotator_cuff_repair_side", "right")))
	for _, e := range i.Profile().Events {
		if want := map[screening.Code]body.Side{"pacemaker": body.Left, "rotator_cuff_repair": body.Right}[e.Code]; e.Side != want {
			t.Errorf("%s: %v, want %v", e.Code, e.Side, want)
		}
	}
	if l := outcome(t, i).Limits; l.Avoided(body.Left) != l.Avoided(body.Right) || !l.Avoid.Has(body.ShoulderResisted) {
		t.Errorf("%+v", l)
	}
	for before := i; ; {
		q, _ := before.Next()
		if q.Key != "pacemaker_side" {
			was, any := before.Back()
			if before = was; !any {
				t.Fatal("the side of the pacemaker is not asked")
			}
			continue
		}
		if q.Because != "pacemaker" || q.Form != OneOf || !strings.HasPrefix(q.Client, "A pacemaker. On which side?") || before.Profile().Events[0].Side != 0 {
			t.Errorf("%+v, %+v", q, before.Profile().Events)
		}
		if other := mustAnswer(t, before, q, "right"); other.Profile().Events[0].Side != body.Right || before.Profile().Events[0].Side != 0 {
			t.Errorf("%+v", other.Profile().Events)
		}
		return
	}
}
