const day = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short" });
const dayAndTime = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});
const wholeDate = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", year: "numeric" });

/** "11 Mar" */
export const dayOf = (moment: string | number): string => day.format(new Date(moment));

/** "11 Mar 16:20" */
export const dayAndTimeOf = (moment: string | number): string => dayAndTime.format(new Date(moment)).replace(",", "");

/** "11 Mar 2027" */
export const dateOf = (moment: string | number): string => wholeDate.format(new Date(moment));
