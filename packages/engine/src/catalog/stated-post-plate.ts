/** The base plate of an added post where none is drawn: how far it stands out all round; common practice, no published source. */
export const statedPostPlate = { outstandMm: 50, thicknessMm: 20 } as const;
