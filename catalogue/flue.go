package catalogue

// flues says of the built-in rows that burn something inside whether their fumes leave by a flue of their own: heaters with sealed combustion have
// one, cookers have none. What runs on electricity is not named.
var flues = map[string]string{
	"heater-diesel-2kw":         "own",
	"heater-diesel-2kw-premium": "own",
	"heater-gas-portable-1500":  "none",
	"hob-gas-1":                 "none",
	"hob-gas-2":                 "none",
	"sink-lid-glass-combo":      "none",
	"stove-alcohol-2":           "none",
	"stove-cartridge":           "none",
	"stove-portable-2":          "none",
}
