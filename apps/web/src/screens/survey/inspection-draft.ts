import {
  damageKinds,
  memberNames,
  NewInspection,
  type DamageKind,
  type MemberName,
  type Photo,
  type UnitSystem,
} from "@cornerway/schema";
import { readLengthUm } from "../../units/length.ts";

/** One damage as it is typed. */
export interface TypedDamage {
  key: string;
  member: MemberName;
  place: string;
  kind: DamageKind;
  size: string;
}

/** An inspection as it is typed, every field as text. */
export interface TypedInspection {
  day: string;
  approvalNumber: string;
  madeIn: string;
  tareKg: string;
  maxGrossKg: string;
  stackingKg: string;
  rackingKn: string;
  measuredWith: string;
  floor: string;
  text: string;
  damages: readonly TypedDamage[];
  thickness: Readonly<Partial<Record<MemberName, string>>>;
  photos: readonly Photo[];
}

export const emptyInspection = (day: string): TypedInspection => ({
  ...{ day, approvalNumber: "", madeIn: "", tareKg: "", maxGrossKg: "", stackingKg: "", rackingKn: "" },
  ...{ measuredWith: "", floor: "", text: "", damages: [], thickness: {}, photos: [] },
});

/** Members in the order a surveyor walks round a container. */
export const surveyedMembers: readonly MemberName[] = memberNames;
export const surveyedKinds: readonly DamageKind[] = damageKinds;

/** What was typed as an inspection, or the first field that cannot be taken with what is wrong with it. */
export function readInspection(
  typed: TypedInspection,
  id: string,
  units: UnitSystem,
): { ok: true; inspection: NewInspection } | { ok: false; why: string } {
  const sizes = typed.damages.map(({ size }) => readGauge(size, units));
  const measured = Object.entries(typed.thickness).filter(([, words]) => words.trim() !== "");
  const given = {
    ...{ step: "inspected", id, day: typed.day },
    plate: {
      ...{ approvalNumber: line(typed.approvalNumber), madeIn: line(typed.madeIn) },
      ...{ tareKg: whole(typed.tareKg), maxGrossKg: whole(typed.maxGrossKg), stackingKg: whole(typed.stackingKg) },
      rackingN: typed.rackingKn.trim() === "" ? null : Math.round(Number(typed.rackingKn) * 1000),
    },
    damages: typed.damages.map(({ member, place, kind }, at) => ({
      member,
      place: place.trim(),
      kind,
      sizeUm: sizes[at],
    })),
    thicknesses: measured.map(([member, words]) => ({ member, thicknessUm: readGauge(words, units) })),
    ...{ measuredWith: line(typed.measuredWith), floor: line(typed.floor), text: line(typed.text) },
    photos: typed.photos,
  };
  const read = NewInspection.safeParse(given);
  return read.success ? { ok: true, inspection: read.data } : { ok: false, why: faultOf(read.error.issues[0]) };
}

const line = (text: string): string | null => (text.trim() === "" ? null : text.trim());
const whole = (text: string): number | null => (text.trim() === "" ? null : Number(text));

/** A small length: a bare number is millimetres, inches for those who read US units. */
function readGauge(text: string, units: UnitSystem): number {
  const bare = /^\d+(?:[.,]\d+)?$/.test(text.trim());
  const read = readLengthUm(bare ? `${text.trim()}${units === "US" ? '"' : " mm"}` : text, units);
  return read.ok ? read.value : NaN;
}

const fieldWords: Record<string, string> = {
  day: "The day of the inspection",
  madeIn: "Made, year and month",
  tareKg: "Tare",
  maxGrossKg: "Greatest gross mass",
  stackingKg: "Stacking at 1.8 g",
  rackingN: "Racking test",
  photos: "A photo of the plate and of what was found",
  damages: "A damage: its place and size",
  thicknesses: "A measured thickness",
};

function faultOf(issue: { path: PropertyKey[]; message: string } | undefined): string {
  const names = (issue?.path ?? []).map(String);
  const name = names.findLast((each) => each in fieldWords) ?? names[0] ?? "";
  return `${fieldWords[name] ?? name} is missing or cannot be taken.`;
}
