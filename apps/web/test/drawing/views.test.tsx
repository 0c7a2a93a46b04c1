import { assess, elevationFaces } from "@cornerway/engine";
import { applyOperations, type Assessment, type Scheme } from "@cornerway/schema";
import { cleanup, render, waitFor } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { ElevationView } from "../../src/drawing/elevation/ElevationView.tsx";
import { schemeChanges } from "../../src/drawing/elevation/scheme-changes.ts";
import { IsometricView } from "../../src/drawing/isometric/IsometricView.tsx";
import { PlanView } from "../../src/drawing/plan/PlanView.tsx";
import { sameDrawn } from "../../src/drawing/same-drawn.ts";
import { HatchDefs } from "../../src/look/HatchDefs.tsx";
import { demoScheme } from "../support/demo-scheme.ts";

afterEach(cleanup);

const assessment = assess(demoScheme);
const transform = { originXPx: 200, originYPx: 500, pxPerM: 50 };

/** The demo's answer with one mark on door D3 of F1 that does not work, whatever the engine says of it. */
const brokenDoor: Assessment = {
  ...assessment,
  marks: [
    {
      id: "load-over-opening:d3",
      verdict: "does not work",
      certainty: "derived",
      elements: ["d3", "f1"],
      at: { xMm: 8450, yMm: -1219, zMm: 4176 },
      fact: { kind: "load-over-opening", forceKn: 106, railCut: true },
      basis: "statics",
    },
  ],
};

function elevation(props: Partial<Parameters<typeof ElevationView>[0]> = {}) {
  const { container } = render(
    <svg>
      <HatchDefs />
      <ElevationView scheme={demoScheme} assessment={assessment} side="south" transform={transform} {...props} />
    </svg>,
  );
  const view = container.querySelector(".elevation");
  if (view === null) throw new Error("no elevation was drawn");
  return view;
}

const labels = (view: Element) =>
  [...view.querySelectorAll("[role=treeitem]")].map((item) => item.getAttribute("aria-label"));
const fills = (view: Element) => [...view.querySelectorAll("[fill]")].map((part) => part.getAttribute("fill") ?? "");

describe("an elevation", () => {
  it("is a tree in which every opening of the south fronts is named by unit, side, use, width and verdict", () => {
    const view = elevation();
    expect(view.querySelector("[role=tree]")?.getAttribute("aria-label")).toBe("south elevation");
    expect(labels(view)).toContain("F1, south side, door D3, 1.50 m wide, not checked");
    expect(labels(view)).toContain("G1, 40 ft container, ground level, not checked");
  });

  it("names the note of what a mark concerns first, and points at it", () => {
    const view = elevation({ assessment: brokenDoor, noteNumbers: new Map([["load-over-opening:d3", 2]]) });
    const door = view.querySelector('[data-element="d3"]');
    expect(door?.getAttribute("aria-label")).toBe("F1, south side, door D3, 1.50 m wide, does not work, note 2");
    expect(door?.getAttribute("aria-details")).toBe("note-2");
  });

  it("lets Tab in at one element only: the chosen one", () => {
    const view = elevation({ selectedId: "w1" });
    const entries = [...view.querySelectorAll('[tabindex="0"]')].map((item) => item.getAttribute("data-element"));
    expect(entries).toEqual(["w1"]);
  });

  it("lets Tab in at an element it shows when the chosen one is on another side", () => {
    const view = elevation({ selectedId: "f4" });
    expect(view.querySelector('[data-element="f4"]')).toBeNull();
    expect(view.querySelectorAll('[tabindex="0"]')).toHaveLength(1);
  });

  it("draws a screening mark in pencil and an answered one in ink", () => {
    const doorOf = (view: Element) =>
      fills(view.querySelector('[data-element="d3"]') ?? view).filter((fill) => fill.includes("hatch-"));
    expect(doorOf(elevation({ assessment: brokenDoor }))).toEqual(["url(#hatch-does-not-work-normal-pencil)"]);
    cleanup();
    expect(doorOf(elevation({ assessment: brokenDoor, answeredMarkIds: new Set(["load-over-opening:d3"]) }))).toEqual([
      "url(#hatch-does-not-work-normal-ink)",
    ]);
  });

  it("writes forces in whole kN, each at the foot of a stroke that leaves the drawing", () => {
    const figures = [...elevation().querySelectorAll("text")]
      .map((text) => text.textContent ?? "")
      .filter((text) => text.includes("kN"));
    expect(figures.length).toBeGreaterThan(3);
    expect(figures.every((text) => /^\d+ kN( up)?$/.test(text))).toBe(true);
  });

  it("has no hatch, stroke or figure while not checked", () => {
    const view = elevation({ assessment: null });
    expect(view.querySelectorAll(".load-stroke")).toHaveLength(0);
    expect(fills(view).filter((fill) => fill.includes("hatch-"))).toEqual([]);
    expect(view.textContent).not.toContain("kN");
  });

  it("is no tree and has no lettering where it is only looked at", () => {
    const view = elevation({ bare: true });
    expect(view.querySelectorAll("[role], [tabindex], text")).toHaveLength(0);
  });

  it("draws what a request adds dashed inside a cloud", async () => {
    const view = elevation({ proposed: withPost(demoScheme) });
    await waitFor(() => expect(view.querySelectorAll(".proposed .cloud")).toHaveLength(1));
    expect(view.querySelectorAll('.proposed [stroke-dasharray="7 4"]').length).toBeGreaterThan(0);
    cleanup();
    expect(elevation().querySelector(".proposed")).toBeNull();
  });

  it("uses no hatch that the page does not define", () => {
    const view = elevation({ assessment: brokenDoor });
    const defined = new Set([...document.querySelectorAll("pattern")].map(({ id }) => `url(#${id})`));
    expect(defined.size).toBe(2 * 3 * 4 + 2);
    expect(fills(view).filter((fill) => fill.startsWith("url(") && !defined.has(fill))).toEqual([]);
  });
});

