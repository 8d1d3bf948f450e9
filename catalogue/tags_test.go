package catalogue_test

import (
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"tumblehome/catalogue"
)

// What the document may say of an own row must not be narrower than what the
// built-in rows say: every built-in value lies in the range and among the words
// of its field's tags.
func TestBuiltinRowsKeepToTheTagsOfTheirFields(t *testing.T) {
	c := catalogue.Builtin()
	for _, id := range c.RowIDs() {
		row, _ := c.Row(id)
		keepsToTags(t, id, reflect.ValueOf(row))
	}
}

func keepsToTags(t *testing.T, id string, v reflect.Value) {
	for i := range v.NumField() {
		field, value := v.Type().Field(i), v.Field(i)
		if field.Tag.Get("doc") == "" || field.Tag.Get("says") == "" {
			t.Fatalf("%s has no key or says nothing", field.Name)
		}
		if value.Kind() == reflect.Pointer {
			if value.IsNil() {
				continue
			}
			value = value.Elem()
		}
		low, high, ranged := strings.Cut(field.Tag.Get("range"), "..")
		switch {
		case value.Kind() == reflect.Float64 && ranged:
			least, _ := strconv.ParseFloat(low, 64)
			most, _ := strconv.ParseFloat(high, 64)
			if f := value.Float(); f < least || f > most {
				t.Errorf("%s: %s is %g, allowed is %s to %s", id, field.Name, f, low, high)
			}
		case value.Kind() == reflect.String && field.Tag.Get("one") != "" && value.String() != "":
			if !slices.Contains(strings.Fields(field.Tag.Get("one")), value.String()) {
				t.Errorf("%s: %s is %q", id, field.Name, value.String())
			}
		case value.Type() == reflect.TypeFor[catalogue.Size]():
			keepsToTags(t, id, value)
		}
	}
}
