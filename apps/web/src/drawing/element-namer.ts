import type { Opening, Scheme, UnitSystem } from "@cornerway/schema";
import { spokenLength } from "../units/drawn-length.ts";
import { faceFrame, placeContainer, storeysOf, compassOf } from "@cornerway/engine";
import { objectNames } from "./objects/object-names.ts";
import type { ElementVerdict } from "./marks/element-verdicts.ts";

/**
 * The name an element goes by in the tree, "F1, south side, door D3, 1.50 m wide, does not work, note 2", and the id of
 * that note in the page.
 */
export type ElementNamer = (id: string) => { label: string; noteId: string | undefined };

/** Names of one scheme's elements with their verdicts and the numbers of their notes. */
export function elementNamer(
  scheme: Scheme,
  verdicts: ReadonlyMap<string, ElementVerdict>,
  noteNumbers: ReadonlyMap<string, number>,
  units: UnitSystem,
): ElementNamer {
  const names = new Map([
    ...placeNames(scheme, (lengthUm) => spokenLength(lengthUm / 1000, units)),
    ...objectNames(scheme, units),
  ]);
  const loads = new Set(scheme.freeLoads.map(({ id }) => id));
  return (id) => {
    const name = names.get(id);
    if (name === undefined) throw new RangeError(`no element ${id} in this scheme`);
    const found = verdicts.get(id);
    const note = found?.markId == null ? undefined : noteNumbers.get(found.markId);
    // A load is what is asked of the building: no verdict is given on it.
    const verdict = loads.has(id) ? [] : [found?.verdict ?? "not checked"];
    return {
      label: [name, ...verdict, ...(note === undefined ? [] : [`note ${note}`])].join(", "),
      noteId: note === undefined ? undefined : `note-${note}`,
    };
  };
}

function placeNames(scheme: Scheme, long: (lengthUm: number) => string): Map<string, string> {
  const units = new Map(scheme.containers.map((container) => [container.id, placeContainer(container)]));
  const names = new Map<string, string>();
  for (const { name, containerIds } of storeysOf(scheme))
    for (const id of containerIds) {
      const unit = units.get(id);
      if (unit !== undefined)
        names.set(
          id,
          `${unit.container.tag}, ${Math.round(unit.dimensions.lengthMm / 304.8)} ft container, ${name.toLowerCase()} level`,
        );
    }
  for (const opening of scheme.openings) {
    const unit = units.get(opening.containerId);
    const of = unit === undefined ? "" : `${unit.container.tag}, ${faceWords(opening, unit)}, `;
    names.set(
      opening.id,
      `${of}${useWords[opening.use]} ${opening.tag}, ${long(opening.widthUm)} wide${opening.cut === undefined ? "" : `, cut ${opening.cut}`}`,
    );
  }
  for (const post of scheme.posts) names.set(post.id, `post ${post.tag}, ${long(post.topZUm - post.baseZUm)} high`);
  for (const pad of scheme.pads)
    names.set(pad.id, `${pad.support ?? "pad"} ${pad.tag}, ${long(pad.lengthUm)} by ${long(pad.widthUm)}`);
  return names;
}

const faceWords = ({ face }: Opening, unit: ReturnType<typeof placeContainer>): string =>
  face === "roof" || face === "floor" ? face : `${compassOf(faceFrame(unit, face).normal)} side`;

const useWords: Readonly<Record<Opening["use"], string>> = {
  door: "door",
  window: "window",
  passage: "passage",
  "open-wall": "open wall",
  hatch: "hatch",
};
