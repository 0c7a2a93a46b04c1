import { cleanup, render } from "@testing-library/react";
import { afterEach, expect, it } from "vitest";
import { Symbols } from "../../src/screens/verification/Symbols.tsx";

afterEach(cleanup);

it.each([
  ["K_z at 25 ft", "<i>K</i><sub>z</sub> at 25 ft"],
  ["C_s of that box, S_DS 1.0, R 2", "<i>C</i><sub>s</sub> of that box, <i>S</i><sub>DS</sub> 1.0, R 2"],
  ["1 in A325-N in shear: φR_n", "1 in A325-N in shear: φ<i>R</i><sub>n</sub>"],
  ["no symbol in it", "no symbol in it"],
])("a symbol of the manual is written with what stands below its line: %s", (text, html) => {
  const { container } = render(<Symbols text={text} />);
  expect(container.innerHTML).toBe(html);
});
