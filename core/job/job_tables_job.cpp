// Tables of the job as a whole and of its settings.
#include "core/job/job_tables.h"

namespace ribwright {
namespace {

constexpr std::string_view unitSystems[] = {"feet and inches", "millimetres"};
constexpr std::string_view decimalSigns[] = {".", ","};
constexpr std::string_view zoneRules[] = {"none", "ASCE 7", "EN 1991-1-4", "typed"};

enum class DecimalSign { Point, Comma };
DecimalSign toSign(char sign) { return sign == ',' ? DecimalSign::Comma : DecimalSign::Point; }
char fromSign(DecimalSign sign) { return sign == DecimalSign::Comma ? ',' : '.'; }

void formatVersion(Fields<Job>& job) {
  int version = 1;
  job.put({"ribwright", "version of this file's format", true}, version, 1, WholeRange{1, 1});
}

void sizesAndGoods(Fields<Job>& job) {
  job.member("profiles", &Job::profiles, "sheet profiles that this job uses");
  job.member("members", &Job::members, "cross-sections of girts, purlins and columns");
  job.member("screws", &Job::screws, "screws that the patterns use");
  job.member("patterns", &Job::patterns, "hole patterns as the plans state them");
  job.member("trims", &Job::trims, "trim that this job uses");
  job.member("trim_rules", &Job::trimRules, "what is trimmed with what");
  job.member("prices", &Job::prices, "what the user pays");
}

void identities(Fields<Job>& job) {
  const Job& read = job.read();
  job.eachDiffers("profiles", read.profiles, &Profile::id, "id");
  job.eachDiffers("members", read.members, &Member::id, "id");
  job.eachDiffers("screws", read.screws, &Screw::id, "id");
  job.eachDiffers("patterns", read.patterns, &ScrewPattern::id, "id");
  job.eachDiffers("trims", read.trims, &Trim::id, "id");
  job.eachDiffers("trim_rules", read.trimRules, &TrimRule::id, "id");
  job.eachDiffers("walls", read.walls, &Wall::letter, "letter");
  job.eachDiffers("silenced", read.silenced, &SilencedFinding::key, "key");
}

}  // namespace

void describe(Fields<Job>& job) {
  formatVersion(job);
  job.member("name", &Job::name, "what the job is called", lineText);
  job.member("number", &Job::number, "job number", lineText);
  job.member("revision", &Job::revision, "revision of the drawings", lineText);
  job.member("date", &Job::date, "date of the revision", lineText);
  job.member("note", &Job::note, "anything worth knowing", noteText);
  job.required("units", &Job::units, "units that people see, and this file is written in", ChoiceWords(unitSystems));
  job.converted("decimal_sign", &Job::decimalSign, "on screen and paper; this file always has the point", toSign,
                fromSign, ChoiceWords(decimalSigns));
  job.member("site", &Job::site, "true north, wind, and from where the building is seen");
  job.member("building", &Job::building, "plan and roof");
  job.member("settings", &Job::settings, "numbers of the trade; those that differ from the shipped ones");
  sizesAndGoods(job);
  job.member("walls", &Job::walls, "the outline's walls by letter, then free walls");
  job.member("facts", &Job::facts, "what has been hung, ordered and received");
  job.member("silenced", &Job::silenced, "findings that someone looked at and put aside");
  identities(job);
  references(job);
}

void describe(Fields<Settings>& settings) {
  settings.member("jamb_clearance", &Settings::jambClearance, "sheet edge from the jamb's steel", notNegative);
  settings.member("head_clearance", &Settings::headClearance, "sheet end from the head's steel", notNegative);
  settings.member("sill_clearance", &Settings::sillClearance, "sheet end from the sill's steel", notNegative);
  settings.member("narrow_leg", &Settings::narrowLeg, "an uncovered leg beside an opening is a finding below this",
                  notNegative);
  settings.member("seam_from_jamb", &Settings::seamFromJamb, "a seam nearer to a jamb is a finding", notNegative);
  settings.member("corner_trim_leg", &Settings::cornerTrimLeg, "leg of the corner trim", notNegative);
  settings.member("grade_clearance", &Settings::gradeClearance, "sheet end at least this far above grade", notNegative);
  settings.member("rake_allowance", &Settings::rakeAllowance, "added to blanks that are trimmed in place", notNegative);
  settings.member("fragile_leg_width", &Settings::fragileLegWidth, "a leg narrower than this ...", notNegative);
  settings.member("fragile_leg_length", &Settings::fragileLegLength, "... and longer than this is fragile",
                  notNegative);
  settings.member("heaviest_piece_kilograms", &Settings::heaviestPieceKilograms, "what two people lift",
                  WholeRange{1, 10'000});
  settings.member("drift", &Settings::drift, "how far a drill may wander", notNegative);
  settings.member("stack_limit", &Settings::stackLimit, "sheets drilled in one stack", WholeRange{1, 1000});
  settings.member("straightness", &Settings::straightness, "screw lines are straight within this", notNegative);
  settings.member("most_order_lengths", &Settings::mostOrderLengths,
                  "how many different lengths of a profile, thickness and colour; 0: any number",
                  WholeRange{0, 10'000});
  settings.member("kerf", &Settings::kerf, "width of a cut", notNegative);
  settings.member("least_drop", &Settings::leastDrop, "a rest at least this long is kept", notNegative);
  settings.member("sharing", &Settings::sharing, "which pieces may come out of one blank");
  settings.member("spares", &Settings::spares, "sheets ordered beyond those that are hung");
  settings.member("bundles", &Settings::bundles, "limits of one bundle");
  settings.member("byte_order_mark", &Settings::byteOrderMark, "write one in front of CSV tables");
  settings.member("corner_zones", &Settings::cornerZones, "which part of a wall takes the corner pattern");
}

void describe(Fields<CornerZones>& zones) {
  zones.member("rule", &CornerZones::rule, "where the width comes from", ChoiceWords(zoneRules));
  zones.member("width", &CornerZones::width, "with typed: width of the zone", notNegative);
}

void describe(Fields<SilencedFinding>& silenced) {
  silenced.required("key", &SilencedFinding::key, "which finding", keyText);
  silenced.member("reason", &SilencedFinding::reason, "why it is no trouble", noteText);
}

}  // namespace ribwright
