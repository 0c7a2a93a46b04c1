/** With its first sign a capital, as a sentence begins. */
export const capitalised = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
