// Package planpaper writes the result of a first visit: the page for the clinician's
// file here, all other papers by package papers.
package planpaper
