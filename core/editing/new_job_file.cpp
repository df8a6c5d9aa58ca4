#include "core/editing/new_job_file.h"

#include <stdexcept>

#include "core/editing/new_job_fields.h"
#include "core/job/job_file_reader.h"
#include "core/job/job_file_writer.h"
#include "core/words/embedded.h"

namespace ribwright {

namespace {

constexpr std::string_view unitSystems[] = {"feet and inches", "millimetres"};
constexpr std::string_view shapes[] = {"rectangle", "free wall"};
constexpr std::string_view roofKinds[] = {"none", "level", "single slope", "gable"};
constexpr std::string_view roofEnds[] = {"A and C", "B and D"};
constexpr std::string_view typedBys[] = {"web line", "bottom", "top", "centre"};
constexpr std::string_view girtSettings[] = {"bypass", "flush"};
constexpr std::string_view baseForms[] = {"overhang", "notch", "base trim", "on wall"};
constexpr std::string_view sides[] = {"nowhere", "A", "B", "C", "D"};
constexpr std::string_view winds[] = {"not stated", "north",      "north-east", "east",      "south-east",
                                      "south",      "south-west", "west",       "north-west"};

std::string_view shipped(std::string_view name) {
  for (const EmbeddedFile& file : embeddedFiles()) {
    if (file.name == name) return file.text;
  }
  throw std::logic_error(std::string(name) + " does not ship");
}

NewJob readShipped(std::string_view name) {
  auto stated = readNewJob(shipped(name), name);
  if (!stated) throw std::logic_error(oneLine(stated.faults().front()));  // the program itself is broken
  return std::move(stated).value();
}

}  // namespace

struct MemberList {
  std::vector<Member> feetInches, millimetres;
  bool operator==(const MemberList&) const = default;
};

constexpr std::string_view typeName(const NewJob&) { return "new_job"; }
constexpr std::string_view typeName(const MemberList&) { return "member_list"; }

static void describe(Fields<NewJob>& stated) {
  stated.required("units", &NewJob::units, "what a bare number means", ChoiceWords(unitSystems));
  stated.member("decimal_comma", &NewJob::decimalComma, "decimals are typed with a comma");
  stated.member("shape", &NewJob::shape, "a building, or one wall alone", ChoiceWords(shapes));
  for (const NewJobText& field : newJobTexts()) stated.member(field.key, field.text, field.says, lineText);
  stated.member("roof", &NewJob::roof, "its kind", ChoiceWords(roofKinds));
  stated.member("ends", &NewJob::ends, "which walls are the end walls", ChoiceWords(roofEnds));
  stated.member("typed_by", &NewJob::typedBy, "what a girt's height is the height of", ChoiceWords(typedBys));
  stated.member("girt_setting", &NewJob::girtSetting, "girts pass the columns, or stand between them",
                ChoiceWords(girtSettings));
  stated.member("base", &NewJob::base, "how sheets end at the bottom", ChoiceWords(baseForms));
  stated.member("seen_from", &NewJob::seenFrom, "before which wall people pass by", ChoiceWords(sides));
  stated.member("wind", &NewJob::wind, "where the prevailing wind blows from", ChoiceWords(winds));
}

static void describe(Fields<MemberList>& list) {
  list.required("feet_inches", &MemberList::feetInches, "cross-sections in inches");
  list.required("millimetres", &MemberList::millimetres, "cross-sections in millimetres");
}

Outcome<NewJob> readNewJob(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  return readAs<NewJob>(tree.value(), name, UnitSystem::FeetInches);
}

std::string writeNewJob(const NewJob& stated) { return writtenAs(stated, stated.units); }

const NewJob& shippedNewJob(UnitSystem units) {
  static const NewJob feetInches = readShipped("new-job.json");
  static const NewJob millimetres = readShipped("new-job-metric.json");
  return units == UnitSystem::FeetInches ? feetInches : millimetres;
}

std::vector<Member> ordinaryMembers(UnitSystem units) {
  static const MemberList list = [] {
    const auto tree = readJson(shipped("members.json"), "members.json");
    if (!tree) throw std::logic_error(oneLine(tree.faults().front()));
    auto read = readAs<MemberList>(tree.value(), "members.json", UnitSystem::FeetInches);
    if (!read) throw std::logic_error(oneLine(read.faults().front()));
    return std::move(read).value();
  }();
  return units == UnitSystem::FeetInches ? list.feetInches : list.millimetres;
}

}  // namespace ribwright
