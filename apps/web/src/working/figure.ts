/** A number of a calculation as it is printed: four significant figures, a thin gap each three digits, powers written out. */
export function figure(value: number): string {
  if (value === 0) return "0";
  const exponent = Math.floor(Math.log10(Math.abs(value)));
  if (exponent >= 7 || exponent < -3) {
    const mantissa = trimmed((value / 10 ** exponent).toPrecision(4));
    return `${signed(mantissa)} × 10${raised(exponent)}`;
  }
  const places = Math.max(0, 3 - exponent);
  const [whole = "", part] = trimmed(Math.abs(value).toFixed(places)).split(".");
  return `${value < 0 ? "−" : ""}${grouped(whole)}${part === undefined ? "" : `.${part}`}`;
}

const trimmed = (text: string): string => (text.includes(".") ? text.replace(/\.?0+$/, "") : text);

const signed = (text: string): string => text.replace("-", "−");

/** Four digits stay together, as look says; more are set in threes. */
const grouped = (digits: string): string => (digits.length < 5 ? digits : digits.replaceAll(/\B(?=(\d{3})+$)/g, " "));

const raisedDigits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const raised = (exponent: number): string =>
  `${exponent < 0 ? "⁻" : ""}${Array.from(String(Math.abs(exponent)), (digit) => raisedDigits[Number(digit)]).join("")}`;
