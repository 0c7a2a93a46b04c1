import { applyOperations, type Operation, type Scheme } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { liftedShifts } from "../../src/paper/lifted-shifts.ts";
import { beam, furnished, opening } from "../support/furnished.ts";

function after(scheme: Scheme, operations: readonly Operation[]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}

const moved = (id: string, eastUm: number): Operation => {
  const unit = furnished.containers.find((container) => container.id === id);
  if (unit === undefined) throw new Error(`no unit ${id}`);
  return { kind: "container.move", id, xUm: unit.xUm + eastUm, yUm: unit.yUm, zUm: unit.zUm };
};

describe("liftedShifts(drawn, now)", () => {
  it("is empty where nothing has moved", () => {
    expect(liftedShifts(furnished, furnished).size).toBe(0);
  });

  it("takes along what hangs on a unit, and leaves the rest where it is", () => {
    const shifts = liftedShifts(furnished, after(furnished, [moved("g1", 500_000)]));
    const along = { xMm: 500, yMm: 0, zMm: 0 };
    expect(shifts.get("g1")).toEqual(along);
    const hanging = furnished.openings.filter(({ containerId }) => containerId === "g1");
    expect(hanging.length).toBeGreaterThan(0);
    for (const { id } of hanging) expect(shifts.get(id)).toEqual(along);
    expect(shifts.has("g2")).toBe(false);
  });

  it("is the way from where the hand last rested, not from where the thing was taken up", () => {
    const rested = after(furnished, [moved("g1", 500_000)]);
    const shifts = liftedShifts(rested, after(furnished, [moved("g1", 530_000)]));
    expect(shifts.get("g1")).toEqual({ xMm: 30, yMm: 0, zMm: 0 });
  });

  it("says of an opening of another shape that it is gone as it is drawn", () => {
    const { id, offsetUm, sillUm, widthUm, heightUm } = opening;
    const shape = { offsetUm, sillUm, heightUm, widthUm: widthUm + 500_000 };
    const shifts = liftedShifts(furnished, after(furnished, [{ kind: "opening.shape", id, ...shape }]));
    expect([...shifts]).toEqual([[id, null]]);
  });

  it("says of what is there no longer that it is gone", () => {
    const shifts = liftedShifts(furnished, after(furnished, [{ kind: "beam.remove", id: beam.id }]));
    expect(shifts.get(beam.id)).toBeNull();
  });
});
