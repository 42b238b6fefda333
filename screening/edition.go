package screening

// Edition is that of what this package and those below it answer. It is raised
// by hand when an answer changes, and never for words alone.
const Edition = 5
