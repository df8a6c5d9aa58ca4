// Copied parts as text.
#include "core/editing/copied_parts.h"
#include "core/job/job_file_reader.h"
#include "core/job/job_file_writer.h"

namespace ribwright {
namespace {

// A line between two points of a plan that are as far apart as a plan may hold.
constexpr LengthRange acrossPlan{Length(), farthest * 3, true};

}  // namespace

void describe(Fields<CopiedParts>& copied) {
  copied.required("copied_from", &CopiedParts::wall, "letter of the wall that these parts stood on", letterText);
  copied.required("width", &CopiedParts::width, "of that wall's face", acrossPlan);
  copied.member("columns", &CopiedParts::columns, "columns along that wall");
  copied.member("openings", &CopiedParts::openings, "doors, windows, louvres");
  copied.member("penetrations", &CopiedParts::penetrations, "pipes, beams, flues");
  copied.member("girts", &CopiedParts::girts, "from the lowest up");
  copied.member("members", &CopiedParts::members, "cross-sections that they name");
  copied.eachDiffers("members", copied.read().members, &Member::id, "id");
}

std::string copiedText(const CopiedParts& copied) { return writtenAs(copied, UnitSystem::FeetInches); }

Outcome<CopiedParts> parseCopied(std::string_view text) {
  const auto tree = readJson(text, "copied parts");
  if (!tree) return tree.faults();
  return readAs<CopiedParts>(tree.value(), "copied parts", UnitSystem::FeetInches);
}

}  // namespace ribwright
