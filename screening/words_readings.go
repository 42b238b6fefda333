package screening

// readingTexts are what a client reads of what was measured, or was not.
var readingTexts = map[Code]clientText{
	pressureAbsolute: {about: "your blood pressure", says: "Please ask your doctor about your blood pressure; weights wait until it is lower."},
	pressureRelative: {about: "your blood pressure", says: "Please ask your doctor about your blood pressure; until then we keep it light, beside you."},
	untreatedHigh:    {about: "your blood pressure", says: "Your blood pressure is too high for weights; please ask your doctor. We practise without weights meanwhile."},
	exertionHigh:     {about: "your blood pressure", says: "Your blood pressure is a little up, so today we keep it moderate at most and breathe out."},
	lowCapacity:      {about: "your fitness", says: "We begin gently and beside you; please ask your doctor how far to go."},
	hbA1cHigh:        {about: "your long-term sugar", says: "Please ask your diabetes team about your long-term sugar; we practise without weights meanwhile."},

	pressureToday:    {about: "your blood pressure", says: "Your blood pressure stays up today, so we leave exercise; please tell your doctor."},
	pulseToday:       {about: "your pulse", says: "Your pulse stays quick today, so we leave exercise; please tell your doctor."},
	pressureLowest:   {about: "your blood pressure", says: "Your blood pressure stays very low. Please lie down; a doctor should see you today."},
	pressureLow:      {about: "your blood pressure", says: "Your blood pressure stays low today, so we leave exercise; please ask your doctor about it."},
	pressureLowish:   {about: "your blood pressure", says: "Your blood pressure is rather low. If you feel faint, tell us; otherwise we sit first and get up slowly."},
	pulseLow:         {about: "your pulse", says: "Your pulse stays very slow, so we leave exercise; please ask your doctor first."},
	pulseLowish:      {about: "your pulse", says: "Your pulse is slow. Please tell us if that is new for you, or if you feel faint or short of breath."},
	feverToday:       {about: "fever today", says: "With a fever, rest is the right training. Please mention it if it lasts."},
	failingToday:     {about: "your heart today", says: "Your heart needs rest and your team today; please call them."},
	unstableToday:    {about: "your heart today", says: "Your heart is unsettled today; please see a doctor before anything else."},
	orthostatic:      {about: "your blood pressure on standing", says: "Please stand up slowly today and keep a hand on something firm."},
	saturationSevere: {about: "your oxygen", says: "Your oxygen stays low today. Please rest, and ask your doctor before we train."},
	saturationPassed: {about: "your oxygen at first", says: "Your oxygen was low at first and came up as you rested; please mention that to your doctor."},
	saturationFloor:  {about: "your oxygen", says: "Your oxygen is a touch low, so today we take it easier, with more pauses."},
	plateletsLow:     {about: "your blood test", says: "Your blood clots less well at the moment; please ask your doctor when to train again."},
	haemoglobinLow:   {about: "your blood test", says: "Your blood carries less oxygen at the moment; please ask your doctor when to train again."},
	glucoseVeryLow:   {about: "a low that needed help", says: "Your sugar has been too low for exercise today. Please treat it if it is low now, and speak to your doctor today."},
	glucoseLow:       {about: "your sugar", says: "Please take some sugar now; we will measure again in a quarter of an hour."},
	glucoseTreated:   {about: "your sugar", says: "Your sugar was low and has come up: today we keep it easy, with somebody near. Stop and measure again if you feel it drop."},
	glucoseBelowEat:  {about: "your sugar", says: "Please eat something with sugar before we start, and keep somebody near."},
	glucoseHigh:      {about: "your sugar", says: "Your sugar is high. Please test for ketones: without them we keep it easy today."},
	glucoseHighest:   {about: "your sugar", says: "Your sugar is very high. Please test for ketones and ask your doctor about your insulin: without ketones we keep it easy today."},
	ketonesHigh:      {about: "ketones", unsure: "Until your ketones are tested we count them as too high, and leave exercise.", says: "No exercise today because of the ketones. Please speak to your diabetes team or your doctor today."},
	ketonesLight:     {about: "ketones", says: "The ketones are low enough for light exercise, and no more than that today."},
	noStrips:         {about: "ketones", says: "Please ask your diabetes team about ketone strips; today we go gently beside you."},
	painHigh:         {about: "the pain in training", says: "That hurt more than it should. We will make it easier."},
	painUnsettled:    {about: "the pain next morning", says: "The pain took long to settle, so we ease that exercise."},
	painRising:       {about: "the pain over the weeks", says: "It has been getting sorer from week to week; we change that exercise."},
	sorenessLasting:  {about: "sore muscles", says: "Your muscles are still sore, so today is a lighter day."},
	unwellToday:      {about: "feeling unwell", says: "You are a little under the weather: a lighter day, or a day off if you prefer."},

	otherPain[ChestPain]:         {about: "the pain in your chest", says: "Pain around the chest is not for us to judge: please see a doctor today."},
	otherPain[SpreadingPain]:     {about: "the pain that spreads", place: "We look at the pain that spreads together; what it hurts is left out, the rest goes on.", says: "We look at the pain that spreads when you come; until then movements without weights."},
	otherPain[SpinePain]:         {about: "the pain in your spine", lesser: "The pain in your back is new, and with your bones a doctor should hear of it before you train again.", says: "This pain in your spine should be seen by a doctor today."},
	otherPain[BonePain]:          {about: "the pain in your bones", says: "Please call your cancer team today about the pain in your bones."},
	otherPain[HotJointPain]:      {about: "the hot joint", says: "The hot joint that hurts should be seen by a doctor today."},
	otherPain[PostOperativePain]: {about: "pain after your operation", says: "So soon after the operation your surgeon decides about pain; please ask there."},

	askPressure:     {about: "your blood pressure"},
	pressureUntaken: {about: "your blood pressure", says: "Please have your blood pressure measured within two weeks; until then we keep it light, beside you."},
	askGlucose:      {about: "your sugar"},
	askKetones:      {about: "ketones"},
	askSaturation:   {about: "your oxygen"},
	askWeight:       {about: "your weight"},
	askPulse:        {about: "your pulse"},
	askCounts:       {about: "your last blood test"},
	askPainKind:     {about: "the pain"},

	"chest_symptom":             {about: "your chest", says: "Please stop and sit down. We are getting help now."},
	"dizzy_or_swaying":          {about: "feeling dizzy", says: "Please stop and sit down; that is enough for today, and a doctor should hear of it."},
	"pale_bluish_or_clammy":     {about: "your colour", says: "Please stop and lie down. We are calling for help now."},
	"feels_sick":                {about: "feeling sick", says: "Please stop and rest; no more today, and do tell your doctor today."},
	"confused_or_uncoordinated": {about: "feeling muddled", says: "Please stop, sit here with me. We are calling for help now."},
	"breathless_or_wheezing":    {about: "your breath", says: "Please stop and get your breath back; no more today, and a doctor should hear of it."},
	"leg_cramp":                 {about: "the cramp", says: "Please stop and let the cramp pass."},
	"exhausted":                 {about: "how tired you are", says: "That is enough of this set. Please rest."},
	"rhythm_disturbed":          {about: "your heartbeat", says: "Please stop and sit down; no more today, and a doctor should look at your heartbeat today."},
	"asks_to_stop":              {about: "stopping", says: "Of course: we stop here."},
	"monitor_stopped":           {about: "the monitor", says: "We pause until the monitor works again."},
	stopPressureA:               {about: "your blood pressure", says: "Please stop: your blood pressure has climbed enough for today."},
	stopPressureB:               {about: "your blood pressure"}, // with the first
	stopPressureC:               {about: "your blood pressure"}, // with the first
	stopFall:                    {about: "your blood pressure", says: "Please stop and sit: your blood pressure dropped, and a doctor should hear of it today."},
	stopSaturation:              {about: "your oxygen", says: "Please stop: your oxygen is low; no more today, and tell your doctor today."},
	stopSaturation2:             {about: "your oxygen", says: "Please rest until your oxygen is up again."},
}

