import { useMemo } from "react";
import type { ElementKind, ElevationViewProps } from "../contract.ts";
import { screenToSite, type ScreenPoint } from "../view-transform.ts";
import { ElementTree } from "../ElementTree.tsx";
import { EmptyElevation } from "../empty/EmptyElevation.tsx";
import { elementNamer } from "../element-namer.ts";
import { Lettering } from "../label/Lettering.tsx";
import { elementVerdicts } from "../marks/element-verdicts.ts";
import { hatchedPlaces } from "../marks/hatched-places.ts";
import { HatchedPlaces } from "../marks/HatchedPlaces.tsx";
import { pathStrokes } from "../stroke/path-strokes.ts";
import { PathStrokes } from "../stroke/PathStrokes.tsx";
import { ink } from "../../look/ink.ts";
import { Hexagon } from "../../look/Hexagon.tsx";
import { ElevationGround } from "./ElevationGround.tsx";
import { ElevationFrame } from "./ElevationFrame.tsx";
import { ElevationPosts } from "./ElevationPosts.tsx";
import { ElevationUnit } from "./ElevationUnit.tsx";
import { GhostElevation } from "./GhostElevation.tsx";
import { ProposedElevation } from "./ProposedElevation.tsx";
import { elevationLabels, tagSpots } from "./elevation-labels.ts";
import { elevationModel, type ElevationModel } from "./elevation-model.ts";

const noneAnswered: ReadonlySet<string> = new Set();
const noNumbers: ReadonlyMap<string, number> = new Map();
const noLetters: readonly string[] = [];

/** One side of the building seen square: what stands there, what carries it down, and what the marks say of it. */
export function ElevationView(props: ElevationViewProps) {
  const { scheme, assessment, transform: view, side, bare = false, revisionLetters = noLetters } = props;
  const answered = props.answeredMarkIds ?? noneAnswered;
  const model = useMemo(() => elevationModel(scheme, side, revisionLetters), [scheme, side, revisionLetters]);
  const verdicts = useMemo(() => elementVerdicts(assessment, answered), [assessment, answered]);
  const nameOf = useMemo(
    () => elementNamer(scheme, verdicts, props.noteNumbers ?? noNumbers),
    [scheme, verdicts, props.noteNumbers],
  );
  const strokes = useMemo(
    () => (assessment === null ? [] : pathStrokes(assessment, side, model.faces, model.posts)),
    [assessment, side, model],
  );
  const places = useMemo(() => hatchedPlaces(assessment?.marks ?? [], model), [assessment, model]);
  const labels = useMemo(() => (bare ? [] : elevationLabels(model, view, strokes)), [model, view, strokes, bare]);
  const tags = useMemo(() => tagSpots(model, view), [model, view]);
  const entryId = props.selectedId ?? model.faces.at(-1)?.container.id ?? null;
  const shared = {
    view,
    verdicts,
    nameOf,
    entryId,
    selectedId: props.selectedId ?? null,
    still: bare,
  };
  if (model.extent === null && !bare) return <EmptyElevation view={view} groundMm={model.groundMm} />;
  return (
    <g className="elevation">
      {!bare && (
        <ElevationFrame model={model} view={view} fromPx={props.levelLinesFromPx} toPx={props.levelLinesToPx} />
      )}
      {props.ghost !== undefined && <GhostElevation scheme={props.ghost} side={side} view={view} />}
      <ElementTree
        label={`${side} elevation`}
        still={bare}
        locate={(id, kind, at) => locate(model, view, id, kind, at)}
        onElementPointerDown={props.onElementPointerDown}
        onElementFocus={props.onElementFocus}
      >
        <ElevationGround model={model} figures={props.figures ?? false} {...shared} />
        {model.faces.map((face) => (
          <ElevationUnit key={`${face.container.id}-${face.face}`} face={face} {...shared} />
        ))}
        <ElevationPosts posts={model.posts} {...shared} />
      </ElementTree>
      <g pointerEvents="none">
        <HatchedPlaces places={places} view={view} answered={answered} />
        <PathStrokes strokes={strokes} view={view} waiting={props.waiting ?? false} verdicts={verdicts} />
        {props.proposed !== undefined && (
          <ProposedElevation before={scheme} after={props.proposed} side={side} view={view} />
        )}
        {!bare &&
          tags.map(({ openingId, tag, xPx, yPx }) => {
            const verdict = verdicts.get(openingId)?.verdict ?? "not checked";
            return (
              <Hexagon
                key={openingId}
                tag={tag}
                xPx={xPx}
                yPx={yPx}
                colour={verdict === "does not work" ? ink.rust : ink.ink}
                unchecked={verdict === "not checked"}
              />
            );
          })}
        {labels.map(({ key, text, spot, sizePx, colour, fontWeight, trackingEm }) => (
          <Lettering
            key={key}
            text={text}
            spot={spot}
            sizePx={sizePx}
            colour={colour}
            fontWeight={fontWeight}
            trackingEm={trackingEm}
          />
        ))}
      </g>
    </g>
  );
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
    0;
  return { at: screenToSite(view, model.side, at, depthMm), face: face?.face };
}
