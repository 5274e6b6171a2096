/** A time of day as written: minutes after midnight, 0 to 1,440, and its zone ("Z", "-06:00", empty for local time). */
export interface ClockTime {
  readonly minutes: number;
  readonly zone: string;
}

const TIME = /^(\d{2})(?::?(\d{2})(?::?(\d{2})(?:[.,]\d+)?)?)?(Z|[+-]\d{2}(?::?\d{2})?)?$/;

/**
 * Reads an ISO 8601 time of day with or without seconds, fractions and zone, colons or none; undefined for anything else.
 * 24:00 is the end of the day, second 60 a leap second.
 *
 * @example readClockTime("14:07-0600") // { minutes: 847, zone: "-0600" }
 */
export function readClockTime(text: string): ClockTime | undefined {
  const match = TIME.exec(text);
  if (match === null) return undefined;
  const [hours, minutes, seconds] = [match[1], match[2] ?? "0", match[3] ?? "0"].map(Number) as [
    number,
    number,
    number,
  ];
  const zone = match[4] ?? "";
  const [zoneHours, zoneMinutes] = [zone.slice(1, 3), zone.slice(3).replace(":", "")].map(Number) as [number, number];
  if (hours > 24 || minutes > 59 || seconds > 60 || (hours === 24 && minutes + seconds > 0)) return undefined;
  if (zone.length > 1 && (zoneHours > 14 || zoneMinutes > 59)) return undefined;
  return { minutes: hours * 60 + minutes + seconds / 60, zone };
}
