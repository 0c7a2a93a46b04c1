/** Solids and cuts that reach into each other by less than this only touch, mm. Coordinates are whole micrometres. */
export const touchMm = 1;

/** A part rests on another only if it laps it by this much in plan, mm. Common practice, no published source. */
export const leastLapMm = 25;

/**
 * An end of a beam this little past the middle of its support, or past it by no more than it is deep, is its seating and no
 * overhang, mm. Common practice, no published source.
 */
export const beamSeatingMm = 300;

/** The largest gap taken up by packing at a seat, mm; rail over rail is 18.5. Common practice, no published source. */
export const mostPackingMm = 25;

/** Below this angle two rails run along each other and do not cross; sine of 10°. Common practice. */
export const leastCrossingSine = 0.173648;

/**
 * A resultant nearer than this to the edge of its bearings is not settled by statics, mm: a unit's weight is taken at its
 * middle, its doors draw the true centroid to that end. Common practice, no published source.
 */
export const balanceMarginMm = 300;

/** A resultant this little outside its bearings, or inside their outline, is on their edge, mm. */
export const balanceMm = 1;
