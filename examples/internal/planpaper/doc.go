// Package planpaper writes the papers of a first visit: for the client, the file
// and the doctor.
package planpaper
