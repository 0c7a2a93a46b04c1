import { z } from "zod";
import { digestOf } from "./canonical.ts";
import { lastInspection, positionOf, surveyState } from "./follow-survey.ts";
import { ElementId } from "./ids.ts";
import type { Operation } from "./operation.ts";
import type { Override } from "./override.ts";
import { MemberName } from "./part-names.ts";
import { ContainerType, type Container, type Scheme } from "./scheme.ts";
import { SurveyState, type Inspection, type SurveyedContainer } from "./survey.ts";

/** In what a scheme says otherwise than the survey of the container that is assigned to one of its units. */
export const SurveyDeparture = z
  .discriminatedUnion("what", [
    z.strictObject({ what: z.literal("no such unit"), elementId: ElementId }),
    z.strictObject({
      what: z.literal("other type"),
      elementId: ElementId,
      drawn: ContainerType,
      surveyed: ContainerType,
    }),
    z.strictObject({ what: z.literal("not accepted"), elementId: ElementId, state: SurveyState }),
    z.strictObject({
      what: z.literal("thickness"),
      elementId: ElementId,
      member: MemberName,
      /** Null where the scheme has the assumed thickness. */
      drawnUm: z.int().nullable(),
      measuredUm: z.int(),
    }),
    z.strictObject({
      what: z.literal("tare"),
      elementId: ElementId,
      drawnKg: z.int().nullable(),
      plateKg: z.int(),
    }),
  ])
  .meta({ id: "SurveyDeparture" });
export type SurveyDeparture = z.infer<typeof SurveyDeparture>;

/** Where a scheme departs from the survey of one container; nothing while it is assigned nowhere. */
export function surveyDepartures(scheme: Scheme, container: SurveyedContainer): SurveyDeparture[] {
  const elementId = positionOf(container)?.elementId;
  if (elementId === undefined) return [];
  const unit = scheme.containers.find(({ id }) => id === elementId);
  if (unit === undefined) return [{ what: "no such unit", elementId }];
  const state = surveyState(container);
  const inspection = lastInspection(container);
  return [
    ...(unit.type === container.type
      ? []
      : [{ what: "other type", elementId, drawn: unit.type, surveyed: container.type } as const]),
    ...(state === "accepted" ? [] : [{ what: "not accepted", elementId, state } as const]),
    ...(inspection === undefined ? [] : measuredOtherwise(scheme, unit, inspection)),
  ];
}

function measuredOtherwise(scheme: Scheme, unit: Container, { plate, thicknesses }: Inspection): SurveyDeparture[] {
  const elementId = unit.id;
  const [drawnKg, plateKg] = [unit.plateTareKg ?? null, plate.tareKg];
  const thin = thicknesses.flatMap(({ member, thicknessUm: measuredUm }): SurveyDeparture[] => {
    const drawnUm = overrideOf(scheme, elementId, member)?.thicknessUm ?? null;
    return drawnUm === measuredUm ? [] : [{ what: "thickness", elementId, member, drawnUm, measuredUm }];
  });
  return plateKg === null || drawnKg === plateKg ? thin : [...thin, { what: "tare", elementId, drawnKg, plateKg }];
}

/** The operations that put what was found of a container on the unit it is assigned to; none where it is there. */
export function surveyOperations(
  scheme: Scheme,
  unit: Container,
  { containerNumber }: Pick<SurveyedContainer, "containerNumber">,
  inspection: Inspection,
): Operation[] {
  const source = surveySource(containerNumber, inspection);
  return measuredOtherwise(scheme, unit, inspection).flatMap((departure): Operation[] => {
    if (departure.what === "tare")
      return [{ kind: "container.change", container: { ...unit, plateTareKg: departure.plateKg } }];
    if (departure.what !== "thickness") return [];
    const { member, measuredUm: thicknessUm } = departure;
    const found = overrideOf(scheme, unit.id, member);
    if (found !== undefined) return [{ kind: "override.change", override: { ...found, thicknessUm, source } }];
    return [
      {
        kind: "override.set",
        override: { id: idOf(unit.id, member), elementId: unit.id, member, thicknessUm, source },
      },
    ];
  });
}

/** The operations that take off a unit what the survey of this container put there. */
export function withdrawOperations(
  scheme: Scheme,
  elementId: string,
  { containerNumber }: Pick<SurveyedContainer, "containerNumber">,
): Operation[] {
  const unit = scheme.containers.find(({ id }) => id === elementId);
  if (unit === undefined) return [];
  const of = sourceHead(containerNumber);
  const own = scheme.overrides.filter((each) => each.elementId === elementId && each.source.startsWith(of));
  const { plateTareKg, ...rest } = unit;
  return [
    ...own.map(({ id }): Operation => ({ kind: "override.remove", id })),
    ...(plateTareKg === undefined ? [] : [{ kind: "container.change", container: rest } as const]),
  ];
}

/** What an override from a survey names as its source. */
export const surveySource = (containerNumber: string, { day, by }: Pick<Inspection, "day" | "by">): string =>
  `${sourceHead(containerNumber)} of ${day}, by ${by.name}`.slice(0, 300);

const sourceHead = (containerNumber: string): string => `Survey of ${containerNumber}`;

const overrideOf = (scheme: Scheme, elementId: string, member: string): Override | undefined =>
  scheme.overrides.find((each) => each.elementId === elementId && each.member === member);

/** The same for the same member of a unit, so that it is never found twice. */
const idOf = (elementId: string, member: string): string => `found-${digestOf([elementId, member]).slice(0, 24)}`;
