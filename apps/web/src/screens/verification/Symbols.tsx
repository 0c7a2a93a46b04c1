/** A letter with what stands below its line: "K_z", "F_y". */
const lowered = /\b([A-Za-z])_([A-Za-z0-9]+)\b/g;

/** A sentence of the manual with its symbols as one writes them. */
export const Symbols = ({ text }: { text: string }) => {
  const parts = text.split(lowered);
  // Every third part is plain; the two after it are a letter and what is lowered.
  return parts.map((part, at) =>
    at % 3 === 0 ? part : at % 3 === 1 ? <i key={at}>{part}</i> : <sub key={at}>{part}</sub>,
  );
};
