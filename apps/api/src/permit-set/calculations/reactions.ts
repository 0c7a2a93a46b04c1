import type { Derived } from "../derived.ts";
import type { Figure } from "../figure.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { reactionsOf } from "../sheets/foundation-sheet.ts";
import type { Solved } from "../solved.ts";
import { written } from "../written.ts";
import { layCaseReactions } from "./solved-forces.ts";

/** What the ground gives back, support by support, and whether it closes. */
export function layReactions(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): Figure[] {
  const say = written[source.units];
  const { assessment } = source;
  const reactions = reactionsOf(source);
  flow.subject("Reactions");
  flow.paragraph(
    `By statics, unfactored, ${say.forceUnit}. D: what stands there. D + L: with imposed load everywhere, as recorded. L is their difference; a unit that lifts makes it other than the imposed load alone would be.`,
  );
  flow.table({
    name: "Reactions by support",
    columns: [
      { heading: "Support", share: 20 },
      { heading: "D", share: 16, right: true },
      { heading: "L", share: 16, right: true },
      { heading: "D + L", share: 16, right: true },
    ],
    rows: [
      ...reactions.map(({ id, deadKn, allKn }) => [
        derived.tag(id),
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
  layCaseReactions(flow, source, derived, solved);
  return padForces(source).map(({ id, kn }) => ({
    about: derived.tag(id),
    quantity: "reaction, kN",
    value: kn,
    from: "calculation",
    page,
  }));
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

/** The same by the way down: what arrives at the head of each pad. */
function padForces({ assessment }: SetSource): { id: string; kn: number }[] {
  const sums = new Map<string, number>();
  for (const { via, elementId, forceTopKn } of assessment.path)
    if (via === "pad") sums.set(elementId, (sums.get(elementId) ?? 0) + forceTopKn);
  return [...sums].map(([id, kn]) => ({ id, kn }));
}
