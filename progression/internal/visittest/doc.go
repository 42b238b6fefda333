// Package visittest asks what one visit showed. Only tests import it.
package visittest
