import { parseXml, readXmlText } from "./parse-xml.ts";

/**
 * The licence an archive's metadata states for the whole data set, in Ecological Metadata Language: that of `licensed`,
 * else the address or the text of `intellectualRights`.
 *
 * @param path of the metadata
 * @returns empty where none is stated, or where the file cannot be read
 * @example dataSetLicence("eml.xml") // => "http://creativecommons.org/publicdomain/zero/1.0/legalcode"
 */
export function dataSetLicence(path: string): string {
  const found = { licensed: "", address: "", text: "" };
  const within: string[] = [];
  try {
    parseXml(readXmlText(path), {
      open(tag) {
        within.push(tag.local);
        const address = tag.attributes["url"]?.value;
        if (within.includes("intellectualRights") && address !== undefined) found.address ||= address.trim();
      },
      close(tag, content) {
        if (within.at(-2) === "licensed" && tag.local === "url") found.licensed ||= content.trim();
        if (within.includes("intellectualRights")) found.text ||= content.trim();
        within.pop();
      },
    });
  } catch {
    return "";
  }
  return found.licensed || found.address || found.text.replaceAll(/\s+/g, " ");
}
