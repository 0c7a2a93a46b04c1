import type { Scheme, Seat } from "@cornerway/schema";
import { expect, it } from "vitest";
import { derive } from "../../src/permit-set/derived.ts";
import { scheduleSheets } from "../../src/permit-set/sheets/schedule-sheets.ts";
import { connectionsTable } from "../../src/tables/connections-table.ts";
import { smallScheme, sourceOf } from "../support/sample-set.ts";

const seat: Seat = {
  ...{ id: "s1", tag: "S1", upperId: "f1", lowerId: "g1", xUm: 0, yUm: -1_129_500, lengthUm: 200_000 },
  ...{ widthUm: 150_000, packingUm: 20_000, heldDown: false, stiffenerUm: 10_000 },
};

/** A unit on another, 1.5 m over its end, on one seat. */
const scheme: Scheme = {
  ...smallScheme(),
  containers: [
    ...smallScheme().containers,
    { id: "f1", tag: "F1", type: "1CC", xUm: 1_500_000, yUm: 0, zUm: 2_591_000, turnMdeg: 0 },
  ],
  seats: [seat],
};
const source = sourceOf(scheme);

it("a seat's stiffener has a column of its own in the table of connections", () => {
  const { head, rows } = connectionsTable(source);
  const row = rows.find(([id]) => id === "s1") ?? [];
  expect([row[head.indexOf("packing_mm")], row[head.indexOf("stiffener_mm")]]).toEqual([20, 10]);
  expect(rows.every(({ length }) => length === head.length)).toBe(true);
});

it("a seat's stiffener stands in the schedule of seats of the set", () => {
  const written = JSON.stringify(scheduleSheets(source, derive(source)).map(({ page }) => page));
  expect(written).toContain("Stiffener");
  const { stiffenerUm: _none, ...bare } = seat;
  const without = { ...source, scheme: { ...scheme, seats: [bare] } };
  expect(written).not.toEqual(JSON.stringify(scheduleSheets(without, derive(without)).map(({ page }) => page)));
});
