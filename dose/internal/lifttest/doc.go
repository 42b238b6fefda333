// Package lifttest makes sets of one exercise, and people who do them; all are invented.
// Only tests import it.
package lifttest
