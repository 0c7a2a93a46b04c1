import { detailsOf, type DetailWeld } from "@cornerway/engine";
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { DetailsView } from "../../src/drawing/details/DetailsView.tsx";
import { detailNotes, noteSizePx, noteWidthPx } from "../../src/drawing/details/detail-notes.ts";
import { fittedDetails } from "../../src/drawing/details/fit-details.ts";
import { textWidthPx } from "../../src/drawing/label/text-width.ts";
import { manyUnits } from "../support/many-units.ts";

afterEach(cleanup);

const scheme = manyUnits(24, 3);
const details = detailsOf(scheme, "post0");
const room = { leftPx: 486, topPx: 590, widthPx: 448, heightPx: 278 };

describe("details of a post", () => {
  it("are its head and its foot, side by side, each named and at a scale of the list", () => {
    render(
      <svg>
        <DetailsView details={details} room={room} firstNumber={3} />
      </svg>,
    );
    expect(screen.getAllByRole("img").map((each) => each.getAttribute("aria-label"))).toEqual([
      "head of P1",
      "foot of P1",
    ]);
    const scales = fittedDetails(details, room).map(({ scale }) => scale);
    for (const scale of scales)
      expect(["1:2", "1:4", "1:5", "1:8", "1:10", "1:12", "1:16", "1:20", "1:24", "1:25", "1:50"]).toContain(scale);
  });

  it("stay inside their place", () => {
    for (const { detail, view } of fittedDetails(details, room))
      for (const { u0Mm, u1Mm, z0Mm, z1Mm } of detail.parts) {
        expect(view.originXPx + (u0Mm * view.pxPerM) / 1000).toBeGreaterThanOrEqual(room.leftPx);
        expect(view.originXPx + (u1Mm * view.pxPerM) / 1000).toBeLessThanOrEqual(room.leftPx + room.widthPx);
        expect(view.originYPx - (z1Mm * view.pxPerM) / 1000).toBeGreaterThanOrEqual(room.topPx);
        expect(view.originYPx - (z0Mm * view.pxPerM) / 1000).toBeLessThanOrEqual(room.topPx + room.heightPx);
      }
  });
});

describe("details of a framed window", () => {
  const [window] = scheme.openings.filter(({ framed, use, face }) => framed && use === "window" && face === "right");
  if (window === undefined) throw new Error("the building has a framed window");
  const cuts = detailsOf(scheme, window.id);
  const named = () => screen.getAllByRole("img").map((each) => each.getAttribute("aria-label"));

  it("are shown one after the other where beside each other they would be much smaller", () => {
    render(
      <svg>
        <DetailsView details={cuts} room={room} firstNumber={3} />
      </svg>,
    );
    for (const place of ["head", "jamb", "sill", "head"]) {
      expect(named()).toEqual([`${place} of ${window.tag}`]);
      fireEvent.click(screen.getByRole("button", { name: /^Next details: .+; now \d of 3$/ }));
    }
  });

  it("stand all together where there is room", () => {
    render(
      <svg>
        <DetailsView details={cuts} room={{ ...room, widthPx: 2400 }} firstNumber={3} />
      </svg>,
    );
    expect(named()).toHaveLength(3);
    expect(screen.queryByRole("button")).toBeNull();
  });
});

describe("notes beside a detail", () => {
  const parts = ["stated plate 202×202×20", "bottom rail", "HSS4x4x1/4", "corner fitting"].map((name, at) => ({
    part: { name },
    yPx: 100 + 3 * at,
  }));

  it("are no wider than their room, none over another, in the order of their parts and over the title", () => {
    const notes = detailNotes(parts, 140);
    expect(notes.map(({ part }) => part.name)).toEqual(parts.map(({ part }) => part.name));
    for (const { lines } of notes)
      for (const line of lines) expect(textWidthPx(line, noteSizePx)).toBeLessThanOrEqual(noteWidthPx);
    expect(notes[0]?.lines).toEqual(["stated plate", "202×202×20"]);
    const feet = notes.map(({ yPx, lines }) => [yPx, yPx + (lines.length - 1) * 13] as const);
    for (const [at, [next]] of feet.slice(1).entries())
      expect(next - (feet[at]?.[1] ?? next)).toBeGreaterThanOrEqual(13);
    expect(feet.at(-1)?.[1]).toBeLessThanOrEqual(140);
  });
});

describe("the sign of a weld", () => {
  const part = { what: "plate", name: "plate", u0Mm: 0, u1Mm: 100, z0Mm: 0, z1Mm: 10 } as const;
  const drawn = (weld: Omit<DetailWeld, "uMm" | "zMm" | "legMm">) => {
    const detail = { subject: "tie", tag: "C1", parts: [part], heights: [] } as const;
    const { container } = render(
      <svg>
        <DetailsView
          details={[{ ...detail, welds: [{ uMm: 0, zMm: 0, legMm: 5, ...weld }] }]}
          room={room}
          firstNumber={3}
        />
      </svg>,
    );
    const triangles = [...container.querySelectorAll("path")].filter((path) =>
      /v-?9l9 -?9$/.test(path.getAttribute("d") ?? ""),
    );
    const texts = [...container.querySelectorAll("text")].map(({ textContent }) => textContent);
    const knees = container.querySelectorAll('circle[r="3"]').length;
    cleanup();
    return { triangles: triangles.length, knees, figures: texts.filter((text) => text === "5" || text === "150") };
  };

  // AWS A2.4 and ISO 2553, from memory: a circle for all round, a triangle on either side of the line for both, leg before, length after
  it("has a circle at its knee only where it runs all round, a second triangle for the far side, and its length", () => {
    expect(drawn({ around: true })).toEqual({ triangles: 1, knees: 1, figures: ["5"] });
    expect(drawn({ around: false, bothSides: true, lengthMm: 150 })).toEqual({
      ...{ triangles: 2, knees: 0 },
      figures: ["5", "150"],
    });
  });
});
