import { detailsOf } from "@cornerway/engine";
import { cleanup, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import { DetailsView } from "../../src/drawing/details/DetailsView.tsx";
import { fittedDetails } from "../../src/drawing/details/fit-details.ts";
import { manyUnits } from "../support/many-units.ts";

afterEach(cleanup);

const scheme = manyUnits(24, 3);
const details = detailsOf(scheme, "post0");
const room = { leftPx: 486, topPx: 590, widthPx: 448, heightPx: 278 };

describe("details of a post", () => {
  it("are its head and its foot, side by side, each named and at the same scale of the list", () => {
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
    expect(new Set(scales).size).toBe(1);
    expect(["1:2", "1:5", "1:10", "1:20", "1:50"]).toContain(scales[0]);
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
