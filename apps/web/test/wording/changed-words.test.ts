import { applyOperations, defaultBasis, type Operation, type Scheme, type UnitSystem } from "@cornerway/schema";
import { describe, expect, it } from "vitest";
import { layGroup } from "../../src/tools/lay-group.ts";
import { shiftedBy } from "../../src/tools/laying.ts";
import { actSentence } from "../../src/wording/act-sentence.ts";
import { alignmentSentence } from "../../src/wording/alignment-sentence.ts";
import { namesIn } from "../../src/wording/name-of.ts";
import { beam, furnished, lock, opening, seat, tie } from "../support/furnished.ts";

function told(operations: Operation[], units: UnitSystem = "SI", scheme: Scheme = furnished): string {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return actSentence(operations, applied.inverse, namesIn(scheme, operations), units);
}

describe("an act on added things is told by what is otherwise now", () => {
  it("tells the framing of an opening and the stage of its cut", () => {
    const framed = { ...opening, framing: { jamb: "HSS4x3x1/4", header: "HSS6x4x1/4" }, cut: "after shoring" } as const;
    expect(told([{ kind: "opening.change", opening: framed }])).toBe(
      "W1 changed: cut after shoring, framing jambs HSS4x3x1/4 and framing header HSS6x4x1/4",
    );
  });

  it("tells packing in millimetres or inches, whichever the reader reads", () => {
    const packed: Operation = { kind: "seat.change", seat: { ...seat, packingUm: 38_100, heldDown: true } };
    expect(told([packed])).toBe("S1 changed: packing 38.1 mm and unit above held down");
    // 38.1 mm is one and a half inches.
    expect(told([packed], "US")).toBe('S1 changed: packing 1 1/2" and unit above held down');
  });

  it("tells what was set by where it is and what it joins", () => {
    const bare: Scheme = { ...furnished, seats: [], ties: [], locks: [], beams: [] };
    expect(told([{ kind: "seat.set", seat }], "SI", bare)).toBe("S1 set under F1 on G1");
    expect(told([{ kind: "tie.set", tie }], "SI", bare)).toBe("TI1 set between G1 and G2");
    expect(told([{ kind: "lock.set", lock }], "SI", bare)).toBe("L1 set, hold-down under G1");
    expect(told([{ kind: "beam.set", beam }], "SI", bare)).toBe("BM1 set, W8x31, 4.00 m long");
  });

  it("tells what is stated again or no more", () => {
    expect(told([{ kind: "seat.change", seat: { ...seat, levelErrorUm: 5000 } }])).toBe("S1 changed: level error 5 mm");
    const stated = { ...furnished, seats: [{ ...seat, levelErrorUm: 5000 }] };
    expect(told([{ kind: "seat.change", seat }], "SI", stated)).toBe("S1 changed: level error project's");
    const use = { id: "y1", containerId: "g1", surface: "floor", occupancy: "office" } as const;
    expect(told([{ kind: "use.remove", id: "y1" }], "SI", { ...furnished, uses: [use] })).toBe(
      "use of the floor of G1 left open",
    );
  });

  it("tells a load with its figure and where it lies", () => {
    const load = {
      id: "q1",
      tag: "Q1",
      containerId: "g1",
      surface: "roof",
      case: "plant",
      note: "Fan",
      shape: "area",
      xUm: 0,
      yUm: 0,
      lengthUm: 1_000_000,
      widthUm: 1_000_000,
      pressurePa: 2400,
    } as const;
    expect(told([{ kind: "free-load.put", load }])).toBe("Fan, 2.4 kPa, put on the roof of G1");
  });

  it("tells units moved together once, with the joints that went along", () => {
    const moved = layGroup(furnished, ["g1", "g2"], shiftedBy(0, 850_000));
    expect(told(moved)).toBe("G1 and G2 moved 0.85 m north");
  });

  it("tells the design basis by what changed in it", () => {
    expect(told([{ kind: "basis.change", basis: { ...defaultBasis, concreteMpa: 25, friction: 0.4 } }])).toBe(
      "design basis changed: concrete 25 MPa and friction 0.4",
    );
  });
});

describe("alignmentSentence(alignment, names, units)", () => {
  const nameOf = (id: string) => id.toUpperCase();
  const landing = (onId: string) =>
    ({ fitting: "front-left", onId, onFitting: "front-left", alongMm: 0, acrossMm: 0, kind: "lock" }) as const;

  it("says how many fittings land, on what, what that gives and the way there", () => {
    const found = { dxMm: 320, dyMm: 0, landings: [landing("f1"), landing("f2")], onRails: [], kind: "lock" } as const;
    expect(alignmentSentence(found, nameOf, "SI")).toBe(
      "Land two fittings on F1 and F2, a lock enters: move 0.320 m east",
    );
  });

  it("says first what below has to move, and the gap that leaves", () => {
    const gap = {
      betweenIds: ["g1", "g2"],
      nowMm: 0,
      neededMm: 1156,
      move: { id: "g2", dxMm: 0, dyMm: 1156 },
    } as const;
    const found = {
      dxMm: 0,
      dyMm: -100,
      landings: [landing("g1"), landing("g2")],
      onRails: [],
      kind: "made connection",
      gap,
    } as const;
    expect(alignmentSentence(found, nameOf, "SI")).toBe(
      "Land two fittings on G1 and G2, with made connections: move G2 1.156 m north to a gap of 1.156 m and it 0.100 m south",
    );
  });
});
