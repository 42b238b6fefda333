// Package reviewpaper writes the result of a review: the page for the clinician's file
// here, all other papers by package papers.
package reviewpaper
