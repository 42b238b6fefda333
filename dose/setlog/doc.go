// Package setlog holds the one type for a performed set. What was prescribed
// is another record, in package dose; the two are never mixed.
package setlog
