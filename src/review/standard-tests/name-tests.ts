import { readName } from "../../names/read-name.ts";
import { complies, lacks, noAuthority } from "./response.ts";
import { isEmpty, type StandardTest, standardTest } from "./standard-test.ts";

const PARTS_OF_NAME = ["genericName", "specificEpithet", "infraspecificEpithet"] as const;
/** A name space and an identifier in it; RFC 8141 for urn. */
const URN = /^urn:[a-z0-9][a-z0-9-]{0,30}[a-z0-9]:[^\s]+$/i;
/** Authority, name space and object, each without a colon, and perhaps a revision (LSID, OMG dtc/04-05-01). */
const LSID = /^urn:lsid:[^\s:]+:[^\s:]+:[^\s:]+(?::[^\s:]+)?$/i;
const SCOPED = /^[a-z][\w.-]*:[^\s:/][^\s]*$/i;

/** The tests of names. */
export const NAME_TESTS: readonly StandardTest[] = [
  standardTest({
    guid: "3f335517-f442-4b98-b149-1e87ff16de45",
    label: "VALIDATION_SCIENTIFICNAME_FOUND",
    actsOn: ["scientificName"],
    run: (record, { sourceAuthority }) => {
      const name = record["scientificName"] ?? "";
      if (sourceAuthority === undefined || sourceAuthority === null) return noAuthority();
      if (isEmpty(name)) return lacks("scientificName is empty");
      return complies(sourceAuthority(name), "scientificName is in the list of names");
    },
  }),
  standardTest({
    guid: "17f03f1f-f74d-40c0-8071-2927cfc9487b",
    label: "VALIDATION_POLYNOMIAL_CONSISTENT",
    actsOn: ["scientificName", ...PARTS_OF_NAME],
    run: (record) => {
      const filled = PARTS_OF_NAME.filter((term) => !isEmpty(record[term]));
      if (isEmpty(record["scientificName"]) || filled.length === 0) return lacks("there is nothing to compare");
      const name = readName(record["scientificName"] ?? "");
      const parts = {
        genericName: name.genus,
        specificEpithet: name.epithets.join("/"),
        infraspecificEpithet: name.infraspecific,
      };
      const agree = filled.every((term) => parts[term].toLowerCase() === record[term]?.trim().toLowerCase());
      return complies(agree, `scientificName says the same as ${filled.join(", ")}`);
    },
  }),
  standardTest({
    guid: "6eeac3ed-f691-457f-a42e-eaa9c8a71ce8",
    label: "VALIDATION_SCIENTIFICNAMEID_COMPLETE",
    actsOn: ["scientificNameID"],
    run: (record) =>
      isEmpty(record["scientificNameID"])
        ? lacks("scientificNameID is empty")
        : complies(
            isCompleteIdentifier(record["scientificNameID"] ?? ""),
            "scientificNameID says whose identifier it is",
          ),
  }),
];

/** An LSID, a URN, a URI of a host and a path, or a scope and a value. */
function isCompleteIdentifier(text: string): boolean {
  if (/^urn:lsid:/i.test(text)) return LSID.test(text);
  if (/^urn:/i.test(text)) return URN.test(text);
  if (!text.includes("://")) return SCOPED.test(text);
  if (/\s/.test(text) || !URL.canParse(text)) return false;
  const url = new URL(text);
  return url.hostname !== "" && url.pathname.length > 1;
}
