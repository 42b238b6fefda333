// Package fieldtest looks at errors and at JSON. Only tests import it.
package fieldtest
