import type { Derived } from "../derived.ts";
import type { Figure } from "../figure.ts";
import { byTag } from "../paper/by-tag.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { reactionsOf } from "../sheets/foundation-sheet.ts";
import type { Solved } from "../solved.ts";
import { written } from "../written.ts";
import { layCaseReactions } from "./case-reactions.ts";

/** What the ground gives back, support by support: as solved, and beside it by statics alone, with what keeps the two apart. */
export function layReactions(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): Figure[] {
  flow.subject("Reactions");
  const asSolved = layCaseReactions(flow, source, derived, solved);
  const byStatics = layStatics(flow, source, derived, solved === null);
  if (solved !== null) layApart(flow, source, asSolved.sumsKn);
  return [...asSolved.figures, ...byStatics];
}

/** `alone` where no solution stands beside it: then the foundation plan tells these. */
function layStatics(flow: CalculationFlow, source: SetSource, derived: Derived, alone: boolean): Figure[] {
  const say = written[source.units];
  const { assessment } = source;
  const reactions = byTag(reactionsOf(source).map((each) => ({ ...each, tag: derived.tag(each.id) })));
  flow.heading("Reactions by statics alone");
  flow.paragraph(
    `Unfactored, ${say.forceUnit}: what the load path of sheets S4 and of the sums by hand goes by. D: what stands there. D + L: with imposed load on floors and roofs, as recorded. L is their difference; a unit that lifts makes it other than the imposed load alone would be.`,
  );
  flow.table({
    name: "Reactions by support",
    size: 7.4,
    columns: [
      { heading: "Support", share: 20 },
      { heading: "D", share: 16, right: true },
      { heading: "L", share: 16, right: true },
      { heading: "D + L", share: 16, right: true },
    ],
    rows: [
      ...reactions.map(({ tag, deadKn, allKn }) => [
        tag,
        say.force(deadKn),
        say.force(allKn - deadKn),
        say.force(allKn),
      ]),
      [
        "All supports",
        say.force(sum(reactions.map(({ deadKn }) => deadKn))),
        say.force(sum(reactions.map(({ deadKn, allKn }) => allKn - deadKn))),
        say.force(sum(reactions.map(({ allKn }) => allKn))),
      ],
    ],
  });
  const { loadKn, reactionKn, residualKn } = assessment.statics;
  flow.paragraph(
    `All that acts ${say.force(loadKn)}; what the ground gives ${say.force(reactionKn)}; left over ${say.force(residualKn)} ${say.forceUnit}. ${Math.abs(residualKn) < 0.05 ? "The sum closes." : "The sum does not close: what is left over has no way down, and the marks name the unit."}`,
  );
  const page = flow.number;
  const told = (quantity: string, { id, kn }: { id: string; kn: number }): Figure => ({
    ...{ about: derived.tag(id), quantity, value: kn, from: "calculation", page },
  });
  const pads = new Set(source.scheme.pads.map(({ id }) => id));
  const tabled = reactions.filter(({ id }) => pads.has(id)).map(({ id, allKn }) => ({ id, kn: allKn }));
  const arriving = padForces(source);
  return [
    ...[...tabled, ...arriving].map((each) => told("reaction by statics, kN", each)),
    ...(alone ? arriving.map((each) => told("reaction, kN", each)) : []),
  ];
}

/** Why two sums of one building differ, with both. */
function layApart(flow: CalculationFlow, source: SetSource, solvedKn: { dead: number; live: number }): void {
  const say = written[source.units];
  const reactions = reactionsOf(source);
  const dead = sum(reactions.map(({ deadKn }) => deadKn));
  const live = sum(reactions.map(({ deadKn, allKn }) => allKn - deadKn));
  flow.paragraph(
    `Why the two differ. In all: D ${say.force(solvedKn.dead)} solved, ${say.force(dead)} by statics; L + Lr ${say.force(solvedKn.live)} solved, L ${say.force(live)} by statics, ${say.forceUnit}. Solved, dead load is at its heaviest: tare at the upper end of its range, with the steel that is added; statics takes tare in the middle of its range or from the plate, and no added steel. Solved, a roof carries what the code asks where no container stands on it. Support by support they differ further because statics takes each container as rigid on its bearings, and the line model lets it bend, so that load goes where it is held most stiffly.`,
  );
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

/** The same by the way down: what arrives at the head of each pad. */
function padForces({ assessment }: SetSource): { id: string; kn: number }[] {
  const sums = new Map<string, number>();
  for (const { via, elementId, forceTopKn } of assessment.path)
    if (via === "pad") sums.set(elementId, (sums.get(elementId) ?? 0) + forceTopKn);
  return [...sums].map(([id, kn]) => ({ id, kn }));
}
