// Package say spells small numbers out, as the sentences of a dose and of a week do.
package say
