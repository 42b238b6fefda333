package simulate

// Together joins the effects of the sets of a visit.
var Together = together
