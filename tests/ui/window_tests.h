// The window's tests are one program: test_window NAME [QTest's options], NAME being a test's file without its ending.
#pragma once

#include <QApplication>
#include <QtTest>

namespace ribwright {

using RunTest = int (*)(int argc, char** argv);

// Makes a test known before main. `file` is its source file; what follows its name on the command line goes to `run`.
bool addWindowTest(const char* file, RunTest run);

template <class Test, class Application>
int runTest(int argc, char** argv) {
  const Application application(argc, argv);
  Test test;
  return QTest::qExec(&test, argc, argv);
}

}  // namespace ribwright

// At the end of a test's file, once; the second for what needs no display.
#define WINDOW_TEST(Test)                          \
  [[maybe_unused]] static const bool known##Test = \
      ribwright::addWindowTest(__FILE__, ribwright::runTest<Test, QApplication>);
#define WINDOWLESS_TEST(Test)                      \
  [[maybe_unused]] static const bool known##Test = \
      ribwright::addWindowTest(__FILE__, ribwright::runTest<Test, QCoreApplication>);
