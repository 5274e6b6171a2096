import type { WordsOf } from "../catalogue.ts";
import type en from "../en/figures.ts";

export default {
  "figures.title": "{name} : chiffres",
  "figures.description":
    "Tous les chiffres de l’espèce ({name}), avec leur intervalle, leur méthode et ce sur quoi ils reposent.",
  "figures.back": "Retour à la fiche",
  "figures.heading": "{name} : les chiffres",
  "figures.lead":
    "Chaque chiffre avec l’effectif sur lequel il repose, son intervalle de confiance à 95 % et sa méthode, ou la raison pour laquelle il ne peut pas être donné.",
  "figures.none": "Cette édition n’a pas d’autres chiffres que ceux de sa fiche.",
  "figures.on-this-page": "Sur cette page",
  "figures.the-method": "La méthode<hidden> : {title}</hidden>",
  "figures.its-table": "son tableau<hidden> : {title}</hidden>",
  "figures.and-interval": "et intervalle à 95 %",
  "figures.what-it-says": "Ce qu’elle dit",
  "figures.says": "Dit",
  "figures.squares": "Carrés",
  "figures.lists": "Listes",
  "figures.comparable": "Comparables",
  "figures.all": "Tous",
  "figures.both": "Ensemble",
  "figures.change": "Évolution",
  "figures.change-method":
    "Chaque méthode mesure l’évolution à sa manière à partir des mêmes données ; aucune ne voit ce que personne n’a noté.",
  "figures.change-caption": "Évolution de {from} à {to}. Carrés de 10 km ; listes déclarées complètes.",
  "figures.change-neighbours":
    "Évolution entre périodes voisines, de {from} à {to}. Carrés de 10 km ; listes déclarées complètes.",
  "figures.method": "Méthode",
  "figures.change-note":
    "ET : écarts-types des carrés du groupe autour de ce que ses espèces laissent attendre. Les effectifs comptent des carrés ou des listes.",
  "figures.withdrawn":
    "<b>{name} : cette méthode ne prétend plus corriger de l’effort d’observation.</b> À l’épreuve d’une vérité connue, {reason}.",
  "figures.sensitivity": "De quoi cela dépend",
  "figures.sensitivity-method":
    "Chaque méthode à nouveau, avec et sans une partie des données. Une barre signale où la ligne dit autre chose.",
  "figures.sensitivity-caption": "{name}, de {from} à {to} ; {correction}.",
  "figures.counting": "En comptant",
  "figures.sensitivity-silent": "{name} : non applicable, quoi que l’on compte. Avec toutes les données : {reason}.",
  "figures.rules": "Couverture et renouvellement",
  "figures.rules-method":
    "Un carré entre dans le calcul si, aux deux périodes, assez de visites y ont noté d’autres espèces ; la règle fixe combien. Le renouvellement compte les carrés où l’espèce n’a été notée qu’à une seule des périodes. Ni l’un ni l’autre n’est corrigé de l’effort d’observation.",
  "figures.rules-net": "Bilan des carrés de 10 km, de {from} à {to}",
  "figures.rules-turnover":
    "Renouvellement, de {from} à {to} : une borne supérieure, car il tient en partie à ce qui n’a pas été vu",
  "figures.covered-by": "Couvert par",
  "figures.net": "Bilan",
  "figures.turnover": "Renouvellement",
  "figures.territories": "Carrés par territoire",
  "figures.territories-method":
    "Bilan des carrés comparables, en % des carrés de la première période. Il n’est pas corrigé de l’effort d’observation.",
  "figures.territories-caption": "Carrés de {kilometres} km, de {from} à {to}, avec intervalle de confiance à 95 %",
  "figures.squares-of": "Carrés de",
  "figures.territories-counts":
    "aux deux périodes {retained, number}, nouveaux {gained, number}, non retrouvés {lost, number}",
  "figures.territories-note":
    "Aux deux périodes : trouvé à l’une et à l’autre. La marque est un carré de la carte : page pleine, davantage de nouveaux ; dos plein, davantage de non retrouvés ; ouverte, l’intervalle comprend l’absence d’évolution. Une division par deux est aussi loin de 0 qu’un doublement. Des territoires peuvent partager des carrés et ne s’additionnent pas.",
  "figures.series": "Au fil du temps",
  "figures.series-method":
    "Les mêmes méthodes, période par période ou année par année ; le chiffre d’une année ne vaut que pour elle et n’est pas lissé.",
  "figures.series-by": "{name} par {by, select, year {année} other {période}}",
  "figures.series-shows": "{shows} ; {correction}.",
  "figures.series-label":
    "{name} par {by, select, year {année} other {période}} ; les chiffres sont dans le tableau ci-dessous.",
  "figures.series-summary": "Chiffres par {by, select, year {année} other {période}}",
  "figures.series-caption": "{name} par {by, select, year {année} other {période}}. {shows} ; {correction}.",
  "figures.year": "Année",
  "figures.period": "Période",
  "figures.figure": "Chiffre",
  "figures.provisional": "provisoire",
  "figures.series-note":
    "Carrés : le chiffre ; trait : son intervalle de confiance à 95 %. Ouvert : provisoire. Pointillé : pas de chiffre ; le tableau dit pourquoi.",
  "figures.shows-squares": "Carrés où elle a été notée, en % des carrés couverts",
  "figures.shows-local":
    "Facteur temporel à effort égal, en % de celui de la première période comparée, par rapport à la moyenne du groupe",
  "figures.shows-reporting": "Part des listes complètes qui la mentionnent, en %, à longueur de liste et saison égales",
  "figures.shows-relative": "Carrés par rapport à ceux du groupe, en écarts-types",
  "figures.no-point-lists": "trop peu de listes, ou trop semblables",
  "figures.no-point-squares": "trop peu de carrés",
  "figures.series-periods": "Période par période, avec l’intervalle de confiance à 95 % de chacune.",
  "figures.series-all":
    "{n, plural, one {La **seule année** suffit} other {Toutes les **# années** suffisent}} pour conclure.",
  "figures.series-some":
    "**{told} {told, plural, one {année} other {années}} sur {all}** {told, plural, one {suffit} other {suffisent}} pour conclure ; les autres sont en pointillé.",
} satisfies WordsOf<typeof en>;
