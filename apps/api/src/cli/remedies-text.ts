import {
  cautionLine,
  cautions,
  chartSentence,
  chartVerdictWords,
  elementNames,
  elementOf,
  figuresIn,
  markSentences,
  remedyLessSentence,
  remedyRefusalSentence,
  remedyWholeSentence,
  settleFirstSentence,
  tagOf,
  type Mark,
  type Remedy,
  type RemedyList,
  type Scheme,
} from "@cornerway/schema";

const figures = figuresIn("SI");

/** Marks that something is known for, one a line, by the id that `--mark` takes. */
export function marksText(scheme: Scheme, marks: readonly Mark[]): string {
  const names = elementNames(scheme);
  return lines([
    cautionLine,
    "",
    ...(marks.length === 0 ? ["Nothing here asks for a remedy that is known."] : []),
    ...marks.map((mark) => `${mark.id}\n  ${mark.verdict}: ${markSentences(mark, names, "architect").body}`),
  ]);
}

/** The ways to settle a mark as text for people: cheapest first, what is for the engineer apart, what does not do, cautions. */
export function remediesText(scheme: Scheme, list: RemedyList): string {
  const { markId, offered, apart, failed, looked, proved, leftOut, settleFirst } = list;
  return lines([
    cautionLine,
    "",
    `Ways to settle ${markId}. ${looked} changes looked at, ${proved} run through strength whole, ${leftOut} left out.`,
    ...(settleFirst === undefined ? [] : [settleFirstSentence({ markId, settleFirst }, namer(scheme))]),
    "",
    "CHEAPEST FIRST",
    ...(offered.length === 0 ? ["  none"] : offered.flatMap((remedy) => remedyLines(scheme, remedy))),
    "",
    "NEEDS THE ENGINEER, WITHOUT A PRICE",
    ...(apart.length === 0 ? ["  none"] : apart.flatMap((remedy) => remedyLines(scheme, remedy))),
    "",
    "DO NOT DO",
    ...failed.map(
      (one) => `  ${remedyWholeSentence(one, namer(scheme), figures)} ${remedyRefusalSentence(one.why, namer(scheme))}`,
    ),
    "",
    "CAUTIONS",
    ...cautions.map((caution) => `  ${caution}`),
    "  Rates are for show: none has a source.",
  ]);
}

function remedyLines(scheme: Scheme, remedy: Remedy): string[] {
  const nameOf = namer(scheme, remedy);
  const { verdict, under, premium, quantities, governing, why, less, stillOpen } = remedy;
  const steel = quantities.steel.map(
    ({ section, lengthM, massKg }) =>
      `${section}${lengthM === null ? "" : ` ${lengthM.toFixed(2)} m`} ${Math.round(massKg)} kg`,
  );
  return [
    `  ${remedyWholeSentence(remedy, nameOf, figures)}`,
    `    ${chartVerdictWords(verdict, under)}.${premium === null ? "" : ` ${premium.money.toFixed(0)} ${premium.currency}.`}`,
    `    ${steel.length === 0 ? "no steel" : steel.join(", ")}; ${quantities.pads} pads, ${quantities.connections} connections, ${quantities.weldM.toFixed(1)} m of weld`,
    ...(why === undefined ? [] : [`    ${chartSentence(why, nameOf)}`]),
    ...governing.map(
      ({ partId, utilisation }) =>
        `    ${chartSentence({ kind: "within", partId, use: utilisation ?? Infinity }, nameOf)}`,
    ),
    ...(verdict === "needs the engineer" ? [] : [`    ${remedyLessSentence(less, nameOf, figures)}`]),
    ...(stillOpen.length === 0 ? [] : [`    Still open after it: ${stillOpen.join(", ")}.`]),
  ];
}

/** Tags of what is drawn and of what an option sets. */
function namer(scheme: Scheme, remedy?: Remedy): (id: string) => string {
  const set = (remedy?.operations ?? []).flatMap((operation) => elementOf(operation) ?? []);
  const names = new Map([...elementNames(scheme), ...set.map((element) => [element.id, tagOf(element)] as const)]);
  return (id) => names.get(id) ?? id;
}

const lines = (text: readonly string[]): string => `${text.join("\n")}\n`;
