// numbers.js: assumptions as a reader writes them: a rate of 0.05 is shown as 5.0 %. Pure.

const isShare = (unit) => unit.startsWith("%");

/** The number shown for a stored value, without its unit. */
export function shown(value, { unit, step }) {
  const factor = isShare(unit) ? 100 : 1;
  // Twelve modules are 12, not 12.00.
  if (factor === 1 && Number.isInteger(value)) return String(value);
  const digits = Math.max(0, Math.min(6, -Math.floor(Math.log10(step * factor) + 1e-9)));
  return (value * factor).toFixed(digits);
}

/** The stored value for what a reader typed, or why it cannot be taken. Takes 5, 5.0, 5,0 and "5 %". */
export function typed(text, { unit, from, to, step }) {
  const cleaned = text.trim().replace(unit, "").replace("%", "").trim();
  const number = /^[-−+]?\d+([.,]\d+)?$|^[-−+]?[.,]\d+$/.test(cleaned) ? Number(cleaned.replace("−", "-").replace(",", ".")) : NaN;
  const value = Number((isShare(unit) ? number / 100 : number).toPrecision(12));
  const range = `expected a number from ${shown(from, { unit, step })} to ${shown(to, { unit, step })} ${unit}`;
  if (Number.isNaN(value)) return { problem: `Found "${text.trim()}", ${range}.` };
  return value < from || value > to ? { problem: `Found ${cleaned}, ${range}.` } : { value };
}
