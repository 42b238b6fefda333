package strength_test

import "example.org/posology/dose/internal/lifttest"

var (
	man      = lifttest.Man
	press    = lifttest.Press
	set      = lifttest.Set
	everyone = lifttest.Everyone
)
