import { changesOnElevation, changesOnPlan, type PaperRect, type PlacedChange, type Side } from "@cornerway/engine";
import { compareSchemes, tagOf, type ElementChange, type Opening, type Scheme } from "@cornerway/schema";
import type { SetSource } from "./set-source.ts";

/** A change since the set that was printed before: its number stands beside its delta, and on its line in the list. */
export type NumberedChange = { number: number; change: ElementChange; tag: string; what: string };

/** Changes of one set as a view shows them, with what stands in their deltas. */
export type MarkedChanges = { sign: string; clouded: boolean; places: readonly PlacedChange[] };

type Marked = Pick<SetSource, "earlier" | "scheme" | "revision" | "authority">;

/** The set that was printed before; undefined where none was. */
export const setBefore = ({ earlier }: Pick<SetSource, "earlier">): SetSource["earlier"][number] | undefined =>
  earlier.at(-1);

/** Changed elements in the order of the lists of a scheme; none where no set was printed before. */
export function changesSince({ earlier, scheme }: Pick<SetSource, "earlier" | "scheme">): NumberedChange[] {
  const before = setBefore({ earlier });
  if (before === undefined) return [];
  return compareSchemes(before.scheme, scheme).elements.map((change, at) => {
    const element = change.after ?? change.before;
    return {
      ...{ number: at + 1, change, what: whatOf(change) },
      tag: (element === null ? undefined : tagOf(element)) ?? change.id,
    };
  });
}

/** What holds for the whole and is drawn nowhere: it has no cloud. */
export function wholeChanges({ earlier, scheme }: Pick<SetSource, "earlier" | "scheme">): string[] {
  const before = setBefore({ earlier });
  if (before === undefined) return [];
  const { site, basis } = compareSchemes(before.scheme, scheme);
  return [
    ...(site === null ? [] : ["The site or the code edition is another."]),
    ...(basis === null ? [] : ["The design basis is another."]),
  ];
}

function whatOf({ before, after, with: hanging, collection }: ElementChange): string {
  const with_ = hanging.length === 0 ? "" : `, with ${hanging.length} that hang on it`;
  const kind = collection
    .replace(/([A-Z])/g, " $1")
    .toLowerCase()
    .replace(/s$/, "");
  const turn = before === null ? "new" : after === null ? "taken away" : "changed";
  return `${kind}: ${turn}${with_}`;
}

/** What stands in the deltas of this set: the letter of its revision, or how often the set came again. */
export const deltaSign = ({ earlier, revision, authority }: Marked): string =>
  authority.delta === "revision letter" ? revision.letter : String(earlier.length);

export const markedOnElevation = (source: Marked, side: Side): MarkedChanges[] =>
  marked(source, (changes, before, after) => changesOnElevation(changes, before, after, side));

export const markedOnPlan = (source: Marked, storey: number): MarkedChanges[] =>
  marked(source, (changes, before, after) => changesOnPlan(changes, before, after, storey));

/** On a foundation plan only what stands in the ground is marked. */
export function markedOnFoundation(source: Marked, storey: number): MarkedChanges[] {
  const pads = new Set(
    [source.scheme, ...source.earlier.map(({ scheme }) => scheme)].flatMap(({ pads: all }) => all.map(({ id }) => id)),
  );
  return markedOnPlan(source, storey).map((each) => ({
    ...each,
    places: each.places.filter(({ id }) => pads.has(id)),
  }));
}

/** On a cut plan what is cut otherwise; `placeOf` lays an opening on the face, null where it is not in it. */
export const markedOnCut = (source: Marked, placeOf: (opening: Opening) => PaperRect | null): MarkedChanges[] =>
  marked(source, (changes, before, after) =>
    changes.flatMap(({ id }): PlacedChange[] => {
      const placeIn = ({ openings }: Scheme): PaperRect | null => {
        const opening = openings.find((each) => each.id === id);
        return opening === undefined ? null : placeOf(opening);
      };
      const [was, is] = [placeIn(before), placeIn(after)];
      const fresh = is ?? was;
      return fresh === null ? [] : [{ id, fresh, was, gone: is === null }];
    }),
  );

type Place = (changes: readonly ElementChange[], before: Scheme, after: Scheme) => PlacedChange[];

/** The changes of this set, and of the sets before it where the authority wants their deltas to stay. */
function marked(source: Marked, place: Place): MarkedChanges[] {
  const { earlier, scheme, authority } = source;
  const before = setBefore(source);
  if (before === undefined || authority.marks === "none") return [];
  const changes = changesSince(source).map(({ change }) => change);
  const now = {
    ...{ sign: deltaSign(source), clouded: authority.marks === "clouds and deltas" },
    places: place(changes, before.scheme, scheme),
  };
  return authority.earlierDeltas === "stay" ? [...ofSetsBefore(earlier, source, place), now] : [now];
}

/** Deltas of earlier sets, on what still stands as that set had it. */
function ofSetsBefore(earlier: SetSource["earlier"], { scheme, authority }: Marked, place: Place): MarkedChanges[] {
  return earlier.slice(1).flatMap(({ letter, scheme: after }, at) => {
    const before = earlier[at]?.scheme;
    if (before === undefined) return [];
    const since = new Set(compareSchemes(after, scheme).elements.map(({ id }) => id));
    const changes = compareSchemes(before, after).elements.filter(({ id, after: is }) => is !== null && !since.has(id));
    const sign = authority.delta === "revision letter" ? letter : String(at + 1);
    return [{ sign, clouded: false, places: place(changes, before, scheme) }];
  });
}
