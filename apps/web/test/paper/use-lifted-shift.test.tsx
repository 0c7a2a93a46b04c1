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
  const over = useRef<SVGSVGElement>(null);
  useLiftedShift(paper, over, { lift, scheme, views, side: "south" });
  return (
    <>
      <svg ref={paper}>
        <g data-view="elevation" className="of the south">
          <g data-element="g1" data-testid="unit" className="unit" role="treeitem">
            <g data-element={opening?.id} data-testid="cut in it" className="cut in it" />
          </g>
          <g data-of="g1" data-testid="name" className="name" />
          <g data-element="g2" data-testid="other" className="other" />
          <g data-element={beam.id} data-testid="beam" className="beam" />
        </g>
      </svg>
      <svg ref={over} data-testid="over" />
    </>
  );
}

/** How far what is lifted lies from its place, by class; nothing where it is not on the sheet over the paper. */
const shiftOf = (className: string) =>
  screen.getByTestId("over").getElementsByClassName(className)[0]?.closest<SVGElement>("[style]")?.style.transform;
const isLifted = (testId: string) => screen.getByTestId(testId).dataset["lifted"];

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
    expect(["unit", "name", "cut in it"].map(shiftOf)).toEqual(Array(3).fill("translate(20px, 0px)"));
    expect(screen.getByTestId("over").getElementsByClassName("cut in it")).toHaveLength(1); // within its unit alone
    expect(shiftOf("other")).toBeUndefined();
    expect(["unit", "name", "cut in it", "other"].map(isLifted)).toEqual(["along", "along", undefined, undefined]);
    lift.end();
  });

  it("carries it on in the groups it is drawn in, and nothing on the sheet can be named or reached", () => {
    const lift = new Lift();
    render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, movedTo(wasUm + 400_000));
    carry(lift, movedTo(wasUm + 800_000));
    expect(shiftOf("unit")).toBe("translate(40px, 0px)");
    const over = screen.getByTestId("over");
    expect(over.querySelectorAll(".of.the.south > g > .unit")).toHaveLength(1);
    expect(over.querySelectorAll("[id], [role], [data-element], [data-of], [data-lifted]")).toHaveLength(0);
    lift.end();
  });

  it("lays it back once the drawing has it", () => {
    const lift = new Lift();
    const now = movedTo(wasUm + 400_000);
    const { rerender } = render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, now);
    rerender(<Paper lift={lift} scheme={now} />);
    expect(screen.getByTestId("over").childElementCount).toBe(0);
    expect(isLifted("unit")).toBeUndefined();
    lift.end();
  });

  it("hides what is gone meanwhile, and only until it is back", () => {
    const lift = new Lift();
    render(<Paper lift={lift} scheme={furnished} />);
    carry(lift, { ...furnished, beams: [] });
    expect(isLifted("beam")).toBe("gone");
    carry(lift, furnished);
    expect(isLifted("beam")).toBeUndefined();
    lift.end();
  });
});
