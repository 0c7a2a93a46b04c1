import { cutAboveMm, storeysOf, type DrawnStretch } from "@cornerway/engine";
import { eyeCompass, eyeRemark, isIsometric } from "../drawing/isometric/eye-words.ts";
import { ScaleBar } from "../drawing/ScaleBar.tsx";
import { titleEndPx, ViewTitle } from "../drawing/ViewTitle.tsx";
import { drawnLevel } from "../units/drawn-length.ts";
import { useUnits } from "../units/use-units.ts";
import { titleRisePx, type LaidView, type RectPx } from "./lay-views.ts";
import { statedScale } from "./lens.ts";
import { PaperButton } from "./PaperButton.tsx";
import { SideChoice } from "./SideChoice.tsx";
import type { SchemePaperProps } from "./paper-props.ts";
import { showsDetails } from "./shows-details.ts";

type PaperTitlesProps = SchemePaperProps & { planShown: boolean; onPlan: (shown: boolean) => void };

/** The numbered titles of the views with the scale each is drawn at now, and what turns them. */
export function PaperTitles({ onSide, planShown, onPlan, ...props }: PaperTitlesProps) {
  const { views, side, storey, scheme, remark, assessment, isometric: shown, section } = props;
  const units = useUnits();
  const level = storeysOf(scheme)[storey];
  const planTitle = `plan, ${(level?.name ?? "Ground").toLowerCase()} floor`;
  const cutMm = (level?.levelMm ?? scheme.site.groundZUm / 1000) + cutAboveMm;
  const { elevation, plan, isometric, oneView } = views;
  const stroke = assessment === null ? "not checked" : `stroke width is force, ${strokesOf(assessment.path)}`;
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
          {showsDetails(props) ? null : <ViewTitle number={3} {...thirdTitle(props)} {...titlePlace(isometric.rect)} />}
          {section === null || showsDetails(props) ? null : (
            <BarBeside title={sectionTitle} view={isometric} spacePx={isometric.rect.widthPx - 20} />
          )}
          <ThirdWays {...props} />
        </>
      ) : null}
    </>
  );
}

type ThirdProps = Omit<SchemePaperProps, "onSide">;

const sectionTitle = "section A–A";

/** The title of the third view: the section, or where the whole is seen from. */
const thirdTitle = ({ section, picture, views }: ThirdProps) =>
  section === null
    ? { title: `from the ${eyeCompass(picture)}`, remark: eyeRemark(picture) }
    : { title: sectionTitle, remark: `${scaleOf(views.isometric)} · cut along the line on the plan` };

/** What else the third view can show. */
function ThirdWays({ views: { isometric }, section, picture, ...props }: ThirdProps) {
  const right = isometric.rect.leftPx + isometric.rect.widthPx;
  const yPx = titlePlace(isometric.rect).yPx + 15;
  const cut = () => props.onSection(section === null ? props.firstSection() : null);
  const shown = showsDetails(props);
  return (
    <>
      {shown || section !== null || isIsometric(picture) ? null : (
        <PaperButton xPx={right - 222} yPx={yPx} label="Isometric" onPress={props.onPictureHome} />
      )}
      {props.details.length === 0 ? null : (
        <PaperButton
          xPx={right - (shown ? 70 : 146)}
          yPx={shown ? isometric.rect.topPx + 18 : yPx}
          label="Details"
          spoken="Details of what is chosen"
          pressed={shown}
          onPress={() => props.onDetails(!shown)}
        />
      )}
      {shown ? null : (
        <PaperButton
          xPx={right - 70}
          yPx={yPx}
          label={section === null ? "Section" : "Picture"}
          spoken={section === null ? "Cut a section" : "Back to the picture of the whole"}
          onPress={cut}
        />
      )}
    </>
  );
}

/** Solved strokes know how they change on their way. */
const strokesOf = (path: readonly DrawnStretch[]): string =>
  path.some(({ alongKn }) => alongKn !== undefined) ? "as solved" : "by statics alone";

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

const titlePlace = ({ leftPx, topPx, heightPx }: RectPx) => ({ xPx: leftPx + 26, yPx: topPx + heightPx - titleRisePx });
