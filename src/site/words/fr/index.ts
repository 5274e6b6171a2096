import apart from "./apart.ts";
import body from "./body.ts";
import book from "./book.ts";
import card from "./card.ts";
import charts from "./charts.ts";
import checks from "./checks.ts";
import coverage from "./coverage.ts";
import design from "./design.ts";
import downloads from "./downloads.ts";
import entrySheet from "./entry-sheet.ts";
import expected from "./expected.ts";
import fates from "./fates.ts";
import figures from "./figures.ts";
import find from "./find.ts";
import home from "./home.ts";
import inSeason from "./in-season.ts";
import largeMap from "./large-map.ts";
import layout from "./layout.ts";
import lines from "./lines.ts";
import lists from "./lists.ts";
import maps from "./maps.ts";
import media from "./media.ts";
import methods from "./methods.ts";
import methodsChange from "./methods-change.ts";
import methodsExpected from "./methods-expected.ts";
import methodsRange from "./methods-range.ts";
import narrow from "./narrow.ts";
import offline from "./offline.ts";
import practice from "./practice.ts";
import ranges from "./ranges.ts";
import reasons from "./reasons.ts";
import regions from "./regions.ts";
import seasonFigures from "./season-figures.ts";
import species from "./species.ts";
import squares from "./squares.ts";
import tables from "./tables.ts";
import takePart from "./take-part.ts";
import text from "./text.ts";
import truth from "./truth.ts";
import wanted from "./wanted.ts";
import zoom from "./zoom.ts";

export default {
  ...methodsChange,
  ...methodsExpected,
  ...methodsRange,
  ...methods,
  ...media,
  ...coverage,
  ...downloads,
  ...tables,
  ...checks,
  ...fates,
  ...reasons,
  ...apart,
  ...practice,
  ...truth,
  ...takePart,
  ...inSeason,
  ...home,
  ...find,
  ...design,
  ...entrySheet,
  ...seasonFigures,
  ...ranges,
  ...lines,
  ...figures,
  ...narrow,
  ...offline,
  ...body,
  ...book,
  ...largeMap,
  ...layout,
  ...card,
  ...expected,
  ...regions,
  ...squares,
  ...wanted,
  ...text,
  ...maps,
  ...lists,
  ...charts,
  ...species,
  ...zoom,
};
