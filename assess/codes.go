package assess

// FindingCodes returns every code that a Finding can have, in the order in
// which findings of one urgency stand.
func FindingCodes() []string {
	var codes []string
	for i := range rules {
		codes = append(codes, rules[i].code)
	}
	return codes
}
