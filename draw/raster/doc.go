// Package raster answers: what does the drawing look like as a picture? It paints a scene as
// PNG in either theme, text as outlines of the embedded fonts, so that nothing depends on the
// machine. Same scene, same pixels.
package raster
