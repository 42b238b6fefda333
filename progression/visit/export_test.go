package visit

import "example.org/posology/units"

// LeastLeft is what MayFind looks at.
func (v *Visit) LeastLeft(unrecorded units.RIR) units.RIR { return v.leastLeft(unrecorded) }
