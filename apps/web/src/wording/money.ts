/**
 * Money as people read it: whole units of the currency, to the nearest ten while it is estimated; its sign before the
 * figure where there is one, its code behind where there is not.
 */
export function moneyText(amount: number, currency: string): string {
  const rounded = Math.round(Math.abs(amount) / 10) * 10;
  const minus = amount < 0 && rounded > 0 ? "−" : "";
  const figures = String(rounded).replace(/\B(?=(\d{3})+$)/g, ",");
  return currency === "USD" ? `${minus}$${figures}` : `${minus}${figures} ${currency}`;
}
