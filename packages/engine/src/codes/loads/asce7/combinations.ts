import type { CombinationRequest } from "../../../loads/design-basis.ts";
import type { CombinationLevel, LoadCombination, LoadTerm } from "../../../loads/load-combination.ts";
import type { LoadSymbol } from "../../../loads/load-symbol.ts";
import { asce7, type Asce7Edition } from "./asce7-edition.ts";
import {
  allowableRows,
  mainRoofClause,
  seismicRows,
  strengthRows,
  type CombinationRow,
  type RoofFactor,
  type RoofFactors,
} from "./combination-rows.ts";

/** What an edition puts in the place of its snow factors. */
export type CombinationFactors = {
  readonly edition: Asce7Edition;
  readonly roof: RoofFactors;
  readonly seismicSnow: { readonly strength: number; readonly allowable: number };
};

/** ASCE 7-16 ch. 2: snow like the other roof loads. */
export const factors2016: CombinationFactors = {
  edition: "2016",
  roof: { main: evenly(1.6), companion: evenly(0.5), allowable: evenly(1) },
  seismicSnow: { strength: 0.2, allowable: 0.75 },
};

/** ASCE 7-22 ch. 2: ground snow is at strength level. */
export const factors2022: CombinationFactors = {
  edition: "2022",
  roof: { main: { Lr: 1.6, S: 1, R: 1.6 }, companion: { Lr: 0.5, S: 0.3, R: 0.5 }, allowable: { Lr: 1, S: 0.7, R: 1 } },
  seismicSnow: { strength: 0.15, allowable: 0.1 },
};

/** All combinations of ch. 2 for the actions present, in the order of the text; equal sums stand once. */
export function combinations(factors: CombinationFactors, request: CombinationRequest): LoadCombination[] {
  const horizontal = request.overstrength ? "Emh" : "Eh";
  const rows = request.level === "strength" ? strengthRows : allowableRows;
  const all = [...rows, ...seismicRows(factors.seismicSnow, horizontal)[request.level]];
  return distinct(all.flatMap((row) => expandRow(row, factors, request)));
}

function expandRow(row: CombinationRow, factors: CombinationFactors, request: CombinationRequest): LoadCombination[] {
  if (!mainActionPresent(row, request.present)) return [];
  const roofs = row.terms.some(([symbol]) => symbol === "roof") ? roofChoices(request.present) : [undefined];
  const eithers = eitherChoices(row, request.present);
  return eithers.flatMap((either) =>
    roofs.map((roof) => ({
      level: request.level,
      terms: [...row.terms, ...(either === undefined ? [] : [either])]
        .map(([symbol, factor]) => termOf(symbol, factor, roof, row, factors, request))
        .filter((term) => term.factor !== 0 && present(term.symbol, request.present)),
      clause: asce7(factors.edition, row.clause),
      id: "",
    })),
  );
}

/** A wind or earthquake row says nothing new without its wind or earthquake. */
function mainActionPresent({ terms }: CombinationRow, actions: ReadonlySet<LoadSymbol>): boolean {
  const lateral = terms.filter(([symbol]) => symbol === "W" || symbol === "Eh" || symbol === "Emh");
  return lateral.every(([symbol]) => (symbol === "W" ? actions.has("W") : actions.has("Eh")));
}

function eitherChoices(row: CombinationRow, actions: ReadonlySet<LoadSymbol>) {
  const choices = (row.either ?? []).filter(([symbol]) => actions.has(symbol === "companion L" ? "L" : symbol));
  return choices.length === 0 ? [undefined] : choices;
}

const roofChoices = (actions: ReadonlySet<LoadSymbol>): (keyof RoofFactor | undefined)[] => {
  const choices = (["Lr", "S", "R"] as const).filter((symbol) => actions.has(symbol));
  return choices.length === 0 ? [undefined] : choices;
};

function termOf(
  symbol: LoadSymbol | "roof" | "companion L",
  factor: number,
  roof: keyof RoofFactor | undefined,
  row: CombinationRow,
  factors: CombinationFactors,
  request: CombinationRequest,
): LoadTerm {
  if (symbol === "companion L") return { symbol: "L", factor: factor * (request.halfCompanionLive ? 0.5 : 1) };
  if (symbol !== "roof") return { symbol, factor };
  if (roof === undefined) return { symbol: "Lr", factor: 0 };
  return { symbol: roof, factor: toPrintedDigits(factor * roofFactor(row, factors.roof, request.level)[roof]) };
}

/** 0.75 × 0.7 is 0.525 on the page, not 0.52499…. */
const toPrintedDigits = (factor: number): number => Math.round(factor * 1e6) / 1e6;

function roofFactor(row: CombinationRow, roof: RoofFactors, level: CombinationLevel): RoofFactor {
  if (level === "allowable") return roof.allowable;
  return row.clause === mainRoofClause ? roof.main : roof.companion;
}

/** Ev, Eh and Emh are made of dead load and of the horizontal forces: they are there when the earthquake is. */
const present = (symbol: LoadSymbol, actions: ReadonlySet<LoadSymbol>): boolean =>
  symbol === "D" || (symbol === "Ev" || symbol === "Emh" ? actions.has("Eh") : actions.has(symbol));

function distinct(list: readonly LoadCombination[]): LoadCombination[] {
  const seen = new Set<string>();
  const kept = list.filter(({ terms }) => {
    const key = terms
      .map(({ symbol, factor }) => `${symbol}${factor}`)
      .toSorted()
      .join(" ");
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
  return kept.map((combination, at) => ({ ...combination, id: `${combination.level}-${at + 1}` }));
}

function evenly(factor: number): RoofFactor {
  return { Lr: factor, S: factor, R: factor };
}
