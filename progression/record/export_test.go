package record

// Alike is what holds an exercise where another hurt.
var Alike = alike
