package screening

// RedFlags answers by the red flags: of the spine after IFOMPT 2020 (Finucane
// 2020), of which one alone says little save those of cauda equina, and others
// of the trade. Two signs that point to one cause, or a sign that counts by
// itself, are an urgent referral. What is unsure is not counted.
func RedFlags(p Profile) Referral {
	return referral(p.RedFlags.appendItems(nil), Yes)
}

// referral counts the signs that are held at least as surely as given.
func referral(items []item, atLeast Answer) Referral {
	answer := NoReferral
	var causes [4]struct {
		name  string
		signs int
	}
	for _, it := range items {
		if it.held.Severity() < atLeast.Severity() {
			continue
		}
		answer = max(answer, it.flag)
		for i := range causes {
			if c := &causes[i]; it.points != "" && (c.name == "" || c.name == it.points) {
				c.name = it.points
				c.signs++
				if c.signs >= flagsTogether {
					answer = max(answer, UrgentReferral)
				}
				break
			}
		}
	}
	return answer
}
