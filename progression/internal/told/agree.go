package told

import (
	"slices"

	"example.org/posology/units"
	"example.org/posology/units/evidence"
)

// InPlace is what says on a return that one set, or a count that fell, takes the place of a
// load that is not there; "" where neither does.
func InPlace(one, fell bool) evidence.ReasonCode {
	switch {
	case one:
		return "progression.set-for-load"
	case fell:
		return "progression.reps-for-load"
	}
	return ""
}

// Moved is a share of all that is moved, where that is known.
func Moved(name string, share units.Fraction) evidence.Arg {
	if share == 0 {
		return evidence.Text(name, "not known")
	}
	return evidence.Share(name, share)
}

// LeftOut drops what says how a return begins from the reasons of what is left out.
func LeftOut(list []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(list, func(r evidence.Reason) bool {
		return r.Code == "progression.return" || r.Code == "progression.return-anew" || r.Code == "progression.reps-for-load" || r.Code == "progression.set-for-load"
	})
}

// Refused drops what says how much of a dose stays from the reasons of one that cannot be given.
func Refused(list []evidence.Reason) []evidence.Reason {
	return slices.DeleteFunc(list, func(r evidence.Reason) bool {
		return r.Code == "progression.set-nearest" || r.Code == "progression.as-allowed" || r.Code == "progression.fewer-reps" || r.Code == "progression.lighter-for-reserve"
	})
}

// Agree keeps reasons to what became of the dose: what is as much as before is not called
// easier, and what a count fell to before it fell further is not told.
func Agree(list []evidence.Reason, asMuch bool, count int) []evidence.Reason {
	list = slices.DeleteFunc(list, func(r evidence.Reason) bool {
		return r.Code == "progression.reps-for-load" && !slices.Contains(r.Args, evidence.Count("count", count))
	})
	for i := range list {
		if r := &list[i]; asMuch && r.Code == "progression.return" {
			r.Code = "progression.return-kept"
		}
	}
	return list
}
