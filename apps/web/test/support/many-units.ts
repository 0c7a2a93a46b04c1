import type { Container, Opening, Pad, Post, Scheme } from "@cornerway/schema";
import { schemeOf, unitAt } from "./schemes.ts";

/** A running number from 0 to under `below`, the same each time (linear congruential, Numerical Recipes; from memory). */
function drawer(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return Math.floor((state / 4_294_967_296) * below);
  };
}

const widthMm = 2488;
const heightMm = 2896;
const lengthMm = 12_192;

/**
 * A building of so many 40 ft high cubes: storeys of shrinking rows, some units pushed along, one in seven turned
 * across, openings and posts throughout; no two neighbours alike.
 */
export function manyUnits(count: number, seed: number): Scheme {
  const draw = drawer(seed);
  const perStorey = Math.ceil(count / 4);
  const containers = Array.from({ length: count }, (_, at): Container => {
    const storey = Math.floor(at / perStorey);
    const place = at % perStorey;
    const [row, bay] = [Math.floor(place / 2), place % 2];
    const aside = draw(3) === 0 ? draw(3000) : 0;
    const turned = storey === 3 && draw(7) === 0;
    const letter = "GFST"[storey] ?? "T";
    return unitAt(
      `u${String(at).padStart(3, "0")}`,
      `${letter}${place + 1}`,
      bay * (lengthMm + 60) + aside,
      row * widthMm,
      storey * heightMm,
      turned ? 90 : 0,
    );
  });
  const openings = containers.flatMap((unit): Opening[] =>
    (["right", "left", "front"] as const).flatMap((face, at): Opening[] => {
      if (draw(2) === 0) return [];
      const door = draw(3) === 0;
      const size = door
        ? { sillUm: 180_000, heightUm: 2_100_000, widthUm: 900_000 + draw(1500) * 1000 }
        : { sillUm: 900_000, heightUm: 1_200_000, widthUm: 700_000 + draw(1500) * 1000 };
      const id = `${unit.id}-${face}`;
      const along = face === "front" ? 300_000 : 600_000 + draw(8000) * 1000;
      const wide = face === "front" ? Math.min(size.widthUm, 1_700_000) : size.widthUm;
      return [
        {
          ...{ id, tag: `${door ? "D" : "W"}${at + 1}`, containerId: unit.id, face, framed: draw(2) === 0 },
          ...{ ...size, widthUm: wide, offsetUm: along, use: door ? "door" : "window" },
        },
      ];
    }),
  );
  const ground = containers.filter(({ zUm }) => zUm === 0);
  const pads = ground.flatMap((unit): Pad[] =>
    [-1, 1].flatMap((x) =>
      [-1, 1].map((y, at): Pad => ({
        ...{ id: `${unit.id}-pad${x}${at}`, tag: "N1", turnMdeg: 0, topZUm: 0, depthUm: 600_000 },
        ...{ lengthUm: 800_000, widthUm: 800_000 },
        ...{ xUm: unit.xUm + x * 6_000_000, yUm: unit.yUm + y * 1_130_000 },
      })),
    ),
  );
  const posts = containers.slice(0, Math.ceil(count / 6)).map((unit, at): Post => ({
    ...{ id: `post${at}`, tag: `P${at + 1}`, section: "HSS 102×102×6.4", turnMdeg: 0 },
    ...{ xUm: unit.xUm + draw(5000) * 1000, yUm: unit.yUm - 1_300_000, baseZUm: 0, topZUm: heightMm * 1000 },
  }));
  return { ...schemeOf(containers, pads), openings, posts };
}
