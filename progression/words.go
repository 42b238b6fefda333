package progression

import (
	"maps"

	"example.org/posology/units/evidence"
)

// Words returns a fresh table of what this package's reasons say.
func Words() evidence.Words {
	w := gateWords()
	maps.Copy(w, goneWords())
	maps.Copy(w, keptWords())
	maps.Copy(w, harderWords())
	return w
}
