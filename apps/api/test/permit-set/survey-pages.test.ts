import {
  digestOf,
  drawnDigestOf,
  type RecordPayload,
  type SurveyedContainer,
  type SurveyStep,
} from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { makeSet } from "../../src/permit-set/make-set.ts";
import type { Block } from "../../src/permit-set/paper/ink.ts";
import type { SetSource } from "../../src/permit-set/set-source.ts";
import { smallScheme, sourceOf } from "../support/sample-set.ts";

const scheme = smallScheme();
const at = "2026-11-27T11:00:00.000Z";
const author = { id: "00000000-0000-4000-8000-000000000002", name: "Tobias Fenn", role: "engineer" } as const;
const signed = { id: "00000000-0000-4000-8000-0000000000aa", by: author, at };
const containerId = "00000000-0000-4000-8000-0000000000cc";

const container: Omit<SurveyedContainer, "steps"> = {
  ...{ id: containerId, containerNumber: "CSQU3054383", type: "1CC", number: 1, author, offeredAt: at },
};
const plate = {
  approvalNumber: "GB-LR 3245",
  madeIn: "2019-04",
  tareKg: 2310,
  maxGrossKg: 30_480,
  stackingKg: 216_000,
};
const inspected: SurveyStep = {
  ...{ step: "inspected", ...signed, day: "2026-11-12", plate: { ...plate, rackingN: null } },
  damages: [{ member: "bottom side rail", place: "left, 2 m", kind: "bent", sizeUm: 35_000 }],
  thicknesses: [{ member: "top side rail", thicknessUm: 2800 }],
  ...{ measuredWith: "ultrasonic gauge", floor: null, photos: [], text: null },
};
const word = {
  ...{ id: signed.id, revision: "A", number: 1, author, saidAt: at, photos: [], text: "Not cut yet." },
  ...{ elementId: "d1", drawnDigest: drawnDigestOf(scheme, "d1") ?? "" },
};
const payloads: RecordPayload[] = [
  { kind: "container offered", container },
  { kind: "container followed", containerId, containerNumber: "CSQU3054383", step: inspected },
  {
    ...{ kind: "container followed", containerId, containerNumber: "CSQU3054383" },
    step: { step: "judged", ...signed, outcome: "accepted", text: null },
  },
  {
    ...{ kind: "container followed", containerId, containerNumber: "CSQU3054383" },
    step: { step: "assigned", ...signed, elementId: "g1", tag: "G1" },
  },
  { kind: "site word said", word: { says: "missing", ...word, key: "framing:d1" } },
  { kind: "site word said", word: { says: "built", ...word, key: "weld:d1" } },
];

const entryOf = (payload: RecordPayload, number: number): SetSource["record"]["entries"][number] => ({
  ...{ projectId: "00000000-0000-4000-8000-000000000000", number, at, actor: author, kind: payload.kind, payload },
  ...{ leaf: digestOf(["leaf", number]), head: digestOf(["head", number]) },
});

/** Words of the pages of one subject. */
function wordsOf(title: string, entries: SetSource["record"]["entries"]): string {
  const source = sourceOf(scheme);
  const made = makeSet({ ...source, record: { ...source.record, entries } });
  if (!made.ok) throw new Error(made.why.join("; "));
  return made.set.pages
    .filter((page) => page.title === title)
    .flatMap(({ blocks }) => blocks.flatMap(textsOf))
    .join(" ");
}
const textsOf = ({ inks, children = [] }: Block): string[] => [
  ...inks.flatMap((ink) => (ink.kind === "text" ? [ink.text] : [])),
  ...children.flatMap(textsOf),
];

describe("the survey in a set", () => {
  const words = wordsOf("Survey of the containers", payloads.map(entryOf));

  it("tells number, plate, damage and thickness with their limits and sources", () => {
    for (const fact of ["CSQU 305438 3", "GB-LR 3245", "2019-04", "2310", "30480", "216000"])
      expect(words).toContain(fact);
    expect(words).toContain("bottom side rail, left, 2 m, bent 35 100 within");
    expect(words).toContain("top side rail, least thickness, assumed 3 2.8 2.7 within");
    expect(words).toContain("IMO CSC.1/Circ.138/Rev.1");
  });

  it("says where the revision was judged otherwise than what was measured", () => {
    expect(words).toContain("top side rail: 2.8 mm measured; this set takes the assumed thickness.");
    expect(words).toContain("Tare 2310 kg on the plate; this set takes the range of the type.");
  });

  it("says that nobody surveyed a container where nobody has", () => {
    expect(wordsOf("Survey of the containers", [])).toContain("No container was surveyed up to the head of this set.");
  });
});

describe("the site in a set", () => {
  it("lists every item with its state and who closed it, and says that it is not built as drawn", () => {
    const words = wordsOf("Inspections and hold points, item by item", payloads.map(entryOf));
    expect(words).toContain("and it is not built as drawn");
    expect(words).toMatch(/framing D1 missing Tobias Fenn/);
    expect(words).toMatch(/welds of D1, \d+\.\d m as drawn Tobias Fenn/);
    expect(words).toContain("G1: container surveyed open");
  });
});
