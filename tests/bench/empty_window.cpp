// A QMainWindow with nothing in it, as large as ours: what start_bench holds our start against.
#include <QMainWindow>

#include "first_frame.h"

int main(int argc, char** argv) {
  QApplication application(argc, argv);
  QMainWindow window;
  window.resize(1280, 860);
  ribwright::bench::FirstFrame frame(window);
  window.show();
  return QApplication::exec();
}
