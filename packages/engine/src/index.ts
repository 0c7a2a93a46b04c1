export {
  sin,
  cos,
  tan,
  atan,
  atan2,
  asin,
  acos,
  exp,
  tanh,
  log,
  log10,
  pow,
  cbrt,
  hypot,
  sinDegThousandths,
  cosDegThousandths,
} from "./numerics/elementary.ts";
export { assess } from "./assess.ts";
export { engineVersion } from "./engine-version.ts";
export { catalogRows } from "./catalog/catalog-rows.ts";
export type { CatalogRow, CatalogValue } from "./catalog/catalog-value.ts";
export { containerTypeRows } from "./catalog/container-types.ts";
export { containerDimensions } from "./catalog/container-dimensions.ts";
export type { ContainerDimensions, FaceRect } from "./catalog/container-dimensions.ts";
export { placeContainer, solidCorners, toLocal, toSite } from "./geometry/place.ts";
export type { PlacedContainer, PlacedFitting, PlanFrame } from "./geometry/place.ts";
export { alongBeam, beamHeightMm, beamTopMm, onBeam, placeBeam } from "./geometry/placed-beam.ts";
export type { PlacedBeam } from "./geometry/placed-beam.ts";
export { sectionSizeMm } from "./catalog/section-size.ts";
export type { SectionSize } from "./catalog/section-size.ts";
export { seatPlaces, tiePlaces } from "./objects.ts";
export { seatLeftMm } from "./bearing/seat-place.ts";
export type { SeatLower, SeatPlace, SeatUpper } from "./bearing/seat-place.ts";
export type { TiePlace } from "./bearing/tie-place.ts";
export { alignments } from "./alignment/alignments.ts";
export { alignmentKinds } from "./alignment/alignment.ts";
export type { Alignment, AlignmentKind, GapChange, Landing, OnRail } from "./alignment/alignment.ts";
export { faceFrame, pointOnFace } from "./geometry/face-frame.ts";
export type { FaceFrame } from "./geometry/face-frame.ts";
export { storeysOf } from "./geometry/storeys.ts";
export type { Storey } from "./geometry/storeys.ts";
export { parseExpression } from "./working/parse-expression.ts";
export type { Expression, FunctionName, Operator } from "./working/expression.ts";
export type { Clause, Relation, Working, WorkingStep, WorkingSymbol, WorkingValue } from "./working/working.ts";
export type { Unit } from "./working/unit.ts";
export { solveFrame } from "./frame.ts";
export type { FrameRefusal, FrameResult, FrameSolution } from "./analysis/frame-result.ts";
export { readAnalyticalModel } from "./model/read-analytical-model.ts";
export type { ModelReading } from "./model/read-analytical-model.ts";
export type { AnalyticalModel } from "./model/analytical-model.ts";
export { condensationCache, solveBuilding } from "./building.ts";
export type { BuildingCombination, BuildingResult } from "./building.ts";
export type { UnitSolution } from "./analysis/recover-unit.ts";
export type { BuildingModel, PlacedUnit, UnitFragment } from "./model/building-model.ts";
export { mergeBuilding } from "./model/merge-building.ts";
export { buildModel } from "./model/build-model.ts";
export type { BuiltModel, ModelNote } from "./model/build-model.ts";
export { siteItems } from "./site/site-items.ts";
export { assumedThicknessUm } from "./survey/assumed-thickness.ts";
export { surveyFindings } from "./survey/survey-findings.ts";
export { usualSurveyLimits } from "./survey/usual-limits.ts";
export { schemeModel } from "./model/scheme-model.ts";
export type { SchemeModel } from "./model/scheme-model.ts";
export { usualAssumptions } from "./model/model-assumptions.ts";
export type { ModelAssumptions } from "./model/model-assumptions.ts";
export { checkBasisOf } from "./checks/check-basis.ts";
export type { CheckBasis } from "./checks/check-basis.ts";
export type { Check } from "./checks/check.ts";
export { coverageTable, effectOnVerdict } from "./checks/coverage.ts";
export type { Coverage, CoverageLine } from "./checks/coverage.ts";
export { checkedElements, limitStates } from "./checks/limit-state.ts";
export type { CheckedElement, LimitState } from "./checks/limit-state.ts";
export { lockSentence } from "./checks/lock.ts";
export { namedSections } from "./catalog/sections/find-section.ts";
export { sectionRows } from "./catalog/sections/section-rows.ts";
export { designBasisFor } from "./codes/loads/design-basis-for.ts";
export type { DesignBasis } from "./loads/design-basis.ts";
export { siteActions } from "./loads/site-actions.ts";
export type { ActionRequest, SiteActions } from "./loads/site-actions.ts";
export type { ActionCase, ActionLoad, Patch } from "./loads/action-case.ts";
export { designRuns } from "./loads/design-runs.ts";
export type { DesignRun } from "./loads/design-runs.ts";
export { combinationText } from "./loads/load-combination.ts";
export type { LoadCombination } from "./loads/load-combination.ts";
export { hazardRefusalText } from "./loads/hazard-refusal.ts";
export type { CodeEdition, SiteHazards } from "./loads/site-hazards.ts";
export { strength } from "./strength.ts";
export { strengthWhileDrawing } from "./strength-while-drawing.ts";
export type { StrengthWhileDrawing } from "./strength-while-drawing.ts";
export type { LivePart, LiveStrength } from "./strength/live-strength.ts";
export { assessForRecord, assessForRecordShared } from "./assess-for-record.ts";
export { assessedWith, assessStrength } from "./assess-strength.ts";
export type { StrengthAssessment } from "./assess-strength.ts";
export { strengthSteps } from "./strength/strength-of.ts";
export { knownRun, nameOf, saidOf } from "./strength/known-run.ts";
export type { KnownRun } from "./strength/known-run.ts";
export type { Strength, TellProgress } from "./strength/strength-of.ts";
export type { SetReport } from "./strength/screened-set.ts";
export { strengthHelper } from "./strength-helper.ts";
export { ShareElsewhere } from "./strength/share-elsewhere.ts";
export type { AskPosted, ToldBack, Waiting } from "./strength/share-elsewhere.ts";
export { runShared } from "./strength/run-shared.ts";
export type { SharedWork } from "./strength/shared-work.ts";
export { leastShared, mostHelpers } from "./strength/share-split.ts";
export type { ElementResult } from "./strength/element-result.ts";
export type { HoldNeeded } from "./strength/holds-needed.ts";
export type { UnitStrength } from "./strength/unit-strength.ts";
export type { StrengthReason } from "./strength/strength-reason.ts";
export { confirmOpening, openingChart, otherHalfOfChart, sharedOpeningChart, usualFineness } from "./opening-chart.ts";
export { RunHalves } from "./chart/run-halves.ts";
export type { HalfWord } from "./chart/other-half.ts";
export { chartSteel, openingPriceStep, priceSteps } from "./price-step.ts";
export type { OpeningSteel, Priced, PriceStep } from "./price-step.ts";
export type { ChartAnswerOf } from "./chart/opening-chart.ts";
export type { Confirmation } from "./chart/confirm-place.ts";
export { sideAsDrawn } from "./chart/chart-side.ts";
export { STEP_MM as chartStepMm } from "./chart/chart.ts";
export type {
  ChartAnswer,
  ChartColumn,
  ChartDistances,
  ChartException,
  ChartFace,
  ChartFineness,
  ChartReason,
  ChartRequest,
  ChartSide,
  ChartStep,
  ChartStretch,
  OpeningChart,
} from "./chart/chart.ts";
export { premium } from "./cost/premium.ts";
export { premiumDifference } from "./cost/premium-difference.ts";
export { changesOnElevation, changesOnPlan, storeyLike } from "./drawing/change-places.ts";
export type { PlacedChange } from "./drawing/change-places.ts";
export { compassOf } from "./drawing/compass-of.ts";
export { convexHull } from "./drawing/convex-hull.ts";
export { foldLines } from "./drawing/corrugation.ts";
export type { FoldLine, PaperRect } from "./drawing/corrugation.ts";
export { brokenWays } from "./drawing/broken-ways.ts";
export type { BrokenWay } from "./drawing/broken-ways.ts";
export { detailsOf } from "./drawing/detail-model.ts";
export { openingFrame } from "./catalog/sections/frame-tubes.ts";
export type { Detail, DetailPart, DetailWeld } from "./drawing/detail.ts";
export { openingPlaces, planOpeningPlaces } from "./drawing/dimension-places.ts";
export { elevationFaces, onPaper } from "./drawing/elevation-faces.ts";
export type { ElevationFace, ElevationOpening, SideFace } from "./drawing/elevation-faces.ts";
export { elevationModel, levelsOf } from "./drawing/elevation-model.ts";
export type { ElevationModel, Level } from "./drawing/elevation-model.ts";
export { elevationPads } from "./drawing/elevation-pads.ts";
export type { ElevationPad } from "./drawing/elevation-pads.ts";
export { elevationPosts, sectionWidthMm } from "./drawing/elevation-posts.ts";
export type { ElevationPost } from "./drawing/elevation-posts.ts";
export { gridLetter } from "./drawing/grid-letter.ts";
export { gridOf } from "./drawing/grid-lines.ts";
export type { Grid, GridLine } from "./drawing/grid-lines.ts";
export { isoPoint } from "./drawing/iso-point.ts";
export { isometricModel } from "./drawing/isometric-model.ts";
export { isometricSize, pictureSize } from "./drawing/picture-size.ts";
export type { IsoAdded, IsoFace, IsometricModel, IsoThing, IsoUnit } from "./drawing/isometric-model.ts";
export { isSeen } from "./drawing/line-of-sight.ts";
export { onFaceMm } from "./drawing/on-face.ts";
export { pathStrokes } from "./drawing/path-strokes.ts";
export type { DrawnStretch, PathStroke } from "./drawing/path-strokes.ts";
export { isometricEye, isometricPlace, onPicture, pictureEye } from "./drawing/picture-eye.ts";
export type { EyePlace, IsoPoint, PictureEye } from "./drawing/picture-eye.ts";
export { placedObjects } from "./drawing/placed-object.ts";
export type { PlacedObject } from "./drawing/placed-object.ts";
export { cutAboveMm, onWall, planModel } from "./drawing/plan-model.ts";
export type { PlanModel, PlanUnit, PlanWall, WallRun } from "./drawing/plan-model.ts";
export { project, unproject } from "./drawing/projection.ts";
export type { Projection, ViewPoint } from "./drawing/projection.ts";
export { lineOf, onSection } from "./drawing/section-line.ts";
export type { SectionLine, SectionPlane } from "./drawing/section-line.ts";
export { fullestPlane, sectionModel } from "./drawing/section-model.ts";
export type { SectionBeyond, SectionCut, SectionModel, SectionWall } from "./drawing/section-model.ts";
export { crossingsAt, pathInSection, pathOnPicture, strandsOnElevation } from "./drawing/seen-strands.ts";
export type { Crossing, SeenPath } from "./drawing/seen-strands.ts";
export { seenOnElevation, seenOnIsometric, seenOnPlan } from "./drawing/seen-objects.ts";
export type { SeenObject } from "./drawing/seen-objects.ts";
export type { Side } from "./drawing/side.ts";
export { compareVerdicts, isWorse, worsenedSubjects } from "./impact/compare-verdicts.ts";
export type { MarkTurned, UnitTurned, VerdictsCompared } from "./impact/compare-verdicts.ts";
export type { Drawn } from "./impact/drawn.ts";
export { impact } from "./impact/impact.ts";
export type { Impact } from "./impact/impact.ts";
export { stoodOnBy } from "./impact/stood-on.ts";
export type { StoodOn } from "./impact/stood-on.ts";
export type { SupportLost } from "./impact/supports-lost.ts";
export { governingFirst } from "./flow/governing-first.ts";
export { loadFlow } from "./load-flow.ts";
export type { FlowRequest, LoadFlow } from "./load-flow.ts";
export type { PlacedStrand, RunForces } from "./flow/run-forces.ts";
export type { Reaction, SolvedStretch } from "./flow/solved-path.ts";
export { deflectionFactor, largestOf } from "./flow/deflected-shape.ts";
export type { DeflectedShape, MovedLine } from "./flow/deflected-shape.ts";
export type { Extreme, MemberForces, MemberPlace } from "./flow/member-forces.ts";
export { remedies, remedySearch, remedySearchShared } from "./remedies.ts";
export type { Draw, RemediesAsked, RemedySearch, RemedySearchShared } from "./remedies.ts";
export type { RemedyAnswer } from "./remedies/remedies-of.ts";
export { hasRemedies } from "./remedies/ladders-of.ts";
