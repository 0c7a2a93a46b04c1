/** What is this near to a face in depth is drawn as on it, mm: fittings and posts in the wall stand up to 300 behind. */
export const onFaceMm = 480;