// againTexts are what a client reads while a second reading is waited for.
var againTexts = map[Code]string{
	pressureAbsolute: "", // never found without the day's own check
	untreatedHigh:    "Until the second reading we practise without weights.",
	pressureRelative: "Your blood pressure reads a little high; a second reading will tell more.",
	pressureToday:    "Your blood pressure is up. Please rest; we will measure again.",
	pressureLowest:   "Your blood pressure reads very low. Please lie down; we will measure again.",
	pressureLow:      "Your blood pressure reads low. Please rest; we will measure again.",
	pulseLow:         "Your pulse is very slow. Please rest; we will count again.",
	pulseToday:       "Your pulse is quick. Please rest; we will count again.",
	saturationSevere: "Your oxygen reads low. Please rest; we will measure again.",
}

// listTexts are what a client reads of a list that was not asked.
var listTexts = map[Code]string{
	askDiseases:   "Before we start we would like to hear about your heart, vessels, kidneys and sugar.",
	askSymptoms:   "A few questions about breath, heartbeat and dizziness come first.",
	askRedFlags:   "We still want to go through a few warning signs.",
	askConditions: "Please tell us about conditions, operations and medicines first.",
	askNew:        "Please tell us first whether anything is new since last time.",
}

// clientTextOf returns the client's text of a code.
func clientTextOf(code Code) clientText {
	if t, ok := readingTexts[code]; ok {
		return t
	}
	return clientTexts[code]
}

// Option returns what a client reads of a code on a list to choose from: short, in
// nobody's questionnaire's words. A code that has none is given in the
// clinician's, and one that is not known gives "".
func Option(code Code) string {
	if own := clientTextOf(code).option; own != "" {
		return own
	}
	term, _ := LookUp(code)
	return term.Meaning
}
