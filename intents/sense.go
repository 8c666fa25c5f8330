package intents

import (
	"encoding/binary"
	"slices"
)

// sense is what a phrase can mean, and what rules ask of it. Nearly all phrases share
// theirs with others.
type sense struct {
	tags  []tag
	kinds classSet
	keys  key
	lists listSet
}

// senseOf returns the sense of a node.
func (l *lexicon) senseOf(node int32) *sense { return &l.senses[l.sense[node]] }

// meant returns the tags of a node.
func (l *lexicon) meant(node int32) []tag { return l.senses[l.sense[node]].tags }

// settle gives every node its sense, once all phrases are read, and returns what each
// can be by class.
func (l *lexicon) settle(r *keyring) (kinds []classSet) {
	l.senses, l.sense, kinds = make([]sense, 1), make([]int32, len(l.tags)), make([]classSet, len(l.tags))
	known := map[string]int32{}
	var name []byte
	for node, tags := range l.tags {
		says := l.phrases[node]
		if len(tags) == 0 {
			l.phrases[node] = "" // it is only a way to longer ones
			continue
		}
		s := sense{tags, classesOf(tags), r.of(says, tags), r.lists[says]}
		name = s.appendName(name[:0])
		id, ok := known[string(name)]
		if !ok {
			for i, t := range tags {
				tags[i].meaning = meaningOf(t.class, t.value)
			}
			id = int32(len(l.senses))
			known[string(name)] = id
			l.senses = append(l.senses, s)
		}
		l.sense[node], kinds[node] = id, s.kinds
	}
	l.phrases, l.tags = slices.Clone(l.phrases), nil
	return kinds
}

// appendName appends what tells a sense from all others.
func (s sense) appendName(b []byte) []byte {
	for _, t := range s.tags {
		b = append(append(append(b, byte(t.class)), t.value...), 0)
	}
	b = binary.LittleEndian.AppendUint64(b, uint64(s.keys))
	return binary.LittleEndian.AppendUint64(b, uint64(s.lists))
}
