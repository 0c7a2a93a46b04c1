import type { Assessment, Premium, RemedyRefusal, Scheme } from "@cornerway/schema";
import { bears, moves } from "./mark-groups.ts";
import { newElements } from "./new-elements.ts";
import { packedAfter } from "./packed.ts";
import { screened } from "./screen.ts";
import type { SearchGround } from "./search-ground.ts";
import type { Trial } from "./trial.ts";

/** A trial drawn on the scheme, with what the load path says of it and what it comes to. */
export type Drawn = {
  readonly ok: true;
  readonly trial: Trial;
  readonly scheme: Scheme;
  readonly path: Assessment;
  readonly premium: Premium;
};

/** Draws a trial with the packing it makes necessary; refused where it cannot be drawn, or the load path is against it. */
export function drawnTrial(
  given: Trial,
  ground: SearchGround,
): Drawn | { readonly ok: false; readonly why: RemedyRefusal } {
  const { tools, mark } = ground;
  const bare = tools.draw(ground.scheme, given.operations);
  const packing = bare === undefined ? [] : packedAfter(bare, concerned(given, ground));
  const trial = packing.length === 0 ? given : { ...given, operations: [...given.operations, ...packing] };
  const scheme = packing.length === 0 ? bare : tools.draw(ground.scheme, trial.operations);
  if (scheme === undefined) return { ok: false, why: { kind: "cannot be drawn" } };
  const path = tools.assess(scheme);
  const why = screened(ground.path, path, mark, newElements(trial.operations));
  return why === undefined
    ? { ok: true, trial, scheme, path, premium: tools.premium(scheme, tools.book) }
    : { ok: false, why };
}

/** Units whose stand a change alters: its own, and the one whose stand the mark is about. What rocks elsewhere has its own mark. */
function concerned({ change }: Trial, { mark: { fact }, unitId }: SearchGround): string[] {
  const own = "unitId" in change ? [change.unitId] : [];
  return [...new Set([...own, ...(moves.has(fact.kind) || bears.has(fact.kind) ? [unitId] : [])])];
}
