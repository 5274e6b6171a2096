/** Words of the charts of seasons and years, most of them for who does not see them. */
export default {
  "charts.records": "{n, plural, one {# record} other {# records}}",
  "charts.records-vague": "{n, plural, one {# record} other {# records}}, {vague, number} more without a precise date",
  "charts.caste-season":
    "{label}: {n, plural, one {# record} other {# records}}; eight in ten from {from} to {to}, half by {half}.",
  "charts.too-few": "Too few to draw: {list}.",
  "charts.too-few-caste": "{label}, {n, plural, one {# record} other {# records}}",
  "charts.season-of": "{name}: {season}",
  "charts.no-season": "{name}: too few dated records for a season",
  "charts.years":
    "Records by year, {first} to {last}; most in {fullest}, {n, plural, one {# record} other {# records}}.",
  "charts.period": "{label}: {n, plural, one {# record} other {# records}}",
  "charts.period-unused": "{label}: {n, plural, one {# record} other {# records}}, not used for change",
} as const;
