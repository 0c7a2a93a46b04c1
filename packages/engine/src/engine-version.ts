/** Changes whenever the same scheme could get another answer. */
export const engineVersion = "0.3.43";
