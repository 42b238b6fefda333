module example.org/posology

go 1.26

require pgregory.net/rapid v1.3.0

require github.com/google/go-cmp v0.7.0

require gonum.org/v1/gonum v0.17.0
