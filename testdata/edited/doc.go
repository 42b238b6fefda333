// Package edited writes files for tests: a good one with one thing changed.
package edited
