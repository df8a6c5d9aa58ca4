#include "ui/session/run_window.h"

#include <QApplication>

#include "ui/session/main_window.h"

namespace ribwright {

int runWindow(int argc, char** argv, const std::optional<std::string>& jobPath) {
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Ribwright"));
  MainWindow window;
  window.show();
  if (jobPath && !jobPath->empty()) window.openJob(QString::fromStdString(*jobPath));
  return QApplication::exec();
}

}  // namespace ribwright
