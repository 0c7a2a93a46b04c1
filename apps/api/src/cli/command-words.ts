import { parseArgs } from "node:util";

/** An option that takes the word after it. */
export const text = { type: "string" } as const;
/** An option that stands by itself. */
export const flag = { type: "boolean" } as const;

type Options = Record<string, typeof text | typeof flag>;
type Said<O extends Options> = ReturnType<typeof parseArgs<{ args: string[]; options: O; allowPositionals: true }>>;

/** The one file a command is about, and what is said beside it; undefined when the words are not those it takes. */
export function commandWords<O extends Options>(
  words: readonly string[],
  options: O,
): { file: string; said: Said<O>["values"] } | undefined {
  const parsed = parsedWords(words, options);
  const [file, ...more] = parsed?.positionals ?? [];
  return parsed === undefined || file === undefined || more.length > 0 ? undefined : { file, said: parsed.values };
}

function parsedWords<O extends Options>(words: readonly string[], options: O): Said<O> | undefined {
  try {
    return parseArgs({ args: [...words], options, allowPositionals: true });
  } catch (error) {
    if (error instanceof TypeError) return undefined; // words it does not know
    throw error;
  }
}
