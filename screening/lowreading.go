package screening

// lowerEdges returns the entries that a pressure and a pulse meet from below.
// The published checks of the day have no lower edge; two figures are of a
// guideline for patients in rehabilitation, the others this module's own.
func (c Check) lowerEdges() []*entry {
	var met []*entry
	switch bp := last(c.BP, c.BPAgain); {
	case bp == nil:
	case bp.Systolic <= lowestSystolic:
		met = append(met, find(pressureLowest))
	case bp.Systolic < lowSystolic || bp.Diastolic < lowDiastolic:
		met = append(met, find(pressureLow))
	case bp.Systolic < lowishSystolic || bp.Diastolic < lowishDiastolic:
		met = append(met, find(pressureLowish))
	}
	switch pulse := last(c.RestingPulse, c.RestingPulseAgain); {
	case pulse == 0:
	case pulse <= lowPulse:
		met = append(met, find(pulseLow))
	case pulse <= lowishPulse:
		met = append(met, find(pulseLowish))
	}
	return met
}
