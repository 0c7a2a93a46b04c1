import { rectCornersApart } from "./pad-area.ts";
import type { Derived } from "../derived.ts";
import type { Figure } from "../figure.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { reactionsOf } from "../sheets/foundation-sheet.ts";
import { postForces } from "../sheets/post-forces.ts";
import { supportsByCase, type Solved } from "../solved.ts";
import { fixed, written } from "../written.ts";

/**
 * Sums that anyone can redo from the printed pages with a pencil: each gives the numbers, where they stand, and the
 * result beside that of the program. SI, so that no conversion stands between.
 */
export function layHandChecks(
  flow: CalculationFlow,
  source: SetSource,
  derived: Derived,
  solved: Solved | null,
): Figure[] {
  flow.subject("By hand, from these pages");
  flow.paragraph(
    `One sum for each kind of thing that carries. Every number in it stands elsewhere in the set. ${source.units === "US" ? "In kN and m, so that no conversion stands between: 1 kip is 4.448 kN, 1 ft is 0.3048 m." : "In kN and m."}`,
  );
  wholeSum(flow, source);
  storeySums(flow, source, derived);
  corners(flow, source, derived);
  lever(flow, source, derived);
  const posts = postSums(flow, source, derived);
  pads(flow, source, derived, solved);
  return posts;
}

const kn = (value: number): string => fixed(value, 1);

function wholeSum(flow: CalculationFlow, { assessment }: SetSource): void {
  const own = assessment.units.reduce((sum, { weightKn }) => sum + weightKn, 0);
  const imposed = assessment.units.reduce((sum, { imposedKn }) => sum + imposedKn, 0);
  flow.heading("The whole: what acts and what the ground gives");
  flow.paragraph(
    `Weights of all containers with finishes ${kn(own)}, imposed loads ${kn(imposed)}: ${kn(own)} + ${kn(imposed)} = ${kn(own + imposed)} kN. The program says ${kn(assessment.statics.loadKn)} kN acts and ${kn(assessment.statics.reactionKn)} kN comes back. Added steel and pads weigh nothing in this sum.`,
  );
  flow.table({
    name: "Weights of containers",
    columns: [
      { heading: "Container", share: 20 },
      { heading: "Own weight and finishes, kN", share: 26, right: true },
      { heading: "Imposed, kN", share: 20, right: true },
      { heading: "Together, kN", share: 20, right: true },
    ],
    rows: assessment.units.map(({ id, weightKn, imposedKn }) => [
      id.toUpperCase(),
      kn(weightKn),
      kn(imposedKn),
      kn(weightKn + imposedKn),
    ]),
  });
}

function storeySums(flow: CalculationFlow, { assessment }: SetSource, derived: Derived): void {
  flow.heading("Each storey: what it brings and what it stands on");
  const forceOf = (bearings: typeof assessment.bearings): number => total(bearings.map(({ forceKn }) => forceKn));
  const rows = [...derived.storeys].toReversed().map(({ name, containerIds }) => {
    const here = new Set(containerIds);
    const own = assessment.units
      .filter(({ id }) => here.has(id))
      .reduce((sum, unit) => sum + unit.weightKn + unit.imposedKn, 0);
    const bearings = assessment.bearings.filter(({ unitId }) => here.has(unitId));
    const onIt = assessment.bearings.filter(
      ({ unitId, onElementId }) => onElementId !== undefined && here.has(onElementId) && !here.has(unitId),
    );
    const past = bearings.filter(({ on }) => on === "post" || on === "beam");
    return [
      ...[`${name} level`, kn(own), kn(forceOf(onIt)), kn(own + forceOf(onIt))],
      ...[kn(forceOf(bearings)), past.length === 0 ? "–" : kn(forceOf(past))],
    ];
  });
  flow.table({
    name: "Storey sums",
    columns: [
      { heading: "Storey", share: 20 },
      { heading: "Its own, kN", share: 15, right: true },
      { heading: "Set down on it, kN", share: 18, right: true },
      { heading: "By hand, kN", share: 15, right: true },
      { heading: "At its bearings, kN", share: 18, right: true },
      { heading: "Of these on steel, kN", share: 20, right: true },
    ],
    rows,
  });
  flow.paragraph(
    "Its own and what is set down on it are what it brings; its bearings give that back. What stands on added steel goes past the storeys below; where a post or beam lands on a container, the bearings of that container carry it as well.",
  );
}

