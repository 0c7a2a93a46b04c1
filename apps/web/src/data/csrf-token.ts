/** The token of this sign-in, which every write carries; set when the session is read. */
export const csrfToken = { value: "" };
