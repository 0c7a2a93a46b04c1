import type { ElevationModel, PlacedChange } from "@cornerway/engine";
import type { Pair, Scheme, Site } from "@cornerway/schema";
import { northHalfPx, northPlace, planOutline } from "../plan/north-place.ts";
import { fromScreen, type ViewTransform } from "../view-transform.ts";

/** The line of the schedule that tells of the site bears this in the place of an element's id. */
export const siteId = "site";

/** The strip of ground a change of its level is clouded over, mm. */
const stripMm = 250;

/** Ground at another level, as an elevation shows it: a strip along its line. */
export function groundChange(site: Pair<Site> | null, { extent, groundMm }: ElevationModel): PlacedChange[] {
  if (site === null || extent === null || site.before.groundZUm === site.after.groundZUm) return [];
  const strip = (atMm: number) => ({ u0Mm: extent.u0Mm, u1Mm: extent.u1Mm, z0Mm: atMm - stripMm, z1Mm: atMm });
  return [{ id: siteId, fresh: strip(groundMm), was: strip(site.before.groundZUm / 1000), gone: false }];
}

/** North turned, as a plan shows it: its arrow. */
export function northChange(
  site: Pair<Site> | null,
  scheme: Scheme,
  storey: number,
  view: ViewTransform,
): PlacedChange[] {
  const outline = planOutline(scheme, storey, view);
  if (site === null || outline === null || site.before.northMdeg === site.after.northMdeg) return [];
  const { xPx, yPx } = northPlace(outline);
  const { widthPx, heightPx } = northHalfPx;
  const low = fromScreen(view, { xPx: xPx - widthPx, yPx: yPx + widthPx });
  const high = fromScreen(view, { xPx: xPx + widthPx, yPx: yPx - heightPx });
  const arrow = { u0Mm: low.uMm, u1Mm: high.uMm, z0Mm: low.vMm, z1Mm: high.vMm };
  return [{ id: siteId, fresh: arrow, was: arrow, gone: false }];
}