/** A unit on four corners that carries nothing: a quarter of its weight at each. */
function corners(flow: CalculationFlow, { assessment }: SetSource, derived: Derived): void {
  const alone = assessment.units.find(({ id }) => {
    const own = assessment.bearings.filter(({ unitId }) => unitId === id);
    return (
      own.length === 4 &&
      own.every(({ on }) => on === "fitting" || on === "pad") &&
      !assessment.bearings.some(({ onElementId }) => onElementId === id)
    );
  });
  flow.heading("Corner posts: a container that carries nothing else");
  if (alone === undefined) {
    flow.paragraph("No container of this scheme stands on four corners and carries nothing.");
    return;
  }
  const total = alone.weightKn + alone.imposedKn;
  const found = assessment.bearings.filter(({ unitId }) => unitId === alone.id).map(({ forceKn }) => kn(forceKn));
  flow.paragraph(
    `${derived.tag(alone.id)} weighs ${kn(total)} kN with what is in it. Spread evenly, each corner takes ${kn(total)} ÷ 4 = ${kn(total / 4)} kN. The program says ${found.join(", ")} kN.`,
  );
}

/** Moments of one unit about the y axis of the site: its forces turn it neither way. */
function lever(flow: CalculationFlow, { assessment }: SetSource, derived: Derived): void {
  const offCorner = assessment.bearings.find(
    ({ on, forceKn }) => (on === "rail" || on === "beam" || on === "post") && forceKn !== 0,
  );
  const id = offCorner?.unitId ?? assessment.units[0]?.id;
  const unit = assessment.units.find((each) => each.id === id);
  const placed = id === undefined ? undefined : derived.placed.get(id);
  flow.heading("Rails and seats: moments of one container");
  if (unit === undefined || placed === undefined) {
    flow.paragraph("None.");
    return;
  }
  const loads = [
    {
      what: `${derived.tag(unit.id)} itself, at its middle`,
      x: placed.frame.xMm / 1000,
      y: placed.frame.yMm / 1000,
      kn: unit.weightKn + unit.imposedKn,
    },
    ...assessment.bearings
      .filter(({ onElementId }) => onElementId === unit.id)
      .map(({ unitId, at, forceKn }) => ({
        what: `${derived.tag(unitId)} on it`,
        x: at.xMm / 1000,
        y: at.yMm / 1000,
        kn: forceKn,
      })),
  ];
  const supports = assessment.bearings
    .filter(({ unitId }) => unitId === unit.id)
    .map(({ at, forceKn, on, onElementId }) => ({
      what: `${on} ${onElementId === undefined ? "" : derived.tag(onElementId)}`,
      x: at.xMm / 1000,
      y: at.yMm / 1000,
      kn: -forceKn,
    }));
  const all = [...loads, ...supports];
  const sums = {
    kn: total(all.map((each) => each.kn)),
    x: total(all.map((each) => each.kn * each.x)),
    y: total(all.map((each) => each.kn * each.y)),
  };
  flow.paragraph(
    `Forces on ${derived.tag(unit.id)}, down positive, with their places. If it is in balance, force, force × x and force × y each come to nothing.`,
  );
  flow.table({
    name: "Moments of one container",
    columns: [
      { heading: "What", share: 30 },
      { heading: "x, m", share: 14, right: true },
      { heading: "y, m", share: 14, right: true },
      { heading: "Force, kN", share: 14, right: true },
      { heading: "Force × x", share: 14, right: true },
      { heading: "Force × y", share: 14, right: true },
    ],
    rows: [
      ...all.map((each) => [
        each.what,
        fixed(each.x, 3),
        fixed(each.y, 3),
        kn(each.kn),
        kn(each.kn * each.x),
        kn(each.kn * each.y),
      ]),
      ["Sum", "", "", kn(sums.kn), kn(sums.x), kn(sums.y)],
    ],
  });
}

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

