// The Spanish words say all that the English ones say, with the same values.
//
// The terms, of the building trade in the Americas; one for each thing, and held to:
//   sheet lámina · blank length largo bruto · cover ancho útil · lip pestaña · rib, crown cresta · pan valle · flat
//   plano bend doblez · wall pared · opening vano · penetration paso · jamb jamba · head dintel · sill antepecho girt
//   larguero · eave purlin correa de alero · column columna · flange ala · web alma · bay entreeje · member perfil side
//   lap solape lateral · end lap solape de extremo · seam junta · expansion joint junta de dilatación run tramo · band
//   franja · start arranque · module line línea de módulo · reach saliente · to hang colocar rip (a sheet cut along to
//   less width) reducida · rake hastial · eave alero · ridge cumbrera · leg (beside an opening) tira screw tornillo ·
//   stitch screw tornillo de costura · row hilera · pattern patrón · offset distancia · washer arandela drift of a
//   drill desvío de la broca · corner zone zona de esquina · field zona central · trim remate concrete concreto · slab
//   losa · grade terreno · batch lote · job trabajo · finding hallazgo · layout despiece by others por terceros · to
//   state indicar · survey levantamiento · marking stick vara de marcar · full-scale strip regleta a tamaño real ·
//   plumb plomo · swarf viruta · pilot hole agujero guía
//   sag flecha · span (of a girt) luz · prop puntal
#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "core/words/words.h"

using namespace ribwright;

namespace {

// A text as it stands in the file: without values its names stay in their braces.
std::string textOf(const Words& words, const std::string& id) { return words.say(id, {}, {}); }

std::multiset<std::string> valuesIn(const std::string& text) {
  std::multiset<std::string> names;
  for (std::size_t at = text.find('{'); at != std::string::npos; at = text.find('{', at + 1))
    names.insert(text.substr(at, text.find('}', at) + 1 - at));
  return names;
}

// Nothing in them but values and signs, or one word in both languages.
const std::set<std::string> alike = {"order.less",
                                     "order.more",
                                     "edit.flag.no",
                                     "paper.job.date",
                                     "paper.maker",
                                     "paper.row",
                                     "part.hang",
                                     "part.of",
                                     "part.times",
                                     "screws.steel",
                                     "screws.end.rows",
                                     "screws.kind.base",
                                     "steel.chalk.mark",
                                     "strip.ruler.in",
                                     "strip.ruler.mm",
                                     "template.holes",
                                     "template.row.base",
                                     "template.stack.sheet",
                                     "trim.piece-line",
                                     "trim.piece.again",
                                     "trim.piece.numbered",

                                     "choice.trim_rule.where.base",
                                     "delivery.sheets",
                                     "delta.line",
                                     "finding.no-price.where",
                                     "finding.ordered-not-needed.where",
                                     "finding.short-not-ordered.where",
                                     "finding.batch-row-held.do",
                                     "finding.batch-row-held.why",
                                     "finding.girt-off-plan.do",
                                     "finding.screw-line-crooked.do",
                                     "finding.slab-edge-open.do",
                                     "finding.slab-edge-open.why"};

}  // namespace

TEST_CASE("Spanish and English have words for the same ids") {
  CHECK(Words::of("en").ids().size() > 400);
  CHECK(Words::of("es").ids() == Words::of("en").ids());
}

TEST_CASE("a Spanish text names the same values as the English one") {
  const Words &english = Words::of("en"), &spanish = Words::of("es");
  for (const std::string& id : english.ids()) {
    INFO(id);
    CHECK(valuesIn(textOf(spanish, id)) == valuesIn(textOf(english, id)));
  }
}

TEST_CASE("no Spanish text is left in English") {
  const Words &english = Words::of("en"), &spanish = Words::of("es");
  for (const std::string& id : english.ids()) {
    INFO(id);
    CHECK((textOf(spanish, id) == textOf(english, id)) == alike.contains(id));
  }
}

// Sentences that follow others begin with the same space, and pieces of sentences end without a point, in both.
TEST_CASE("a Spanish text begins and ends as the English one does") {
  const Words &english = Words::of("en"), &spanish = Words::of("es");
  for (const std::string& id : english.ids()) {
    const std::string en = textOf(english, id), es = textOf(spanish, id);
    INFO(id << ": " << es);
    CHECK(es.empty() == en.empty());
    if (es.empty() || en.empty()) continue;
    for (const char sign : {' ', ','}) CHECK((es.front() == sign) == (en.front() == sign));
    const bool shortened = es.ends_with("izq.") || es.ends_with("der.");
    for (const char sign : {'.', ':'}) CHECK(((es.back() == sign && !shortened) == (en.back() == sign)));
  }
}
