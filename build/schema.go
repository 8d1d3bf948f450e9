package build

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
	"strings"

	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
)

// schemaOf is a piece of JSON Schema. Its keys are written in order of text.
type schemaOf = map[string]any

// other describes the form of a struct that is not a map.
type other struct {
	Name   string
	Says   string
	Schema schemaOf
}

// Schema is the JSON Schema (draft 2020-12) of a document, for editors. What it
// can not say (references, rings, sums) is Decode's.
func Schema() []byte {
	s := &schemer{defs: schemaOf{}}
	root := s.structure(documentPlan())
	root["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	root["title"] = "A build document"
	root["description"] = "Everything a builder knows or has decided about turning a van into a camper."
	root["$defs"] = s.defs
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(root); err != nil {
		panic(err) // maps, lists and texts always encode
	}
	return b.Bytes()
}

// schemer makes the schema and gathers its named definitions.
type schemer struct{ defs schemaOf }

func (s *schemer) named(name string, make func() schemaOf) schemaOf {
	if _, known := s.defs[name]; !known {
		s.defs[name] = nil // a type may hold itself
		s.defs[name] = make()
	}
	return schemaOf{"$ref": "#/$defs/" + name}
}

// of is the schema of a plan.
func (s *schemer) of(p *plan) schemaOf {
	switch p.shape {
	case pointerShape:
		return s.of(p.elem)
	case structShape:
		return s.named(nameOf(p.typ), func() schemaOf { return s.eitherForm(p) })
	case mapShape:
		return schemaOf{"type": "object", "propertyNames": s.keys(p.rules), "additionalProperties": s.of(p.elem)}
	case listShape:
		return schemaOf{"type": "array", "items": s.of(p.elem)}
	case choiceShape:
		return s.choice(p)
	case orNoneShape:
		return schemaOf{"oneOf": []any{s.of(p.elem), s.word("none-or-undecided", "there is none, or it is not decided yet", none, undecided)}}
	case spreadShape:
		return s.spread(p)
	case patchShape:
		return schemaOf{"type": "object"}
	case numberShape:
		return s.number(p)
	case textShape:
		return s.text(p)
	}
	return s.scalar(reflect.Zero(p.typ).Interface().(grammared).Grammar())
}

// nameOf is the name of a type's definition: QuickReadings is
// keys-of-quick-readings. Quantities have the plain names.
func nameOf(t reflect.Type) string {
	var b strings.Builder
	b.WriteString("keys-of-")
	if strings.HasSuffix(t.PkgPath(), "/catalogue") && t.Name() != "Row" {
		b.WriteString("row-")
	}
	for i, c := range t.Name() {
		if c >= 'A' && c <= 'Z' && i > 0 {
			b.WriteByte('-')
		}
		b.WriteString(strings.ToLower(string(c)))
	}
	return b.String()
}

func (s *schemer) eitherForm(p *plan) schemaOf {
	asMap := s.structure(p)
	if !p.other {
		return asMap
	}
	o := reflect.New(p.typ).Interface().(otherForm).otherForm()
	s.scalar(quantity.Length(0).Grammar())
	schema := s.named(o.Name, func() schemaOf {
		o.Schema["description"] = o.Says
		return o.Schema
	})
	return schemaOf{"oneOf": []any{asMap, schema}}
}

func (s *schemer) structure(p *plan) schemaOf {
	properties, needed := schemaOf{}, []string{}
	for _, f := range p.fields {
		property := s.of(f.plan)
		property["description"] = f.says
		if f.draft {
			property["description"] = f.says + " (kept, not reckoned yet)"
		}
		properties[f.key] = property
		if f.need {
			needed = append(needed, f.key)
		}
	}
	out := schemaOf{"type": "object", "properties": properties, "additionalProperties": false}
	if len(needed) > 0 {
		out["required"] = needed
	}
	return out
}

func (s *schemer) keys(r rules) schemaOf {
	switch r.keys {
	case "weekday":
		return schemaOf{"enum": weekdays}
	case "axle":
		return schemaOf{"enum": axles}
	case "bay":
		return schemaOf{"pattern": bayText.String()}
	case "currency":
		return schemaOf{"pattern": currencyText.String()}
	}
	id := s.named("id", func() schemaOf {
		return schemaOf{
			"type": "string", "pattern": idText.String(), "maxLength": longestID, "not": schemaOf{"enum": misread},
			"description": "a name the builder chose: small letters, digits, single dashes", "examples": []string{"settle", "bench-2"},
		}
	})
	if len(r.reserved) > 0 {
		id["not"] = schemaOf{"enum": r.reserved}
	}
	return id
}

// scalar is the definition of a quantity: a text with a grammar, or a number.
func (s *schemer) scalar(g quantity.Grammar) schemaOf {
	return s.named(g.Name, func() schemaOf {
		text := schemaOf{"type": "string", "pattern": g.Pattern}
		out := text
		switch {
		case g.Number:
			out = schemaOf{"oneOf": []any{schemaOf{"type": "number"}, text}}
		case g.Name == quantity.YesNo(false).Grammar().Name:
			out = schemaOf{"oneOf": []any{schemaOf{"type": "boolean"}, text}}
		}
		out["description"], out["examples"] = g.Says, g.Examples
		return out
	})
}

// spread is a guess: any text or number of its quantity, with or without ±, or a map.
func (s *schemer) spread(p *plan) schemaOf {
	g := reflect.Zero(p.elem.typ).Interface().(grammared).Grammar()
	one := s.scalar(g)
	return s.named("spread-"+g.Name, func() schemaOf {
		inner := strings.TrimSuffix(strings.TrimPrefix(g.Pattern, "^"), "$")
		text := schemaOf{"type": "string", "pattern": "^" + inner + "( *± *(" + inner + "|" + percentPattern + "))?$"}
		values := []any{
			text,
			schemaOf{"type": "object", "properties": schemaOf{"likely": one, "low": one, "high": one}, "required": []string{"likely", "low", "high"}, "additionalProperties": false},
			schemaOf{"type": "object", "properties": schemaOf{"exactly": one}, "required": []string{"exactly"}, "additionalProperties": false},
		}
		if g.Number {
			values = append(values, schemaOf{"type": "number"})
		}
		return schemaOf{
			"oneOf": values, "description": g.Says + "; a guess may say the least and the most it could be",
			"examples": []any{g.Examples[0] + " ± 25 %", schemaOf{"exactly": g.Examples[0]}},
		}
	})
}

const percentPattern = `[0-9]+(\.[0-9]+)? *%`

// choice is a value, or the choices that are still open.
func (s *schemer) choice(p *plan) schemaOf {
	value := s.of(p.elem)
	name := "choice-of-" + p.elem.rules.ref
	if p.elem.shape == structShape {
		name = "choice-of-" + strings.TrimPrefix(nameOf(p.elem.typ), "keys-of-")
	}
	return s.named(name, func() schemaOf {
		open := schemaOf{
			"type": "object", "required": []string{undecided}, "additionalProperties": false,
			"properties": schemaOf{undecided: schemaOf{"type": "array", "items": value, "minItems": 1}},
		}
		forms := []any{value, open}
		if p.elem.shape == structShape { // a text covers the bare word already
			forms = append(forms, s.word("undecided-word", "nothing is known yet", undecided))
		}
		return schemaOf{"oneOf": forms, "description": "a choice, or the choices of which the first is assumed meanwhile"}
	})
}

func (s *schemer) word(name, says string, words ...string) schemaOf {
	return s.named(name, func() schemaOf { return schemaOf{"enum": words, "description": says} })
}

func (s *schemer) number(p *plan) schemaOf {
	kind, name, pattern := "number", "number", plainNumber
	if p.typ.Kind() == reflect.Int {
		kind, name, pattern = "integer", "whole-number", wholeNumber
	}
	return s.named(name, func() schemaOf {
		return schemaOf{
			"oneOf":       []any{schemaOf{"type": kind}, schemaOf{"type": "string", "pattern": pattern.String()}},
			"description": fmt.Sprintf("a %s", strings.ReplaceAll(name, "-", " ")), "examples": []int{2, 12},
		}
	})
}

func (s *schemer) text(p *plan) schemaOf {
	switch {
	case len(p.rules.words) > 0:
		return schemaOf{"enum": p.rules.words}
	case p.rules.letters > 0:
		return schemaOf{"type": []string{"string", "number", "boolean"}, "minLength": 1, "maxLength": p.rules.letters, "description": "a name", "examples": []string{"reading lamp"}}
	case p.rules.ref == "path":
		return s.named("path", func() schemaOf {
			return schemaOf{
				"type": "string", "pattern": `^[A-Za-z0-9-]+(\.[A-Za-z0-9-]+)*$`, "description": "a dotted path from the top of the document",
				"examples": []string{"lining.floor", "fittings.bed"},
			}
		})
	case p.rules.ref == "setting":
		return schemaOf{"enum": settings.IDs()}
	case p.rules.ref != "":
		return s.named("reference", func() schemaOf {
			return schemaOf{
				"type": "string", "pattern": idText.String(), "description": "the id of something that stands elsewhere",
				"examples": []string{"settle", "ply-poplar-12"},
			}
		})
	}
	return s.named("words", func() schemaOf {
		return schemaOf{"type": []string{"string", "number", "boolean"}, "minLength": 1, "description": "free text", "examples": []string{"a remark", "timber yard"}}
	})
}
