/**
 * The plate a tie between units stands for where it says nothing else: 150 × 10, 300 mm between the middles of its welds, of
 * which each unit has two of 150 mm with a leg of 5 mm along the plate's edges. Common practice, no published source.
 */
export const statedTie = { widthMm: 150, thicknessMm: 10, lengthMm: 300, weldMm: 150, legMm: 5 } as const;
