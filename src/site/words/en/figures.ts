/** Words of the page of figures: its topics with their methods in a sentence, and the tables all share. */
export default {
  "figures.title": "{name}: figures",
  "figures.description": "Every figure of {name}, with its interval, its method and what it rests on.",
  "figures.back": "Back to the account",
  "figures.heading": "{name}: the figures",
  "figures.lead":
    "Every figure with the number it rests on, its 95 % interval and its method, and the reason where it cannot be given.",
  "figures.none": "This edition has no figures of it beyond its account.",
  "figures.on-this-page": "On this page",
  "figures.the-method": "The method<hidden> of {title}</hidden>",
  "figures.its-table": "its table<hidden> of {title}</hidden>",
  "figures.and-interval": "and 95 % interval",
  "figures.what-it-says": "What it says",
  "figures.says": "Says",
  "figures.squares": "Squares",
  "figures.lists": "Lists",
  "figures.comparable": "Comparable",
  "figures.all": "All",
  "figures.both": "Both",
  "figures.change": "Change",
  "figures.change-method":
    "Each method tells change in its own way from the same records; none of them sees what nobody recorded.",
  "figures.change-caption": "Change, {from} to {to}. Squares are of 10 km, lists those declared complete.",
  "figures.change-neighbours":
    "Change between neighbouring periods, {from} to {to}. Squares are of 10 km, lists those declared complete.",
  "figures.method": "Method",
  "figures.change-note":
    "SD: standard deviations of the group’s squares about what its species lead to expect. The numbers count squares or lists.",
  "figures.withdrawn":
    "<b>{name} no longer claims to correct for recording.</b> In the test with known truth {reason}.",
  "figures.sensitivity": "What it hangs on",
  "figures.sensitivity-method":
    "Each method again, with and without parts of the evidence. A bar marks where the line says something else.",
  "figures.sensitivity-caption": "{name}, {from} to {to}; {correction}.",
  "figures.counting": "Counting",
  "figures.sensitivity-silent": "{name}: not applicable, whatever is counted. With all records: {reason}.",
  "figures.rules": "Coverage and turnover",
  "figures.rules-method":
    "A square enters where, in both periods, enough visits recorded others; the rule decides how many are enough. Turnover counts squares that hold it in one period only. Neither is corrected for recording.",
  "figures.rules-net": "Net change of 10 km squares, {from} to {to}",
  "figures.rules-turnover": "Turnover, {from} to {to}: an upper bound, for some of it is not being found",
  "figures.covered-by": "Covered by",
  "figures.net": "Net",
  "figures.turnover": "Turnover",
  "figures.territories": "Squares by territory",
  "figures.territories-method":
    "Net change of comparable squares, as % of the squares of the earlier period. It is not corrected for recording.",
  "figures.territories-caption": "Squares of {kilometres} km, {from} to {to}, with 95 % interval",
  "figures.squares-of": "Squares of",
  "figures.territories-counts": "both {retained, number}, newly {gained, number}, not refound {lost, number}",
  "figures.territories-note":
    "Both: found in both periods. The mark is a square of the map: page solid, more newly found; spine solid, more not refound; open, the interval includes no change. A halving stands as far from 0 as a doubling. Territories may share squares, and do not add up.",
  "figures.series": "Through time",
  "figures.series-method":
    "The same methods, period by period or year by year; a year’s figure stands for itself and is not smoothed.",
  "figures.series-by": "{name} by {by, select, year {year} other {period}}",
  "figures.series-shows": "{shows}; {correction}.",
  "figures.series-label": "{name} by {by, select, year {year} other {period}}; the table below has its figures.",
  "figures.series-summary": "Figures by {by, select, year {year} other {period}}",
  "figures.series-caption": "{name} by {by, select, year {year} other {period}}. {shows}; {correction}.",
  "figures.year": "Year",
  "figures.period": "Period",
  "figures.figure": "Figure",
  "figures.provisional": "provisional",
  "figures.series-note":
    "Squares: the figure; line: its 95 % interval. Open: provisional. Dotted: no figure; the table says why.",
  "figures.shows-squares": "Squares with it, as % of those covered",
  "figures.shows-local":
    "Time factor at equal effort, % of that of the earlier compared period, against the mean of the group",
  "figures.shows-reporting": "Share of complete lists that name it, %, at equal list length and season",
  "figures.shows-relative": "Squares against the group’s, in standard deviations",
  "figures.no-point-lists": "too few lists, or too much alike",
  "figures.no-point-squares": "too few squares",
  "figures.series-periods": "Period by period, each with its 95 % interval.",
  "figures.series-all": "{n, plural, one {The **one year** has} other {All **# years** have}} enough to say.",
  "figures.series-some":
    "**{told} of {all} years** {told, plural, one {has} other {have}} enough to say; the others are dotted.",
} as const;
