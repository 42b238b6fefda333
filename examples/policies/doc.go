// Command policies compares policies of dose on virtual people: the module's own,
// published rules done plainly, and one that knows the truth. It prints, for each
// kit, each kind of people and each policy, how many visits work, what the people
// gain, how near to failure they come and how many are sent elsewhere. With 500 people it
// takes minutes.
//
//	go run ./examples/policies [-people 4] [-weeks 24] [-kit NAME] [-population NAME] [-policy NAME] [-facts] [-curves]
//
// With -curves it writes strength and nearness to failure week by week as comma-separated
// values, which examples/charts draws.
//
// The people are arithmetic and invented: nobody did any of it, and no figure is a
// finding about real people. The same numbers of people and weeks print the same table;
// person number n is the same, with the same days, errors and misses, in all of them.
// Nothing is kept: stopped on the way, the program has printed nothing.
package main
