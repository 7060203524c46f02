"""Prints what ezdxf, which shares no code with ours, finds in a DXF file, as JSON."""
import json
import math
import sys

import ezdxf
from ezdxf.math import Vec2, area, bulge_radius


def curved_area(points, bulges):
    """The area of a counter-clockwise outline: within its chords, and between each chord and its arc."""
    total = area(points)
    for start, end, bulge in zip(points, points[1:] + points[:1], bulges):
        if bulge:
            angle = 4 * math.atan(bulge)
            total += bulge_radius(Vec2(start), Vec2(end), bulge) ** 2 * (angle - math.sin(angle)) / 2
    return total


document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
lines = []
texts = []
for entity in document.modelspace():
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "POLYLINE":
        points = [[v.dxf.location.x, v.dxf.location.y] for v in entity.vertices]
        bulges = [v.dxf.bulge for v in entity.vertices]
        lines.append({"layer": layer, "closed": entity.is_closed, "points": points, "bulges": bulges, "area": curved_area(points, bulges) if entity.is_closed else 0})
    elif kind == "LINE":
        lines.append({"layer": layer, "closed": False, "points": [[p.x, p.y] for p in (entity.dxf.start, entity.dxf.end)], "area": 0})
    elif kind == "TEXT":
        align = entity.dxf.halign
        at = entity.dxf.insert if align == 0 else entity.dxf.align_point
        texts.append({
            "layer": layer, "text": entity.plain_text(), "height": entity.dxf.height,
            "turn": entity.dxf.rotation, "align": align, "at": [at.x, at.y],
        })

print(json.dumps({
    "errors": [str(error) for error in auditor.errors],
    "fixes": [str(fix) for fix in auditor.fixes],
    "version": document.dxfversion,
    "units": document.header["$INSUNITS"],
    "extmin": list(document.header["$EXTMIN"]),
    "extmax": list(document.header["$EXTMAX"]),
    "layers": {layer.dxf.name: layer.dxf.linetype for layer in document.layers},
    "linetypes": [linetype.dxf.name for linetype in document.linetypes],
    "lines": lines,
    "texts": texts,
}))
