/** What a person typed, in the integers the scheme stores, or what is wrong with it and what would do. */
export type ReadQuantity = { ok: true; value: number } | { ok: false; why: string };
