package guideline

// A field that only tests name.
const FieldLoadRule = fieldLoadRule
