// Package command holds what the programs that read a case share.
package command
