"""Prints what ezdxf, which shares no code with ours, finds in a pattern exchange file, as JSON."""
import json
import sys

import ezdxf
from ezdxf.math import area

document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
blocks = []
for block in document.blocks:
    if not block.name.startswith("*"):
        outlines = [e for e in block.query("POLYLINE") if e.dxf.layer == "1"]
        points = [[v.dxf.location.x, v.dxf.location.y] for v in outlines[0].vertices]
        blocks.append({"name": block.name, "outlines": len(outlines), "closed": outlines[0].is_closed, "area": area(points),
                       "grains": len([e for e in block.query("LINE") if e.dxf.layer == "7"])})

print(json.dumps({
    "errors": [str(error) for error in auditor.errors],
    "blocks": blocks,
    "inserts": [e.dxf.name for e in document.modelspace().query("INSERT")],
}))
