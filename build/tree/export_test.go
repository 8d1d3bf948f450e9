package tree

// ReadJSON reads JSON in which null may stand, for the tests of RFC 7396.
var ReadJSON = readJSON
