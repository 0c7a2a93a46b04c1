import { combinationText, containerTypeRows, designBasisFor, type LoadCombination } from "@cornerway/engine";
import type { Derived } from "../derived.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";
import { written } from "../written.ts";
import { certaintyWords, clauseWords, plainSymbol, significant, withUnit } from "./words.ts";
import { WorkingSheets } from "./working-sheet.ts";

/** Where weights come from, what each load is, and in which sums they are taken. */
export function layLoads(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  flow.subject("Loads");
  layTares(flow, source);
  layDerivations(flow, source, derived);
  layCombinations(flow, source);
}

function layTares(flow: CalculationFlow, { scheme, units }: SetSource): void {
  const say = written[units];
  flow.heading("Weight of containers by type");
  flow.table({
    name: "Tares",
    columns: [
      { heading: "Type", share: 10 },
      { heading: "Least", share: 14, right: true },
      { heading: "Most", share: 14, right: true },
      { heading: "Source", share: 40 },
      { heading: "Certainty", share: 26 },
    ],
    rows: [...new Set(scheme.containers.map(({ type }) => type))].toSorted().map((type) => {
      const { tareLeast, tareMost } = containerTypeRows[type];
      return [
        type,
        say.mass(tareLeast.value),
        say.mass(tareMost.value),
        tareLeast.source,
        certaintyWords[tareLeast.certainty],
      ];
    }),
  });
  flow.paragraph(
    "The load path takes the middle of the range, or the tare on the container's own plate once surveyed; the strength run takes whichever end is the worse.",
  );
}

function layDerivations(flow: CalculationFlow, { proof }: SetSource, derived: Derived): void {
  flow.heading("How each load is worked out");
  if (proof === null) {
    flow.paragraph(
      "The strength run was not made for this revision: wind, snow and earthquake loads have not been derived. Imposed loads are those of the criteria.",
    );
    return;
  }
  const { loads, cases, windLimits, actionsLeftOut } = proof.report;
  flow.table({
    name: "Derived loads",
    size: 7.8,
    columns: [
      { heading: "Load", share: 40 },
      { heading: "Value", share: 18, right: true },
      { heading: "Clause", share: 28 },
      { heading: "Certainty", share: 20 },
    ],
    rows: loadRows(loads, derived),
  });
  flow.heading("Sum of each action case");
  flow.table({
    name: "Action cases",
    size: 7.8,
    columns: [
      { heading: "Case", share: 40 },
      { heading: "Symbol", share: 10 },
      ...["East, kN", "North, kN", "Up, kN"].map((heading) => ({ heading, share: 14, right: true })),
    ],
    rows: cases.map(({ id, symbol, xKn, yKn, zKn }) => [
      derived.tagged(id),
      symbol,
      significant(xKn),
      significant(yKn),
      significant(zKn),
    ]),
  });
  if (windLimits.length > 0) {
    flow.heading("Limits of the wind procedure");
    flow.table({
      name: "Wind limits",
      size: 7.8,
      columns: [
        { heading: "Limit", share: 40 },
        { heading: "Value", share: 14, right: true },
        { heading: "Most", share: 14, right: true },
        { heading: "Holds", share: 14 },
        { heading: "Clause", share: 24 },
      ],
      rows: windLimits.map(({ limit, value, most, unit, holds, clause }) => [
        limit,
        `${significant(value)} ${unit}`,
        `${significant(most)} ${unit}`,
        holds ? "holds" : "does not hold: the enclosing box stands in",
        clauseWords(clause),
      ]),
    });
  }
  flow.heading("Actions left out");
  flow.table({
    name: "Actions left out",
    columns: [{ heading: "Action the codes know and the program does not work out", share: 1 }],
    rows: actionsLeftOut.map((words) => [words]),
  });
  layDerivationWorkings(flow, proof, derived);
}

/** Of each kind of load, named without the unit it falls on, the derivation of the greatest. */
function layDerivationWorkings(flow: CalculationFlow, { report, workings }: Proof, { tagged }: Derived): void {
  const byId = new Map(workings.map(({ id, working }) => [id, working]));
  const greatest = new Map<string, Derivation>();
  for (const load of report.loads) {
    const kind = kindOf(load);
    const known = greatest.get(kind);
    if (known === undefined || Math.abs(load.value) > Math.abs(known.value)) greatest.set(kind, load);
  }
  flow.heading("Derivations in full");
  flow.paragraph("Of each kind of load the greatest; the others differ in their numbers and not in their formula.");
  const sheets = new WorkingSheets(flow);
  for (const [at, { id }] of [...greatest.values()].entries()) {
    const working = byId.get(id);
    if (working !== undefined) sheets.lay({ ...working, title: tagged(working.title) }, `L${at + 1}`);
  }
}

type Proof = NonNullable<SetSource["proof"]>;
type Derivation = Proof["report"]["loads"][number];

/** Loads of one formula: same group, symbol and clause, whatever container they act on. */
const kindOf = ({ group, symbol, clause, title }: Derivation): string =>
  [group, symbol, clause.place, title.replace(/ of \S+(, \w+)?$/, "")].join("|");

/** Loads told alike are one row, with how often they come. */
function loadRows(loads: readonly Derivation[], { tagged }: Derived): string[][] {
  const counts = new Map<string, { row: string[]; times: number }>();
  for (const { title, symbol, value, unit, clause, certainty } of loads) {
    const row = [
      tagged(title),
      `${plainSymbol(symbol)} = ${withUnit(value, unit)}`,
      clauseWords(clause),
      certaintyWords[certainty],
    ];
    const key = row.join("|");
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { row, times: 1 });
    else known.times += 1;
  }
  return [...counts.values()].map(({ row: [title = "", ...rest], times }) => [
    times === 1 ? title : `${title}, ${times} times`,
    ...rest,
  ]);
}

function layCombinations(flow: CalculationFlow, { proof, scheme }: SetSource): void {
  flow.heading("Combinations");
  const columns = [
    { heading: "Level", share: 14 },
    { heading: "Combination", share: 46 },
    { heading: "Clause", share: 30 },
    { heading: "Runs", share: 10, right: true },
  ];
  if (proof !== null) {
    const rows = proof.report.combinations.map(({ level, text, clause, runs }) => [
      level,
      text,
      clauseWords(clause),
      String(runs),
    ]);
    flow.table({ name: "Combinations", columns, rows, size: 8 });
    return;
  }
  flow.paragraph("None of these was run for this revision: they are those the adopted code would ask for.");
  flow.table({
    name: "Combinations",
    columns,
    rows: asked(scheme).map((each) => [each.level, combinationText(each), clauseWords(each.clause), "not run"]),
    size: 8,
  });
}

function asked({ site, basis }: SetSource["scheme"]): LoadCombination[] {
  const present = new Set(basis.hazards === null ? (["D", "L"] as const) : (["D", "L", "Lr", "S", "W", "Eh"] as const));
  const loads = designBasisFor(site.edition);
  return (["strength", "allowable"] as const).flatMap((level) => [
    ...loads.combinations({ level, present, halfCompanionLive: false, overstrength: false }),
  ]);
}
