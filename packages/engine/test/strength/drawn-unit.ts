import { emptyScheme, type Container, type Opening, type Pad, type Post, type Scheme } from "@cornerway/schema";

const um = (mm: number): number => Math.round(mm * 1000);

/** Post axes of a 40 ft and of a 20 ft unit from its middle, mm: half the hole spacings of ISO 668. */
export const axes = { "1AAA": { x: 5992.5, y: 1129.5 }, "1CC": { x: 2926.5, y: 1129.5 } } as const;

export type DrawnOpening = Pick<Opening, "face" | "framed"> & {
  readonly fromMm: number;
  readonly widthMm: number;
  readonly use?: Opening["use"];
};

/** A unit with its middle on the origin, on a pad of 1.2 m under each corner, with openings from bottom to top of the sheet. */
export function drawnUnit({
  type = "1AAA",
  openings = [],
  posts = [],
  above = 0,
  imposedPa = 2400,
}: {
  readonly type?: "1AAA" | "1CC";
  readonly openings?: readonly DrawnOpening[];
  /** Posts in the right wall from rail to rail, each on a pad of its own, at so many mm from the front end. */
  readonly posts?: readonly number[];
  /** Units stacked plainly on top. */
  readonly above?: number;
  readonly imposedPa?: number;
}): Scheme {
  const height = type === "1AAA" ? 2896 : 2591;
  const containers = Array.from({ length: above + 1 }, (_, n): Container => {
    return { id: `u${n + 1}`, tag: `U${n + 1}`, type, xUm: 0, yUm: 0, zUm: um(n * height), turnMdeg: 0 };
  });
  return {
    ...emptyScheme,
    site: { northMdeg: 0, groundZUm: 0, edition: "IBC 2021" },
    containers,
    openings: openings.map((opening, n) => cut(opening, n, height)),
    posts: posts.map((atMm, n) => post(atMm, n, height)),
    pads: [...cornerPads(axes[type]), ...posts.map((atMm, n) => pad(`q${n + 1}`, atMm - 6096, -1219 + 30))],
    loads: containers.flatMap(({ id }) =>
      (["finish", "imposed"] as const).map((kind) => ({
        id: `${id}-${kind}`,
        containerId: id,
        surface: "floor" as const,
        case: kind,
        pressurePa: kind === "finish" ? 1000 : imposedPa,
      })),
    ),
  };
}

const cornerPads = ({ x, y }: { readonly x: number; readonly y: number }): Pad[] =>
  [-x, x].flatMap((px) =>
    [-y, y].map((py) => pad(`p-${px < 0 ? "front" : "door"}-${py < 0 ? "right" : "left"}`, px, py)),
  );

const pad = (id: string, xMm: number, yMm: number): Pad => ({
  id,
  tag: "P",
  xUm: um(xMm),
  yUm: um(yMm),
  topZUm: 0,
  lengthUm: um(1200),
  widthUm: um(1200),
  depthUm: um(400),
  turnMdeg: 0,
});

function cut({ face, framed, fromMm, widthMm, use = "door" }: DrawnOpening, n: number, height: number): Opening {
  return {
    id: `o${n + 1}`,
    tag: `O${n + 1}`,
    containerId: "u1",
    face,
    use,
    offsetUm: um(fromMm),
    sillUm: um(SHEET_FROM),
    widthUm: um(widthMm),
    heightUm: um(height - SHEET_FROM - SHEET_BELOW_TOP),
    framed,
  };
}

/** Of the sheet above the underside and below the top: base 12.5 with a rail of 162, roof 6 with a rail of 60. */
const SHEET_FROM = 174.5;
const SHEET_BELOW_TOP = 66;

const post = (atMm: number, n: number, height: number): Post => ({
  id: `c${n + 1}`,
  tag: `C${n + 1}`,
  xUm: um(atMm - 6096),
  yUm: um(-1219 + 30),
  baseZUm: 0,
  topZUm: um(height - 66),
  turnMdeg: 0,
  section: "HSS4x4x1/4",
});
