import { siteItems } from "@cornerway/engine";
import { siteItemsNow } from "@cornerway/schema";
import { siteWordsIn } from "../permit-set/found-in-record.ts";
import { to, type Table, type TableSource } from "./table.ts";

/** Everything that is looked at on site, item by item, with its last word: special inspections and hold points. */
export const inspectionsTable = ({ scheme, entries }: TableSource): Table => ({
  head: ["item_id", "element_id", "kind", "hold_point", "weld_m", "state", "said_by", "role", "said_at_utc", "photos"],
  rows: siteItemsNow(scheme, siteItems(scheme), siteWordsIn(entries)).map(({ item, state, words }) => {
    const last = words.at(-1);
    const photos = words.reduce((count, word) => count + ("photos" in word ? word.photos.length : 0), 0);
    return [
      ...[item.key, item.elementId, item.kind, item.point, item.weldM === null ? null : to(item.weldM, 3), state],
      ...[last?.author.name ?? null, last?.author.role ?? null, last?.saidAt ?? null, photos],
    ];
  }),
});
