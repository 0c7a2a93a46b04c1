import { render } from "@testing-library/react";
import { expect, it } from "vitest";
import { UtilisationBar } from "../../src/working/UtilisationBar.tsx";

const lengthsOf = (utilisation: number) => {
  const { container } = render(<UtilisationBar utilisation={utilisation} />);
  const widthOf = (name: string) => Number(container.querySelector(`.utilisation-${name}`)?.getAttribute("width") ?? 0);
  return {
    ink: widthOf("length"),
    past: widthOf("past"),
    isBroken: container.querySelector(".utilisation-break") !== null,
  };
};

it("is ink up to the limit and hatch past it, both to one scale, and breaks at 1.30", () => {
  const one = lengthsOf(1).ink;
  expect(lengthsOf(0.5)).toEqual({ ink: one / 2, past: 0, isBroken: false });
  expect(lengthsOf(1.29).ink).toBe(one);
  expect(lengthsOf(1.29).past / one).toBeCloseTo(0.29, 9);
  expect(lengthsOf(1.29).isBroken).toBe(false);
  expect(lengthsOf(5.05).past / one).toBeCloseTo(0.3, 9);
  expect(lengthsOf(5.05).isBroken).toBe(true);
});
