#!/usr/bin/env python3
"""A second reader of joining codes, from core/sync/FORMAT.md, 5 and Python's own library alone:
words, check, text, folder and key of tests/data/sync/join_code.json, with BLAKE2b from hashlib and
percent-encoding from urllib.

    second_join_reader.py PROJECT           the file holds what the format says
    second_join_reader.py PROJECT --write   how the file was made
"""
import hashlib
import json
import pathlib
import re
import sys
import urllib.parse

CODES = [("00112233445566778899", "https://dav.example/families/crew 1".replace(" ", "%20")),
         ("f0e1d2c3b4a5968778ff", "")]


def product(one, other):
    """Of two polynomials over two elements, modulo x^10 + x^3 + 1."""
    result = 0
    for bit in range(10):
        if other >> bit & 1:
            result ^= one << bit
    for bit in range(19, 9, -1):
        if result >> bit & 1:
            result ^= 0b10000001001 << bit - 10
    return result


def check_of(numbers):
    power, sum_ = 1, 0
    for number in reversed(numbers):
        power = product(power, 2)
        sum_ ^= product(power, number)
    return sum_


def account(words, secret_hex, place):
    secret = bytes.fromhex(secret_hex)
    bits = f"{int.from_bytes(secret, 'big'):080b}"
    numbers = [int(bits[at:at + 10], 2) for at in range(0, 80, 10)]
    key = secret + bytes(22)
    keyed = lambda use: hashlib.blake2b(use, digest_size=32, key=key).hexdigest()
    shown = f"lidlark-join:1?secret={secret_hex}"
    if place:
        shown += "&place=" + urllib.parse.quote(place, safe="")
    return {"secret": secret_hex, "words": [words[n] for n in numbers + [check_of(numbers)]],
            "place": place, "text": shown,
            "folder": keyed(b"lidlark join folder 1"), "seal_key": keyed(b"lidlark join seal 1")}


def main(project, *options):
    root = pathlib.Path(project)
    listed = re.findall(r'^ {4}"[a-z", ]+$', (root / "core/sync/join_words.cpp").read_text(), re.M)
    words = re.findall(r'"([a-z]+)"', "\n".join(listed))
    assert len(words) == 1024 and words == sorted(words), f"{len(words)} words"
    made = [account(words, *code) for code in CODES]
    path = root / "tests/data/sync/join_code.json"
    if options == ("--write",):
        path.write_text(json.dumps(made, indent=1) + "\n")
    held = json.loads(path.read_text())
    wrong = [key for mine, theirs in zip(made, held, strict=True) for key in mine
             if mine[key] != theirs[key]]
    print("\n".join(f"not as FORMAT.md says: {name}" for name in wrong) or
          f"{sum(map(len, made))} values hold")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
