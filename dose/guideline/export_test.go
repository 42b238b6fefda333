package guideline

// About is what a field is about, nothing for a value that is no field.
func (f Field) About() string {
	if !fields.Valid(f) {
		return ""
	}
	return readers[f].about
}
