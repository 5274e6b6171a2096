/**
 * Where to say that something on a page is wrong: a letter with the page's name on it, or the scheme's own form.
 *
 * @param contact of the settings: an address of mail or of a page; "" for none
 * @param subject of the letter
 * @returns what to write in href, safe there; "" where there is no such address
 * @example correctionAddress("a@b.example", "Red-tailed: wrong") // "mailto:a@b.example?subject=Red-tailed%3A%20wrong"
 */
export function correctionAddress(contact: string, subject: string): string {
  const isPage = /^https?:\/\/[^\s"<>]+$/.test(contact);
  if (isPage) return contact.replace(/&/g, "&amp;");
  return /^[^\s"<>@]+@[^\s"<>@]+$/.test(contact) ? `mailto:${contact}?subject=${encodeURIComponent(subject)}` : "";
}
