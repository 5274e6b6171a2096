/** Words of the known truth: what each method says of invented species whose change is known. */
export default {
  "truth.title": "Known truth",
  "truth.about":
    "Invented species, of which it is known how they changed, recorded by invented people whose effort changed. Where none changes a method may call at most 5 % changed; where they change, 92 to 97 % of its 95 % intervals must hold the truth; else its claim is withdrawn on every page.",
  "truth.claim-of": "<b>{method}</b>: {claim}",
  "truth.raw-counts": "Squares counted, nothing else",
  "truth.calls-too-many": "calls too many changed",
  "truth.too-narrow": "intervals too narrow",
  "truth.too-wide": "intervals too wide",
  "truth.few-of": "{called} of {judged}",
  "truth.claim-none": "claims no correction for recording",
  "truth.claim-rank":
    "ranks the species of a group, of which at most one in twenty can stand out; claims no correction for recording",
  "truth.claim-untested": "untested, so that it claims no correction for recording",
  "truth.claim-kept": "corrects for recording",
  "truth.claim-withdrawn": "its claim to correct for recording is withdrawn: {reason}",
  "truth.untested": "No method has been tested where the truth is known, and **none claims to correct for recording**.",
  "truth.raw":
    "Where no species changes and recording does, counting squares alone calls up to **{share} %** of them changed.",
  "truth.methods": "The methods call changed: {methods}.",
  "truth.methods-alone": "Of species that do not change, called changed: {methods}.",
  "truth.method-up-to": "{method} up to {share} %",
  "truth.still": "No species changes. <b>{how}.</b>",
  "truth.still-more": "<b>{how}.</b>",
  "truth.changing":
    "<b>{how}.</b> Share of the species called as they changed, in %, by their true change in %; under 0, called changed either way.",
  "truth.method": "Method",
  "truth.judged": "Species judged",
  "truth.called": "Called changed",
  "truth.bias": "Bias",
  "truth.coverage": "Truth in interval",
  "truth.of": "of {n, number}",
  "truth.bias-and-coverage": "bias {bias}; truth in {share} of intervals",
  "truth.note":
    "±: standard error over seeds. Bias: median estimate less the truth. Relative to the group, a species that stays among others that change is rightly called changed.",
} as const;
