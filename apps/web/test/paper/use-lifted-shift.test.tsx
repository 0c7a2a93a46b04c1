import { applyOperations, type Scheme } from "@cornerway/schema";
import { cleanup, render, screen } from "@testing-library/react";
import { useRef } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { Lift } from "../../src/hand/lift.ts";
import { useLiftedShift } from "../../src/paper/use-lifted-shift.ts";
import { beam, furnished } from "../support/furnished.ts";

const transform = { originXPx: 0, originYPx: 0, pxPerM: 50 };
const view = { rect: { leftPx: 0, topPx: 0, widthPx: 0, heightPx: 0 }, transform };
const views = { oneView: false, elevation: view, plan: view, isometric: view };

function movedTo(xUm: number): Scheme {
  const applied = applyOperations(furnished, [{ kind: "container.move", id: "g1", xUm, yUm: 0, zUm: 0 }]);
  if (!applied.ok) throw new Error(applied.refusal.reason);
  return applied.scheme;
}
const wasUm = furnished.containers.find(({ id }) => id === "g1")?.xUm ?? Number.NaN;
const [opening] = furnished.openings.filter(({ containerId }) => containerId === "g1");

function Paper({ lift, scheme }: { lift: Lift; scheme: Scheme }) {
  const paper = useRef<SVGSVGElement>(null);
  useLiftedShift(paper, { lift, scheme, views, side: "south" });
  return (
    <svg ref={paper}>
      <g data-view="elevation">
        <g data-element="g1" data-testid="unit">
          <g data-element={opening?.id} data-testid="cut in it" />
        </g>
        <g data-of="g1" data-testid="name" />
        <g data-element="g2" data-testid="other" />
        <g data-element={beam.id} data-testid="beam" />
      </g>
    </svg>
  );
}

const shiftOf = (testId: string) => screen.getByTestId(testId).style.transform;

describe("useLiftedShift(paper, { lift, scheme, … })", () => {
  afterEach(cleanup);

  const carry = (lift: Lift, scheme: Scheme) =>
    lift.carry(
      {
        held: { kind: "steps", ids: [], steps: { rightMm: 0, upMm: 0 }, operations: [] },
        operations: [],
        from: furnished,
        scheme,
      },
      () => undefined,
    );

  it("shifts what is drawn of the thing and its name as one, and nothing else", () => {
    const lift = new Lift();
    render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, movedTo(wasUm + 400_000)); // 0.4 m at 50 px a metre
    expect(shiftOf("unit")).toBe("translate(20px, 0px)");
    expect(shiftOf("name")).toBe("translate(20px, 0px)");
    expect(shiftOf("cut in it")).toBe(""); // within its unit it goes along already
    expect(shiftOf("other")).toBe("");
    lift.end();
  });

  it("lays it back once the drawing has it", () => {
    const lift = new Lift();
    const now = movedTo(wasUm + 400_000);
    const { rerender } = render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, now);
    rerender(<Paper lift={lift} scheme={now} />);
    expect(shiftOf("unit")).toBe("");
    expect(screen.getByTestId("unit").dataset["lifted"]).toBeUndefined();
    lift.end();
  });

  it("hides what is gone meanwhile, and only until it is back", () => {
    const lift = new Lift();
    render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, { ...furnished, beams: [] });
    expect(screen.getByTestId("beam").dataset["lifted"]).toBe("gone");
    carry(lift, furnished);
    expect(screen.getByTestId("beam").dataset["lifted"]).toBeUndefined();
    lift.end();
  });
});
