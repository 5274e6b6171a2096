import { lengthOf } from "../scheme/content-findings/account-findings.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { TaxonFile } from "./contracts.ts";

/**
 * Body lengths by caste: those of characters.csv, with what the account says beside them; those of the account alone
 * where the characters have none. Castes in the order of the account, then of the characters.
 *
 * @example sizesOf(scheme, "invented-lapidarius")[0]?.millimetres // [20, 22]
 */
export function sizesOf(scheme: Scheme, taxonId: string): TaxonFile["sizes"] {
  const said = scheme.accounts.get(taxonId)?.front.sizes ?? [];
  const own = scheme.characters.flatMap(({ taxonID, part, form, castes, state, note }) => {
    const length = lengthOf(state);
    if (taxonID !== taxonId || part !== "size" || form !== "" || length === undefined) return [];
    return (castes.length > 0 ? castes : [""]).map((caste) => ({ caste, mm: length, note }));
  });
  const castes = [...new Set([...said, ...own].map(({ caste }) => caste))];
  return castes.flatMap((caste) => {
    const [measured, told] = [own.find((one) => one.caste === caste), said.find((one) => one.caste === caste)];
    const mm = measured?.mm ?? told?.mm;
    const note = told?.note ?? measured?.note ?? "";
    return mm === undefined ? [] : [{ caste, label: casteLabel(scheme, caste), millimetres: mm, note }];
  });
}

function casteLabel(scheme: Scheme, id: string): string {
  return scheme.settings.castes.find((caste) => caste.id === id)?.label ?? id;
}
