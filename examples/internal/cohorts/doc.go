// Package cohorts holds what the programs share that add up logs of many people: a log, or
// one shard of it, is read into sums, and sums are put together, in any order and
// grouping. Those are a map and a reduction, whatever runs them.
package cohorts
