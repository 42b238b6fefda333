package strength_test

import "example.org/posology/internal/lifttest"

const day = lifttest.Day

var (
	man      = lifttest.Man
	press    = lifttest.Press
	set      = lifttest.Set
	everyone = lifttest.Everyone
)
