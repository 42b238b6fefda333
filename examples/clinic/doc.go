// Command clinic keeps a folder of records, one JSON file a person, and takes
// everybody through: interview, first visit, week, visits, reviews, tests, goodbye.
//
//	go run ./examples/clinic -dir FOLDER [STEP NAME] [-day DAY] [-for READER | -json] [-html] [-diary FILE] [-answers FILE] [-yes]
//
// The steps, with what each asks and writes:
//
//	list         who there is, what somebody has to look at first of all, and which step comes
//	             next; the step where none is named
//	new NAME     who it is and what for, and the interview
//	ask NAME     the interview again, with what was answered before; what was measured or told
//	             of the day itself stands on that day alone, up to the session; sugar, ketones,
//	             oxygen and a severe low are asked each time, since they move within hours;
//	             who stops changes what was told and nothing else
//	visit NAME   the first visit: weights, days, test sets, tests of function, and what work
//	             beside lifting waits for (spine, pelvic floor, stances); the first plan
//	week NAME    the week begins: what is asked for; later on a new plan or the next phase, with
//	             other days, the weights that are there and, after a new assessment, an
//	             exercise of it; where the next visit was decided for, other days of the week,
//	             or minutes, for the same plan
//	check NAME   the day's check before a session; review then decides for that day; again,
//	             sugar after a treated low, or what is to be read twice: all readings are kept
//	change NAME  other weights, minutes, another goal or body mass; an exercise that ends or
//	             begins; who has trained is decided on again
//	log NAME     one visit: the sets that were done, and what was noted; with -diary the
//	             days of a diary that was typed in
//	review NAME  what is new, who has looked at it, and days away to come; what came of the work beside
//	             lifting, and what becomes of every exercise at the next visit; what was stopped begins
//	             anew once somebody has looked. Where something is new it decides again
//	test NAME    test sets and tests of function once more, beside the earlier ones
//	end NAME     the goodbye: what was reached, how to go on, when to come back; a letter
//	show NAME    the papers of the last decision once more
//	replay NAME  whether every decision that was kept comes out again
//
// Each takes what it needs from the record and asks only for what is new: of whoever
// types, or with -answers of a file of lines such as "client: Client A, 67". Before it
// writes it shows what, by its place in the record, and asks; with -answers it writes
// where -yes is given. A record is written whole or not at all, and the ones before it
// are kept beside it: gunzip -c FOLDER/older/NAME.0007.json.gz shows one, and put in the
// place of FOLDER/NAME.json it takes back what came after. With -html all papers of visit,
// week, review, end and show are written, too, as FOLDER/papers/NAME-DAY-PAPER.html, for
// print. With -json the result of these steps comes as JSON, and all else on the other
// output. A name is small letters and digits, best ones that name nobody.
// The files are records as firstvisit, week and review read them: -case FOLDER/NAME.json.
//
// It is an example of the library, to be tried on invented people; it is not a
// medical device. It gives nobody leave to train: local rules and a licensed
// clinician decide.
package main
