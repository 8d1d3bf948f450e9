package cables

// End is where a cable ends.
type End struct {
	Fitting string // id; "" where the document has none for it
	Words   string // "house battery", "fuse board", "light strip left"
	Symbol  Symbol // how it is drawn
}

// Symbol is what an end is in a circuit diagram.
type Symbol string

const (
	SymbolBattery   Symbol = "battery"
	SymbolStarter   Symbol = "starter battery"
	SymbolBoard     Symbol = "board" // positive busbar with its fuses
	SymbolLamp      Symbol = "lamp"
	SymbolMotor     Symbol = "motor" // pump, fan
	SymbolFridge    Symbol = "fridge"
	SymbolHeater    Symbol = "heater"
	SymbolSocket    Symbol = "socket"
	SymbolInverter  Symbol = "inverter"
	SymbolPanel     Symbol = "panel"
	SymbolRegulator Symbol = "regulator"
	SymbolConverter Symbol = "converter" // DC to DC
	SymbolCharger   Symbol = "charger"   // mains to DC
	SymbolRelay     Symbol = "relay"
	SymbolBody      Symbol = "body"
	SymbolLoad      Symbol = "load"
)
