/**
 * Where things are in a PDF that Chromium wrote: it names the place of every target of a link, and writes those names
 * and the order of pages as plain text. Nothing else of PDF is read.
 */

/**
 * The page of each named place.
 *
 * @param pdf a file of Chromium's
 * @returns page numbers from 1, by name; empty where the file names no place
 * @example pagesOfPlaces(pdf).get("account-3") // 12
 */
export function pagesOfPlaces(pdf: Buffer): Map<string, number> {
  const objects = new Map(
    [...pdf.toString("latin1").matchAll(/^(\d+) 0 obj\n([\s\S]*?)\nendobj/gm)].map(([, id = "", body = ""]) => [
      id,
      body,
    ]),
  );
  const catalog = [...objects.values()].find((body) => body.includes("/Type /Catalog")) ?? "";
  const order = new Map(pagesBelow(reference(catalog, "Pages"), objects).map((id, index) => [id, index + 1]));
  const places = objects.get(reference(catalog, "Dests")) ?? "";
  return new Map(
    [...places.matchAll(/\/(\S+) \[(\d+) 0 R/g)].flatMap(([, name = "", id = ""]) => {
      const page = order.get(id);
      return page === undefined ? [] : [[decoded(name), page] as const];
    }),
  );
}

/** How many pages a PDF of Chromium's has. @example numberOfPages(pdf) // 68 */
export function numberOfPages(pdf: Buffer): number {
  return [...pdf.toString("latin1").matchAll(/\/Type \/Page\n|\/Type \/Page\b(?!s)/g)].length;
}

/**
 * The same file without what differs between two printings of one page: the moment of its making becomes the start of
 * a day, and the browser's running numbers of elements are counted from 0, in their order.
 *
 * @param day year-month-day
 * @example settled(pdf, "2025-03-01") // … /CreationDate (D:20250301000000+00'00') … /ID (node00000000) …
 */
export function settled(pdf: Buffer, day: string): Buffer {
  const text = pdf.toString("latin1");
  const stamp = `${day.replaceAll("-", "")}000000`;
  const nodes = [...new Set([...text.matchAll(/\(node(\d{8})\)/g)].map(([, number = ""]) => number))].sort();
  const counted = new Map(nodes.map((number, index) => [number, String(index).padStart(8, "0")]));
  return Buffer.from(
    text
      .replace(/(\/(?:CreationDate|ModDate) \(D:)\d{14}/g, (_, start: string) => start + stamp)
      .replace(/\(node(\d{8})\)/g, (_, number: string) => `(node${counted.get(number) ?? number})`),
    "latin1",
  );
}

function reference(body: string, key: string): string {
  return body.match(new RegExp(`/${key} (\\d+) 0 R`))?.[1] ?? "";
}

function pagesBelow(id: string, objects: ReadonlyMap<string, string>): string[] {
  const children = objects.get(id)?.match(/\/Kids \[([^\]]*)\]/)?.[1];
  if (children === undefined) return objects.has(id) ? [id] : [];
  return [...children.matchAll(/(\d+) 0 R/g)].flatMap(([, child = ""]) => pagesBelow(child, objects));
}

/** A PDF name writes some signs as # and two figures. */
function decoded(name: string): string {
  return name.replace(/#([0-9A-Fa-f]{2})/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}
