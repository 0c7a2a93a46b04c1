import { applyOperations, mmToUm, Operation, Scheme } from "@cornerway/schema";
import { z } from "zod";
import demo from "../../../../shared/demo/scheme.json" with { type: "json" };
import twoPosts from "../../../../shared/demo/two-posts.json" with { type: "json" };
import { padsUnder, schemeOf } from "../../../../tests/support/scheme-of.ts";

export interface Edit {
  readonly name: string;
  readonly before: Scheme;
  readonly after: Scheme;
}

export function drawn(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}

/** The demo with the two posts asked for in its review: nine containers, posts that carry, pads under them. */
export const propped = drawn(Scheme.parse(demo), z.array(Operation).parse(twoPosts));

const g1 = { id: "g1", type: "1CC", x: 0, y: 0 } as const;
const f1 = { ...g1, id: "f1", x: 1500, z: 2591 } as const;
const window = { id: "d1", in: "g1", face: "left", at: 2000, sill: 900, width: 1500, height: 1000 } as const;

/** Two 20 ft units, the upper one pushed 1.5 m, its free end on two posts with pads; 2926.5 mm is half the hole spacing. */
export const shifted = schemeOf({
  units: [g1, f1],
  cuts: [window],
  posts: [-1, 1].map((side) => ({
    id: side < 0 ? "p1" : "p2",
    x: 1500 + 2926.5,
    y: side * 1129.5,
    foot: 0,
    head: 2591,
  })),
  pads: [
    ...padsUnder(g1),
    ...[-1, 1].map((side) => ({ id: `under-${side < 0 ? "p1" : "p2"}`, x: 4426.5, y: side * 1129.5 })),
  ],
});

const of = (name: string, scheme: Scheme, ...operations: Operation[]): Edit => ({
  name,
  before: scheme,
  after: drawn(scheme, operations),
});

const by = (um: number, mm: number) => um + mmToUm(mm);

const unitMoves = (name: string, scheme: Scheme, byMm: number): Edit[] =>
  scheme.containers.map(({ id, tag, xUm, yUm, zUm }) =>
    of(`${name}: ${tag} ${byMm} mm east`, scheme, { kind: "container.move", id, xUm: by(xUm, byMm), yUm, zUm }),
  );

const postEdits = (name: string, scheme: Scheme): Edit[] =>
  scheme.posts.flatMap(({ id, tag, xUm, yUm, baseZUm, topZUm }) => [
    of(`${name}: ${tag} away`, scheme, { kind: "post.remove", id }),
    of(`${name}: ${tag} 2 m south`, scheme, { kind: "post.move", id, xUm, yUm: by(yUm, -2000) }),
    of(`${name}: ${tag} 300 mm shorter`, scheme, { kind: "post.length", id, baseZUm, topZUm: by(topZUm, -300) }),
    of(`${name}: foot of ${tag} 200 mm up`, scheme, { kind: "post.length", id, baseZUm: by(baseZUm, 200), topZUm }),
  ]);

const padEdits = (name: string, scheme: Scheme): Edit[] =>
  scheme.pads.map(({ id, tag }) => of(`${name}: pad ${tag} away`, scheme, { kind: "pad.remove", id }));

const openingEdits = (name: string, scheme: Scheme): Edit[] =>
  scheme.openings.slice(0, 6).flatMap(({ id, tag, offsetUm, sillUm, widthUm, heightUm }) => [
    of(`${name}: ${tag} closed`, scheme, { kind: "opening.close", id }),
    of(`${name}: ${tag} 400 mm wider`, scheme, {
      ...({ kind: "opening.shape", id, offsetUm, sillUm, heightUm } as const),
      widthUm: by(widthUm, 400),
    }),
  ]);

const wholeEdits = (name: string, scheme: Scheme): Edit[] => [
  of(`${name}: another code edition`, scheme, { kind: "site.change", site: { ...scheme.site, edition: "IBC 2024" } }),
  of(`${name}: sand beneath`, scheme, { kind: "basis.change", basis: { ...scheme.basis, soil: { class: "sand" } } }),
  { name: `${name}: nothing`, before: scheme, after: scheme },
];

/** A post that stands on bare ground, and one that stands on nothing: the same mark, of another verdict. */
const [bare, hung] = [0, 200].map((footMm) =>
  drawn(shifted, [
    { kind: "pad.remove", id: "under-p1" },
    { kind: "post.length", id: "p1", baseZUm: mmToUm(footMm), topZUm: mmToUm(2591) },
  ]),
) as [Scheme, Scheme];

/** What people do to a scheme, one thing at a time. */
export const edits: readonly Edit[] = [
  ...unitMoves("demo", propped, 100),
  ...postEdits("demo", propped),
  ...padEdits("demo", propped),
  ...openingEdits("demo", propped),
  ...wholeEdits("demo", propped),
  ...unitMoves("shifted", shifted, 700),
  ...unitMoves("shifted", shifted, -1500),
  ...postEdits("shifted", shifted),
  ...padEdits("shifted", shifted),
  ...openingEdits("shifted", shifted),
  ...wholeEdits("shifted", shifted),
  { name: "shifted: a foot off bare ground", before: bare, after: hung },
  { name: "shifted: a foot down to bare ground", before: hung, after: bare },
];
