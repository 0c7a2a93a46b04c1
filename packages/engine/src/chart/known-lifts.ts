import type { ChartAnswer } from "./chart.ts";
import type { Place } from "./chart-side.ts";

/** Within this use a lift does not govern nearby. Judged, no published source. */
const FAR = 0.8;

type Lift = { readonly framed: boolean; readonly widthMm: number; readonly offMm: number };

/**
 * Places of one side that were looked at as the unit hangs and are far within its strength. It hangs on two diagonal fittings and
 * bends most in the middle: on a plain wall no opening that is no wider and no nearer the middle asks more.
 */
export class KnownLifts {
  private readonly middleMm: number;
  private readonly isPlain: boolean;
  private readonly far: Lift[] = [];

  constructor(middleMm: number, isPlain: boolean) {
    this.middleMm = middleMm;
    this.isPlain = isPlain;
  }

  note(framed: boolean, place: Place, { why }: ChartAnswer): void {
    if (why.kind === "within" && why.use <= FAR) this.far.push(this.liftAt(framed, place));
  }

  isFar(framed: boolean, place: Place): boolean {
    const { widthMm, offMm } = this.liftAt(framed, place);
    return (
      this.isPlain &&
      this.far.some((known) => known.framed === framed && known.widthMm >= widthMm && known.offMm <= offMm)
    );
  }

  private liftAt(framed: boolean, { centreMm, widthMm }: Place): Lift {
    return { framed, widthMm, offMm: Math.abs(centreMm - this.middleMm) };
  }
}
