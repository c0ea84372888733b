#!/usr/bin/env python3
"""A second reader of the sample segment, as far as Python's own library goes: names, tags, the
chain's hash and the header as core/sync/FORMAT.md says, with BLAKE2b from hashlib. (It has no
XChaCha20-Poly1305: tst_known_answers holds the draft's own vector.)

    second_reader.py PROJECT
"""
import hashlib
import json
import pathlib
import sys


def keyed(key, text):
    return hashlib.blake2b(text, digest_size=32, key=key).digest()


def named(key, *parts):
    joined = b"".join(b"%d:%s" % (len(part.encode()), part.encode()) for part in parts)
    return keyed(keyed(key, b"lidlark name 1"), joined).hex()


def main(project):
    sample = json.loads((pathlib.Path(project) / "tests/data/sync/segment.json").read_text())
    key = bytes.fromhex(sample["epoch_key"])
    data = bytes.fromhex(sample["segment"])
    lines = "".join(line + "\n" for line in sample["events"]).encode()
    counters = [json.loads(line)["counter"] for line in sample["events"]]
    crew, lane, device, epoch = (sample[name] for name in ("crew", "lane", "device", "epoch"))
    checks = {
        "folder": named(key, "folder", epoch, device) == sample["folder"],
        "file": named(key, "segment", lane, epoch, device, "1") == sample["file"],
        "hash": hashlib.blake2b(data, digest_size=32).hexdigest() == sample["hash"],
        "format": data[:8] == b"LARKSEG\x01",
        "crew": data[8:24].hex() == named(key, "crew", crew)[:32],
        "lane": data[24:40].hex() == named(key, "lane", lane)[:32],
        "epoch": data[40:72].hex() == epoch,
        "device": data[72:88].hex() == named(key, "device", device)[:32],
        "sequence": int.from_bytes(data[88:96], "big") == 1,
        "first counter": int.from_bytes(data[96:104], "big") == counters[0],
        "previous": data[104:136] == bytes(32),
        "events": int.from_bytes(data[136:140], "big") == len(counters),
        "bytes of the lines": int.from_bytes(data[140:144], "big") == len(lines),
        "content": data[168] == 1,
        "canonical": all(json.dumps(json.loads(line), sort_keys=True, separators=(",", ":"),
                                    ensure_ascii=False) == line for line in sample["events"]),
    }
    wrong = [name for name, holds in checks.items() if not holds]
    print("\n".join(f"not as FORMAT.md says: {name}" for name in wrong) or
          f"{len(checks)} checks hold")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
