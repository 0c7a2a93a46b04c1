import { useSyncExternalStore } from "react";
import { Lettering } from "../drawing/label/Lettering.tsx";
import { project, toScreen } from "../drawing/view-transform.ts";
import type { Side } from "../drawing/contract.ts";
import type { Carried, Lift } from "../hand/lift.ts";
import { ink } from "../look/ink.ts";
import { elementPlace } from "../notes/element-place.ts";
import { spokenLength } from "../units/drawn-length.ts";
import { useUnits } from "../units/use-units.ts";
import { wayWords } from "../wording/way-words.ts";
import type { LaidViews } from "./lay-views.ts";

type LiftedWayProps = { lift: Lift; views: LaidViews; side: Side; planShown: boolean };

/** How far the thing in hand has gone since it was taken up, written on it while the hand moves. */
export function LiftedWay({ lift, ...on }: LiftedWayProps) {
  const carried = useSyncExternalStore(lift.listen, lift.now);
  return carried === null ? null : <Way carried={carried} {...on} />;
}

function Way({ carried, views, side, planShown }: Omit<LiftedWayProps, "lift"> & { carried: Carried }) {
  const units = useUnits();
  const { held, from, scheme } = carried;
  if (held.kind !== "element" && held.kind !== "group") return null;
  const [was, is] = [elementPlace(from, held.id), elementPlace(scheme, held.id)];
  if (was === null || is === null) return null;
  const um = (now: number, before: number) => Math.round((now - before) * 1000);
  const by = { xUm: um(is.xMm, was.xMm), yUm: um(is.yMm, was.yMm), zUm: um(is.zMm, was.zMm) };
  const view = held.projection === "plan" ? "plan" : "elevation";
  if ((view === "plan") !== planShown && views.oneView) return null;
  const { xPx, yPx } = toScreen(views[view].transform, project(view === "plan" ? "plan" : side, is));
  return (
    <g className="lifted-way" aria-hidden="true" pointerEvents="none">
      <Lettering
        text={wayWords(by, (lengthUm) => spokenLength(lengthUm / 1000, units))}
        spot={{ xPx, yPx: yPx + 5, anchor: "middle" }}
        sizePx={13}
        colour={ink.ink}
        fontWeight={600}
      />
    </g>
  );
}
