/**
 * Custom properties of the styles, as they are declared.
 *
 * @param css text of `tokens.css`
 * @returns colours by name, of light paper and of dark; one that dark does not change has its light value
 * @example coloursOf(":root{--ink:#17211f}@media (prefers-color-scheme: dark){:root{--ink:#ebeee8}}").get("ink") // { light: "#17211f", dark: "#ebeee8" }
 */
export function coloursOf(css: string): Map<string, { light: string; dark: string }> {
  const [plain = "", ...media] = css.split("@media");
  const dark = declared(media.find((part) => part.includes("prefers-color-scheme")) ?? "");
  return new Map([...declared(plain)].map(([name, light]) => [name, { light, dark: dark.get(name) ?? light }]));
}

function declared(css: string): Map<string, string> {
  const found = css.matchAll(/--([a-z0-9-]+):\s*(#[0-9a-f]{3,8})\b/gi);
  return new Map([...found].map(([, name = "", colour = ""]) => [name, colour]));
}
