import { posix } from "node:path";
import { parseXml } from "../archive/parse-xml.ts";

/** One sheet of a workbook. */
export interface WorkbookSheet {
  name: string;
  /** True where the spreadsheet program does not show it. */
  hidden: boolean;
  /** Its file in the workbook. */
  file: string;
}

/**
 * The sheets of a workbook in their order, from its two parts that tell (ECMA-376 part 1, 18.2 and 9.2). Charts and other
 * sheets without cells are left out.
 *
 * @param workbook text of xl/workbook.xml
 * @param relationships text of xl/_rels/workbook.xml.rels
 * @throws {Error} where a text is no XML
 */
export function workbookSheets(workbook: string, relationships: string): WorkbookSheet[] {
  const files = new Map<string, string>();
  parseXml(relationships, {
    open: ({ local, attributes }) => {
      const value = (name: string) => attributes[name]?.value ?? "";
      if (local === "Relationship" && value("Type").endsWith("/worksheet"))
        files.set(value("Id"), posix.resolve("/xl", value("Target")).slice(1));
    },
    close: () => {},
  });
  const sheets: WorkbookSheet[] = [];
  parseXml(workbook, {
    open: ({ local, attributes }) => {
      if (local !== "sheet") return;
      const id = Object.values(attributes).find((attribute) => attribute.local === "id" && attribute.prefix !== "");
      const file = files.get(id?.value ?? "");
      const state = attributes["state"]?.value ?? "visible";
      if (file !== undefined) sheets.push({ name: attributes["name"]?.value ?? "", hidden: state !== "visible", file });
    },
    close: () => {},
  });
  return sheets;
}
