/** What was told, with its full stop. */
export const asSentence = (told: string): string => (/[.!?]$/.test(told) ? told : `${told}.`);
