#include "ui/session/run_window.h"

#include <QApplication>

#include "ui/session/appearance.h"
#include "ui/session/font_list.h"
#include "ui/session/main_window.h"
#include "ui/session/read_ahead.h"
#include "ui/session/window_language.h"

namespace ribwright {

int runWindow(int argc, char** argv, const std::optional<std::string>& jobPath, const std::string& language,
              const std::function<void(MainWindow&)>& shown) {
  const bool opens = jobPath && !jobPath->empty();
  const std::string spoken = language.empty() ? windowLanguage(QLocale::system()) : language;
  std::future<void> fonts = readFontList();
  std::future<ReadJob> read;
  if (opens) read = readAhead(QString::fromStdString(*jobPath), spoken);
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Ribwright"));
  speakIn(spoken);
  fonts.wait();
  applyKeptAppearance();
  MainWindow window;
  // Opened first, so that the first frame shows it.
  if (opens) window.showReadJob(read.get(), QString::fromStdString(*jobPath));
  window.show();
  if (shown) shown(window);
  return QApplication::exec();
}

}  // namespace ribwright
