#!/usr/bin/env python3
"""A reader that knows no Lidlark: opens an exported folder with Python's own json and csv modules
and says what is wrong with it. For RFC 4180 (csv, strict), RFC 8259 (json) and OWASP's "CSV
Injection" (no text begins a formula).

    read_export.py FOLDER   prints the tables and their rows as JSON; exit 1: something is wrong
"""
import csv
import json
import pathlib
import re
import sys

FORMULA = tuple("=+-@\t\r\n\0")
HIDDEN = re.compile(r"\b[0-9a-f]{32,64}\b|\b[bchgpd]-[a-z]+\b")  # ids of the store


def cell_of(value):
    """What a table shows of a value of record.json."""
    if value is None:
        return ""
    text = str(value)
    return "'" + text if isinstance(value, str) and text.startswith(FORMULA) else text


def wrong_with_table(path, rows):
    raw = path.read_bytes()
    if not raw.startswith(b"\xef\xbb\xbf"):
        yield "no mark of UTF-8"
    if raw.count(b"\n") != raw.count(b"\r\n") or not raw.endswith(b"\r\n"):
        yield "lines that do not end with CRLF"
    with path.open(encoding="utf-8-sig", newline="") as file:
        head, *body = csv.reader(file, strict=True)
    if any(len(row) != len(head) for row in body):
        yield "rows of another length"
    if head != list(rows[0]) or body != [[cell_of(v) for v in row.values()] for row in rows]:
        yield "not what record.json has"
    for text in [text for row in body for text in row]:
        if text.startswith(FORMULA) and not re.fullmatch(r"-\d+", text):
            yield f"a formula: {text}"
        if HIDDEN.search(text):
            yield f"an id: {text}"


def wrong_with_values(name, rows):
    for key, value in [pair for row in rows for pair in row.items()]:
        if not isinstance(value, (int, str, type(None))) or isinstance(value, bool):
            yield f"{key} is neither text nor a whole number"
        dated = key in ("day", "opened", "handed over", "since") or key.endswith(" on")
        if dated and value is not None and not re.fullmatch(r"\d{4}-\d\d-\d\d", str(value)):
            yield f"{key} is no day: {value}"


def main(folder):
    root = pathlib.Path(folder)
    record = json.loads((root / "record.json").read_text(encoding="utf-8"))
    tables = {name: rows for group in record.values() if isinstance(group, dict)
              for name, rows in group.items()}
    wrong, seen = [], {"read-me.txt", "record.json"}
    for name, rows in tables.items():
        path = root / (name.replace(" ", "-") + ".csv")
        found = list(wrong_with_values(name, rows))
        if rows:
            seen.add(path.name)
            found += wrong_with_table(path, rows)
        wrong += [f"{name}: {what}" for what in found]
    there = {path.name for path in root.iterdir()}
    wrong += [f"{name}: there, and not in record.json, or the other way round"
              for name in there ^ seen]
    print(json.dumps(tables))
    print("\n".join(wrong), file=sys.stderr)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
