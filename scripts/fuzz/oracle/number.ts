/**
 * A number as written in a cell, character by character: sign, figures, one point or (without a point) one comma,
 * exponent. Undefined for anything else.
 */
export function numberByCharacters(written: string): number | undefined {
  const text = written.trim();
  let at = 0;
  let negative = false;
  if ("+-−".includes(text.charAt(at)) && text !== "") {
    negative = text.charAt(at) !== "+";
    at += 1;
  }
  let [digits, decimals, marks] = ["", 0, 0];
  for (; at < text.length; at += 1) {
    const letter = text.charAt(at);
    const isMark = letter === "." || (letter === "," && !text.includes("."));
    if (letter >= "0" && letter <= "9") {
      digits += letter;
      decimals += marks;
    } else if (isMark && marks === 0) marks = 1;
    else break;
  }
  if (digits === "") return undefined;
  let exponent = 0;
  if (at < text.length) {
    const rest = text.slice(at + 1);
    const figures = rest.startsWith("-") || rest.startsWith("+") ? rest.slice(1) : rest;
    if (text.charAt(at).toLowerCase() !== "e" || figures === "" || [...figures].some((one) => one < "0" || one > "9"))
      return undefined;
    exponent = Number(rest);
  }
  const value = Number(`${digits}e${exponent - decimals}`);
  return Number.isFinite(value) ? (negative ? -value : value) : undefined;
}
