import type { RecordEntry } from "@cornerway/schema";
import type { Sheet } from "../figure.ts";
import { fact, heading, prose, wholeColumn } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { pt, type Block, type Ink } from "../paper/ink.ts";
import { caption, circleD, path, rule, text } from "../paper/shapes.ts";
import { day, minute } from "../paper/words.ts";
import { wrap } from "../paper/wrap.ts";
import { entryWords } from "../entry-words.ts";
import type { SetSource } from "../set-source.ts";

const rowHeight = 27;

/** The record up to the head the set is printed from, as a reader may see it; printing is the entry after, outside it. */
export function recordSheets(source: SetSource): Sheet[] {
  const { field } = sheetRoom(source);
  const perSheet = Math.floor((field.height - 172) / rowHeight);
  const { entries } = source.record;
  const count = Math.max(1, Math.ceil(entries.length / perSheet));
  return Array.from({ length: count }, (_, at) => {
    const shown = entries.slice(at * perSheet, (at + 1) * perSheet);
    const spec = { number: `R${at + 1}`, title: "The record", chapter: "The record" };
    const page = drawingSheet(source, spec, [
      ...recordBlocks(source, shown, at + 1 === count),
      ...wholeColumn(columnItems(source), sheetRoom(source).column),
    ]);
    return { page, figures: [] };
  });
}

function recordBlocks(source: SetSource, entries: readonly RecordEntry[], last: boolean): Block[] {
  const { field } = sheetRoom(source);
  const { x, width } = field;
  const top = field.y + 62;
  const columns = [x + 34, x + 70, x + 160, x + 260, x + width * 0.565, x + width * 0.785];
  const names = ["Entry", "When, UTC", "Who", "What", "Leaf", "Tree head"];
  const span =
    entries.length === 0
      ? "no entry"
      : `entries ${entries[0]?.number ?? 0} to ${entries.at(-1)?.number ?? 0} of ${source.record.number}`;
  const y = (at: number) => top + 14 + at * rowHeight;
  const foot = y(entries.length);
  const rows = entries.map((entry, at): Block => {
    const words = wrap(entryWords(entry), "prose", 9.4, (columns[4] ?? 0) - (columns[3] ?? 0) - 10).slice(0, 2);
    const mid = y(at) + 14;
    return {
      role: "TR",
      inks: [],
      children: [
        cell([text(columns[0] ?? 0, mid, String(entry.number), { face: "lettering strong", size: 8.4 })]),
        cell([text(columns[1] ?? 0, mid, minute(entry.at), { size: 7.6 })]),
        cell([
          text(columns[2] ?? 0, mid, entry.actor.name.slice(0, 24), { size: 7.6 }),
          text(columns[2] ?? 0, mid + 8.6, entry.actor.role, { size: 7, tone: "graphite" }),
        ]),
        cell(
          words.map((each, index) =>
            text(columns[3] ?? 0, mid + (words.length > 1 ? -3 : 0) + index * 10.4, each, { face: "prose", size: 9.4 }),
          ),
        ),
        cell(digestLines(columns[4] ?? 0, mid, entry.leaf)),
        cell(digestLines(columns[5] ?? 0, mid, entry.head)),
      ],
    };
  });
  const heads: Block = {
    role: "TR",
    inks: [],
    children: names.map((name, at) => ({ role: "TH", inks: [caption(columns[at] ?? 0, top, name, { size: 7 })] })),
  };
  return [
    { role: "H1", inks: [text(x, field.y + 30, "The record", { face: "prose", size: 30 })] },
    {
      role: "P",
      inks: [text(x + width, field.y + 30, `${source.project.name} · ${span}`, { anchor: "end", tone: "graphite" })],
    },
    {
      role: "Artifact",
      inks: [
        rule(x, x + width, top + 6, "edge"),
        ...entries.map((_, at) => rule(x, x + width, y(at + 1), "hair", "ruling")),
        ...thread(x + 14, entries.length, y, last),
      ],
    },
    { role: "Table", alt: "Entries of the record", inks: [], children: [heads, ...rows] },
    ...(last ? headBlock(source, { x: x + 34, y: foot + 12 }) : []),
  ];
}

const cell = (inks: Ink[]): Block => ({ role: "TD", inks });

const groups = (digest: string, from: number, to: number): string =>
  (digest.match(/.{4}/g) ?? []).slice(from, to).join(" ");

