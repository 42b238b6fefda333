// Package screentest lists what screening can be told. Only tests import it.
package screentest
