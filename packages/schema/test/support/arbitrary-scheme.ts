import fc from "fast-check";
import {
  applyOperation,
  containerTypes,
  defaultBasis,
  emptyScheme,
  faces,
  fittingNames,
  loadCases,
  lockKinds,
  occupancies,
  openingUses,
  tieKinds,
  touchedElements,
  type Container,
  type Opening,
  type Operation,
  type Scheme,
} from "../../src/index.ts";

const number = fc.integer({ min: 1, max: 12 });
/** Of joints, so few that one is often met again. */
const fewNumber = fc.integer({ min: 1, max: 5 });
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

const surface = fc.constantFrom("floor" as const, "roof" as const);

const beam = fc
  .record({ n: number, xUm: lengthUm, yUm: lengthUm, zUm: lengthUm, longUm: sizeUm })
  .map(({ n, longUm, ...from }) => ({
    id: `b${n}`,
    tag: `B${n}`,
    from,
    to: { ...from, xUm: from.xUm + longUm },
    section: "W8x10",
  }));

const seat = fc
  .record({
    ...{ n: fewNumber, upper: number, step: fc.integer({ min: 1, max: 11 }), xUm: lengthUm, yUm: lengthUm },
    ...{ lengthUm: sizeUm, widthUm: sizeUm, packingUm: sizeUm, heldDown: fc.boolean(), onBeam: fc.boolean() },
  })
  .map(({ n, upper, step, onBeam, ...rest }) => ({
    ...{ id: `s${n}`, tag: `S${n}`, upperId: `c${upper}` },
    lowerId: onBeam ? `b${upper}` : `c${((upper + step - 1) % 12) + 1}`,
    ...rest,
  }));

const tie = fc
  .record({
    ...{ n: fewNumber, a: number, step: fc.integer({ min: 1, max: 11 }), xUm: lengthUm, yUm: lengthUm, zUm: lengthUm },
    carries: fc.constantFrom(...tieKinds),
  })
  .map(({ n, a, step, ...rest }) => ({
    ...{ id: `t${n}`, tag: `T${n}`, aId: `c${a}`, bId: `c${((a + step - 1) % 12) + 1}` },
    ...rest,
  }));

const lock = fc
  .record({
    ...{ n: number, of: number, fitting: fc.constantFrom(...fittingNames), kind: fc.constantFrom(...lockKinds) },
    tested: fc.option(fc.constant({ tensionN: 250_000, shearN: 210_000, source: "test report" }), { nil: undefined }),
  })
  .map(({ n, of, tested, ...rest }) => ({
    ...{ id: `k${n}`, tag: `K${n}`, containerId: `c${of}` },
    ...rest,
    ...(tested && { tested }),
  }));

const freeLoad = fc
  .record({ n: number, of: number, surface, case: fc.constantFrom(...loadCases), xUm: lengthUm, yUm: lengthUm })
  .chain(({ n, of, ...rest }) => {
    const common = { id: `q${n}`, tag: `Q${n}`, containerId: `c${of}`, note: "tank", ...rest };
    const newtons = fc.integer({ min: -5000, max: 5000 });
    return fc.oneof(
      fc
        .record({ downN: newtons, alongXN: newtons, alongYN: newtons })
        .map((force) => ({ ...common, shape: "point" as const, ...force })),
      fc
        .record({ toXUm: lengthUm, toYUm: lengthUm, downNPerM: newtons })
        .map((line) => ({ ...common, shape: "line" as const, ...line })),
      fc
        .record({ lengthUm: sizeUm, widthUm: sizeUm, pressurePa: fc.integer({ min: 0, max: 9000 }) })
        .map((area) => ({ ...common, shape: "area" as const, ...area })),
    );
  });

const use = fc
  .record({ n: number, of: number, surface, occupancy: fc.constantFrom(...occupancies) })
  .map(({ n, of, ...rest }) => ({ id: `u${n}`, containerId: `c${of}`, ...rest }));

const override = fc
  .record({ n: number, on: fc.constantFrom("c", "p", "b"), of: number, yieldMpa: fc.integer({ min: 200, max: 400 }) })
  .map(({ n, on, of, yieldMpa }) => ({ id: `v${n}`, elementId: `${on}${of}`, yieldMpa, source: "mill certificate" }));

const basis = fc
  .record({ friction: fc.constantFrom(0.2, 0.3), settlementUm: fc.integer({ min: 0, max: 20_000 }) })
  .map((given) => ({ ...defaultBasis, ...given }));

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
  fc.record({ kind: kind("container.change"), container }),
  fc.record({ kind: kind("opening.change"), opening }),
  fc.record({ kind: kind("post.change"), post }),
  fc.record({ kind: kind("pad.change"), pad }),
  fc.record({ kind: kind("beam.set"), beam }),
  fc.record({ kind: kind("beam.change"), beam }),
  fc.record({ kind: kind("beam.remove"), id: idOf("b") }),
  fc.record({ kind: kind("seat.set"), seat }),
  fc.record({ kind: kind("seat.change"), seat }),
  fc.record({ kind: kind("seat.remove"), id: fewNumber.map((n) => `s${n}`) }),
  fc.record({ kind: kind("tie.set"), tie }),
  fc.record({ kind: kind("tie.change"), tie }),
  fc.record({ kind: kind("tie.remove"), id: fewNumber.map((n) => `t${n}`) }),
  fc.record({ kind: kind("lock.set"), lock }),
  fc.record({ kind: kind("lock.change"), lock }),
  fc.record({ kind: kind("lock.remove"), id: idOf("k") }),
  fc.record({ kind: kind("free-load.put"), load: freeLoad }),
  fc.record({ kind: kind("free-load.change"), load: freeLoad }),
  fc.record({ kind: kind("free-load.remove"), id: idOf("q") }),
  fc.record({ kind: kind("use.set"), use }),
  fc.record({ kind: kind("use.change"), use }),
  fc.record({ kind: kind("use.remove"), id: idOf("u") }),
  fc.record({ kind: kind("override.set"), override }),
  fc.record({ kind: kind("override.change"), override }),
  fc.record({ kind: kind("override.remove"), id: idOf("v") }),
  fc.record({ kind: kind("basis.change"), basis }),
);

const many = (arbitrary: fc.Arbitrary<Operation>, minLength: number, maxLength: number) =>
  fc.array(arbitrary, { minLength, maxLength, size: "max" });

const standing = fc.oneof(
  fc.record({ kind: kind("container.place"), container }),
  fc.record({ kind: kind("post.set"), post }),
  fc.record({ kind: kind("beam.set"), beam }),
);
const hanging = fc.oneof(
  fc.record({ kind: kind("opening.cut"), opening }),
  fc.record({ kind: kind("pad.set"), pad }),
  fc.record({ kind: kind("load.put"), load }),
  fc.record({ kind: kind("free-load.put"), load: freeLoad }),
  fc.record({ kind: kind("use.set"), use }),
  fc.record({ kind: kind("seat.set"), seat }),
  fc.record({ kind: kind("tie.set"), tie }),
  fc.record({ kind: kind("lock.set"), lock }),
  fc.record({ kind: kind("override.set"), override }),
);

/**
 * What is left of many operations on an empty sheet when the refused ones are passed over: first what stands, then what
 * hangs on it, then anything.
 */
export const scheme: fc.Arbitrary<Scheme> = fc
  .tuple(many(standing, 10, 40), many(hanging, 20, 80), many(operation, 0, 60))
  .map((lists) =>
    lists.flat().reduce((before, next) => {
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
