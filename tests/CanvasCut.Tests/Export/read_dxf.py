"""Prints what ezdxf, which shares no code with ours, finds in a DXF file, as JSON."""
import json
import sys

import ezdxf
from ezdxf.math import area

document = ezdxf.readfile(sys.argv[1])
auditor = document.audit()
lines = []
texts = []
for entity in document.modelspace():
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "POLYLINE":
        points = [[v.dxf.location.x, v.dxf.location.y] for v in entity.vertices]
        lines.append({"layer": layer, "closed": entity.is_closed, "points": points, "area": area(points) if entity.is_closed else 0})
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
