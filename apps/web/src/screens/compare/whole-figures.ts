import type { Assessment, Pair, Premium, Scheme, UnitSystem } from "@cornerway/schema";
import { figuresIn } from "@cornerway/schema";
import { spokenLength } from "../../units/drawn-length.ts";
import { moneyText } from "../../wording/money.ts";
import { eachSide, type ComparedSides } from "./compared-lines.ts";

/** One figure of the whole building in both revisions, and by how much they are apart; null where it is not known. */
export type WholeFigure = { name: string; before: string | null; after: string | null; by: string | null };

/** The figures two revisions are held against each other by; readers of plain words get no force. */
export function wholeFigures(
  schemes: Pair<Scheme>,
  { assessment, premium }: ComparedSides,
  units: UnitSystem,
  plain: boolean,
): WholeFigure[] {
  const { force } = figuresIn(units);
  const long = (mm: number) => spokenLength(mm, units);
  const count = (of: (scheme: Scheme) => number) => eachSide(schemes, of);
  const figures = [
    figure(
      "Containers",
      count(({ containers }) => containers.length),
      String,
    ),
    figure(
      "Openings",
      count(({ openings }) => openings.length),
      String,
    ),
    figure(
      "Posts and beams added",
      count(({ posts, beams }) => posts.length + beams.length),
      String,
    ),
    figure(overhangName(assessment), eachSide(assessment, farthestMm), long),
    ...(plain ? [] : [figure("Heaviest reaction", eachSide(assessment, heaviestKn), force)]),
  ];
  const currency = premium.after?.currency ?? premium.before?.currency;
  if (currency === undefined) return figures;
  const money = (amount: number) => moneyText(amount, currency);
  return [...figures, figure("Premium over the plain stack", eachSide(premium, totalOf), money)];
}

function figure(name: string, { before, after }: Pair<number | null>, say: (value: number) => string): WholeFigure {
  const by = before === null || after === null ? null : signed(after - before, say);
  return { name, before: before === null ? null : say(before), after: after === null ? null : say(after), by };
}

/** A difference with its sign: "+ 1.20 m", "− 2", "none". */
export function signed(by: number, say: (value: number) => string): string {
  const text = say(Math.abs(by));
  if (by === 0 || text === say(0)) return "none";
  return `${by > 0 ? "+" : "−"} ${text}`;
}

const tips = (assessment: Assessment | null): boolean =>
  assessment?.marks.some(({ fact }) => fact.kind === "tips-over") ?? false;

/** What tips bears on nothing to be measured from: where anything does, the overhang is that of the rest. */
const overhangName = ({ before, after }: ComparedSides["assessment"]): string =>
  tips(before) || tips(after) ? "Farthest overhang, of what stands" : "Farthest overhang";

const farthestMm = (assessment: Assessment | null): number | null =>
  assessment === null
    ? null
    : Math.max(0, ...assessment.marks.map(({ fact }) => (fact.kind === "overhang" ? fact.lengthMm : 0)));

const heaviestKn = (assessment: Assessment | null): number | null =>
  assessment === null ? null : Math.max(0, ...assessment.statics.reactions.map(({ forceKn }) => forceKn));

const totalOf = (premium: Premium | null): number | null => premium?.total ?? null;
