// Package given looks at values as they were given: days, scores, answers and
// enumerations that may have been left out.
package given
