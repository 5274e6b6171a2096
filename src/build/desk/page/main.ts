import type { DeskAnswer } from "../../../review/desk/answers.ts";
import { ask, Refused } from "./ask.ts";
import { DeskPage } from "./desk-page.ts";
import { element } from "./dom.ts";
import { squarePage } from "./square-page.ts";

void begin();

async function begin(): Promise<void> {
  const [, , page, grid, code] = location.pathname.split("/");
  try {
    if (page === "square" && grid !== undefined && code !== undefined)
      document.body.append(await squarePage(grid, decodeURIComponent(code)));
    else await new DeskPage(await ask<DeskAnswer>("desk")).open();
  } catch (error) {
    const says = error instanceof Refused ? error.message : String(error);
    document.body.append(element("main", { class: "page" }, element("p", { role: "alert" }, says)));
    throw error;
  }
}
