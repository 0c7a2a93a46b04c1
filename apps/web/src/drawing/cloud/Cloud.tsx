import { memo } from "react";
import { ink } from "../../look/ink.ts";
import type { RectPx } from "../px-path.ts";
import { sameDrawn } from "../same-drawn.ts";
import { cloudPath } from "./cloud-path.ts";

/** A cloud round what somebody speaks of, in the colour of whoever makes the mark. */
export const Cloud = memo(function Cloud({ rect, colour = ink.mulberry }: { rect: RectPx; colour?: string }) {
  return <path className="cloud" d={cloudPath(rect)} fill="none" stroke={colour} strokeWidth={1.1} />;
}, sameDrawn);
