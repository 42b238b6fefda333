// Package papers makes what people take home or are sent after a first visit, a
// review or the last one: the handout, a diary to fill in, the page about glucose,
// and letters. The programs print them; nothing is decided here.
package papers
