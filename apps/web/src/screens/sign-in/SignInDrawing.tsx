import { elevationModel } from "@cornerway/engine";
import { ElevationFrame } from "../../drawing/elevation/ElevationFrame.tsx";
import { elevationStrings } from "../../drawing/elevation/elevation-strings.ts";
import { ElevationView } from "../../drawing/elevation/ElevationView.tsx";
import { Lettering } from "../../drawing/label/Lettering.tsx";
import { placeLabels } from "../../drawing/label/place-labels.ts";
import { HatchDefs } from "../../look/HatchDefs.tsx";
import { useUnits } from "../../units/use-units.ts";
import { signInScheme } from "./sign-in-scheme.ts";

const sizePx = { width: 720, height: 440 } as const;
const view = { originXPx: 300, originYPx: 310, pxPerM: 36 };
const model = elevationModel(signInScheme, "south", []);

/** Two units as they are drawn on a sheet, the upper one shifted: what every sheet is about. */
export function SignInDrawing() {
  const units = useUnits();
  const strings = elevationStrings(model, view, units);
  return (
    <svg className="sign-in-drawing" viewBox={`0 0 ${sizePx.width} ${sizePx.height}`} aria-hidden="true">
      <HatchDefs />
      <ElevationFrame {...{ model, view, seenFromPx: undefined }} dimensions={strings.lines} fromPx={8} toPx={700} />
      <ElevationView scheme={signInScheme} assessment={null} side="south" bare figures transform={view} />
      {placeLabels(strings.labels, []).map(({ key, text, spot, sizePx: size, colour, fontWeight }) => (
        <Lettering key={key} {...{ text, spot, colour, fontWeight }} sizePx={size} />
      ))}
    </svg>
  );
}
