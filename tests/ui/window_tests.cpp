#include "tests/ui/window_tests.h"

#include <QFileInfo>
#include <cstdio>
#include <map>

namespace ribwright {

namespace {

std::map<QString, RunTest>& knownTests() {
  static std::map<QString, RunTest> known;
  return known;
}

int tellNames() {
  std::fputs("test_window NAME [options of QTest], NAME being one of\n", stderr);
  for (const auto& [name, run] : knownTests()) std::fprintf(stderr, "  %s\n", qPrintable(name));
  return 2;
}

}  // namespace

bool addWindowTest(const char* file, RunTest run) {
  return knownTests().emplace(QFileInfo(QString::fromLocal8Bit(file)).completeBaseName(), run).second;
}

}  // namespace ribwright

int main(int argc, char** argv) {
  const auto& known = ribwright::knownTests();
  const auto named = argc > 1 ? known.find(QString::fromLocal8Bit(argv[1])) : known.end();
  if (named == known.end()) return ribwright::tellNames();
  argv[1] = argv[0];  // QTest sees a program that is this test alone
  return named->second(argc - 1, argv + 1);
}
