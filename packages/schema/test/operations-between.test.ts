import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  applyOperations,
  canonicalJson,
  emptyScheme,
  operationsBetween,
  readScheme,
  type Scheme,
} from "../src/index.ts";
import { scheme } from "./support/arbitrary-scheme.ts";

const whole = scheme.filter((one) => readScheme(one).ok);

function after(from: Scheme, to: Scheme): Scheme {
  const applied = applyOperations(from, operationsBetween(from, to));
  if (!applied.ok) throw new Error(JSON.stringify(applied.refusal));
  return applied.scheme;
}

describe("operationsBetween(from, to)", () => {
  it("make any whole scheme into any other, and their inverse makes it back", () => {
    fc.assert(
      fc.property(whole, whole, (from, to) => {
        const operations = operationsBetween(from, to);
        const there = applyOperations(from, operations);
        expect(there.ok && canonicalJson(there.scheme)).toBe(canonicalJson(to));
        const back = there.ok && applyOperations(there.scheme, there.inverse);
        expect(back !== false && back.ok && canonicalJson(back.scheme)).toBe(canonicalJson(from));
      }),
      { seed: 1127, numRuns: 60 },
    );
  });

  it("are none between a scheme and itself", () => {
    fc.assert(
      fc.property(whole, (one) => {
        expect(operationsBetween(one, one)).toEqual([]);
      }),
      { seed: 3, numRuns: 30 },
    );
  });

  const unit = (id: string, tag: string, xUm: number) =>
    ({ id, tag, type: "1CC", xUm, yUm: 0, zUm: 0, turnMdeg: 0 }) as const;
  const door = (containerId: string) => ({
    ...({ id: "d1", tag: "D1", containerId, face: "left", use: "door", framed: true } as const),
    ...{ offsetUm: 1_000_000, sillUm: 150_000, widthUm: 900_000, heightUm: 2_000_000 },
  });
  const two: Scheme = { ...emptyScheme, containers: [unit("a", "A1", 0), unit("b", "B1", 9_000_000)], openings: [] };

  it("swap two labels, which no order of single changes could", () => {
    const swapped = { ...two, containers: [unit("a", "B1", 0), unit("b", "A1", 9_000_000)] };
    expect(after(two, swapped)).toEqual(swapped);
  });

  it("leave what is the same alone, and take with a unit what is cut in it", () => {
    const cut = { ...two, openings: [door("a")] };
    const shifted = { ...cut, containers: [unit("a", "A1", 500_000), unit("b", "B1", 9_000_000)] };
    expect(operationsBetween(cut, shifted).map(({ kind }) => kind)).toEqual([
      ...["opening.close", "container.remove", "container.place", "opening.cut"],
    ]);
  });
});
