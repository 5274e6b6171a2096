import type { WordsOf } from "../catalogue.ts";
import type en from "../en/methods.ts";

export default {
  "methods.title": "Méthodes",
  "methods.description": "Les réglages en vigueur, ce qui fut laissé de côté et pourquoi.",
  "methods.lead":
    "Les règles selon lesquelles l’édition {edition} fut faite, telles qu’elles étaient en vigueur, et le nombre de données que chacune a laissées de côté.",
  "methods.section-grids": "Carroyages",
  "methods.section-placing-records": "Situer les données",
  "methods.section-dates-and-periods": "Dates et périodes",
  "methods.section-names": "Noms",
  "methods.section-records-shown-coarser": "Données montrées moins précises",
  "methods.section-coverage": "Couverture",
  "methods.section-flight-periods": "Périodes de vol",
  "methods.section-habitats-and-flowers": "Habitats et fleurs",
  "methods.section-range": "Aire de répartition",
  "methods.section-season": "Saison",
  "methods.section-regions": "Régions",
  "methods.section-not-a-red-list-assessment": "Pas une évaluation pour la Liste rouge",
  "methods.grid": "{territory} : carrés du système {grid}.",
  "methods.grid-accuracy":
    "{territory} : carrés du système {grid} ({crs} ; les coordonnées y sont ramenées{shift, select, none {} other { par le fichier de grille {shift}}} à {metres} m près environ).",
  "methods.grid-datum":
    "Les références sont supposées dans le système {datum} : c’est un réglage, car elles ne le disent pas.",
  "methods.placing-squares":
    "Une référence de carroyage nomme un carré. Elle compte pour le carré de 10 km ou de 2 km où elle se trouve, jamais pour un plus fin : une référence à 10 km ne remplit aucun carré de 2 km, et un quart de 5 km ne remplit que son carré de 10 km. Les références sont tronquées, jamais arrondies.",
  "methods.placing-points":
    "Un point est un cercle de la taille de son incertitude. Il compte pour le carré de son centre si {percent, number} % au moins du cercle s’y trouvent. Réglé à 50 %, {records, number} données de plus rempliraient un carré de 2 km, et {tetrads, number} carrés de 2 km de plus seraient occupés par quelque chose ; davantage d’entre eux à tort.",
  "methods.placing-radius":
    "Le rayon est le plus grand de ce que la donnée indique, de ce que fixe sa source et de ce que permettent les chiffres tels qu’écrits. Quand on n’en sait rien, il est de {metres, number} m.",
  "methods.placing-disguise":
    "{n, number} données utilisées avaient des coordonnées au centre ou au coin d’un carré, et furent lues comme ce carré.",
  "methods.placing-line":
    "{n, number} données utilisées sont à moins de 5 m d’une limite de carré de 2 km, plus près que certaines transformations ne sont exactes, et pourraient tomber de l’autre côté.",
  "methods.placing-without":
    "Sur {used, number} données utilisées, {hectad, number} ne remplissent aucun carré de 10 km et {tetrad, number} aucun carré de 2 km ; la page de chaque espèce dit pourquoi.",
  "methods.dates-periods":
    "{n, plural, =1 {Une période est cartographiée} other {{words} périodes sont cartographiées}} : {periods}. Une donnée ne compte dans une période que si toute sa date s’y trouve ; {vague, number} données utilisées ne sont dans aucune et comptent comme notées à une date quelconque.",
  "methods.dates-interval":
    "La fin d’un intervalle écrit est lue comme {end, select, inclusive {comprise} other {non comprise}}. Selon l’autre lecture, {records, number} données compteraient dans une autre période ou un autre tiers de mois, ou comme d’un seul jour.",
  "methods.dates-provisional":
    "Des données arrivent encore pour {years} : {n, plural, =1 {cette année est provisoire} other {ces années sont provisoires}}.",
  "methods.names":
    "Les noms sont rapprochés de la liste par ses synonymes. Un nom sous réserve (cf., aff.) ne compte jamais comme l’espèce ; un nom sans correspondance est laissé de côté et signalé au responsable de l’atlas, jamais deviné.",
  "methods.names-groups":
    "{n, plural, =1 {Une entrée est un groupe} other {{words} entrées sont des groupes}} d’espèces que l’on ne peut pas toujours distinguer. Une donnée d’un membre compte pour chaque groupe au-dessus de lui ; une donnée du groupe ne compte pour aucun membre.",
  "methods.coarser":
    "Les données qui pourraient nuire ne sont pas montrées plus fines que ne le permet la liste de l’atlas : le carré est tronqué à cette taille, jamais déplacé. Une donnée dont le lieu est tenu secret n’est sur aucune carte et compte encore dans les saisons, les années et les totaux. Chaque carte, effectif, phrase et tableau est fait des données telles qu’elles sont montrées.",
  "methods.coarser-land":
    "Là où un carré de 10 km n’a de terre que dans un seul carré de 2 km, il en dirait autant que celui-ci, et le lieu est tenu secret.",
  "methods.coarser-visits":
    "Une donnée montrée moins précise qu’elle n’est connue fait une visite à elle seule et ne couvre aucun carré pour une autre espèce ; ainsi, ce qui est dit par ailleurs d’un carré n’y mène pas.",
  "methods.coarser-entry":
    "<li><b>{taxon}</b>{scope, select, none {} other { ({scope})}} : {level, select, withheld {lieu tenu secret} other {montré à {level}}}. {reason} À revoir d’ici au {date}.</li>",
  "methods.coverage-visit":
    "Une visite est un lieu (un site nommé par l’atlas, un carré de 1 km, ou le carré de la donnée s’il est plus grand), un jour, un observateur ou un groupe, quelle que soit l’orthographe des noms et l’ordre dans lequel un groupe est nommé. Une donnée dont la date couvre plusieurs jours ne fait pas de visite.",
  "methods.coverage-named": "Chaque visite nomme un observateur.",
  "methods.coverage-nameless":
    "{n, number} visites sur {all, number} ({percent, plural, =0 {moins de 1 %} other {# %}}) ne nomment personne : le lieu et le jour seuls y font la visite, qui peut réunir les listes de plusieurs personnes.",
  "methods.coverage-lists":
    "La longueur de la liste d’une visite est le plus petit nombre de {group} qui en explique les noms, en classes d’un, de deux ou trois, et de quatre ou plus. Une liste d’un seul n’en est souvent pas une ; seules celles déclarées complètes disent ce qui ne fut pas trouvé.",
  "methods.coverage-rule":
    "Un carré est couvert pour une espèce dans une période si {least, plural, =1 {une visite au moins y a} other {# visites au moins y ont}} noté d’autres {group}. Les données de l’espèce elle-même, et celles des groupes qui peuvent la contenir, ne comptent pas, pour qu’une espèce ne puisse faire son propre gain ni sa propre perte ; pas davantage une visite qui ne rapporte que ce qui ne fut pas trouvé, ni une donnée d’une année provisoire ou de ce qui n’est pas établi en ce lieu. À côté de cette règle, tout est donné selon une règle plus stricte de {more} visites.",
  "methods.coverage-blank":
    "Un carré que personne n’a couvert est hachuré. Un carré blanc fut couvert sans que l’espèce y soit signalée, ce qui n’est pas une preuve d’absence.",
  "methods.coverage-expected":
    "<p>Le nombre de {group} que les visites d’un carré peuvent faire attendre est estimé d’après ceux mentionnés à une visite (<i>Q</i><sub>1</sub>) et à deux (<i>Q</i><sub>2</sub>) sur <i>m</i> ; les observés divisés par les attendus donnent sa complétude.</p><formula>attendus = observés + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub>² / (2 <i>Q</i><sub>2</sub>)</formula><formula>si <i>Q</i><sub>2</sub> = 0 : attendus = observés + ((<i>m</i> − 1)/<i>m</i>) <i>Q</i><sub>1</sub> (<i>Q</i><sub>1</sub> − 1) / 2</formula>",
  "methods.coverage-bound":
    "C’est une borne inférieure, avec un intervalle de confiance log-normal à 95 %, donnée à partir de {visits} visites. Ce qui ne fut mentionné qu’une fois la détermine, une erreur d’identification aussi : elle est donnée avec et sans les espèces qui tiennent à une seule donnée. Source : A. Chao (1987), <i>Biometrics</i> 43 : 783–791 ; forme pour petits échantillons R. K. Colwell et autres (2012), <i>Journal of Plant Ecology</i> 5 : 3–21 ; couverture de l’échantillon A. Chao et L. Jost (2012), <i>Ecology</i> 93 : 2533–2547.",
  "methods.coverage-reading":
    "Notre lecture : les échantillons sont les visites d’observation courante et des comptages collectifs ; les enquêtes consacrées à une espèce, les lots de musée et de bibliographie et les données montrées moins précises sont laissés de côté. Un groupe ne compte pas là où l’un de ses membres fut noté.",
  "methods.flight-thirds":
    "Les barres comptent les données par tiers de mois : du 1er au 10, du 11 au 20, et du 21 à la fin, qui compte 8 à 11 jours. Une donnée n’entre que si toute sa date est dans un seul tiers ; une donnée connue à son mois près n’entre dans aucun.",
  "methods.flight-castes":
    "Les castes sont celles que la donnée indique. Les données qui n’en indiquent pas forment une classe à part et ne sont jamais réparties entre les autres.",
  "methods.flight-step":
    "La marche derrière les barres est le nombre de visites à tous les {group}, à la même échelle. Un tiers de mois avec moins de {visits, number} visites est dessiné en barre ouverte.",
  "methods.use-ratio":
    "Les données qui indiquent un habitat, une fleur ou autre sont comparées à ce que les observateurs ont visité : la part du terme dans les visites avec l’espèce, divisée par sa part dans toutes les visites qui en indiquent un. Le rapport vaut 1 là où elle fut notée aussi souvent qu’ailleurs (Manly et autres 2002). Un habitat compte pour toute la visite ; une fleur, un site de nid ou un hôte pour l’animal ({group}) qui s’y trouvait, chacun une fois par visite.",
  "methods.use-interval":
    "Seule compte l’observation courante : une enquête consacrée à une espèce et un lot de musée ont choisi leurs lieux d’après elle. L’intervalle est celui du logarithme linéarisé du rapport entre carrés de 10 km, dont les visites se ressemblent (Liang et Zeger 1986).",
  "methods.use-limits":
    "Le rapport n’est pas donné si moins de {visits} visites indiquent un terme pour l’espèce, ou si moins de {term} indiquent le terme en tout. <b>Visité ne veut pas dire préféré :</b> les observateurs choisissent où ils marchent et quelles fleurs ils regardent, et notent ce qui leur paraît digne de l’être.",
  "methods.not-a-red-list":
    "Les nombres de carrés et les évolutions entre périodes décrivent les données de cet atlas. Ils n’évaluent pas le risque d’extinction d’une espèce, qui demande plus que des carrés et revient à ceux qui en sont chargés dans chaque pays.",
  "methods.left-out": "Ce qui fut laissé de côté",
  "methods.left-out-sentence":
    "Sur {read, plural, one {# donnée lue} other {# données lues}}, {held, number} sont en attente et {unused, number} non utilisées.",
  "methods.left-out-link": "Tous les statuts et raisons, additionnés",
  "methods.no-square-caption":
    "Données utilisées qui ne remplissent aucun carré d’une taille. Elles comptent pour les totaux, les saisons et les carrés plus grands.",
  "methods.reason": "Raison",
  "methods.square": "Carré",
  "methods.records": "Données",
  "methods.half":
    "Une règle plus large, de la moitié du cercle au lieu de celle en vigueur, ajouterait {n, plural, one {# donnée} other {# données}} à un carré de 2 km, au prix d’un plus grand nombre dans le mauvais.",
  "methods.checks-caption":
    "Contrôles automatiques. Un constat est une question à une personne ; la plupart n’écartent pas la donnée.",
  "methods.check": "Contrôle",
  "methods.what-it-does": "Effet",
  "methods.blocks": "met la donnée en attente",
  "methods.ask": "pose une question",
  "methods.note": "signale",
} satisfies WordsOf<typeof en>;
