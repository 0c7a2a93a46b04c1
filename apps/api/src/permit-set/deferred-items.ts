import { positionOf, surveyState, type RecordEntry, type Scheme } from "@cornerway/schema";
import { containersIn } from "./found-in-record.ts";
import { listed } from "./paper/by-tag.ts";

/** Something that comes later than the set, with how it stands up to these entries of the record. */
export interface DeferredItem {
  item: string;
  state: string;
  /** Who has to bring it. */
  by: string;
  /** Nothing of this goes on before it is there. */
  holds: string;
}

/** What is submitted after the set, or is not in it. Common practice, no published source. */
export function deferredItems(scheme: Scheme, entries: readonly RecordEntry[]): DeferredItem[] {
  const unframed = scheme.openings
    .filter(({ framed, framing }) => framed && framing === undefined)
    .map((opening) => opening.tag);
  const noReport = scheme.basis.soil.report === undefined;
  return [
    {
      ...{ item: "Shop drawings of welds, bolts and plates", state: "to be submitted" },
      ...{ by: "whoever makes the steel", holds: "making it" },
    },
    {
      ...{ item: "Plan of lifting, cutting and temporary support", state: "to be submitted" },
      ...{ by: "whoever lifts and cuts", holds: "lifting and cutting" },
    },
    {
      ...{ item: "Survey of each container", state: surveyedWords(scheme, entries) },
      ...{ by: "owner", holds: "cutting" },
    },
    ...(unframed.length === 0
      ? []
      : [
          {
            ...{ item: `Sections of the framing of ${listed(unframed)}`, state: "to be stated" },
            ...{ by: "engineer", holds: "cutting these openings" },
          },
        ]),
    ...(noReport
      ? [
          {
            ...{ item: "Soil report", state: "none: the ground is presumptive" },
            ...{ by: "owner", holds: "casting the pads" },
          },
        ]
      : []),
    {
      ...{ item: "Stairs, guards, roof decks, fire separation and weathering between units", state: "not in this set" },
      ...{ by: "architect", holds: "use of the building" },
    },
  ];
}

function surveyedWords({ containers }: Scheme, entries: readonly RecordEntry[]): string {
  const placed = containersIn(entries).filter((each) => surveyState(each) === "accepted");
  const ids = new Set(placed.map((each) => positionOf(each)?.elementId));
  const count = containers.filter(({ id }) => ids.has(id)).length;
  return count === 0 ? "none is accepted yet" : `${count} of ${containers.length} units have an accepted container`;
}
