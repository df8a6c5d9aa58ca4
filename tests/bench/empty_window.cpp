// A QMainWindow with nothing in it, as large as ours: what start_bench holds our start against. With any argument it
// holds one word, for which Qt reads the machine's fonts.
#include <QLabel>
#include <QMainWindow>

#include "first_frame.h"

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  QMainWindow window;
  window.resize(1280, 860);
  if (argc > 1) window.setCentralWidget(new QLabel(QStringLiteral("Word"), &window));
  ribwright::bench::FirstFrame frame(window);
  window.show();
  return QApplication::exec();
}
