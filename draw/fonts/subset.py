# Makes the lettering fonts: python3 subset.py <folder of the original family> <folder to write to>
# A subset of Barlow Semi Condensed with tabular figures as the plain ones, thin spaces and
# arrows added, hinting and kerning left out. Needs fonttools.
import sys
from fontTools.ttLib import TTFont
from fontTools.subset import Subsetter, Options
from fontTools.pens.ttGlyphPen import TTGlyphPen

chars = set(range(0x20, 0x7f)) | set(range(0xa0, 0x180)) | {0x218,0x219,0x21a,0x21b,0x1e9e}
chars |= set(map(ord, "–—‘’‚“”„…•′″‰€™−≈≠≤≥∞∆∑√πμΩΔ·⁄⅓⅔⅛⅜⅝⅞"))
digits = "zero one two three four five six seven eight nine".split()

def add(f, name, code, width, draw=None):
    pen = TTGlyphPen(None)
    if draw: draw(pen)
    g = pen.glyph()
    f['glyf'][name] = g
    f['hmtx'][name] = (width, 0)
    if draw:
        g.recalcBounds(f['glyf']); f['hmtx'][name] = (width, g.xMin)
    for t in f['cmap'].tables:
        if t.isUnicode(): t.cmap[code] = name

def arrow(turn, stem):
    s, h = stem / 2, stem * 2.6
    # an arrow of length 560 pointing right about (340, 350)
    pts = [(-280,-s),(280-h*.62,-s),(280-h*1.0,-h+s*.2),(280-h*.45,-h+s*.2),(280,0),(280-h*.45,h-s*.2),(280-h*1.0,h-s*.2),(280-h*.62,s),(-280,s)]
    def draw(pen):
        q = [turn(x, y) for x, y in pts]
        q = [(round(340+x), round(350+y)) for x, y in q]
        q.reverse()
        pen.moveTo(q[0]); [pen.lineTo(p) for p in q[1:]]; pen.closePath()
    return draw

for src, dst, stem in (("400Regular/BarlowSemiCondensed_400Regular", "BarlowSemiCondensed-Regular", 76), ("600SemiBold/BarlowSemiCondensed_600SemiBold", "BarlowSemiCondensed-SemiBold", 112)):
    f = TTFont(sys.argv[1] + "/" + src + ".ttf", recalcTimestamp=False)
    for t in f['cmap'].tables:
        if t.isUnicode():
            for i, d in enumerate(digits): t.cmap[0x30+i] = d + ".tf"
    o = Options(); o.hinting = False; o.layout_features = []; o.glyph_names = False; o.name_IDs = [0,1,2,3,4,5,6,13,14]; o.notdef_outline = True
    o.drop_tables += ['GPOS','GSUB','GDEF','gasp']
    s = Subsetter(o); s.populate(unicodes=chars); s.subset(f)
    add(f, "thinspace", 0x2009, 140); add(f, "nnbsp", 0x202f, 140); add(f, "figurespace", 0x2007, f['hmtx'][f.getBestCmap()[0x30]][0])
    for code, name, turn in ((0x2192,"arrowright",lambda x,y:(x,y)),(0x2190,"arrowleft",lambda x,y:(-x,-y)),(0x2191,"arrowup",lambda x,y:(-y,x)),(0x2193,"arrowdown",lambda x,y:(y,-x))):
        add(f, name, code, 680, arrow(turn, stem))
    f['post'].formatType = 3
    f.save(sys.argv[2] + "/" + dst + ".ttf")
    print(dst, len(f.getGlyphOrder()), f['OS/2'].sCapHeight, f['OS/2'].sxHeight)
