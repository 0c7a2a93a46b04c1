import { deferredItems } from "../permit-set/deferred-items.ts";
import type { Table, TableSource } from "./table.ts";

/** What is submitted after the set, or is not in it, and what waits for it. */
export const deferredTable = ({ scheme, entries }: TableSource): Table => ({
  head: ["item", "state", "brought_by", "holds"],
  rows: deferredItems(scheme, entries).map(({ item, state, by, holds }) => [item, state, by, holds]),
});
