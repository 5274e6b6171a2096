/**
 * A column of any type as SQL that gives text, as a person would write it: dates and times by ISO 8601 (a time of
 * midnight is none, for many programs keep days as times), numbers without the tails of binary fractions, lists with
 * " | " between their values, empty text for no value. NUL, which is no text, becomes U+FFFD.
 *
 * @param name of the column
 * @param type as DuckDB describes it, such as "DECIMAL(8,5)"
 * @example parquetText("seen", "DATE") // => "coalesce(replace(CAST(\"seen\" AS VARCHAR), chr(0), '�'), '')"
 */
export function parquetText(name: string, type: string): string {
  return `coalesce(replace(${textOf(`"${name.replaceAll('"', '""')}"`, type)}, chr(0), '\uFFFD'), '')`;
}

function textOf(value: string, type: string): string {
  const list = /^(.*)\[\d*\]$/s.exec(type)?.[1];
  if (list !== undefined) return `array_to_string(list_transform(${value}, lambda one: ${textOf("one", list)}), ' | ')`;
  if (type === "DOUBLE") return `CASE WHEN isfinite(${value}) THEN format('{:.15g}', ${value}) END`;
  if (type === "FLOAT")
    return `CASE WHEN isfinite(${value}) THEN regexp_replace(CAST(${value} AS VARCHAR), '\\.0$', '') END`;
  if (type === "TIMESTAMP WITH TIME ZONE") return timeText(`(${value} AT TIME ZONE 'UTC')`, "%Y-%m-%dT%H:%M:%SZ");
  if (/^TIMESTAMP/.test(type)) return timeText(`CAST(${value} AS TIMESTAMP)`, "%Y-%m-%dT%H:%M:%S");
  return `CAST(${value} AS VARCHAR)`;
}

function timeText(value: string, format: string): string {
  return `CASE WHEN CAST(${value} AS TIME) = TIME '00:00:00' THEN CAST(CAST(${value} AS DATE) AS VARCHAR) ELSE strftime(${value}, '${format}') END`;
}
