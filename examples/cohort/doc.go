// Command cohort adds up a log of many people: their weekly sets by muscle, volume load by
// exercise, the best and the latest estimate of each one-repetition maximum, and every row
// that was not read, with its line.
//
//	go run ./examples/cohort [-log FILE -map FILE] [-out FOLDER] [-json]
//
// The map says in JSON which column holds what, as setlog.Reader does: see
// examples/cohort/map.json. Without a log an invented one is read. Without a folder the tables
// are printed; into a folder they are written as weekly.csv, exercises.csv,
// estimates.csv and rejects.csv, each whole or not at all: an interrupt leaves what was there.
//
// A log too large for one machine is read in shards, by lines, and the shards put together
// again; the tables are the same to the byte:
//
//	go run ./examples/cohort -log FILE -map FILE -out FOLDER -shard 1/4   # and 2/4, 3/4, 4/4
//	go run ./examples/cohort -map FILE -out FOLDER -merge 4
//
// For a paper, a page says how many weeks meet a recommendation on weekly sets, by each convention of
// counting, with what to cite; the same sums and seed print the same page:
//
//	go run ./examples/cohort -log FILE -map FILE -paper -seed 7
//	go run ./examples/cohort -map FILE -out FOLDER -merge 4 -paper -seed 7
//
// A log with double quotes is not cut into shards: a quote may hide the end of a line.
package main
