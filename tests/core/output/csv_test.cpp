#include "core/output/csv.h"

#include <catch2/catch.hpp>
#include <stdexcept>

using namespace ribwright;

// RFC 4180 section 2, points 1 to 3: records end with CR LF, the last one too, and the first one names the columns.
TEST_CASE("a table is a header and its rows, each closed by CR LF") {
  CHECK(csvText({{"mark", "length"}, {{"A1", "13'"}, {"A2", "14'"}}}, false) == "mark,length\r\nA1,13'\r\nA2,14'\r\n");
  CHECK(csvText({{"mark", "length"}, {}}, false) == "mark,length\r\n");
}

// RFC 4180 section 2, points 5 to 7.
TEST_CASE("a field with a comma, a quote or a line end is quoted, and a quote in it doubled") {
  CHECK(csvText({{"a", "b", "c", "d"}, {{"red, dark", "13' 2-1/2\"", "two\nlines", "\r"}}}, false) ==
        "a,b,c,d\r\n\"red, dark\",\"13' 2-1/2\"\"\",\"two\nlines\",\"\r\"\r\n");
}

TEST_CASE("an empty field and spaces stay as they are") {
  CHECK(csvText({{"a", "b", "c"}, {{"", " x ", "'"}}}, false) == "a,b,c\r\n, x ,'\r\n");
}

TEST_CASE("a byte-order mark comes first where the job asks for one, and UTF-8 goes through") {
  CHECK(csvText({{"colour"}, {{"gr\xC3\xBCn"}}}, true) ==
        "\xEF\xBB\xBF"
        "colour\r\ngr\xC3\xBCn\r\n");
  CHECK(csvText({{"colour"}, {{"gr\xC3\xBCn"}}}, false) == "colour\r\ngr\xC3\xBCn\r\n");
}

TEST_CASE("a row that is not as long as its header never becomes a file") {
  CHECK_THROWS_AS(csvText({{"a", "b"}, {{"1", "2"}, {"3"}}}, false), std::invalid_argument);
  CHECK_THROWS_AS(csvText({{"a"}, {{"1", "2"}}}, false), std::invalid_argument);
}
