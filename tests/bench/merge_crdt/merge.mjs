// The same events in two libraries for shared JSON, as text under a name in a map, or one after the
// other in an array; one document a device, joined in memory. Nothing is kept on a disk.
//
//   node merge.mjs prepare DIR                         reads DIR/events-*, writes a file a document
//   node merge.mjs merge DIR yjs|automerge map|array   prints: CPU seconds, seconds, bytes saved

import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as Automerge from "@automerge/automerge";
import * as Y from "yjs";

const eventsInChange = 5;
const [task, folder, library, shape] = process.argv.slice(2);

function deviceEvents() {
  return readdirSync(folder)
    .filter((name) => name.startsWith("events-"))
    .sort()
    .map((name) => readFileSync(join(folder, name), "utf8").trimEnd().split("\n"));
}

function nameOf(line) {
  const event = JSON.parse(line);
  return `${event.lane} ${event.device} ${event.counter}`;
}

function chunks(lines) {
  const parts = [];
  for (let i = 0; i < lines.length; i += eventsInChange) parts.push(lines.slice(i, i + eventsInChange));
  return parts;
}

const yjs = {
  begin: () => new Uint8Array(),
  write(_, kind, lines) {
    const doc = new Y.Doc();
    for (const part of chunks(lines)) {
      doc.transact(() => {
        if (kind === "array") doc.getArray("events").push(part);
        else for (const line of part) doc.getMap("events").set(nameOf(line), line);
      });
    }
    return Y.encodeStateAsUpdate(doc);
  },
  join(_, documents) {
    const doc = new Y.Doc();
    for (const bytes of documents) Y.applyUpdate(doc, bytes);
    return doc;
  },
  count: (doc, kind) => (kind === "array" ? doc.getArray("events").length : doc.getMap("events").size),
  save: (doc) => Y.encodeStateAsUpdate(doc),
};

const automerge = {
  begin: (kind) => Automerge.save(Automerge.from({ events: kind === "array" ? [] : {} })),
  write(base, kind, lines) {
    let doc = Automerge.load(base);
    for (const part of chunks(lines)) {
      doc = Automerge.change(doc, (draft) => {
        if (kind === "array") draft.events.push(...part);
        else for (const line of part) draft.events[nameOf(line)] = line;
      });
    }
    return Automerge.save(doc);
  },
  join(base, documents) {
    let doc = Automerge.load(base);
    for (const bytes of documents) doc = Automerge.loadIncremental(doc, bytes);
    return doc;
  },
  count: (doc, kind) => (kind === "array" ? doc.events.length : Object.keys(doc.events).length),
  save: (doc) => Automerge.save(doc),
};

const libraries = { yjs, automerge };
const fileOf = (name, kind, part) => join(folder, `${name}-${kind}-${part}.bin`);

function prepare() {
  const devices = deviceEvents();
  for (const [name, made] of Object.entries(libraries)) {
    for (const kind of ["map", "array"]) {
      const base = made.begin(kind);
      writeFileSync(fileOf(name, kind, "base"), base);
      devices.forEach((lines, i) => writeFileSync(fileOf(name, kind, i), made.write(base, kind, lines)));
    }
  }
}

function merge() {
  const made = libraries[library];
  const devices = deviceEvents();
  const wanted = devices.reduce((sum, lines) => sum + lines.length, 0);
  const base = new Uint8Array(readFileSync(fileOf(library, shape, "base")));
  const documents = devices.map((_, i) => new Uint8Array(readFileSync(fileOf(library, shape, i))));
  made.join(base, []); // what is made ready at first use is not counted
  const cpu = process.cpuUsage();
  const begun = performance.now();
  const doc = made.join(base, documents);
  const used = process.cpuUsage(cpu);
  const seconds = (performance.now() - begun) / 1e3;
  if (made.count(doc, shape) !== wanted) throw new Error(`${made.count(doc, shape)} of ${wanted} events`);
  console.log((used.user + used.system) / 1e6, seconds, made.save(doc).length);
}

if (task === "prepare") prepare();
else merge();
