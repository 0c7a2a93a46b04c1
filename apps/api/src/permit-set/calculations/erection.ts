import { deferredItems } from "../deferred-items.ts";
import type { Derived } from "../derived.ts";
import { listed } from "../paper/by-tag.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import type { SetSource } from "../set-source.ts";

/** Lifting and erection, hold points, special inspections and deferred items, from what is drawn. */
export function layErection(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  flow.subject("Erection, inspections and hold points");
  flow.paragraph(
    "Lifting, cutting and temporary support need plans of their own by whoever does them. What follows is drawn from the scheme, so that these plans leave nothing out.",
  );
  flow.heading("Hold points");
  flow.table({
    name: "Hold points",
    columns: [
      { heading: "No.", share: 6 },
      { heading: "Nothing goes on until", share: 62 },
      { heading: "Closed by", share: 22 },
      { heading: "Signed, date", share: 20 },
    ],
    rows: holdPoints(source, derived).map(([what, who], at) => [`H${at + 1}`, what, who, ""]),
    size: 8,
  });
  flow.heading("Special inspections, to be stated by the engineer of record");
  flow.table({
    name: "Special inspections",
    columns: [
      { heading: "Item", share: 60 },
      { heading: "Where in this building", share: 40 },
    ],
    rows: inspections(source, derived),
    size: 8,
  });
  flow.paragraph(
    "The list follows chapter 17 of the building code from memory; the engineer of record states the inspections that apply.",
  );
  flow.heading("Lifting");
  flow.table({
    name: "Lifts",
    size: 8,
    columns: [
      { heading: "Container", share: 14 },
      { heading: "Cut before it is lifted", share: 50 },
      { heading: "Judged", share: 40 },
    ],
    rows: source.scheme.containers.map(({ id, tag }) => {
      const yard = source.scheme.openings
        .filter(({ containerId, cut }) => containerId === id && cut === undefined)
        .map((opening) => opening.tag);
      return [
        tag,
        yard.length === 0 ? "nothing: lifted whole" : yard.join(", "),
        yard.length === 0
          ? "as an uncut container, by its own plate"
          : "the state of the cut container at the lift is not judged here",
      ];
    }),
  });
  flow.heading("Deferred items");
  flow.table({
    name: "Deferred items",
    columns: [
      { heading: "Item", share: 46 },
      { heading: "State", share: 28 },
      { heading: "Brought by", share: 20 },
      { heading: "Before", share: 24 },
    ],
    rows: deferredItems(source.scheme, source.record.entries).map(({ item, state, by, holds }) => [
      item,
      state,
      by,
      holds,
    ]),
    size: 8,
  });
}

/** What has to be there and looked at before the next step. */
export function holdPoints({ scheme }: SetSource, { tag }: Derived): HoldPoint[] {
  const staged = (cut: string) =>
    scheme.openings.filter((opening) => opening.cut === cut).map((opening) => opening.tag);
  const yard = scheme.openings.filter(({ cut }) => cut === undefined).map((opening) => opening.tag);
  const shored = staged("after shoring");
  const placed = staged("after placing");
  const inspector = "special inspector";
  const engineer = "engineer of record";
  const when = (tags: readonly unknown[], point: () => HoldPoint): HoldPoint[] => (tags.length === 0 ? [] : [point()]);
  return [
    [
      "Each container is surveyed: plate facts, dents, rust, straightness of posts and rails, thickness of the steel",
      engineer,
    ],
    ...when(yard, () => [
      `Measured steel agrees with what this set assumes, before ${listed(yard)} are cut in the yard`,
      engineer,
    ]),
    ...when(scheme.pads, () => [
      "Ground under every pad is looked at, and levels of the pads are measured, before anything is set down",
      "geotechnical or special inspector",
    ]),
    ...when(scheme.posts, () => [
      `Posts ${tagsOf(scheme.posts)} stand, plumb and anchored, before what they carry is set down`,
      inspector,
    ]),
    ...when(scheme.seats, () => [
      `Seats ${tagsOf(scheme.seats)} are packed tight and welded before what is above is loaded`,
      inspector,
    ]),
    ...when(scheme.locks, () => [
      `Locks and connections under ${listed([...new Set(scheme.locks.map(({ containerId }) => tag(containerId)))])} are closed before anyone works beneath`,
      "site",
    ]),
    ...when(placed, () => [
      `Containers stand and are locked, relieved by shores or jacks until the frames of ${listed(placed)} are welded in, before these are cut: dead load is judged on the building as drawn`,
      engineer,
    ]),
    ...when(shored, () => [
      `Shoring is in place by its own plan before ${listed(shored)} are cut; it is let down only when their framing is welded`,
      engineer,
    ]),
    [
      "No container stands higher than what is locked below it while wind is forecast: bare boxes lift and tip first",
      "site",
    ],
  ];
}

/** What must be so, and who says that it is. */
type HoldPoint = readonly [string, string];

const tagsOf = (elements: readonly { tag: string }[]): string => listed(elements.map((element) => element.tag));

function inspections({ scheme }: SetSource, { tag }: Derived): string[][] {
  const welded = [
    ...scheme.openings.filter(({ framed }) => framed).map((opening) => opening.tag),
    ...scheme.seats.filter(({ heldDown }) => heldDown).map((seat) => seat.tag),
    ...scheme.locks.filter(({ kind }) => kind === "made connection").map((lock) => lock.tag),
  ];
  return [
    ["Identity and condition of each container against its plate", listed(scheme.containers.map((unit) => unit.tag))],
    [
      "Welding to existing thin steel: grade, thickness and coating first",
      welded.length === 0 ? "none drawn" : listed(welded),
    ],
    [
      "Added steel: material, fit, plumb",
      scheme.posts.length + scheme.beams.length === 0
        ? "none drawn"
        : listed([...scheme.posts, ...scheme.beams].map((each) => each.tag)),
    ],
    [
      "Concrete and anchors of pads",
      scheme.pads.length === 0 ? "none drawn" : listed(scheme.pads.map((pad) => pad.tag)),
    ],
    ["Ground under pads", scheme.pads.length === 0 ? "none drawn" : "each pad"],
    [
      "Connections between units: locks closed, ties and hold-downs made",
      scheme.locks.length + scheme.ties.length === 0
        ? "none drawn"
        : listed([...scheme.locks.map(({ containerId }) => tag(containerId)), ...scheme.ties.map((tie) => tie.tag)]),
    ],
  ];
}
