const written = new Intl.NumberFormat("en-US", { maximumFractionDigits: 3 });

/** A figure in prose, a comma between its thousands: 30,480. */
export const inThousands = (figure: number): string => written.format(figure);
