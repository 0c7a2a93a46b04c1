import type { Detail } from "@cornerway/engine";

/** True where details are wanted and what is chosen has some. */
export const showsDetails = ({ details, detailed }: { details: readonly Detail[]; detailed: boolean }): boolean =>
  detailed && details.length > 0;
