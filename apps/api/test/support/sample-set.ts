import { readFileSync } from "node:fs";
import { assess, assessForRecord, catalogRows } from "@cornerway/engine";
import {
  applyOperations,
  contentDigest,
  digestOf,
  emptyScheme,
  Operation,
  resultDigest,
  Scheme,
  usualAuthority,
} from "@cornerway/schema";
import { z } from "zod";
import type { SetSource } from "../../src/permit-set/set-source.ts";
import { verificationSummary } from "../../src/permit-set/verification-summary.ts";

const demo = new URL("../../../../shared/demo/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, demo), "utf8"));

/** The demo's building with the two posts its engineer asks for. */
export function demoScheme(): Scheme {
  const posts = z.array(Operation).parse(read("two-posts.json"));
  const applied = applyOperations(Scheme.parse(read("scheme.json")), posts);
  if (!applied.ok) throw new Error("the demo does not take its own posts");
  return applied.scheme;
}

/** One 20 ft container with a door, on the ground: small enough to have its strength run in a test. */
export const smallScheme = (): Scheme => ({
  ...emptyScheme,
  containers: [{ id: "g1", tag: "G1", type: "1CC", xUm: 0, yUm: 0, zUm: 0, turnMdeg: 0 }],
  openings: [
    {
      ...{ id: "d1", tag: "D1", containerId: "g1", face: "right", use: "door", framed: true },
      ...{ offsetUm: 2_000_000, sillUm: 180_000, widthUm: 1_000_000, heightUm: 2_100_000 },
    },
  ],
});

/** What a set of a scheme is printed from, with a record of three entries. */
export function sourceOf(scheme: Scheme, more: Partial<SetSource> & { strength?: boolean } = {}): SetSource {
  const { strength = false, ...rest } = more;
  const judged = strength ? assessForRecord(scheme) : null;
  const assessment = judged?.assessment ?? assess(scheme);
  const proof = judged !== null && judged.accepted ? judged.proof : null;
  const content = contentDigest(scheme, digestOf(catalogRows));
  const at = "2026-11-27T12:00:00.000Z";
  const actor = { id: "00000000-0000-4000-8000-000000000001", name: "Ines Marrow", role: "architect" } as const;
  const entry = (number: number) => ({
    ...{ projectId: "00000000-0000-4000-8000-000000000000", number, at, actor },
    ...{ leaf: digestOf(["leaf", number]), head: digestOf(["head", number]) },
  });
  const sent = { kind: "revision sent", letter: "A", contentDigest: content, draftNumber: 1, remark: null } as const;
  return {
    units: "SI",
    project: { id: "p", name: "Tannery Lane Workshop", place: "14 Tannery Lane", client: "Hallowford Makers’ Trust" },
    parties: [
      { role: "architect", name: "Ines Marrow" },
      { role: "engineer", name: "Tobias Fenn" },
    ],
    revision: { letter: "A", sentAt: at, sentBy: "Ines Marrow", remark: null, contentDigest: content },
    revisions: [{ letter: "A", sentAt: at, sentBy: "Ines Marrow", remark: null }],
    earlier: [],
    authority: usualAuthority,
    scheme,
    sheetWallsChosen: null,
    assessment,
    resultDigest: resultDigest(content, assessment, proof ?? undefined),
    proof,
    record: {
      ...{ number: 9, at, head: digestOf(["head", 9]), signed: null },
      entries: [{ ...entry(3), kind: sent.kind, payload: sent }],
    },
    comments: [],
    status: { kind: "preliminary" },
    verification: verificationSummary(),
    ...rest,
  };
}
