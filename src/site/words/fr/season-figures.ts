import type { WordsOf } from "../catalogue.ts";
import type en from "../en/season-figures.ts";

export default {
  "season-figures.title": "Saison",
  "season-figures.method":
    "Les jours avant lesquels une part des visites a été faite ; un décalage est celui du jour selon l’année, compte tenu de la latitude, du territoire, de la caste et de la saison d’observation.",
  "season-figures.too-few": "Trop peu de visites {when} : aucune date de sa saison ne peut être donnée.",
  "season-figures.none": "Aucune date de sa saison ne peut être donnée.",
  "season-figures.half": "{when}, la moitié des visites où elle fut notée étaient faites le **{day}**.",
  "season-figures.half-caste": "{when}, la moitié des visites avec cette caste ({caste}) étaient faites le **{day}**.",
  "season-figures.half-undated": "La moitié des visites où elle fut notée étaient faites le **{day}**.",
  "season-figures.half-caste-undated": "La moitié des visites avec cette caste ({caste}) étaient faites le **{day}**.",
  "season-figures.shift-unknown": "Un décalage **ne peut pas être établi** : {reason}.",
  "season-figures.shift-rest":
    "{years} années, de {first} à {last} ; compte tenu de la latitude, du territoire, de la caste et de la saison d’observation",
  "season-figures.shift-none":
    "Sa médiane ne montre **pas de décalage net** : {shift} jours par décennie (intervalle de confiance à 95 % : {interval} ; {rest}).",
  "season-figures.shift":
    "La médiane est venue **{days} jours plus {way, select, earlier {tôt} other {tard}} par décennie** (intervalle de confiance à 95 % : {near} à {far} plus {way, select, earlier {tôt} other {tard}} ; {rest}).",
  "season-figures.left-out": "Laissées de côté : {parts}.",
  "season-figures.left-out-vague":
    "{n, plural, one {# donnée dont la date n’est pas un jour} other {# données dont la date n’est pas un jour}}",
  "season-figures.left-out-kind":
    "{n, plural, one {# donnée} other {# données}} de spécimens, de bibliographie ou de nids",
  "season-figures.of-median": "Médiane de toutes les visites",
  "season-figures.of-share": "Jour avant lequel {percent} % étaient faites",
  "season-figures.of-years": "Médianes des années",
  "season-figures.of-years-raw": "Médianes des années, telles que notées",
  "season-figures.basis-visits": "Visites, chacune une fois",
  "season-figures.basis-records": "Données",
  "season-figures.basis-even_visits": "Visites, effort d’observation égalisé sur l’année",
  "season-figures.basis-when": "{basis}, {when}",
  "season-figures.visits-when": "Visites {when}",
  "season-figures.visits-when-where": "Visites {when}, {where}",
  "season-figures.note":
    "Une visite compte une fois, et seules sont connues celles qui ont vu quelque chose du groupe ({group}) : ce sont des parts de visites, non des nombres d’animaux. Aucune date la plus précoce n’est donnée, car elle avance par le seul nombre des données.",
  "season-figures.caption": "Jour avant lequel les visites étaient faites {when}",
  "season-figures.others": "Autres périodes et territoires, données, et effort d’observation égalisé",
  "season-figures.shifts": "Décalage de la saison, jours par décennie",
  "season-figures.shifts-caption":
    "Au-dessous de 0 : plus tôt ; tous sauf les médianes telles que notées tiennent compte de la latitude, du territoire, de la caste et de la saison d’observation",
  "season-figures.what-moved": "Ce qui s’est décalé",
  "season-figures.days-per-decade": "Jours par décennie",
  "season-figures.years": "Années",
  "season-figures.visits": "Visites",
  "season-figures.records": "Données",
  "season-figures.caste": "Caste",
  "season-figures.half-of": "Moitié",
  "season-figures.use-too-little": "Trop peu est indiqué pour conclure : {reason}.",
  "season-figures.use-none":
    "{kind} : rien ne se détache {ofVisit, select, yes {des visites qui y furent faites} other {de tout ce qui y fut noté}}.",
  "season-figures.use-less":
    "Notée **moins souvent** que {ofVisit, select, yes {les visites qui y furent faites} other {tout ce qui y fut noté}} ne le ferait attendre : {terms}.",
  "season-figures.use-more":
    "Notée **{ratio} fois plus qu’attendu : {term}**, par rapport {ofVisit, select, yes {aux visites qui y furent faites} other {à tout ce qui y fut noté}} (intervalle de confiance à 95 % : {low} à {high}){others, select, none {} other { ; plus souvent aussi : {others}}}{fewer, select, none {} other { ; moins souvent : {fewer}}}.",
  "season-figures.use-method-visits":
    "La part des visites avec elle qui indiquent un habitat, par rapport à la part de toutes les visites.",
  "season-figures.use-method": "Combien de fois elle fut ainsi notée, par rapport à l’ensemble du groupe ({group}).",
  "season-figures.use-caution":
    "<b>Visité ne veut pas dire préféré.</b> Les observateurs choisissent où ils marchent et ce qu’ils regardent ; les chiffres s’y comparent et ne peuvent l’effacer.",
  "season-figures.use-note": "Plein : sa part. Ouvert : la part de toutes. Pointillé : trop peu pour comparer.",
  "season-figures.use-summary": "{kind} : rapport de l’usage à ce qui fut visité",
  "season-figures.use-caption": "{kind} : sa part divisée par la part de toutes ; 1 : aussi souvent qu’ailleurs",
  "season-figures.use-caste": "{caste} : de même, pour les données qui indiquent la caste",
  "season-figures.ratio": "Rapport",
  "season-figures.visits-with-it-there": "Visites avec elle, là",
  "season-figures.visits-with-it": "Visites avec elle",
  "season-figures.visits-there": "Visites, là",
  "season-figures.all-visits": "Toutes les visites",
  "season-figures.times-there": "Fois où elle y était",
  "season-figures.times-stated": "Fois où c’est indiqué",
  "season-figures.any-there": "Tout le groupe ({group}), là",
  "season-figures.any": "Tout le groupe ({group})",
  "season-figures.term": "Terme",
  "season-figures.drawn": "Dessin",
  "season-figures.its": "Sa part",
  "season-figures.all": "Toutes",
} satisfies WordsOf<typeof en>;
