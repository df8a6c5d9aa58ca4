// Kept work says whose it is and reads as what was kept, or not at all.
#include "core/job/kept_work.h"

#include <catch2/catch.hpp>

#include "core/job/digest.h"
#include "core/job/job_file.h"

namespace ribwright {
namespace {

KeptWork kept() {
  Job job;
  job.name = "Shed \"2\", é";
  KeptWork work;
  work.file = "/jobs/my shed.json";
  work.fileDigest = std::string(64, 'a');
  work.when = "2026-03-02T16:05:09Z";
  work.host = "desk";
  work.process = 4711;
  work.window = "0123456789abcdef";
  work.number = 12;
  work.job = writeJob(job);
  return work;
}

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

std::string firstFault(const std::string& text) {
  const auto read = readKept(text, "k");
  return read ? "(none)" : oneLine(read.faults().front());
}

}  // namespace

TEST_CASE("what is kept is what is read, with or without a job file") {
  const auto read = readKept(keptText(kept()), "k");
  REQUIRE(read);
  CHECK(read.value() == kept());
  KeptWork unnamed = kept();
  unnamed.file.clear();
  unnamed.fileDigest.clear();
  unnamed.process = UINT64_MAX;
  const auto again = readKept(keptText(unnamed), "k");
  REQUIRE(again);
  CHECK(again.value() == unnamed);
}

TEST_CASE("kept work that was cut off anywhere does not read") {
  const std::string whole = keptText(kept());
  for (std::size_t size = 0; size + 2 < whole.size(); ++size) {
    INFO(size);
    CHECK_FALSE(readKept(whole.substr(0, size), "k"));
  }
}

TEST_CASE("kept work whose job was changed in a single letter does not read") {
  const std::string text = replaced(keptText(kept()), "Shed", "Shad");
  CHECK(firstFault(text) == "k: job: is not what it should be; it is the text that was kept, whole");
}

TEST_CASE("kept work that says anything strange about itself does not read") {
  const std::string text = keptText(kept());
  const auto with = [&](const std::string& from, const std::string& to) {
    return firstFault(replaced(text, from, to));
  };
  CHECK(with("\"ribwright_kept\": 1", "\"ribwright_kept\": 2") == "k: is no kept work that this program can read");
  CHECK(firstFault("[]") == "k: is no kept work that this program can read");
  CHECK(with("4711", "-1") == "k: process: is not what it should be; it is a whole number");
  CHECK(with("4711", "4711.5") == "k: process: is not what it should be; it is a whole number");
  CHECK(with("4711", "99999999999999999999") == "k: process: is not what it should be; it is a whole number");
  CHECK(with("0123456789abcdef", "../../../etc/abc") ==
        "k: window: is not what it should be; it is 16 hexadecimal digits");
  CHECK(with("16:05:09Z", "16:05:9Z") == "k: kept: is not what it should be; it is a moment as 2026-03-02T16:05:09Z");
  CHECK(with("/jobs/my shed.json", "/jobs/a\\u0000b.json") ==
        "k: file: is not what it should be; it is a path or nothing");
  CHECK(with("/jobs/my shed.json", std::string(5000, 'x')) ==
        "k: file: is not what it should be; it is a path or nothing");
  CHECK(with("/jobs/my shed.json", "") ==
        "k: file_digest: is not what it should be; it is 64 hexadecimal digits, or nothing without a file");
  CHECK(with("\"host\"", "\"hast\"") == "k: hast: is no key of kept work; leave it out");
  CHECK(with("\"host\": \"desk\"", "\"host\": \"desk\", \"host\": \"desk\"").starts_with("k: host"));
  CHECK(with("\"desk\"", "7") == "k: host: is not what it should be; it is a computer's name");
}

}  // namespace ribwright
