"""Legwork Marks: the round-stroke signs that the web subsets of our two families lack. Outlines of our own.

Run here with fonttools and brotli installed: python3 build-marks.py. Writes one woff2 a weight beside itself.
"""
import math
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
ST={300:61,400:77,500:90,600:103,700:117}
def capsule(p,a,b,r,n=10):
    (x0,y0),(x1,y1)=a,b; t=math.atan2(y1-y0,x1-x0); pts=[]
    for i in range(n+1): an=t+math.pi/2-math.pi*i/n*-1; pts.append((x0+r*math.cos(an),y0+r*math.sin(an)))
    for i in range(n+1): an=t-math.pi/2+math.pi*i/n; pts.append((x1+r*math.cos(an),y1+r*math.sin(an)))
    poly(p,pts)
def poly(p,pts):
    area=sum(x0*y1-x1*y0 for (x0,y0),(x1,y1) in zip(pts,pts[1:]+pts[:1]))
    if area>0: pts=pts[::-1]   # clockwise = filled
    p.moveTo(tuple(map(round,pts[0])));[p.lineTo(tuple(map(round,q))) for q in pts[1:]];p.closePath()
def line(p,pts,r):
    for a,b in zip(pts,pts[1:]): capsule(p,a,b,r)
def ring(p,cx,cy,R,r,n=64):
    o=[(cx+(R+r)*math.cos(2*math.pi*i/n),cy+(R+r)*math.sin(2*math.pi*i/n)) for i in range(n)]
    poly(p,o)
    i_=[(cx+(R-r)*math.cos(2*math.pi*i/n),cy+(R-r)*math.sin(2*math.pi*i/n)) for i in range(n)]
    p.moveTo(tuple(map(round,i_[0])));[p.lineTo(tuple(map(round,q))) for q in i_[1:]];p.closePath() # ccw = hole
def build(w):
    r=ST[w]/2; G={}; W={}
    def g(name,width,f):
        p=TTGlyphPen(None); f(p); G[name]=p.glyph(); W[name]=(width,0)
    g('.notdef',500,lambda p:poly(p,[(60,0),(440,0),(440,700),(60,700)])); g('space',260,lambda p:None)
    c=362
    def le(p): line(p,[(500,640),(80,400),(500,160)],r); line(p,[(80,20),(500,20)],r)
    def ge(p): line(p,[(80,640),(500,400),(80,160)],r); line(p,[(80,20),(500,20)],r)
    def wave(y): return [(70+430*i/24, y+55*math.sin(2*math.pi*i/24)) for i in range(25)]
    def approx(p): line(p,wave(c+85),r); line(p,wave(c-85),r)
    def ne(p): line(p,[(80,c+115),(500,c+115)],r); line(p,[(80,c-115),(500,c-115)],r); line(p,[(180,c-300),(400,c+300)],r)
    def empty(p): ring(p,330,350,255,r); line(p,[(90,40),(570,660)],r)
    def dia(p): ring(p,310,300,200,r); line(p,[(100,60),(520,540)],r)
    def delta(p): line(p,[(60+r,r),(320,700-r),(580-r,r),(60+r,r)],r)
    def root(p): line(p,[(40,330),(130,370),(250,60),(400,760),(620,760)],r*.9)
    def arrow(dx,dy,long=True):
        def f(p):
            L=330; cx,cy=400,c
            a=(cx-dx*L,cy-dy*L); b=(cx+dx*(L-120),cy+dy*(L-120)); tip=(cx+dx*(L+20),cy+dy*(L+20))
            line(p,[a,b],r*.8)
            px,py=-dy,dx; h=70+r*1.2; q=(tip[0]-dx*270,tip[1]-dy*270)
            poly(p,[tip,(q[0]+px*h,q[1]+py*h),(q[0]-px*h,q[1]-py*h)])
        return f
    def both(p):
        line(p,[(150,c),(650,c)],r*.8)
        for s in (1,-1):
            tip=400+s*350; q=tip-s*240; h=70+r*1.2; poly(p,[(tip,c),(q,c+h),(q,c-h)])
    def tick(p): line(p,[(90,300),(270,90),(610,640)],r*1.15)
    for n,wd,f in [('lessequal',580,le),('greaterequal',580,ge),('approxequal',570,approx),('notequal',580,ne),('emptyset',660,empty),('diameter',620,dia),('Delta',640,delta),('radical',640,root),('right',800,arrow(1,0)),('left',800,arrow(-1,0)),('up',800,arrow(0,1)),('down',800,arrow(0,-1)),('both',800,both),('tick',700,tick)]: g(n,wd,f)
    fb=FontBuilder(1000,isTTF=True); order=list(G); fb.setupGlyphOrder(order)
    fb.setupCharacterMap({0x20:'space',0x2264:'lessequal',0x2265:'greaterequal',0x2248:'approxequal',0x2260:'notequal',0x2205:'emptyset',0x2300:'diameter',0x394:'Delta',0x2206:'Delta',0x221A:'radical',0x2192:'right',0x2190:'left',0x2191:'up',0x2193:'down',0x2194:'both',0x2713:'tick'})
    fb.setupGlyf(G); fb.setupHorizontalMetrics(W); fb.setupHorizontalHeader(ascent=1030,descent=-300)
    fb.setupNameTable(dict(familyName='Legwork Marks',styleName=str(w))); fb.setupOS2(sTypoAscender=1030,sTypoDescender=-300,usWeightClass=w,sxHeight=515,sCapHeight=700); fb.setupPost()
    for n in order:
        gl=fb.font['glyf'][n]
        if gl.numberOfContours>0: gl.flags[0]|=0x40
    fb.font.flavor='woff2'; fb.save(f'legwork-marks-{w}.woff2')
for w in ST: build(w)
