package units

// Must returns v and panics if err is not nil. It is for package-level tables
// of constants and for tests, never for input.
func Must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
