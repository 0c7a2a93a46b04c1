import fc from "fast-check";
import {
  applyOperation,
  containerTypes,
  emptyScheme,
  faces,
  openingUses,
  touchedElements,
  type Container,
  type Opening,
  type Operation,
  type Scheme,
} from "../../src/index.ts";

const number = fc.integer({ min: 1, max: 12 });
const lengthUm = fc.integer({ min: -50_000_000, max: 50_000_000 });
const sizeUm = fc.integer({ min: 1, max: 13_000_000 });
const turnMdeg = fc.integer({ min: 0, max: 359_999 });

const container: fc.Arbitrary<Container> = fc
  .record({
    n: number,
    type: fc.constantFrom(...containerTypes),
    xUm: lengthUm,
    yUm: lengthUm,
    zUm: lengthUm,
    turnMdeg,
  })
  .map(({ n, ...rest }) => ({ id: `c${n}`, tag: `C${n}`, ...rest }));

const opening: fc.Arbitrary<Opening> = fc
  .record({
    ...{ n: number, of: number, face: fc.constantFrom(...faces), use: fc.constantFrom(...openingUses) },
    ...{ offsetUm: lengthUm, sillUm: lengthUm, widthUm: sizeUm, heightUm: sizeUm, framed: fc.boolean() },
  })
  .map(({ n, of, ...rest }) => ({ id: `o${n}`, tag: `O${n}`, containerId: `c${of}`, ...rest }));

const post = fc
  .record({ n: number, xUm: lengthUm, yUm: lengthUm, baseZUm: lengthUm, heightUm: sizeUm, turnMdeg })
  .map(({ n, heightUm, ...rest }) => ({
    id: `p${n}`,
    tag: `P${n}`,
    ...rest,
    topZUm: rest.baseZUm + heightUm,
    section: "HSS 4x4x1/4",
  }));

const pad = fc
  .record({
    n: number,
    xUm: lengthUm,
    yUm: lengthUm,
    topZUm: lengthUm,
    lengthUm: sizeUm,
    widthUm: sizeUm,
    depthUm: sizeUm,
    turnMdeg,
  })
  .map(({ n, ...rest }) => ({ id: `f${n}`, tag: `F${n}`, ...rest }));

const load = fc
  .record({
    ...{ n: number, of: number, surface: fc.constantFrom("floor" as const, "roof" as const) },
    ...{ case: fc.constantFrom("imposed" as const, "finish" as const), pressurePa: fc.integer({ min: 0, max: 9000 }) },
  })
  .map(({ n, of, ...rest }) => ({ id: `l${n}`, containerId: `c${of}`, ...rest }));

const idOf = (letter: string) => number.map((n) => `${letter}${n}`);
const kind = <K extends string>(name: K) => fc.constant(name);

/** Any operation there is, on a few elements, so that many hit the same one. */
export const operation: fc.Arbitrary<Operation> = fc.oneof(
  fc.record({ kind: kind("container.place"), container }),
  fc.record({ kind: kind("container.move"), id: idOf("c"), xUm: lengthUm, yUm: lengthUm, zUm: lengthUm }),
  fc.record({ kind: kind("container.turn"), id: idOf("c"), turnMdeg }),
  fc.record({ kind: kind("container.retype"), id: idOf("c"), type: fc.constantFrom(...containerTypes) }),
  fc.record({ kind: kind("container.remove"), id: idOf("c") }),
  fc.record({ kind: kind("opening.cut"), opening }),
  fc.record({
    kind: kind("opening.shape"),
    id: idOf("o"),
    offsetUm: lengthUm,
    sillUm: lengthUm,
    widthUm: sizeUm,
    heightUm: sizeUm,
  }),
  fc.record({ kind: kind("opening.dress"), id: idOf("o"), use: fc.constantFrom(...openingUses), framed: fc.boolean() }),
  fc.record({ kind: kind("opening.close"), id: idOf("o") }),
  fc.record({ kind: kind("post.set"), post }),
  fc.record({ kind: kind("post.move"), id: idOf("p"), xUm: lengthUm, yUm: lengthUm }),
  fc.record({ kind: kind("post.length"), id: idOf("p"), baseZUm: lengthUm, topZUm: lengthUm }),
  fc.record({ kind: kind("post.remove"), id: idOf("p") }),
  fc.record({ kind: kind("pad.set"), pad }),
  fc.record({ kind: kind("pad.move"), id: idOf("f"), xUm: lengthUm, yUm: lengthUm, topZUm: lengthUm }),
  fc.record({ kind: kind("pad.remove"), id: idOf("f") }),
  fc.record({ kind: kind("load.put"), load }),
  fc.record({ kind: kind("load.change"), id: idOf("l"), pressurePa: fc.integer({ min: 0, max: 9000 }) }),
  fc.record({ kind: kind("load.remove"), id: idOf("l") }),
  fc.record({
    kind: kind("site.change"),
    site: fc.record({
      northMdeg: turnMdeg,
      groundZUm: lengthUm,
      edition: fc.constantFrom("IBC 2021" as const, "IBC 2024" as const),
    }),
  }),
);

/** What is left of many operations on an empty sheet when the refused ones are passed over. */
export const scheme: fc.Arbitrary<Scheme> = fc
  .array(operation, { minLength: 20, maxLength: 120, size: "max" })
  .map((operations) =>
    operations.reduce((before, next) => {
      const applied = applyOperation(before, next);
      return applied.ok ? applied.scheme : before;
    }, emptyScheme),
  );

/** True when neither writes what the other reads or writes, on the scheme both were made on. */
export function independent(made: Scheme, one: Operation, other: Operation): boolean {
  const [a, b] = [touchedElements(made, one), touchedElements(made, other)];
  const meets = (writes: string[], keys: string[]) => writes.some((key) => keys.includes(key));
  return !meets(a.writes, [...b.reads, ...b.writes]) && !meets(b.writes, [...a.reads, ...a.writes]);
}
