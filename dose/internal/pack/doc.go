// Package pack writes sums for another machine and reads them back: a first line that names form
// and version, a digest of how was counted, numbers and texts, and a checksum of all that.
package pack