describe("a plan", () => {
  it("holds the units of its storey with the openings on all their sides, and not the units of others", () => {
    const { container } = render(
      <svg>
        <PlanView scheme={demoScheme} assessment={assessment} transform={transform} storey={0} />
      </svg>,
    );
    const units = [...container.querySelectorAll('[data-kind="container"]')].map((item) =>
      item.getAttribute("data-element"),
    );
    expect(units.toSorted()).toEqual(["g1", "g2", "g3", "g4"]);
    expect(labels(container)).toContain("G1, north side, passage D7, 1.20 m wide, not checked");
  });
});

describe("the isometric", () => {
  it("draws a unit that stands on another after it, and one that stands behind before it", () => {
    const { container } = render(
      <svg>
        <IsometricView scheme={demoScheme} assessment={assessment} transform={transform} />
      </svg>,
    );
    const order = [...container.querySelectorAll("[data-kind=container]")].map((item) =>
      item.getAttribute("data-element"),
    );
    expect(order).toHaveLength(demoScheme.containers.length);
    for (const [behind, before] of [
      ["g1", "f1"],
      ["g2", "g1"],
      ["f2", "f1"],
      ["g3", "g2"],
      ["f1", "t1"],
    ])
      expect(order.indexOf(behind ?? "")).toBeLessThan(order.indexOf(before ?? ""));
  });
});

describe("a drag", () => {
  const moved = after(demoScheme, [
    { kind: "container.move", id: "t1", xUm: 7_515_000, yUm: -2_389_000, zUm: 5_792_000 },
  ]);

  it("leaves every face but the moved one as drawn, so that only that one is drawn anew", () => {
    const before = new Map(
      elevationFaces(demoScheme, "south").map((face) => [`${face.container.id}-${face.face}`, face]),
    );
    const redrawn = elevationFaces(moved, "south").filter(
      (face) => !sameDrawn(before.get(`${face.container.id}-${face.face}`), face),
    );
    expect(redrawn.map(({ container }) => container.id)).toEqual(["t1"]);
  });

  it("is one changed element", () => {
    const { added, changed, removed } = schemeChanges(demoScheme, moved);
    expect([[...added], [...changed], [...removed]]).toEqual([[], ["t1"], []]);
  });
});

function withPost(scheme: Scheme): Scheme {
  return after(scheme, [
    {
      kind: "post.set",
      post: {
        id: "q1",
        tag: "Q1",
        xUm: 7_315_000,
        yUm: -1_100_000,
        baseZUm: 0,
        topZUm: 5_792_000,
        turnMdeg: 0,
        section: "HSS 102×102×6.4",
      },
    },
  ]);
}

function after(scheme: Scheme, operations: Parameters<typeof applyOperations>[1]): Scheme {
  const applied = applyOperations(scheme, operations);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}
