/** The field for the place, the button for the device's position, the small map. */
import type { NeighbourhoodBlock, NeighbourhoodIndex } from "../../../publishing/contracts/neighbourhoods.ts";
import { applyAffine } from "../../maps/affine.ts";
import type { Say } from "../../words/client.ts";
import { cornerAt } from "./map-grids.ts";
import type { PageData } from "./page-data.ts";
import { blockNameOf, type PlaceAnswer, placeOfDegrees, placeOfText } from "./places.ts";

interface Asked {
  readonly index: NeighbourhoodIndex;
  readonly page: PageData;
  readonly say: Say;
  /** Called with the code of a square, or empty for none. */
  readonly found: (square: string) => void;
}

/**
 * Listens to all ways to tell a place. The device is asked only when its button is pressed.
 *
 * @returns `show` sets field and map to a square, or to none
 */
export function askPlace(
  form: HTMLFormElement,
  { index, page, say, found }: Asked,
): { show: (square: string) => void } {
  const field = form.querySelector<HTMLInputElement>("#where");
  const status = form.querySelector<HTMLElement>("#where-status");
  const map = form.querySelector<SVGSVGElement>("#where-map");
  const tell = (text: string) => {
    if (status !== null) status.textContent = text;
  };
  const show = (square: string) => {
    if (field !== null) field.value = square;
    tell(square === "" ? say("narrow.place-none") : say("narrow.place-set", { square }));
    if (map !== null) void markSquare(map, square, { index, page });
  };
  const take = (answer: PlaceAnswer, text: string) => {
    if ("square" in answer) show(answer.square);
    else
      tell(
        "elsewhere" in answer
          ? say("narrow.place-sea", { square: answer.elsewhere })
          : say("narrow.place-unknown", { text, example: page.example }),
      );
    found("square" in answer ? answer.square : "");
  };
  const set = async () => {
    const text = field?.value.trim() ?? "";
    if (text === "") {
      show("");
      found("");
    } else take(await placeOfText(text, index), text);
  };
  field?.addEventListener("change", (event) => {
    event.stopPropagation();
    void set();
  });
  form.addEventListener("submit", () => void set());
  form.querySelector("#where-clear")?.addEventListener("click", () => {
    show("");
    found("");
  });
  form.querySelector("#where-position")?.addEventListener("click", () => {
    tell(say("narrow.position-asking"));
    if (!("geolocation" in navigator)) return tell(say("narrow.position-missing"));
    navigator.geolocation.getCurrentPosition(
      async ({ coords: { latitude, longitude } }) => {
        const answer = await placeOfDegrees({ latitude, longitude }, index);
        if ("square" in answer) return take(answer, "");
        tell(say("narrow.position-elsewhere"));
        found("");
      },
      ({ code, PERMISSION_DENIED }) =>
        tell(say(code === PERMISSION_DENIED ? "narrow.position-refused" : "narrow.position-failed")),
      { maximumAge: 600_000, timeout: 20_000 },
    );
  });
  map?.addEventListener("click", async (event) => {
    const square = await squareAtClick(map, event, { index, page });
    if (square === undefined) return;
    show(square);
    found(square);
  });
  return { show };
}

type Places = Pick<Asked, "index" | "page">;

/** The square under a click, of the first grid that has one there. */
async function squareAtClick(
  map: SVGSVGElement,
  event: MouseEvent,
  { index, page }: Places,
): Promise<string | undefined> {
  const matrix = map.getScreenCTM()?.inverse();
  if (matrix === undefined) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  for (const grid of page.mapGrids) {
    const [east, north] = cornerAt(grid, x, y);
    const name = `${grid.grid}-${Math.floor(east / 10)}-${Math.floor(north / 10)}`;
    const square = index.blocks.includes(name)
      ? (await blockOf(name, page)).squares.find(([, e, n]) => e === east && n === north)
      : undefined;
    if (square !== undefined) return square[0];
  }
  return undefined;
}

async function markSquare(map: SVGSVGElement, code: string, { index, page }: Places): Promise<void> {
  const mark = map.querySelector("#where-mark");
  const name = code === "" ? undefined : blockNameOf(index, code);
  const square = name === undefined ? undefined : (await blockOf(name, page)).squares.find(([own]) => own === code);
  const grid = page.mapGrids.find((one) => name?.startsWith(`${one.grid}-`));
  if (square === undefined || grid === undefined) return mark?.setAttribute("d", "");
  const [, east, north] = square;
  const corners = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ].map(([right = 0, up = 0]) =>
    applyAffine(grid.matrix, east + right, north + up)
      .map((number) => number.toFixed(1))
      .join(" "),
  );
  mark?.setAttribute("d", `M${corners.join("L")}Z`);
}

async function blockOf(name: string, { addresses }: PageData): Promise<NeighbourhoodBlock> {
  return (await (await fetch(`${addresses.places}${name}.json`)).json()) as NeighbourhoodBlock;
}
