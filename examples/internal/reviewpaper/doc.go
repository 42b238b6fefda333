// Package reviewpaper writes the papers of a review: for the client, the file and
// the doctor.
package reviewpaper
