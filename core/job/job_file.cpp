#include "core/job/job_file.h"

#include <stdexcept>

#include "core/job/file_reading.h"
#include "core/job/file_writing.h"
#include "core/job/job_file_reader.h"
#include "core/job/job_file_tree.h"
#include "core/job/job_file_writer.h"
#include "core/words/embedded.h"

namespace ribwright {
namespace {

constexpr int newestFormat = 1;

// A file of a later program is refused by name; its unknown keys would only bury that.
std::vector<Fault> newerFormat(const JsonNode& root, std::string_view name) {
  const JsonNode* version = root.find("ribwright");
  if (!version || version->is != JsonNode::Is::Number) return {};
  const std::string& digits = version->text;
  const bool whole = !digits.empty() && digits.find_first_not_of("0123456789") == std::string::npos;
  if (!whole || digits == "0" || digits == std::to_string(newestFormat)) return {};
  return {{std::string(name) + ": ribwright", "this file has format " + digits +
                                                  ", and this program reads formats up to " +
                                                  std::to_string(newestFormat) + "; open it with a newer Ribwright"}};
}

// What bare numbers of a slope mean; a wrong word is a fault when the table comes to it.
UnitSystem unitsOf(const JsonNode& root) {
  const JsonNode* units = root.find("units");
  const bool millimetres = units && units->is == JsonNode::Is::Text && units->text == "millimetres";
  return millimetres ? UnitSystem::Millimetres : UnitSystem::FeetInches;
}

}  // namespace

Outcome<Job> readJob(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  const JsonNode& root = tree.value().root;
  const std::vector<Fault> newer = newerFormat(root, name);
  if (!newer.empty()) return newer;
  return readAs<Job>(tree.value(), name, unitsOf(root));
}

std::string writeJob(const Job& job) { return writtenAs(job, job.units); }

std::vector<Fault> faultsOf(const Job& job) {
  const auto read = readJob(writeJob(job), "");
  if (!read) {
    std::vector<Fault> faults = read.faults();
    for (Fault& fault : faults) {
      if (fault.place.starts_with(": ")) fault.place.erase(0, 2);
    }
    return faults;
  }
  if (read.value() == job) return {};
  return {{"", "a text of this job is no sound UTF-8; type it anew"}};
}

Outcome<std::string> jobText(const std::string& path) { return readWhole(path, mostBytes); }

Outcome<Job> loadJob(const std::string& path) {
  const auto text = jobText(path);
  if (!text) return text.faults();
  return readJob(text.value(), path);
}

Outcome<SavedFile> saveJob(const Job& job, const std::string& path) {
  DiskStorage disk;
  return saveJob(job, path, disk);
}

Outcome<SavedFile> saveJob(const Job& job, const std::string& path, Storage& storage) {
  std::vector<Fault> faults = faultsOf(job);
  if (!faults.empty()) return faults;
  const std::string text = writeJob(job);
  const std::vector<Fault> trouble = writeWhole(path, text, storage);
  if (!trouble.empty()) return trouble;
  return SavedFile{path, text.size()};
}

Outcome<Profile> readProfile(std::string_view text, std::string_view name) {
  const auto tree = readJson(text, name);
  if (!tree) return tree.faults();
  return readAs<Profile>(tree.value(), name, UnitSystem::FeetInches);
}

std::string writeProfile(const Profile& profile, UnitSystem units) { return writtenAs(profile, units); }

const std::vector<Profile>& shippedProfiles() {
  static const std::vector<Profile> profiles = [] {
    std::vector<Profile> read;
    for (const EmbeddedFile& file : embeddedFiles()) {
      if (!file.name.starts_with("profiles/")) continue;
      auto profile = readProfile(file.text, file.name);
      if (!profile) throw std::logic_error(oneLine(profile.faults().front()));  // the program itself is broken
      read.push_back(std::move(profile).value());
    }
    return read;
  }();
  return profiles;
}

}  // namespace ribwright
