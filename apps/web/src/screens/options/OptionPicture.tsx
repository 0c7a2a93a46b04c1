import type { Scheme } from "@cornerway/schema";
import type { Side } from "../../drawing/contract.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { GroundLine } from "../../drawing/ground/GroundLine.tsx";
import { heightPx, middleOf, widthPx } from "./option-scale.ts";

/** An alternative as one sees it from a side, at the scale of its set. */
export function OptionPicture({ scheme, side, pxPerM }: { scheme: Scheme | undefined; side: Side; pxPerM: number }) {
  const at = scheme === undefined ? null : middleOf(scheme, side, pxPerM);
  return (
    <svg className="option-picture" viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true">
      <GroundLine fromPx={0} toPx={widthPx} groundPx={at?.originYPx ?? heightPx - 24} />
      {scheme === undefined || at === null ? null : (
        <ElevationView scheme={scheme} assessment={null} side={side} bare transform={at} />
      )}
    </svg>
  );
}