/** All 64 digits in two lines. */
const digestLines = (x: number, y: number, digest: string): Ink[] => [
  text(x, y - 4, groups(digest, 0, 8), { face: "digest", size: 7 }),
  text(x, y + 5.5, groups(digest, 8, 16), { face: "digest", size: 7 }),
];

/** A stitch for each entry, tied to the one before. */
function thread(x: number, count: number, y: (at: number) => number, last: boolean): Ink[] {
  const beads = Array.from({ length: count }, (_, at) => {
    const mid = y(at) + rowHeight / 2;
    return [
      path(
        `M${pt(x)} ${pt(mid - rowHeight / 2)}C${pt(x - 5)} ${pt(mid - 8)} ${pt(x + 5)} ${pt(mid - 5)} ${pt(x)} ${pt(mid - 4)}`,
        { pen: "edge" },
      ),
      path(circleD({ x, y: mid }, 4), { pen: "edge", fill: "paper" }),
      path(`M${pt(x - 2.4)} ${pt(mid + 1.4)}L${pt(x + 2.4)} ${pt(mid - 1.4)}`, { pen: "edge" }),
      path(
        `M${pt(x)} ${pt(mid + 4)}C${pt(x + 5)} ${pt(mid + 6)} ${pt(x - 5)} ${pt(mid + 9)} ${pt(x)} ${pt(mid + rowHeight / 2)}`,
        { pen: "edge" },
      ),
    ];
  }).flat();
  return last
    ? [
        ...beads,
        path(
          `M${pt(x)} ${pt(y(count))}C${pt(x)} ${pt(y(count) + 16)} ${pt(x + 10)} ${pt(y(count) + 26)} ${pt(x + 20)} ${pt(y(count) + 28)}`,
          { pen: "edge" },
        ),
      ]
    : beads;
}

function headBlock({ record }: SetSource, { x, y }: { x: number; y: number }): Block[] {
  return [
    {
      role: "P",
      inks: [
        caption(x, y + 10, `Tree head after entry ${record.number}, RFC 9162 over RFC 8785`),
        text(x, y + 26, groups(record.head, 0, 16), { face: "digest", size: 9 }),
      ],
    },
    { role: "P", inks: signatureInks(record.signed, { x, y: y + 32 }) },
  ];
}

/** All that is needed to check the signature with any program for RFC 8032. */
function signatureInks(signed: SetSource["record"]["signed"], { x, y }: { x: number; y: number }): Ink[] {
  if (signed === null)
    return [text(x, y + 10, "Not signed: this service signs no heads.", { size: 8, tone: "graphite" })];
  const { fingerprint, signature, time } = signed;
  return [
    caption(x, y + 10, "Signed, Ed25519 by RFC 8032, by the key of this SHA-256; for the time of the entry"),
    text(x, y + 22, groups(fingerprint, 0, 16), { face: "digest", size: 8 }),
    text(x, y + 33, signature.slice(0, 43), { face: "digest", size: 8 }),
    text(x, y + 43, signature.slice(43), { face: "digest", size: 8 }),
    text(x, y + 53, `over {head, number, project, time ${time}, what: record head}, RFC 8785`, {
      size: 7,
      tone: "graphite",
    }),
  ];
}

function columnItems(source: SetSource) {
  const { record, revisions } = source;
  const first = record.entries[0];
  return [
    heading("How to read the thread"),
    prose(
      "Each entry has a leaf: SHA-256 of its number, time, actor, kind and the salted digest of what it says. The tree head beside it is a digest of all leaves up to it: change a word of one entry and every later head is another.",
    ),
    prose(
      "Entries are added and never altered. A mistake is mended by a later entry that names it. Prices, drafts and the notes between the parties are not shown here; their numbers are missing from the list and still counted in the heads.",
    ),
    heading("To check this copy"),
    prose(
      "Take the record's bundle and run “cornerway verify bundle.json” with the head printed here (--head number:head) and the fingerprint of the key (--key). It works without the service and without a database.",
    ),
    heading("What the record holds"),
    fact("Entries", `${record.number}, to ${day(record.at)}${first === undefined ? "" : `, from ${day(first.at)}`}`),
    fact("Shown to readers", String(record.entries.length)),
    fact("Revisions", revisions.map(({ letter }) => letter).join(", ")),
    heading("The caution"),
    prose(
      "The record shows who did what and when, and that nothing was altered since. It does not show that what they did was right: that is what the seal on sheet S0 is for, and it is a person's.",
    ),
  ];
}
