import type { SiteItemKind, SiteItemNow } from "@cornerway/schema";
import type { NameOf } from "../../wording/name-of.ts";
import { itemHeadings } from "../../wording/site-words.ts";
import { SiteItemLines } from "./SiteItemLines.tsx";

/** All items of one kind: what is not as drawn first, then what is open, then what is closed. */
export function KindSection({
  kind,
  items,
  revision,
  nameOf,
}: {
  kind: SiteItemKind;
  items: readonly SiteItemNow[];
  revision: string;
  nameOf: NameOf;
}) {
  if (items.length === 0) return null;
  const id = `site-${kind.replaceAll(" ", "-")}`;
  const closed = items.filter(({ state }) => state === "built").length;
  return (
    <section aria-labelledby={id}>
      <h2 className="caption" id={id}>
        {itemHeadings[kind]}: {closed} of {items.length} closed
      </h2>
      <ul className="site-items">
        {items.toSorted(byUrgency).map((now) => (
          <SiteItemLines key={now.item.key} now={now} revision={revision} nameOf={nameOf} />
        ))}
      </ul>
    </section>
  );
}

const order = ["missing", "differs", "to mend", "open", "accepted", "built"] as const;
const byUrgency = (one: SiteItemNow, other: SiteItemNow): number =>
  order.indexOf(one.state) - order.indexOf(other.state);
