/** Half the size of a tag's hexagon, px. */
export const hexagonHalfPx = { widthPx: 11.5, heightPx: 9 } as const;
