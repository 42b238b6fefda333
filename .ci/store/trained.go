package main

import (
	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// client is an invented record of the clinic after two visits: no such person exists.
const client = `{
  "version": 1, "note": "invented", "client": "Client Z", "task": "get out of a low chair", "goal": "strength",
  "profile": {
    "key": "z-1", "day": "2026-11-25", "age": 67, "sex": "female", "training": "novice", "setting": "in a group", "wanted": "moderate",
    "activity": {"days_per_week": 3, "minutes": 30, "intensity": "moderate", "months": 8},
    "diseases": {"asked": true}, "symptoms": {"asked": true}, "red_flags": {"asked": true}, "conditions": {"asked": true},
    "bp": {"systolic": 128, "diastolic": 78}, "resting_pulse": 66, "falls": {"afraid": "no", "fell": "no", "unsteady": "no"}
  },
  "kit": {"dumbbells": [{"mass": "2 kg", "count": 2}, {"mass": "4 kg", "count": 2}]},
  "exercises": ["goblet-squat"],
  "days": ["2026-11-30", "2026-12-03"],
  "asked": [{"from": "2026-11-30", "exercise": "goblet-squat", "load": "2 kg", "sets": 1, "count": 10, "span": {"min": 10, "max": 15}, "reserve": 5}],
  "visits": [
    {"day": "2026-11-30", "pain_free": true, "moment": {}, "range_lost": "no", "form_lost": "no", "observer": "Instructor C"},
    {"day": "2026-12-03", "pain_free": true, "moment": {}, "range_lost": "no", "form_lost": "no", "observer": "Instructor C"}
  ],
  "done": [
    {"day": "2026-11-30", "exercise": "goblet-squat", "side": "both", "hold": "both hands on one", "load": "2 kg", "reps": 10, "effort": "rir 5"},
    {"day": "2026-12-03", "exercise": "goblet-squat", "side": "both", "hold": "both hands on one", "load": "2 kg", "reps": 10, "effort": "rir 5"}
  ]
}`

func trained() (record.Record, error) { return record.Decode([]byte(client), field.Strict) }
