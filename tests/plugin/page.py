#!/usr/bin/python3
"""Is the code of docs/plug-ins.md the text of the files that are built?

    page.py ROOT
"""

import re
import sys
from pathlib import Path

root = Path(sys.argv[1])
page = (root / "docs/plug-ins.md").read_text(encoding="utf-8")
code = {match[1] for match in re.finditer(r"^```(?:c|cpp)\n(.*?)^```$", page, re.MULTILINE | re.DOTALL)}
examples = {path: path.read_text(encoding="utf-8") for path in (root / "docs/examples/plug-ins").iterdir()}
wrong = [f"{path.name} is not on the page as it stands" for path, text in examples.items() if text not in code]
if len(code) != len(examples) or len(examples) < 2:
    wrong.append(f"{len(code)} blocks of code, {len(examples)} files")
print("\n".join(wrong) or f"{len(code)} blocks are the files' text")
sys.exit(1 if wrong else 0)