function postSums(flow: CalculationFlow, { assessment, scheme }: SetSource, derived: Derived): Figure[] {
  flow.heading("Added posts: what comes down on each");
  const forces = postForces(assessment);
  const posts = scheme.posts.filter(({ id }) => forces.has(id));
  if (posts.length === 0) {
    flow.paragraph(scheme.posts.length === 0 ? "No post is added." : "Nothing comes down on the posts that are drawn.");
    return [];
  }
  const rows = posts.map(({ id, tag }) => {
    const on = assessment.bearings.filter(({ onElementId }) => onElementId === id);
    const force = forces.get(id) ?? 0;
    const words =
      on.length === 0
        ? "no container directly: by beams or posts above"
        : on.map(({ unitId, forceKn }) => `${derived.tag(unitId)} ${kn(forceKn)}`).join(" + ");
    return [tag, words, on.length === 0 ? "" : kn(total(on.map(({ forceKn }) => forceKn))), kn(force)];
  });
  flow.table({
    name: "Posts",
    columns: [
      { heading: "Post", share: 10 },
      { heading: "What bears on it, kN", share: 50 },
      { heading: "By hand, kN", share: 18, right: true },
      { heading: "Program, kN", share: 18, right: true },
    ],
    rows,
  });
  return posts.map(({ id, tag }) => ({
    about: tag,
    quantity: "post force, kN",
    value: forces.get(id) ?? 0,
    from: "calculation",
    page: flow.number,
  }));
}

/** Of the pad that governs: its force by the page of reactions, over its area, over what the ground may take. */
function pads(flow: CalculationFlow, source: SetSource, derived: Derived, solved: Solved | null): void {
  const { scheme, units } = source;
  flow.heading(`Pads: pressure on the ground under D + L${solved === null ? ", by statics" : ", as solved"}`);
  const forces = solved === null ? staticsOnPads(source) : solvedOnPads(solved);
  const worst = scheme.pads
    .map((pad) => {
      const { dead, live } = forces.get(pad.id) ?? { dead: 0, live: 0 };
      const { lengthM, widthM } = rectCornersApart(pad);
      return { pad, dead, live, lengthM, widthM, kpa: (dead + live) / (lengthM * widthM) };
    })
    .toSorted((a, b) => b.kpa - a.kpa)[0];
  if (worst === undefined) {
    flow.paragraph("No pad is drawn.");
    return;
  }
  const { pad, dead, live, lengthM, widthM, kpa } = worst;
  flow.paragraph(
    `${derived.tag(pad.id)} is the fullest: (${kn(dead)} + ${kn(live)}) kN ÷ (${fixed(lengthM, 3)} × ${fixed(widthM, 3)} m) = ${fixed(kpa, 1)} kPa${units === "US" ? ` (${written.US.bearing(kpa)})` : ""}, without the pad's own weight. ${groundWords(source, kpa)}`,
  );
}

/** What the ground may take, as the checks in full state it, and what that makes of the pressure. */
function groundWords({ scheme, proof }: SetSource, kpa: number): string {
  const { report, class: soil } = scheme.basis.soil;
  const symbols = (proof?.workings ?? [])
    .filter(({ working }) => working.title === "Bearing on soil")
    .flatMap(({ working }) => working.symbols);
  const allowed =
    report === undefined ? symbols.find(({ symbol }) => symbol === "q_a")?.value : report.bearingPa / paPerKpa;
  const ground = report === undefined ? `${soil}, presumptive` : `allowed by ${report.source}`;
  if (allowed === undefined) return `Ground: ${ground}; the check against it is made in the strength run.`;
  return `Ground: ${fixed(allowed, 2)} kPa, ${ground}. ${fixed(kpa, 1)} ÷ ${fixed(allowed, 2)} = ${fixed(kpa / allowed, 2)}. The program's utilisation of the fullest pad is near this: it also shifts load by play, settlement and softer ground, under “Strength”.`;
}

const paPerKpa = 1000;

type PadForces = ReadonlyMap<string, { dead: number; live: number }>;

const solvedOnPads = ({ cases }: Solved): PadForces =>
  new Map(supportsByCase(cases).map(({ id, dead, imposed }) => [id, { dead: dead ?? 0, live: imposed ?? 0 }]));

const staticsOnPads = (source: SetSource): PadForces =>
  new Map(reactionsOf(source).map(({ id, deadKn, allKn }) => [id, { dead: deadKn, live: allKn - deadKn }]));
