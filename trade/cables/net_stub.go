package cables

type net struct{}
