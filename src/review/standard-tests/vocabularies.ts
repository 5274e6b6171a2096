/**
 * Values that the standards themselves name. Sources: Darwin Core, terms basisOfRecord, occurrenceStatus (2026-05-26),
 * sex, and its vocabularies of establishment (tdwg/dwc, commit 4f1cb23, CC BY 4.0); the DCMI Type Vocabulary;
 * ISO 3166-1 alpha-2 (as in the Debian package iso-codes); the licences of Creative Commons.
 */

/** Local names of Darwin Core's classes: what basisOfRecord may say. */
export const BASES_OF_RECORD = words(
  "Assertion Event FossilSpecimen GeologicalContext HumanObservation Identification LivingSpecimen MachineObservation MaterialCitation MaterialEntity MaterialSample MeasurementOrFact MolecularProtocol NucleotideAnalysis NucleotideSequence Occurrence Organism OrganismInteraction PreservedSpecimen Protocol Provenance ResourceRelationship Taxon UsagePolicy",
);

/** The values of occurrenceStatus since May 2026, and before. */
export const OCCURRENCE_STATUSES = words("detected notDetected present absent");

export const ESTABLISHMENT_MEANS = words(
  "native nativeReintroduced introduced introducedAssistedColonisation vagrant uncertain nativeEndemic",
);

export const DEGREES_OF_ESTABLISHMENT = words(
  "native captive cultivated released failing casual reproducing established colonising invasive widespreadInvasive",
);

/** In lower case. Darwin Core has no list: its three examples, and what was looked at and could not be told. */
export const SEXES = words("female male hermaphrodite indeterminate");

export const TYPES = words(
  "Collection Dataset Event Image InteractiveResource MovingImage PhysicalObject Service Software Sound StillImage Text",
);

/** With XZ for the high seas and ZZ for unknown, both of Darwin Core's. */
export const COUNTRY_CODES = words(
  `AD AE AF AG AI AL AM AO AQ AR AS AT AU AW AX AZ BA BB BD BE BF BG BH BI BJ BL BM BN BO BQ BR BS BT BV BW BY BZ
  CA CC CD CF CG CH CI CK CL CM CN CO CR CU CV CW CX CY CZ DE DJ DK DM DO DZ EC EE EG EH ER ES ET FI FJ FK FM FO FR
  GA GB GD GE GF GG GH GI GL GM GN GP GQ GR GS GT GU GW GY HK HM HN HR HT HU ID IE IL IM IN IO IQ IR IS IT JE JM JO JP
  KE KG KH KI KM KN KP KR KW KY KZ LA LB LC LI LK LR LS LT LU LV LY MA MC MD ME MF MG MH MK ML MM MN MO MP MQ MR MS MT
  MU MV MW MX MY MZ NA NC NE NF NG NI NL NO NP NR NU NZ OM PA PE PF PG PH PK PL PM PN PR PS PT PW PY QA RE RO RS RU RW
  SA SB SC SD SE SG SH SI SJ SK SL SM SN SO SR SS ST SV SX SY SZ TC TD TF TG TH TJ TK TL TM TN TO TR TT TV TW TZ
  UA UG UM US UY UZ VA VC VE VG VI VN VU WF WS YE YT ZA ZM ZW XZ ZZ`,
);

/** Addresses of the Creative Commons licences 4.0 and of CC0, with or without /legalcode or /deed and a language. */
export const LICENCE_ADDRESS =
  /^https?:\/\/(?:www\.)?creativecommons\.org\/(?:licenses\/by(?:-nc)?(?:-sa|-nd)?\/4\.0|publicdomain\/zero\/1\.0)(?:\/|\/(?:legalcode|deed)(?:\.[a-z]{2}(?:[-_][a-z]+)?)?)?$/i;

/** EPSG codes of datums and ellipsoids: those of the systems known here, and of others met with. */
export const DATUM_CODES = words("6326 6258 6173 6277 6300 6299 6230 6313 6269 6267 6283 1168 7030 7019 7001 7022");
/** EPSG codes of geographic systems in degrees beyond those that coordinates can be brought here from. */
export const OTHER_GEOGRAPHIC_CODES = words("4269 4267 4283 7844");

function words(text: string): ReadonlySet<string> {
  return new Set(text.split(/\s+/));
}
