const keyOf = (personId: string) => `cornerway.first-steps.${personId}`;

/** Whether this person has gone through the first steps, or put them away, in this browser. */
export const tourSeen = {
  by: (personId: string): boolean => localStorage.getItem(keyOf(personId)) !== null,
  put: (personId: string): void => localStorage.setItem(keyOf(personId), "seen"),
};
