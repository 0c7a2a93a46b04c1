import { cutAboveMm, storeysOf } from "@cornerway/engine";
import { eyeCompass, eyeRemark, isIsometric } from "../drawing/isometric/eye-words.ts";
import { ScaleBar } from "../drawing/ScaleBar.tsx";
import { titleEndPx, ViewTitle } from "../drawing/ViewTitle.tsx";
import { drawnLevel } from "../units/drawn-length.ts";
import { useUnits } from "../units/use-units.ts";
import type { LaidView, RectPx } from "./lay-views.ts";
import { statedScale } from "./lens.ts";
import { PaperButton } from "./PaperButton.tsx";
import { SideChoice } from "./SideChoice.tsx";
import type { SchemePaperProps } from "./SchemePaper.tsx";

type PaperTitlesProps = SchemePaperProps & { planShown: boolean; onPlan: (shown: boolean) => void };

/** The numbered titles of the views with the scale each is drawn at now, and what turns them. */
export function PaperTitles({ onSide, planShown, onPlan, ...props }: PaperTitlesProps) {
  const { views, side, storey, scheme, remark, assessment, isometric: shown, picture } = props;
  const units = useUnits();
  const level = storeysOf(scheme)[storey];
  const planTitle = `plan, ${(level?.name ?? "Ground").toLowerCase()} floor`;
  const cutMm = (level?.levelMm ?? scheme.site.groundZUm / 1000) + cutAboveMm;
  const { elevation, plan, isometric, oneView } = views;
  const stroke = assessment === null ? "not checked" : "stroke width is force, by statics alone";
  const sideTitle = `${side} elevation${remark === undefined ? "" : `, ${remark}`}`;
  const upper = planShown ? { title: planTitle, view: plan } : { title: sideTitle, view: elevation };
  return (
    <>
      <ViewTitle
        number={1}
        title={upper.title}
        remark={oneView ? scaleOf(upper.view) : `${scaleOf(elevation)} · ${stroke}`}
        {...titlePlace(elevation.rect)}
      />
      <SideChoice
        xPx={elevation.rect.leftPx + elevation.rect.widthPx - (oneView ? 234 : 196)}
        yPx={titlePlace(elevation.rect).yPx + 15}
        side={planShown ? null : side}
        onSide={(to) => {
          onPlan(false);
          onSide(to);
        }}
        onPlan={oneView ? () => onPlan(true) : undefined}
      />
      {oneView ? null : (
        <>
          <BarBeside title={upper.title} view={upper.view} spacePx={elevation.rect.widthPx - 210} />
          <ViewTitle
            number={2}
            title={planTitle}
            remark={`${scaleOf(plan)} · cut at ${drawnLevel(cutMm, units)}`}
            {...titlePlace(plan.rect)}
          />
          <BarBeside title={planTitle} view={plan} spacePx={plan.rect.widthPx - 12} />
        </>
      )}
      {shown && !oneView ? (
        <>
          <ViewTitle
            number={3}
            title={`from the ${eyeCompass(picture)}`}
            remark={eyeRemark(picture)}
            {...titlePlace(isometric.rect)}
          />
          {isIsometric(picture) ? null : (
            <PaperButton
              xPx={isometric.rect.leftPx + isometric.rect.widthPx - 84}
              yPx={titlePlace(isometric.rect).yPx + 15}
              label="Isometric"
              onPress={props.onPictureHome}
            />
          )}
        </>
      ) : null}
    </>
  );
}

/** The scale bar after a view's title, where there is room before the right of its place. */
function BarBeside({ title, view, spacePx }: { title: string; view: LaidView; spacePx: number }) {
  const units = useUnits();
  const { xPx, yPx } = titlePlace(view.rect);
  const from = titleEndPx(title, xPx) + 14;
  const mostPx = Math.min(longestBarPx, view.rect.leftPx + spacePx - from - labelPx);
  return <ScaleBar pxPerM={view.transform.pxPerM} units={units} xPx={from} yPx={yPx} mostPx={mostPx} />;
}

const longestBarPx = 104;
/** Px the bar's own label takes after it. */
const labelPx = 44;

const scaleOf = ({ transform }: LaidView) => statedScale(transform.pxPerM);

const titlePlace = ({ leftPx, topPx, heightPx }: RectPx) => ({ xPx: leftPx + 26, yPx: topPx + heightPx - 24 });
