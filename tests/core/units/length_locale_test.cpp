// No locale of the process changes a figure: neither its decimal sign, nor its grouping, nor its digits.
#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <locale>
#include <random>

#include "length_samples.h"

namespace ribwright {
namespace {

struct Wanted {
  std::string name;
  std::string source;  // what localedef compiles it from; "" = always there
};

// A point, a comma, a comma with fixed spaces, Indian grouping and digits, and the dotless i.
const std::array kWanted{Wanted{"C", ""},
                         Wanted{"C.UTF-8", ""},
                         Wanted{"de_DE.UTF-8", "de_DE"},
                         Wanted{"fr_FR.UTF-8", "fr_FR"},
                         Wanted{"hi_IN.UTF-8", "hi_IN"},
                         Wanted{"tr_TR.UTF-8", "tr_TR"}};

// Where glibc keeps what a locale is compiled from: with it here, a locale that does not run is a failure of the test.
bool canBeMade(const Wanted& wanted) {
  return wanted.source.empty() || std::filesystem::exists("/usr/share/i18n/locales/" + wanted.source);
}

// Compiled locales of the test alone, in a folder of its own that goes away with it.
class LocaleFolder {
 public:
  LocaleFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "locales XXXXXX").string();
    if (const char* made = mkdtemp(pattern.data())) path_ = made;
  }
  ~LocaleFolder() {
    std::setlocale(LC_ALL, "C");
    std::locale::global(std::locale::classic());
    unsetenv("LOCPATH");
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
  }
  LocaleFolder(const LocaleFolder&) = delete;
  LocaleFolder& operator=(const LocaleFolder&) = delete;

  // As far as the system has localedef and its sources; else a locale that is installed already may do.
  bool enter(const Wanted& wanted) {
    if (!wanted.source.empty()) {
      std::string command = "localedef --quiet -i ";
      command.append(wanted.source).append(" -f UTF-8 '").append(path_ / wanted.name).append("' >/dev/null 2>&1");
      const bool made = std::system(command.c_str()) == 0 && std::filesystem::exists(path_ / wanted.name);
      if (made)
        setenv("LOCPATH", path_.c_str(), 1);
      else
        unsetenv("LOCPATH");
    }
    if (!std::setlocale(LC_ALL, wanted.name.c_str())) return false;
    std::locale::global(std::locale(wanted.name));
    return true;
  }

 private:
  std::filesystem::path path_;
};

// Everything that is written of some thousand lengths, and whether it was read again.
std::string everything() {
  std::mt19937_64 random(5);
  std::string all;
  for (int i = 0; i < 5'000; ++i) {
    const Length length =
        Length::nanometres(static_cast<std::int64_t>(random() >> (1 + random() % 60)) * (i % 2 ? 1 : -1));
    for (const LengthStyle& style : kStyles) {
      for (const std::string& text :
           {exactText(length, style.units), shownText(length, style, 64, 6), shownText(length, style)})
        all += text + '\n';
      all += std::to_string(read(withSign(exactText(length, style.units), style), style).nanometres()) + '\n';
    }
    all += decimalInches(length) + '\n';
    all += decimalMillimetres(length) + '\n';
    all += lengthStringText({length, length, Length::inches(36)}, kMillimetresComma) + '\n';
  }
  all += faultOf("1 FT 1 INCH X", kFeetInches);
  all += std::to_string(read("1 FT 1 INCH", kFeetInches).nanometres());
  return all;
}

TEST_CASE("figures are the same in every locale") {
  const std::string plain = everything();
  LocaleFolder folder;
  std::string ran;
  std::string missing;
  for (const Wanted& wanted : kWanted) {
    if (!folder.enter(wanted)) {
      missing += ' ' + wanted.name;
      CHECK_FALSE(canBeMade(wanted));
      continue;
    }
    ran += ' ' + wanted.name;
    INFO(wanted.name);
    CHECK(everything() == plain);
  }
  std::cout << "locales that ran:" << ran << '\n';
  if (!missing.empty()) std::cout << "locales this system cannot make (package locales):" << missing << '\n';
}

// A locale test that never meets a foreign decimal sign proves nothing: this one says so.
TEST_CASE("at least one locale of the test writes a comma where the system can make one") {
  LocaleFolder folder;
  if (!folder.enter(kWanted[2])) {
    CHECK_FALSE(canBeMade(kWanted[2]));
    WARN("de_DE.UTF-8 cannot be made here: package locales is missing");
    return;
  }
  CHECK(std::string(std::localeconv()->decimal_point) == ",");
}

}  // namespace
}  // namespace ribwright
