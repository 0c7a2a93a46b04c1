/** Flags of 0 and 1 as a short text, equal for equal flags of one number. */
export function flagsKey(flags: Uint8Array): string {
  let key = "";
  for (let from = 0; from < flags.length; from += FLAGS_PER_CHARACTER) {
    const end = Math.min(flags.length, from + FLAGS_PER_CHARACTER);
    let code = 0;
    for (let n = from; n < end; n++) code = code * 2 + (flags[n] ? 1 : 0);
    key += String.fromCharCode(code);
  }
  return key;
}

const FLAGS_PER_CHARACTER = 16;
