// amount.js: amounts as people write them in tables: −€1,200, 980 €, US$5, CHF 5, 12 %, 3.5 kWh.

const sign = "(?:[A-Z]{0,2}\\$|[€£¥₹]|(?:R|[A-Z]{3})\\u00a0)";
const amount = new RegExp(`^[\\s−–+-]*${sign}?[\\s−-]*\\d[\\d\\s.,'’]*(\\s?(%|k?Wh|kW|[A-Z]{3}|years?|R|[A-Z]{0,2}\\$|[€£¥₹]))?$`);
const before = new RegExp(`^([\\s−–+-]*)${sign}`);

/** Whether a text is an amount, or stands for none. */
export const isAmount = (text) => text === "" || amount.test(text);

/** A text as a number, where it is an amount with any unit behind it; the text itself otherwise. */
export function valueOf(text) {
  const bare = text.replace(before, "$1");
  const found = /^\s*([−–+-]?)\s*(\d[\d\s.,'’]*)/.exec(bare);
  if (found === null) return text;
  const rest = bare.slice(found[0].length);
  // A sign behind the number is written where a full stop parts thousands.
  const number = Number(withPoint(found[2].replace(/[\s'’]/g, ""), /^(?:[€£¥₹]|[A-Z]{0,2}\$)/.test(rest.trim())));
  return Number.isNaN(number) || /\d/.test(rest) ? text : /[−–-]/.test(found[1]) ? -number : number;
}

/** Digits with a point for the decimals: of two marks the last is theirs; one mark before three digits parts thousands if it is a comma, or a stop where the sign stands behind. */
function withPoint(digits, isSignBehind) {
  const last = Math.max(digits.lastIndexOf("."), digits.lastIndexOf(","));
  if (last < 0) return digits;
  const mark = digits[last];
  const other = mark === "." ? "," : ".";
  const isOnce = digits.indexOf(mark) === last;
  const parts = !isOnce || (!digits.includes(other) && digits.length - last === 4 && (mark === "," || isSignBehind));
  const whole = digits.slice(0, last).replace(/[.,]/g, "");
  return parts ? digits.replace(/[.,]/g, "") : `${whole}.${digits.slice(last + 1)}`;
}
