import type { RecordField } from "../scheme/settings.ts";

/**
 * Words people head columns with, in English, German, French, Dutch, Spanish and Swedish; in lower case, as whole words.
 * The order counts: the first field whose words a header has is the one it may stand for. Common practice, no source.
 */
const WORDS: readonly (readonly [RecordField, readonly string[]])[] = [
  ["viceCounty", ["vc", "vice county", "vicecounty", "vcno", "watsonian"]],
  ["vernacularName", ["common name", "english name", "vernacular", "deutscher name", "nom commun", "nom vernaculaire"]],
  ["identifiedBy", ["determiner", "det", "identified by", "determined by", "bestimmer", "déterminateur"]],
  ["recordedBy", ["recorder", "recorders", "recorded by", "observer", "observers", "collector", "finder", "leg"]],
  ["recordedBy", ["beobachter", "sammler", "finder", "observateur", "waarnemer", "observador", "observatör"]],
  ["decimalLatitude", ["lat", "latitude", "breite", "breitengrad", "latitud", "breedtegraad"]],
  ["decimalLongitude", ["lon", "long", "lng", "longitude", "länge", "längengrad", "longitud", "lengtegraad"]],
  ["coordinateUncertaintyInMeters", ["accuracy", "uncertainty", "genauigkeit", "nauwkeurigheid"]],
  ["gridReference", ["grid", "gr", "gridref", "grid ref", "map ref", "os ref", "osgr", "grid square", "square"]],
  ["gridReference", ["raster", "rasterfeld", "carré", "hok", "kilometerhok", "cuadrícula", "ruta"]],
  ["eventDate", ["date", "datum", "fecha", "funddatum", "seen on", "when", "dates"]],
  ["year", ["yr", "jahr", "année", "annee", "jaar", "año", "år"]],
  ["month", ["monat", "mois", "maand", "mes", "månad"]],
  ["day", ["tag", "jour", "dag", "día"]],
  ["scientificName", ["species", "taxon", "latin", "latin name", "binomial", "art", "wissenschaftlicher name"]],
  ["scientificName", ["espèce", "espece", "nom scientifique", "soort", "wetenschappelijke naam", "especie", "name"]],
  ["locality", ["site", "site name", "location", "place", "fundort", "ort", "lieu", "plaats", "vindplaats", "lugar"]],
  ["lifeStage", ["stage", "stadium", "stade"]],
  ["sex", ["gender", "geschlecht", "sexe", "geslacht", "sexo", "kön"]],
  ["caste", ["kaste", "castes"]],
  ["individualCount", ["count", "number", "quantity", "abundance", "how many", "anzahl", "nombre", "aantal", "antal"]],
  ["habitat", ["habitat", "lebensraum", "biotop", "biotope", "milieu"]],
  ["flowerVisited", ["flower", "flower visited", "forage", "forage plant", "blüte", "fleur visitée"]],
  ["nestSite", ["nest", "nest site"]],
  ["samplingProtocol", ["method", "methode", "méthode", "metod"]],
  ["occurrenceRemarks", ["comment", "comments", "notes", "note", "bemerkung", "bemerkungen", "remarque", "opmerking"]],
  ["occurrenceID", ["record id", "record key", "record number", "id"]],
];

/** Words that mean something else in company: "site name", "phone number", "how long". */
const ALONE: readonly string[] = ["name", "id", "number", "art", "long", "tag", "leg", "gr", "mes", "soort", "note"];

/**
 * The fields a header may stand for by its words.
 *
 * @example fieldsByWords("Site_name") // => ["locality"]
 */
export function fieldsByWords(header: string): RecordField[] {
  const words = header
    .replaceAll(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
  const has = (word: string) => (ALONE.includes(word) ? words === word : ` ${words} `.includes(` ${word} `));
  return [...new Set(WORDS.filter(([, some]) => some.some(has)).map(([field]) => field))];
}
