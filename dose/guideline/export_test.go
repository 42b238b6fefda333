package guideline

// A field that only tests name.
const FieldLoadRule = fieldLoadRule

func (f Field) About() string { return f.about() }
