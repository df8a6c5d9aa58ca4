// What the reader of job files refuses, and the words it does it with (core/job/job_file.h).
#include <catch2/catch.hpp>

#include "tests/core/job/job_file_faulty.h"

namespace ribwright {

TEST_CASE("JSON that does not parse is refused with line and column") {
  const std::vector<FaultyFile> files = {
      {"nothing at all", "", {R"(line 1, column 1: the text ends too early; is a bracket or a quote missing?)"}},
      {"blanks only", "  \n", {R"(line 2, column 1: the text ends too early; is a bracket or a quote missing?)"}},
      {"no JSON",
       R"(ribwright 1)",
       {R"(line 1, column 1: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"a comma too many",
       R"({"ribwright": 1,
 "units": "millimetres",
})",
       {R"(line 3, column 1: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"a bracket missing",
       R"({"ribwright": 1, "walls": [)",
       {R"(line 1, column 28: the text ends too early; is a bracket or a quote missing?)"}},
      {"a quote missing",
       R"({"ribwright": 1, "name": "Barn
})",
       {R"(line 1, column 31: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"columns count letters, not bytes",
       R"({"name": "Çà", units})",
       {R"(line 1, column 16: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"two values",
       R"({"ribwright": 1, "units": "millimetres"} {})",
       {R"(line 1, column 42: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"a number beyond all",
       R"({"ribwright": 1e999, "units": "millimetres"})",
       {R"(line 1, column 20: the number 1e999 is out of range; write a smaller one)"}},
      {"NaN",
       R"({"ribwright": NaN})",
       {R"(line 1, column 15: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
      {"a comment",
       R"(// job
{"ribwright": 1})",
       {R"(line 1, column 1: this is no JSON; look at this place and just before it for a comma, a quote or a bracket)"}},
  };
  refusesEach(files);
}

TEST_CASE("the head of a file, unknown keys and keys that stand twice") {
  const std::vector<FaultyFile> files = {
      {"a list", R"([])", {R"(is a list; an object in braces belongs here)"}},
      {"bare text", R"("job")", {R"(is text; an object in braces belongs here)"}},
      {"no version, no units",
       R"({})",
       {R"(ribwright: is missing: version of this file's format)",
        R"(units: is missing: units that people see, and this file is written in)"}},
      {"a newer format hides all else",
       R"({"ribwright": 2, "wals": []})",
       {R"(ribwright: this file has format 2, and this program reads formats up to 1; open it with a newer Ribwright)"}},
      {"format 0", R"({"ribwright": 0, "units": "millimetres"})", {R"(ribwright: 0 is out of range; write 1)"}},
      {"version as text",
       R"({"ribwright": "1", "units": "millimetres"})",
       {R"(ribwright: is text; a whole number belongs here)"}},
      {"unknown units",
       R"({"ribwright": 1, "units": "cm"})",
       {R"(units: "cm" is none of these: "feet and inches", "millimetres")"}},
      {"unknown decimal sign", jobOf(R"("decimal_sign": ";")"), {R"(decimal_sign: ";" is none of these: ".", ",")"}},
      {"unknown key", jobOf(R"("wals": [])"), {R"(wals: is no key of this file; the nearest is "walls")"}},
      {"unknown key deep inside",
       jobOf(R"("walls": [{"letter": "A", "bands": [{"color": "red"}]}])"),
       {R"(walls[0].bands[0].color: is no key of this file; the nearest is "colour")"}},
      {"strange key", jobOf(R"("a b\n": 1)"), {R"("a b ": is no key of this file; the nearest is "name")"}},
      {"key twice", jobOf(R"("name": "a", "name": "b")"), {R"(name: stands twice in one object; keep one of the two)"}},
      {"key twice deep inside",
       wallOf(R"("girts": [{"id": "g1", "height": "1'", "height": "2'"}])"),
       {R"(walls[0].girts[0].height: stands twice in one object; keep one of the two)"}},
      {"key twice, inside it nothing is looked at",
       jobOf(R"("site": {}, "site": {"x": {"y": 1}})"),
       {R"(site: stands twice in one object; keep one of the two)"}},
  };
  refusesEach(files);
}

}  // namespace ribwright
