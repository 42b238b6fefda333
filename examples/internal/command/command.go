package command

import (
	"encoding/json"
	"fmt"
	"io"
	"os"

	"example.org/posology/progression/record"
	"example.org/posology/units/field"
)

// Readers are those whom a paper can be for.
var Readers = []string{"client", "file", "doctor"}

// Case returns the file, or what is embedded if none is named.
func Case(file string, embedded []byte) ([]byte, error) {
	if file == "" {
		return embedded, nil
	}
	return os.ReadFile(file)
}

// Record decodes a case, strictly.
func Record(file string, embedded []byte) (record.Record, error) {
	data, err := Case(file, embedded)
	if err != nil {
		return record.Record{}, err
	}
	return record.Decode(data, field.Strict)
}

// JSON writes a result for people to read too.
func JSON(w io.Writer, v any) error {
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(v)
}

// Status says what is wrong with the case of a program, and returns its exit status.
func Status(w io.Writer, program string, err error) int {
	if err == nil {
		return 0
	}
	fmt.Fprintf(w, "%s: the case cannot be used:\n%v\n", program, err)
	return 1
}
