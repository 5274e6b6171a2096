import type { WordsOf } from "../catalogue.ts";
import type en from "../en/text.ts";

export default {
  "text.number":
    "{n, plural, =0 {aucun} =1 {un} =2 {deux} =3 {trois} =4 {quatre} =5 {cinq} =6 {six} =7 {sept} =8 {huit} =9 {neuf} =10 {dix} =11 {onze} =12 {douze} other {#}}",
  "text.between": " ; ",
  "text.percent": "{number} %",
  "text.percent-under": "moins de {number} %",
  "text.percent-over": "plus de {number} %",
  "text.bytes": "{n, plural, one {# octet} other {# octets}}",
  "text.kilobytes": "{number} ko",
  "text.megabytes": "{number} Mo",
  "text.third": "{part, select, first {1er–10} middle {11–20} other {21–{last}}} {month}",
  "text.third-loosely": "{part, select, first {début {month}} middle {mi-{month}} other {fin {month}}}",
  "text.date": "{day, select, 1 {1er} other {{day}}} {month} {year}",
  "text.since": "depuis {year}",
  "text.until": "jusqu’en {year}",
  "text.in-years": "en {years}",
  "text.to-year": "jusqu’en {year}",
  "text.span": "{from} à {to}",
  "text.state-retained": "trouvé aux deux périodes",
  "text.state-gained": "nouvellement trouvé",
  "text.state-lost": "non retrouvé",
  "text.state-not_comparable_since": "non comparable",
  "text.state-not_comparable_before": "non comparable",
  "text.state-recorded": "signalé",
  "text.net-squares": "{signed} {squares, plural, one {carré} other {carrés}}",
  "text.range-no-record":
    "Aucune donnée de ce taxon n’est utilisée dans cette édition. Cela ne dit rien des lieux où il vit.",
  "text.range-withheld": "Les lieux des données ne sont pas montrés.",
  "text.range-no-square": "Aucune donnée n’indique de carré de 10 km.",
  "text.range":
    "Des données dans **{squares, plural, =1 {un} other {{words}}}** {squares, plural, one {carré} other {carrés}} de 10 km.",
  "text.range-latest":
    "Des données dans **{squares, plural, =1 {un} other {{words}}}** {squares, plural, one {carré} other {carrés}} de 10 km, dont **{latest, plural, =0 {aucun} other {{latestWords}}}** {since}.",
  "text.flight-none": "Aucune donnée utilisée n’a de date assez précise pour une saison.",
  "text.flight-few":
    "Trop peu de données datées pour une saison : {dated, number}, alors qu’il en faut {fewest, number}.",
  "text.flight-castes":
    "Pour les {castes}, huit données sur dix vont des **{from}** aux **{to}** ; le plus grand nombre date des **{most}**.",
  "text.flight-records":
    "Huit données sur dix vont des **{from}** aux **{to}** ; le plus grand nombre date des **{most}**.",
  "text.flight-from": "les {castes} dès les {from}",
  "text.flight-others": "{list}.",
  "text.flight-few-castes": "Trop peu de données datées pour dire la saison des {castes}.",
  "text.change-unjudged": "L’évolution **ne peut pas être jugée** à {kilometres} km : {reason}.",
  "text.change-too-few": "trop peu de carrés comparables",
  "text.change-none":
    "Sur {comparable, plural, one {# carré comparable} other {# carrés comparables}}, trouvé aux deux périodes dans {retained, number}, nouvellement trouvé dans {gained, number} et non retrouvé dans {lost, number} : **l’intervalle comprend l’absence d’évolution** (intervalle à 95 % : {low} à {high}).",
  "text.change":
    "Sur {comparable, plural, one {# carré comparable} other {# carrés comparables}}, trouvé aux deux périodes dans {retained, number}, **nouvellement trouvé dans {gained, number} et non retrouvé dans {lost, number}** : un bilan de {net} {squares, plural, one {carré} other {carrés}} (intervalle à 95 % : {low} à {high}).",
  "text.change-word": "{direction, select, more {plus} fewer {moins} none {pas de sens net} other {non jugeable}}",
  "text.not-comparable":
    "**{n, plural, one {# autre carré ne peut pas être comparé} other {# autres carrés ne peuvent pas être comparés}} :** pour l’une des périodes, trop peu d’autres espèces y ont été notées, ou la donnée n’est pas confirmée. {n, plural, one {Il dit} other {Ils disent}} où des données existent, non ce qui a changé.",
  "text.years-none": "Aucune donnée n’a d’année.",
  "text.years-one-period": "**{n, plural, one {# donnée} other {# données}}**, {span}.",
  "text.years": "**{n, number}** {n, plural, one {donnée} other {données}}.",
  "text.years-share": "**{n, number}** {n, plural, one {donnée} other {données}}, dont {share} {since}.",
  "text.years-rates": "Pour 100 visites : {rates}.",
  "text.years-rate": "{rate} {when}",
  "text.years-rate-under": "moins de {number}",
  "text.richness": "{squares, plural, one {# carré compte} other {# carrés comptent}} {species} espèces.",
  "text.richness-empty":
    "{squares, plural, one {# carré compte} other {# carrés comptent}} {species} espèces ; {empty, plural, one {# n’en a aucune de notée} other {# n’en ont aucune de notée}}.",
  "text.square-silent": "Personne n’a envoyé de donnée de ce carré. Cela ne dit rien de ce qui y vit.",
  "text.square-species": "{n, plural, =0 {Aucune espèce} =1 {Une espèce} other {{words} espèces}}.",
  "text.square-species-latest":
    "{n, plural, =0 {Aucune espèce} =1 {Une espèce} other {{words} espèces}}, {share, select, all {toutes} none {aucune} one {dont une} other {dont {recent}}} {since}.",
  "text.square-visits": "Des données de {visits, plural, one {# visite} other {# visites}}.",
  "text.square-tetrads":
    "Des données de {visits, plural, one {# visite} other {# visites}}, dans {tetrads, number} de ses 25 carrés de 2 km.",
  "text.coarser": "Montré à {level}.",
  "text.coarser-withheld": "Ses lieux sont tenus secrets : aucune carte ne les montre.",
  "text.coarser-some": "{records} : montrées à {level}.",
  "text.coarser-some-withheld": "{records} dont les lieux sont tenus secrets : sur aucune carte.",
  "text.coarser-some-withheld-scope": "{records} dont les lieux sont tenus secrets ({scope}) : sur aucune carte.",
  "text.coarser-records":
    "{of, select, none {Données} other {Données de {name}}}{scoped, select, yes { ({scope})} other {}}",
  "text.not-stated": "Non précisé",
  "text.all-records": "Toutes les données",
  "text.all-castes": "Toutes les castes",
} satisfies WordsOf<typeof en>;
