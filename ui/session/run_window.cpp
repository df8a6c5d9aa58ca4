#include "ui/session/run_window.h"

#include <QApplication>

#include "ui/session/appearance.h"
#include "ui/session/main_window.h"
#include "ui/session/window_language.h"

namespace ribwright {

int runWindow(int argc, char** argv, const std::optional<std::string>& jobPath, const std::string& language,
              const std::function<void(MainWindow&)>& shown) {
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Ribwright"));
  speakIn(language.empty() ? windowLanguage(QLocale::system()) : language);
  applyKeptAppearance();
  MainWindow window;
  // Opened first, so that the first frame shows it.
  if (jobPath && !jobPath->empty()) window.openJob(QString::fromStdString(*jobPath));
  window.show();
  if (shown) shown(window);
  return QApplication::exec();
}

}  // namespace ribwright
