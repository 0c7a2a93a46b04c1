import { cleanup, render, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { isSeen, placeContainer, placedObjects, sectionSizeMm } from "@cornerway/engine";
import type { Scheme } from "@cornerway/schema";
import { ElevationView } from "../../src/drawing/elevation/ElevationView.tsx";
import { IsometricView } from "../../src/drawing/isometric/IsometricView.tsx";
import { PlanView } from "../../src/drawing/plan/PlanView.tsx";
import { furnished } from "../support/furnished.ts";

afterEach(cleanup);

const transform = { originXPx: 500, originYPx: 500, pxPerM: 40 };
const tank = {
  id: "q1",
  tag: "Q1",
  containerId: "g1",
  surface: "floor",
  case: "plant",
  note: "Water tank",
  shape: "point",
  xUm: 3_000_000,
  yUm: 1_000_000,
  downN: 12_500,
  alongXN: 0,
  alongYN: 0,
} as const;
const scheme: Scheme = {
  ...furnished,
  openings: furnished.openings.map((opening) => ({
    ...opening,
    framing: { jamb: "HSS4x3x1/4", header: "HSS6x4x1/4" },
    cut: "after shoring" as const,
  })),
  containers: furnished.containers.map((unit) => (unit.id === "g1" ? { ...unit, doors: "welded shut" } : unit)),
  freeLoads: [tank],
  pads: [
    {
      id: "b1",
      tag: "B1",
      xUm: 0,
      yUm: -1_219_000,
      topZUm: 0,
      lengthUm: 12_000_000,
      widthUm: 600_000,
      depthUm: 400_000,
      turnMdeg: 0,
      support: "strip",
    },
  ],
};

const view = (element: React.ReactElement) => render(<svg>{element}</svg>).container;
const props = { scheme, assessment: null, transform };
const names = (drawn: Element) =>
  [...drawn.querySelectorAll("[role=treeitem]")].map((item) => item.getAttribute("aria-label") ?? "");

describe("added things on a plan", () => {
  const drawn = () => view(<PlanView {...props} storey={0} />);

  it("are items of its tree, read out by what they are and join", () => {
    const read = names(drawn());
    expect(read).toContain("tie TI1 between G1 and G2, in plan, not checked");
    expect(read).toContain("hold-down L1 under G1, front right, not checked");
    expect(read).toContain("load Q1, Water tank, 12.5 kN on the floor of G1");
    expect(read).toContain("strip B1, 12.00 m by 0.60 m, not checked");
    expect(read).toContain("G1, south side, window W1, 2.00 m wide, cut after shoring, not checked");
  });

  it("show a seat on the plan of the storey it carries, a beam also overhead on the one below", () => {
    expect(names(drawn()).filter((name) => /^(seat|beam)/.test(name))).toEqual([
      "beam BM1, W8x31, 4.00 m long, not checked",
    ]);
    cleanup();
    const first = names(view(<PlanView {...props} storey={1} />));
    expect(first).toContain("seat S1 under F1 on G1, packing 18.5 mm, not checked");
    expect(first).toContain("beam BM1, W8x31, 4.00 m long, not checked");
  });

  it("tell the stiffener over a seat", () => {
    const stiffened = { ...scheme, seats: scheme.seats.map((seat) => ({ ...seat, stiffenerUm: 10_000 })) };
    const read = names(view(<PlanView {...props} scheme={stiffened} storey={1} />));
    expect(read).toContain("seat S1 under F1 on G1, packing 18.5 mm, stiffener 10 mm, not checked");
  });
});

describe("added things on an elevation", () => {
  it("are there where nothing stands before them: the tie between two units is seen from the end, not from the side", () => {
    const from = (side: "south" | "east") => names(view(<ElevationView {...props} side={side} />));
    expect(from("south").some((name) => name.startsWith("tie"))).toBe(false);
    expect(from("south")).toContain("seat S1 under F1 on G1, packing 18.5 mm, not checked");
    cleanup();
    expect(from("east").some((name) => name.startsWith("tie"))).toBe(true);
  });

  it("draw framing to size, the stage of the cut, and the weld of doors", () => {
    const south = view(<ElevationView {...props} side="south" />);
    expect(south.querySelectorAll(".cut-stage")).toHaveLength(1);
    cleanup();
    expect(view(<ElevationView {...props} side="east" />).querySelectorAll(".door-weld").length).toBe(3);
  });

  it("letter the figure of a load in the units of whoever reads it", () => {
    const text = view(<ElevationView {...props} side="south" />).textContent;
    expect(text).toContain("12.5 kN");
    expect(text).toContain("S1");
  });
});

describe("added things on the isometric", () => {
  it("are drawn where they are seen from the south-east and above", () => {
    const read = names(view(<IsometricView {...props} />));
    expect(read.some((name) => name.startsWith("beam BM1"))).toBe(true);
    // The front right corner of G1 is its south-west one, on the side that faces the eye; its front left one is not.
    expect(read.some((name) => name.startsWith("hold-down"))).toBe(true);
    cleanup();
    const behind = { ...scheme, locks: scheme.locks.map((lock) => ({ ...lock, fitting: "front-left" as const })) };
    const hidden = names(view(<IsometricView {...props} scheme={behind} />));
    expect(hidden.some((name) => name.startsWith("hold-down"))).toBe(false);
  });
});

describe("what a request adds", () => {
  it("is drawn dashed inside a cloud on plan and elevation: a beam and a seat that were not there", async () => {
    const before: Scheme = { ...scheme, beams: [], seats: [] };
    const asked = { ...props, scheme: before, proposed: scheme };
    const dashed = (drawn: Element) => drawn.querySelectorAll('.proposed [stroke-dasharray="7 4"]').length;
    const south = view(<ElevationView {...asked} side="south" />);
    await waitFor(() =>
      expect([dashed(south) > 0, south.querySelectorAll(".proposed .cloud").length]).toEqual([true, 1]),
    );
    cleanup();
    const first = view(<PlanView {...asked} storey={1} />);
    await waitFor(() =>
      expect([dashed(first) > 0, first.querySelectorAll(".proposed .cloud").length]).toEqual([true, 1]),
    );
  });
});

describe("isSeen(units, at, towards)", () => {
  const units = furnished.containers.map(placeContainer);
  const south = { xMm: 0, yMm: -1, zMm: 0 };

  it("is false behind a unit and true before it and beside it", () => {
    expect(isSeen(units, { xMm: 0, yMm: 5000, zMm: 1000 }, south)).toBe(false);
    expect(isSeen(units, { xMm: 0, yMm: -5000, zMm: 1000 }, south)).toBe(true);
    expect(isSeen(units, { xMm: 9000, yMm: 5000, zMm: 1000 }, south)).toBe(true);
  });
});

describe("placedObjects(scheme)", () => {
  it("lays a seat on the rail below: 2896 less the 6 mm the fittings stand proud, its packing above", () => {
    const [seat] = placedObjects(scheme).filter(({ kind }) => kind === "seat");
    if (seat?.kind !== "seat") throw new Error("a seat was expected");
    const heights = seat.box.map(({ zMm }) => zMm);
    expect([Math.min(...heights), Math.max(...heights)]).toEqual([2890, 2908.5]);
  });

  it("puts a load where it is measured: 3.0 m from the front end, 1.0 m from the right side", () => {
    const load = placedObjects(scheme).find(({ id }) => id === "q1");
    // −12 192 / 2 + 3000 and −2438 / 2 + 1000.
    expect([load?.at.xMm, load?.at.yMm]).toEqual([-3096, -219]);
  });
});

describe("sectionSizeMm(section)", () => {
  it("reads depth and breadth from American and metric names", () => {
    expect(sectionSizeMm("HSS6x4x1/4")).toEqual({
      depthMm: expect.closeTo(152.4, 6),
      widthMm: expect.closeTo(101.6, 6),
    });
    expect(sectionSizeMm("W8x31").depthMm).toBeCloseTo(203.2, 6);
    expect(sectionSizeMm("HSS 102×102×6.4")).toEqual({ depthMm: 101.6, widthMm: 101.6 });
  });
});
