/** Shows the rows of the home page's season list that suit today's third of the month, and marks today on each strip. */
import { thirdDays } from "../text/thirds.ts";

const SHOWN = 5;
const list = document.querySelector<HTMLElement>(".in-season");
if (list !== null) showToday(list, new Date());

function showToday(list: HTMLElement, today: Date): void {
  const third = today.getMonth() * 3 + Math.min(2, Math.floor((today.getDate() - 1) / 10));
  const rows = [...list.querySelectorAll<HTMLTableRowElement>("tbody tr")];
  const number = (row: HTMLTableRowElement) => Number(row.dataset["season"]?.split(" ")[third] ?? 0);
  const best = rows
    .filter((row) => number(row) > 0)
    .sort((one, other) => number(other) - number(one))
    .slice(0, SHOWN);
  if (best.length < SHOWN) return;
  const heading = list.querySelector("h2");
  if (heading !== null) heading.textContent = `In season, ${thirdDays(third)}`;
  const words = list.querySelector(".note");
  if (words !== null)
    words.textContent =
      "Most recorded in this third of the month, all years and places together. The coloured line is today.";
  for (const row of rows) row.hidden = !best.includes(row);
  list.querySelector("tbody")?.prepend(...best);
  for (const strip of list.querySelectorAll("svg.strip")) {
    const line = document.createElementNS("http://www.w3.org/2000/svg", "path");
    line.setAttribute("class", "today");
    line.setAttribute("d", `M${third + 0.5} 0v14`);
    strip.append(line);
  }
}
