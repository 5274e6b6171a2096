import { type Season, type Stroke, season } from "../charts/season.ts";

const SVG = "http://www.w3.org/2000/svg";

/** Paths of a season strip by their class, as `SeasonStrip.astro` draws it. @example stripPaths(season).thin // "M7.2 7H28.4" */
export function stripPaths(found: Season | undefined): Record<string, string> {
  const place = (number: number) => String(Math.round(number * 10) / 10);
  const stroke = ({ from, to }: Stroke) => `M${place(from)} 7H${place(to)}`;
  const quarters = "M0 7H36M9 3.5v7M18 3.5v7M27 3.5v7";
  if (found === undefined) return { quarters };
  return {
    quarters,
    thin: stroke(found.thin),
    thick: found.thick.map(stroke).join(""),
    median: `M${place(found.median)} 0v14`,
  };
}

/**
 * A season strip for a script of the page, with a line at one third of the month; its words stand beside it.
 *
 * @param counts records by third of the month
 * @param third where the line stands
 */
export function drawStrip(counts: readonly number[], third: number): SVGElement {
  const strip = document.createElementNS(SVG, "svg");
  for (const [name, value] of [
    ["class", "strip"],
    ["viewBox", "0 0 36 14"],
    ["preserveAspectRatio", "none"],
    ["aria-hidden", "true"],
  ] as const)
    strip.setAttribute(name, value);
  const paths = { ...stripPaths(season(counts)), today: `M${third + 0.5} 0v14` };
  for (const [name, d] of Object.entries(paths)) {
    const path = document.createElementNS(SVG, "path");
    path.setAttribute("class", name);
    path.setAttribute("d", d);
    strip.append(path);
  }
  return strip;
}
