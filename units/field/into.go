package field

// Assign is for methods that read into their receiver: it sets *into to what was
// read unless that failed. A nil receiver is an [ErrMissing].
func Assign[T any](into *T, read T, err error) error {
	if err == nil && into == nil {
		err = Bad(nil, "a pointer that is not nil", ErrMissing)
	}
	if err == nil {
		*into = read
	}
	return err
}

// AssignText is Assign for UnmarshalText methods of types that may be left out: nothing is the
// zero value, all else what parse reads.
func AssignText[T any](into *T, text []byte, parse func(string) (T, error)) error {
	if len(text) == 0 {
		var none T
		return Assign(into, none, nil)
	}
	read, err := parse(string(text))
	return Assign(into, read, err)
}

// OrZero returns p, or a new zero value for nil, so that a method of a nil pointer
// answers as that of a zero value does.
func OrZero[T any](p *T) *T {
	if p == nil {
		return new(T)
	}
	return p
}
