package intents

import (
	"regexp"
	"strings"

	"lazyhand/assess"
)

// Which taps stand ahead of the regulator is found out on the visit: "so front's ahead of the reg".

var aheadOfPRV = regexp.MustCompile(`^(?:(?:so|ok|yep|yeah|turns out|looks like|found out|entonces|resulta que|asi que) )*(?:the |la |el )?(front|rear|back|side|llave de enfrente|de enfrente|enfrente|de atras|llave de atras|de lado)` +
	`s?(?: (?:hose bibb|hose bib|hosebib|bibb|bib|spigot|tap|one|faucet|llave))?s?(?: (?:is|was|comes off|comes|tees off|is teed|its|esta|viene|sale|must be))?(?: (?:teed|piped|plumbed|tied in|off|actually|really|still))*` +
	` (?:(?:ahead of|before|in front of|upstream of|not on|not after|antes de|antes del) (?:the |la |el )?(?:reg|prv|regulator|reguladora|regulador|valvula)|not regulated|unregulated|off the street|straight off the (?:street|main)|sin regular)$`)

// AheadOfPRV is the tap that a message says to stand ahead of the regulator, and nothing else; empty for
// none.
func AheadOfPRV(text string) assess.TestPoint {
	if strings.Contains(text, "?") {
		return ""
	}
	m := aheadOfPRV.FindStringSubmatch(strings.Join(wholeWords(text), " "))
	if m == nil {
		return ""
	}
	switch m[1] {
	case "front", "enfrente", "de enfrente", "llave de enfrente":
		return assess.FrontBibb
	case "side", "de lado":
		return assess.SideBibb
	}
	return assess.RearBibb
}
