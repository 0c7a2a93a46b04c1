import type { Assessment, Scheme } from "@cornerway/schema";
import { lazy, memo, Suspense } from "react";
import type { ViewProps } from "../drawing/contract.ts";
import { IsometricView } from "../drawing/isometric/IsometricView.tsx";
import type { SchemePaperProps } from "./paper-props.ts";
import { showsDetails } from "./shows-details.ts";
import { WithinView } from "./WithinView.tsx";

type ThirdViewProps = SchemePaperProps & {
  /** What the views share; the scheme and its answer are those the picture is drawn of. */
  shared: Omit<ViewProps, "transform">;
  calm: { scheme: Scheme; assessment: Assessment | null };
};

/** In the third place: the whole as seen from somewhere, a section along a line, or the details of what is chosen. */
export function ThirdView(props: ThirdViewProps) {
  const { views, looking, shared, calm, section } = props;
  const { rect, transform } = views.isometric;
  return (
    <WithinView name="isometric" view={views.isometric} lens={looking.lenses.isometric}>
      {showsDetails(props) ? (
        <Suspense fallback={null}>
          <DetailsView key={props.chosenId} details={props.details} room={rect} firstNumber={3} />
        </Suspense>
      ) : section === null ? (
        <>
          <CalmIsometric {...shared} {...calm} transform={transform} eye={props.picture} />
          {shared.proposed !== undefined && (
            <Suspense fallback={null}>
              <ProposedIsometric before={calm.scheme} after={shared.proposed} eye={props.picture} view={transform} />
            </Suspense>
          )}
        </>
      ) : (
        <Suspense fallback={null}>
          <CalmSection
            scheme={calm.scheme}
            line={section}
            transform={transform}
            layer={props.assessment === null ? undefined : props.layer}
          />
        </Suspense>
      )}
    </WithinView>
  );
}

const CalmIsometric = memo(IsometricView);
const ProposedIsometric = lazy(async () => ({
  default: (await import("../drawing/isometric/ProposedIsometric.tsx")).ProposedIsometric,
}));
const CalmSection = lazy(async () => ({
  default: memo((await import("../drawing/section/SectionView.tsx")).SectionView),
}));
const DetailsView = lazy(async () => ({ default: (await import("../drawing/details/DetailsView.tsx")).DetailsView }));
