import type { Operation, Scheme } from "@cornerway/schema";
import { moveUnit } from "./move-unit.ts";
import { shiftElement } from "./shift-element.ts";

/** A move across the paper, mm: right and up as the view has them. */
export interface NudgeMm {
  xMm: number;
  yMm: number;
  zMm: number;
}

/** Moves the chosen thing by a step in the site frame; an opening moves along and up its wall. */
export function nudgeElement(scheme: Scheme, id: string, by: NudgeMm, alongFace: NudgeAlongFace): Operation[] {
  const um = (mm: number) => Math.round(mm * 1000);
  const unit = scheme.containers.find((container) => container.id === id);
  if (unit !== undefined)
    return moveUnit(scheme, {
      ...unit,
      xUm: unit.xUm + um(by.xMm),
      yUm: unit.yUm + um(by.yMm),
      zUm: unit.zUm + um(by.zMm),
    });
  const opening = scheme.openings.find((cut) => cut.id === id);
  if (opening !== undefined) {
    const { offsetUm, sillUm, widthUm, heightUm } = opening;
    const moved = { offsetUm: offsetUm + um(alongFace.uMm), sillUm: sillUm + um(alongFace.vMm) };
    return [{ kind: "opening.shape", id, ...moved, widthUm, heightUm }];
  }
  const post = scheme.posts.find((standing) => standing.id === id);
  if (post !== undefined) return [{ kind: "post.move", id, xUm: post.xUm + um(by.xMm), yUm: post.yUm + um(by.yMm) }];
  const pad = scheme.pads.find((lying) => lying.id === id);
  if (pad === undefined) return shiftElement(scheme, id, by);
  return [
    { kind: "pad.move", id, xUm: pad.xUm + um(by.xMm), yUm: pad.yUm + um(by.yMm), topZUm: pad.topZUm + um(by.zMm) },
  ];
}

export interface NudgeAlongFace {
  uMm: number;
  vMm: number;
}
