import { brokenWays, pathStrokes, elevationModel, type ElevationModel } from "@cornerway/engine";
import { atScale } from "../objects/at-scale.ts";
import { lazy, Suspense, useMemo } from "react";
import type { ElementKind, ElevationViewProps, LayerPlace } from "../contract.ts";
import { project, screenToSite, type ScreenPoint } from "../view-transform.ts";
import { LayerOn } from "../LayerOn.tsx";
import { ElementTree } from "../ElementTree.tsx";
import { entryElement } from "../entry-element.ts";
import { useElementWords, type ElementWords } from "../use-element-words.ts";
import { hatchedPlaces } from "../marks/hatched-places.ts";
import { BrokenWays } from "../marks/BrokenWays.tsx";
import { HatchedPlaces } from "../marks/HatchedPlaces.tsx";
import { Objects } from "../objects/Objects.tsx";
import { elevationEye } from "../objects/object-eye.ts";
import type { DimensionStrings } from "../dimension/strings.ts";
import { useUnits } from "../../units/use-units.ts";
import { PathStrokes } from "../stroke/PathStrokes.tsx";
import { ElevationGround } from "./ElevationGround.tsx";
import { ElevationFrame } from "./ElevationFrame.tsx";
import { ElevationMarks } from "./ElevationMarks.tsx";
import { ElevationPosts } from "./ElevationPosts.tsx";
import { ElevationUnit } from "./ElevationUnit.tsx";
import { elevationStrings } from "./elevation-strings.ts";
import { GhostElevation } from "./GhostElevation.tsx";

/** Most sheets have something drawn on them, and nothing proposed. */
const EmptyElevation = lazy(async () => ({ default: (await import("../empty/EmptyElevation.tsx")).EmptyElevation }));
const ProposedElevation = lazy(async () => ({ default: (await import("./ProposedElevation.tsx")).ProposedElevation }));

const noLetters: readonly string[] = [];

/** One side of the building seen square: what stands there, what carries it down, and what the marks say of it. */
export function ElevationView(props: ElevationViewProps) {
  const { scheme, transform: view, side, bare = false, revisionLetters = noLetters } = props;
  const model = useMemo(() => elevationModel(scheme, side, revisionLetters), [scheme, side, revisionLetters]);
  const words = useElementWords(props);
  const units = useUnits();
  const strings = useMemo(() => elevationStrings(model, view, units, props.storey), [model, view, units, props.storey]);
  if (model.extent === null && !bare)
    return (
      <Suspense fallback={null}>
        <EmptyElevation view={view} groundMm={model.groundMm} />
      </Suspense>
    );
  const frame = bare ? null : (
    <ElevationFrame
      model={model}
      view={view}
      dimensions={strings.lines}
      fromPx={props.levelLinesFromPx}
      toPx={props.levelLinesToPx}
      seenFromPx={props.seenFrom?.topPx}
    />
  );
  // Looked into more closely, the grid's circles stand on the drawing and have to lie over it.
  const closer = props.seenFrom !== undefined;
  return (
    <g className="elevation">
      {closer ? null : frame}
      {props.ghost !== undefined && <GhostElevation scheme={props.ghost} side={side} view={view} />}
      <ElevationElements model={model} words={words} {...props} />
      <ElevationSigns model={model} words={words} strings={strings} {...props} />
      {closer ? <g pointerEvents="none">{frame}</g> : null}
    </g>
  );
}

type Drawn = ElevationViewProps & { model: ElevationModel; words: ElementWords };

/** What stands there, as a tree. */
function ElevationElements({ model, words: { verdicts, nameOf }, ...props }: Drawn) {
  const { transform: view, side, bare: still = false, selectedId = null } = props;
  const entryId = entryElement(shownIds(model), selectedId);
  const setting = { view, verdicts, nameOf, entryId, selectedId, still };
  return (
    <ElementTree
      label={`${side} elevation`}
      still={still}
      locate={(id, kind, at) => locate(model, view, id, kind, at)}
      onElementPointerDown={props.onElementPointerDown}
      onElementFocus={props.onElementFocus}
    >
      <ElevationGround model={model} figures={props.figures ?? false} {...setting} />
      {model.faces.map((face) => (
        <ElevationUnit key={`${face.container.id}-${face.face}`} face={face} {...setting} />
      ))}
      <ElevationPosts posts={model.posts} {...setting} />
      <Objects objects={atScale(model.objects, view.pxPerM)} eye={elevationEye(side, view)} {...setting} />
    </ElementTree>
  );
}

const shownIds = ({ faces, posts, pads, objects }: ElevationModel): string[] => [
  ...pads.map(({ pad }) => pad.id),
  ...posts.map(({ post }) => post.id),
  ...objects.map(({ object }) => object.id),
  ...faces.flatMap(({ openings, container }) => [...openings.map(({ opening }) => opening.id), container.id]),
];

/** What the marks say of it: hatches, the load path, what is proposed, lettering. Nothing here takes the pointer. */
function ElevationSigns({
  model,
  words: { verdicts, answered },
  strings,
  ...props
}: Drawn & { strings: DimensionStrings }) {
  const { scheme, transform: view, side } = props;
  const assessment = props.linesOnly === true ? null : props.assessment;
  const places = useMemo(() => hatchedPlaces(assessment?.marks ?? [], model), [assessment, model]);
  const strokes = useMemo(
    () => (assessment === null ? [] : pathStrokes(assessment, side, model.faces, model.posts)),
    [assessment, side, model],
  );
  const broken = useMemo(() => brokenWays(assessment?.marks ?? [], model), [assessment, model]);
  // While not checked nothing is inked over; where only lines are wanted, what a layer inks is no answer to wait for.
  const layer = props.linesOnly !== true && assessment === null ? undefined : props.layer;
  const place = useMemo((): LayerPlace => ({ view: "elevation", side, transform: view, scheme }), [side, view, scheme]);
  const inked = useMemo(() => layer?.covers(place), [layer, place]);
  return (
    <g pointerEvents="none">
      <HatchedPlaces places={places} view={view} answered={answered} />
      <PathStrokes strokes={strokes} view={view} waiting={props.waiting ?? false} verdicts={verdicts} />
      <LayerOn layer={layer} place={place} />
      <BrokenWays ways={broken} view={view} />
      {props.proposed !== undefined && (
        <Suspense fallback={null}>
          <ProposedElevation before={scheme} after={props.proposed} side={side} view={view} />
        </Suspense>
      )}
      {props.bare !== true && (
        <ElevationMarks {...{ model, view, strokes, strings, inked, verdicts }} rightPx={props.levelLinesToPx} />
      )}
    </g>
  );
}

function depthOfObject({ objects, side }: ElevationModel, id: string): number | undefined {
  const found = objects.find(({ object }) => object.id === id);
  return found === undefined ? undefined : project(side, found.object.at).depthMm;
}

function locate(
  model: ElevationModel,
  view: ElevationViewProps["transform"],
  id: string,
  kind: ElementKind,
  at: ScreenPoint,
) {
  const face = model.faces.findLast(
    ({ container, openings }) =>
      container.id === id || openings.some(({ opening }) => kind === "opening" && opening.id === id),
  );
  const depthMm =
    face?.depthMm ??
    model.posts.find(({ post }) => post.id === id)?.depthMm ??
    model.pads.find(({ pad }) => pad.id === id)?.depthMm ??
    depthOfObject(model, id) ??
    0;
  return { at: screenToSite(view, model.side, at, depthMm), face: face?.face };
}
