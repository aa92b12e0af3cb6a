"""Opens each DXF file with ezdxf, first strictly and then as a damaged one would be opened; says in JSON what had to
be repaired."""

import json
import sys
from collections import Counter

import ezdxf
from ezdxf import recover


def audit(path):
    ezdxf.readfile(path)
    document, auditor = recover.readfile(path)
    entities = list(document.modelspace())
    return {
        "path": path,
        "version": document.dxfversion,
        "unit": document.header.get("$INSUNITS", 0),
        "errors": [error.message for error in auditor.errors],
        "fixes": [fix.message for fix in auditor.fixes],
        "types": Counter(entity.dxftype() for entity in entities),
        "layers": sorted({entity.dxf.layer for entity in entities}),
        "texts": [entity.plain_text() for entity in entities if entity.dxftype() == "TEXT"],
    }


json.dump([audit(path) for path in sys.argv[1:]], sys.stdout)
