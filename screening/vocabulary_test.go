package screening_test

import (
	"encoding"
	"strings"
	"testing"

	"example.org/posology/screening"
)

// everyText walks an enumeration: each value is written and read back the same,
// the first that is none is refused, and so is a text that stands for none.
func everyText[E ~uint8, P interface {
	*E
	encoding.TextUnmarshaler
}](t *testing.T, name string, count int, last E) {
	t.Helper()
	if int(last) != count {
		t.Errorf("%s: last value is %d, want %d", name, last, count)
	}
	for i := 0; i <= count+1; i++ {
		e := E(i)
		data, err := any(e).(encoding.TextMarshaler).MarshalText()
		if i > count {
			if err == nil {
				t.Errorf("%s: %d is written as %q", name, i, data)
			}
			continue
		}
		var back E
		if err != nil || P(&back).UnmarshalText(data) != nil || back != e {
			t.Errorf("%s: %d is written as %q and read as %d", name, i, data, back)
		}
		if text := any(e).(interface{ String() string }).String(); text != string(data) {
			t.Errorf("%s: %q is printed as %q", name, data, text)
		}
	}
	var back E
	if err := P(&back).UnmarshalText([]byte("no such text")); err == nil || !strings.Contains(err.Error(), "allowed") {
		t.Errorf("%s: reads what is none: %v", name, err)
	}
}

func TestVocabularies(t *testing.T) {
	everyText(t, "answer", 2, screening.Yes)
	everyText(t, "kind", 8, screening.Sign)
	everyText(t, "intensity", 4, screening.Vigorous)
	everyText(t, "posture", 2, screening.Sitting)
	everyText(t, "ketones", 4, screening.LargeKetones)
	everyText(t, "kind of pain", 7, screening.PostOperativePain)
	everyText(t, "zone of pain", 3, screening.ZoneOver5)
	everyText(t, "action", 4, screening.GetHelp)
	everyText(t, "trend", 3, screening.RisingPain)
	everyText(t, "branch", 6, screening.A3)
	everyText(t, "need", 4, screening.StopFirst)
	everyText(t, "level", 3, screening.Absolute)
	everyText(t, "referral", 3, screening.EmergencyReferral)
	everyText(t, "day plan", 5, screening.HelpNow)
	everyText(t, "route", 6, screening.Emergency)
	everyText(t, "meanwhile", 4, screening.Nothing)
	everyText(t, "variant", 11, screening.Lesser)
	everyText(t, "who lifts it", 6, screening.EmergencyServices)
	everyText(t, "with what", 7, screening.BeingSettled)
	everyText(t, "choice of list", 2, screening.OlderList)
	everyText(t, "setting", 4, screening.InClinic)
}
