package finding

// SetOff puts a name into marks that ends in a figure, so that it does not run into a length: “box 1” 60 mm.
func SetOff(name string) string {
	if name != "" && name[len(name)-1] >= '0' && name[len(name)-1] <= '9' {
		return "“" + name + "”"
	}
	return name
}
