import { dictionary } from "@zxcvbn-ts/language-common";

/** The 49,233 commonest, in lower case; ASVS 5 V6.2.4 asks for the first 3,000 of those that are long enough. */
const common: ReadonlySet<string> = new Set(dictionary["passwords-common"]);

/** Whether a password, in small or capital letters, is one of those tried first. */
export const isCommonPassword = (password: string): boolean => common.has(password.normalize("NFC").toLowerCase());
