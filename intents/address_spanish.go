package intents

import "strings"

var spanishStreet = map[string]bool{"calle": true, "via": true, "avenida": true, "av": true, "ave": true, "camino": true, "paseo": true, "privada": true, "calzada": true, "callejon": true, "cerrada": true, "carretera": true, "boulevard": true, "bulevar": true, "circuito": true, "andador": true, "prolongacion": true, "vereda": true, "rincon": true, "senda": true, "sendero": true, "calz": true, "priv": true, "cda": true, "rua": true, "glorieta": true, "pasaje": true, "ruta": true, "cjon": true, "loma": true, "placita": true}

// spanishName reads "Calle Luna", "Avenida del Sol" after a house number: no
// suffix follows.
func (p *Parser) spanishName(toks []token, j int, dir string) (street, bool) {
	end := j + 1
	words := 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if t.kind != word || t.quoted != toks[j].quoted {
			break
		}
		if linking(t.text) && end+1 < len(toks) && toks[end+1].kind == word {
			end++
			continue
		}
		if p.stop(toks, end) || p.term(toks, end) && !t.caps || words > 0 && p.lex.known(t.text) {
			break
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	line := p.nameOf(toks, j, end)
	if dir != "" {
		line = dir + " " + line
	}
	return street{line: line, to: end, score: 5, suffixed: true}, true
}

// spanishAddress reads a Spanish street line, its number last: "Calle 8 #1420".
func (p *Parser) spanishAddress(toks []token, i int) (address, bool) {
	a := address{from: i, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}
	k, words := i+1, 0
	if k < len(toks) && toks[k].text == "." {
		k++
	}
	name := k
	for k < len(toks) && words < 4 {
		t := &toks[k]
		if t.kind == number && words == 0 && t.num.integer && len(t.num.digits) <= 3 && k+1 < len(toks) && (toks[k+1].kind == number || toks[k+1].text == "#" || toks[k+1].text == "numero" || toks[k+1].text == "num" || toks[k+1].text == "no") {
			words++
			k++
			break
		}
		if t.kind != word {
			break
		}
		if words > 0 && (t.text == "numero" || t.text == "num" || t.text == "no" || t.text == "nro") {
			break
		}
		if !linking(t.text) && (p.stop(toks, k) || p.term(toks, k) && !t.caps) {
			return a, false
		}
		words++
		k++
	}
	if words == 0 || k >= len(toks) {
		return a, false
	}
	nameEnd := k
	sep := " "
	if toks[k].kind == mark && toks[k].text == "," && k+1 < len(toks) && toks[k+1].text == "#" {
		k++
	}
	switch {
	case toks[k].kind == mark && toks[k].text == "#":
		sep = " #"
		k++
	case toks[k].kind == word && (toks[k].text == "numero" || toks[k].text == "num" || toks[k].text == "no" || toks[k].text == "nro"):
		k++
		if k < len(toks) && toks[k].text == "." {
			k++
		}
	}
	if k >= len(toks) || toks[k].kind != number || !houseNumber(&toks[k]) {
		return a, false
	}
	if k+1 < len(toks) && toks[k+1].kind == word {
		if tags, n := p.lex.match(toks, k+1, k+2); n > 0 && p.has(tags, cUnit, "psi") {
			return a, false
		}
	}
	a.house = k
	typ := title(toks[i].raw)
	if toks[i].text == "av" || toks[i].text == "ave" {
		typ = title(toks[i].raw)
		if i+1 < name {
			typ += "."
			typ = strings.TrimSuffix(typ, ".")
		}
	}
	a.line = typ + " " + p.nameOf(toks, name, nameEnd) + sep + toks[k].num.digits
	a.to = k + 1
	if a.to < len(toks) && toks[a.to].glued && toks[a.to].kind == word && len(toks[a.to].raw) == 1 {
		a.line += strings.ToUpper(toks[a.to].raw)
		a.to++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, true
}
