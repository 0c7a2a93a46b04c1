import type { LayerPlace, ViewLayer } from "../contract.ts";
import { CloudMarks } from "./CloudMarks.tsx";
import { cloudRim, type CloudMark } from "./cloud-marks.ts";

/** The clouds of either view. */
export type ViewClouds = { elevation: readonly CloudMark[]; plan: readonly CloudMark[] };

/** Clouds inked over members and under lettering, which keeps off their rims. */
export const cloudLayer = (marks: ViewClouds, chosenNumber: number | null): ViewLayer => ({
  ink: (place) => <CloudMarks marks={marksOn(place, marks)} chosenNumber={chosenNumber} />,
  covers: (place) => marksOn(place, marks).flatMap(cloudRim),
  figures: () => [],
});

const marksOn = ({ view }: LayerPlace, marks: ViewClouds): readonly CloudMark[] =>
  view === "elevation" || view === "plan" ? marks[view] : [];
