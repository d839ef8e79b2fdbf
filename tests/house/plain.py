#!/usr/bin/python3
"""Two measures of plain English in the pages: long sentences, and words that a reader stumbles over.

    plain.py [ROOT]       prints `file:line: what` for each, then both counts as shares; 1 if there are too many
    plain.py --self-test  measures a page made for it, and expects the counts that a reader would get
"""

import re
import sys
from pathlib import Path

LONGEST = 25  # words of a sentence
MOST_LONG = 0.02  # as a share of all sentences
MOST_STUMBLES = 3
STUMBLES = re.compile(r"\b(likewise|stands|besides|parted by|but for|in print|tells)\b", re.IGNORECASE)
OUTSIDE = re.compile(r"^(```.*?^```|\|.*?$|!\[.*?$|    .*?$|<!--.*?-->)", re.MULTILINE | re.DOTALL)
END = re.compile(r"(?<=[.!?:])\s+(?=[A-Z`\[*\"])|\n\s*\n|\n\s*[-*] |\n\s*\d+\. |\n#+ ")


def prose_of(text):
    """The running text, with tables, code and pictures blanked so that lines keep their numbers."""
    return OUTSIDE.sub(lambda found: re.sub(r"[^\n]", " ", found[0]), text)


def sentences_of(text):
    """(line, sentence) of every sentence of at least two words."""
    prose = prose_of(text)
    start = 0
    for end in [*END.finditer(prose), None]:
        piece = prose[start : end.start() if end else len(prose)]
        if len(piece.split()) > 1:
            first = start + len(piece) - len(piece.lstrip())
            yield text.count("\n", 0, first) + 1, " ".join(piece.split())
        start = end.end() if end else start


def words_of(sentence):
    return re.findall(r"[\w'’/.-]*\w[\w'’/.-]*", re.sub(r"\]\([^)]*\)|`[^`]*`", " code ", sentence))


def findings_in(text):
    """(line, what) of every long sentence and every stumble; and how many sentences there are."""
    found, count = [], 0
    for line, sentence in sentences_of(text):
        count += 1
        if len(words_of(sentence)) > LONGEST:
            found.append((line, f"{len(words_of(sentence))} words: {sentence[:60]}"))
        for word in STUMBLES.findall(re.sub(r"`[^`]*`", " ", sentence)):
            found.append((line, f"stumble: {word}"))
    return found, count


def measure(root):
    total = long = stumbles = 0
    pages = [root / "README.md", root / "DEVELOPERS.md", *sorted((root / "docs").rglob("*.md"))]
    for page in pages:
        found, count = findings_in(page.read_text(encoding="utf-8"))
        total += count
        for line, what in found:
            print(f"{page.relative_to(root)}:{line}: {what}")
            stumbles += what.startswith("stumble")
            long += not what.startswith("stumble")
    print(f"{total} sentences, {long} of more than {LONGEST} words ({long / total:.1%}), {stumbles} stumbling words")
    return 1 if long > MOST_LONG * total or stumbles > MOST_STUMBLES else 0


PAGE = """# A page

The rope is cut. It is marked, and """ + "very " * 25 + """long. The eye stands here, likewise.

| a table | that stands outside |
```
code stands outside
```
"""


def self_test():
    found, count = findings_in(PAGE)
    kinds = sorted(what.split(":")[0] for _, what in found)
    right = count == 4 and kinds == ["30 words", "stumble", "stumble"] and {line for line, _ in found} == {3}
    if not right:
        print(count, found)
    return 0 if right else 1


if __name__ == "__main__":
    if sys.argv[1:] == ["--self-test"]:
        sys.exit(self_test())
    sys.exit(measure(Path(sys.argv[1]) if sys.argv[1:] else Path(__file__).resolve().parents[2]))
