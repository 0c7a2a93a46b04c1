import { cautions, verdictHeadings } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import { isometricInk } from "../drawing/isometric.ts";
import { fact, fittedColumn, heading, shortList, type ColumnItem } from "../paper/column.ts";
import { drawingSheet, sheetRoom } from "../paper/drawing-sheet.ts";
import { pt, type Block } from "../paper/ink.ts";
import type { Page } from "../paper/page.ts";
import { box, caption, circleD, path, rule, text, type Box } from "../paper/shapes.ts";
import { capital, day } from "../paper/words.ts";
import { wrap } from "../paper/wrap.ts";
import type { SetSource } from "../set-source.ts";
import { statusLine } from "../status.ts";
import { criteriaRows } from "../calculations/criteria.ts";

/** The cover: what it is, what is in it, on what basis, by whom; blank places for seal and agency. */
export function coverSheet(source: SetSource, derived: Derived, others: readonly Page[]): Page {
  const { field, column } = sheetRoom(source);
  const { project, revision, scheme } = source;
  const foot = field.y + field.height;
  const picture: Box = { x: field.x + 20, y: field.y + 118, width: field.width - 40, height: field.height - 118 - 138 };
  const noted = foot - 122;
  return drawingSheet(source, { number: "S0", title: "Cover and index", chapter: "Cover and notes" }, [
    {
      role: "H1",
      inks: [
        caption(field.x, field.y + 12, `Structural permit set · revision ${revision.letter} · ${statusLine(source)}`, {
          size: 8,
        }),
        ...wrap(project.name, "prose", 44, field.width)
          .slice(0, 1)
          .map((words) => text(field.x, field.y + 58, words, { face: "prose", size: 44 })),
      ],
    },
    {
      role: "P",
      inks: wrap(
        `${scheme.containers.length} shipping containers on ${derived.storeys.length === 1 ? "one level" : `${derived.storeys.length} levels`} for ${project.client}, ${project.place}`,
        "prose",
        15,
        field.width,
      )
        .slice(0, 2)
        .map((words, at) => text(field.x, field.y + 84 + at * 19, words, { face: "prose", size: 15 })),
    },
    {
      role: "Figure",
      alt: "The building from the south-east, not to scale",
      inks: isometricInk(derived.isometric, picture),
    },
    { role: "Artifact", inks: [rule(field.x, field.x + field.width, noted, "edge")] },
    ...cautionColumns({ x: field.x, y: noted + 8, width: field.width, height: 118 }),
    ...fittedColumn(
      indexItems(source, others),
      { ...column, height: column.height - sealHeight - 12 },
      "Further parties are in the record, R1.",
    ),
    ...sealBoxes(column),
  ]);
}

function cautionColumns({ x, y, width }: Box): Block[] {
  const half = (width - 30) / 2;
  const words = [
    ...cautions,
    "These sheets were computed from the inputs stated in them. They support the judgement of the engineer whose seal they bear, and are nothing without that seal.",
    "If a copy does not give the digest shown in the title block, it is not the set that was reviewed.",
  ];
  const lines = words.map((each) => wrap(each, "prose", 9, half));
  const place = lines.reduce<{ blocks: Block[]; at: [number, number] }>(
    ({ blocks, at: [columnAt, down] }, these) => {
      const over = down + these.length * 11.4 > 104;
      const [next, from] = over ? [columnAt + 1, 0] : [columnAt, down];
      const block: Block = {
        role: "P",
        inks: these.map((each, index) =>
          text(x + next * (half + 30), y + 26 + from + index * 11.4, each, { face: "prose", size: 9 }),
        ),
      };
      return { blocks: [...blocks, block], at: [next, from + these.length * 11.4 + 4] };
    },
    { blocks: [], at: [0, 0] },
  );
  return [{ role: "H2", inks: [caption(x, y + 10, "Read before use")] }, ...place.blocks];
}

function indexItems(source: SetSource, others: readonly Page[]): ColumnItem[] {
  const criteria = criteriaRows(source).slice(0, 1);
  return [
    heading("Sheets in this set"),
    ...indexOf(others).map(({ numbers, title, from }) => fact(numbers, `${title}, page ${from}`)),
    heading("Basis of design"),
    ...criteria.map(([name = "", value = ""]) => fact(name, value)),
    fact("The engine says", `${verdictHeadings[source.assessment.verdict]}; ${source.assessment.scope}`),
    ...statusFacts(source),
    heading("Parties"),
    fact("Owner", source.project.client),
    ...source.parties
      .filter(({ role }) => role !== "reader")
      .slice(0, 4)
      .map(({ role, name }) => fact(capital(role), name)),
  ];
}

/** Why a set that was issued, or that was the newest, is no longer what it was. */
function statusFacts({ status }: SetSource): ColumnItem[] {
  switch (status.kind) {
    case "issued":
      return [fact("Issued for seal", `by ${status.by}, ${day(status.at)}`)];
    case "found otherwise":
      return [fact("Found otherwise", `${shortList(status.tags, 12)}: survey or site differ from what is drawn`)];
    case "superseded":
      return [fact("Superseded", `revision ${status.byRevision} was sent after this one`)];
    case "preliminary":
      return [];
  }
}

/** One line for sheets that share a chapter: S2.1–4 Elevations, page 6. */
function indexOf(pages: readonly Page[]): { numbers: string; title: string; from: number }[] {
  const lines: { chapter: string; numbers: string[]; title: string; from: number }[] = [];
  for (const [at, { chapter, number, title }] of pages.entries()) {
    const last = lines.at(-1);
    if (last?.chapter === chapter) last.numbers.push(number);
    else lines.push({ chapter, numbers: [number], title, from: at + 2 });
  }
  return lines.map(({ chapter, numbers, title, from }) => ({
    numbers: numbers.length === 1 ? (numbers[0] ?? "") : `${numbers[0] ?? ""} to ${numbers.at(-1) ?? ""}`,
    title: numbers.length === 1 ? title : chapter,
    from,
  }));
}

/** Room for a seal of 1 3/8 in across, as most boards ask (from memory), and a signature. */
const sealHeight = 138;

/** Left blank: a seal is a person's, and so is an approval. */
function sealBoxes(column: Box): Block[] {
  const y = column.y + column.height - sealHeight;
  const half = (column.width - 12) / 2;
  const seal = { x: column.x, y, width: half, height: sealHeight - 8 };
  const agency = { x: column.x + half + 12, y, width: half, height: sealHeight - 8 };
  return [
    {
      role: "Figure",
      alt: "Blank places for the seal of the engineer of record and for the agency",
      inks: [
        box(seal, { pen: "fine", dash: "hidden" }),
        path(circleD({ x: seal.x + half / 2, y: seal.y + 66 }, 50), { pen: "hair", dash: "hidden", tone: "pencil" }),
        box(agency, { pen: "fine", dash: "hidden" }),
        caption(seal.x + 6, seal.y + 11, "Seal, engineer of record", { size: 7 }),
        text(seal.x + 6, pt(seal.y + sealHeight - 13), "Signature, licence, date", { size: 7, tone: "graphite" }),
        caption(agency.x + 6, agency.y + 11, "Agency", { size: 7 }),
      ],
    },
  ];
}
