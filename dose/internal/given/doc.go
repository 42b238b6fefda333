// Package given looks at what a dose and a week are both asked with: who was screened, and
// days.
package given
