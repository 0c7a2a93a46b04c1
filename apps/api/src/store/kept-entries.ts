import type { RecordEntry } from "@cornerway/schema";
import { KeptTexts } from "./kept-texts.ts";
import type { EntryHead } from "./reads.ts";

const mostCharacters = 32_000_000;

/** Entries last sent, by the head of their record's tree, which no other entry of any record has. */
const texts = new KeptTexts(mostCharacters);

const tagOf = ({ head, withheld }: Pick<EntryHead, "head" | "withheld">): string =>
  withheld ? `${head} withheld` : head;

/** An entry as JSON, when it was sent before; undefined when it was not. */
export function keptEntryText(entry: EntryHead): { number: number; tag: string; text: string } | undefined {
  const tag = tagOf(entry);
  const text = texts.get(tag);
  return text === undefined ? undefined : { number: entry.number, tag, text };
}

export function keepEntryText(entry: RecordEntry): { number: number; tag: string; text: string } {
  const { number, head, payload } = entry;
  const tag = tagOf({ head, withheld: payload === null });
  return { number, tag, text: texts.keep(tag, JSON.stringify(entry)) };
}
