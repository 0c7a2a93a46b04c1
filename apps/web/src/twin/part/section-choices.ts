import { namedSections } from "@cornerway/engine";

const choice = ({ name }: { name: string }) => [name, name] as const;

/** The sections of the catalogue; jambs, headers and sills are tubes, channels and angles. */
export const sectionChoices = {
  any: namedSections.map(choice),
  framing: namedSections.filter(({ kind }) => kind !== "I").map(choice),
} as const;
