"""Whole TTF files for the papers, made from the open packages the web app already uses.

The packages split each family by script into WOFF2 subsets; a PDF needs one file a weight. Each subset is
instantiated at the weight wanted, then merged. Neither family declares a Reserved Font Name (their licence texts lie
beside this file), so the merged files keep the family's name; it gets the weight added so that files can be told apart.

Run with a Python that has fonttools and brotli (Debian: python3-fonttools, python3-brotli):
    /usr/bin/python3 server/assets/fonts/build.py
Legwork Marks (ours) are drawn by web/src/ui/fonts/build-marks.py, DejaVu Sans from Debian's fonts-dejavu-core.
Also writes coverage.json: the code points each file can set, as [first, last] ranges.
"""
import glob
import json
import os
import runpy
import shutil
import tempfile

from fontTools import merge
from fontTools.fontBuilder import FontBuilder
from fontTools.ttLib import TTFont
from fontTools.varLib import instancer

HERE = os.path.dirname(os.path.abspath(__file__))
PACKAGES = os.path.join(HERE, "../../../node_modules/@fontsource-variable")
MARKS = os.path.join(HERE, "../../../web/src/ui/fonts/build-marks.py")
DEJAVU = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"
EPOCH = 3786825600  # one fixed 'modified' time: the same input makes the same bytes

WANTED = [
    ("national-park", "National Park", "normal", 400),
    ("national-park", "National Park", "normal", 500),
    ("national-park", "National Park", "normal", 600),
    ("stix-two-text", "STIX Two Text", "normal", 400),
    ("stix-two-text", "STIX Two Text", "normal", 600),
    ("stix-two-text", "STIX Two Text", "italic", 400),
]


def fixed_time(font):
    font.recalcTimestamp = False
    font["head"].modified = font["head"].created = EPOCH


def whole(package, family, style, weight):
    found = sorted(glob.glob(f"{PACKAGES}/{package}/files/*-wght-{style}.woff2"))
    latin = [f for f in found if "-latin-wght" in f]
    parts = []
    with tempfile.TemporaryDirectory() as folder:
        for path in latin + [f for f in found if f not in latin]:
            font = TTFont(path)
            font.flavor = None
            still = instancer.instantiateVariableFont(font, {"wght": weight}, overlap=instancer.OverlapMode.KEEP_AND_DONT_SET_FLAGS)
            for table in ("STAT", "GDEF", "BASE", "DSIG", "MVAR", "meta"):
                if table in still:
                    del still[table]
            part = os.path.join(folder, os.path.basename(path) + ".ttf")
            still.save(part)
            parts.append(part)
        made = merge.Merger().merge(parts)
    slant = " Italic" if style == "italic" else ""
    plain = family.replace(" ", "")
    names = {1: f"{family} {weight}{slant}", 2: "Regular", 4: f"{family} {weight}{slant}", 6: f"{plain}-{weight}{slant.strip()}"}
    made["name"].names = [n for n in made["name"].names if n.nameID in (0, 5, 13, 14)]
    for number, text in names.items():
        made["name"].setName(text, number, 3, 1, 0x409)
    fixed_time(made)
    made.save(os.path.join(HERE, f"{package}-{weight}{'-italic' if slant else ''}.ttf"))


def marks():
    """The marks as the web app's script draws them, caught before it packs them as WOFF2."""
    made = {}
    save = FontBuilder.save
    FontBuilder.save = lambda self, path: made.__setitem__(int(path.split("-")[2].split(".")[0]), self.font)
    try:
        runpy.run_path(MARKS)
    finally:
        FontBuilder.save = save
    return {weight: made[weight] for weight in (400, 500, 600)}


def ranges(points):
    out = []
    for point in sorted(points):
        if out and out[-1][1] == point - 1:
            out[-1][1] = point
        else:
            out.append([point, point])
    return out


def main():
    for wanted in WANTED:
        whole(*wanted)
    for weight, font in marks().items():
        font.flavor = None
        font["name"].setName(f"LegworkMarks-{weight}", 6, 3, 1, 0x409)
        fixed_time(font)
        font.save(os.path.join(HERE, f"legwork-marks-{weight}.ttf"))
    shutil.copyfile(DEJAVU, os.path.join(HERE, "dejavu-sans.ttf"))
    for package in ("national-park", "stix-two-text"):
        shutil.copyfile(f"{PACKAGES}/{package}/LICENSE", os.path.join(HERE, f"LICENSE-{package}.txt"))
    coverage = {}
    for path in sorted(glob.glob(os.path.join(HERE, "*.ttf"))):
        coverage[os.path.basename(path)[:-4]] = ranges(TTFont(path).getBestCmap())
    with open(os.path.join(HERE, "coverage.json"), "w") as out:
        out.write(json.dumps(coverage, separators=(",", ":")).replace("]],", "]],\n") + "\n")


main()
