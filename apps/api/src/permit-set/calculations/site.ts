import { siteItems } from "@cornerway/engine";
import { builtState, siteItemsNow, type SiteItemNow } from "@cornerway/schema";
import type { Derived } from "../derived.ts";
import { siteWordsIn } from "../found-in-record.ts";
import type { CalculationFlow } from "../paper/calculation-flow.ts";
import { byTag } from "../paper/by-tag.ts";
import { day } from "../paper/words.ts";
import type { SetSource } from "../set-source.ts";

/** Every item that is looked at on site, with who closed it; by hand where nobody has yet. */
export function laySite(flow: CalculationFlow, source: SetSource, derived: Derived): void {
  const { scheme, record } = source;
  const items = inOrder(siteItemsNow(scheme, siteItems(scheme), siteWordsIn(record.entries)), derived);
  const closed = items.filter(({ state }) => state === "built").length;
  flow.subject("Inspections and hold points, item by item");
  flow.paragraph(
    `${items.length} items of this revision are each closed by a named person with a photo; ${closed} are, up to the head of this set${builtState(items) === "not built as drawn" ? ", and it is not built as drawn" : ""}. Welds and hold points are closed by the engineer or whoever the engineer of record names as special inspector.`,
  );
  flow.table({
    name: "Items on site",
    size: 7.6,
    columns: [
      { heading: "Item", share: 44 },
      { heading: "State", share: 20 },
      { heading: "Closed by, signed, date", share: 36 },
    ],
    rows: items.map((each) => rowOf(each, derived)),
  });
}

/** Kind by kind as the engine lists them, within each in the order people count. */
function inOrder(items: readonly SiteItemNow[], { tag }: Derived): SiteItemNow[] {
  const kindOf = ({ item }: SiteItemNow): string => `${item.kind}|${item.point ?? ""}`;
  const tagged = items.map((each) => ({ each, tag: tag(each.item.elementId) }));
  const kinds = [...new Set(items.map(kindOf))];
  return kinds.flatMap((kind) => byTag(tagged.filter(({ each }) => kindOf(each) === kind)).map(({ each }) => each));
}

function rowOf({ item, state, words }: SiteItemNow, { tag }: Derived): string[] {
  const { kind, point, elementId, weldM } = item;
  const name = tag(elementId);
  const what =
    point === null
      ? weldM === null
        ? `${kind} ${name}`
        : `welds of ${name}, ${weldM.toFixed(1)} m`
      : `${name}: ${point}`;
  const last = words.at(-1);
  const by = last === undefined || state === "open" ? "" : `${last.author.name}, ${day(last.saidAt)}`;
  return [what, state === "built" ? "as drawn" : state, by];
}
