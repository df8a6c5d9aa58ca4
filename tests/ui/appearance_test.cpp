// Light, dark and any size of text: nothing is clipped, everything can be reached with the keyboard, and has a name.
#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDockWidget>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>
#include <QTabBar>
#include <QTableView>
#include <QToolBar>
#include <QTreeWidget>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/elided_label.h"
#include "ui/panels/is_seen.h"
#include "ui/panels/perimeter_strip.h"
#include "ui/panels/plan_inset.h"
#include "ui/panels/wall_tile.h"
#include "ui/session/appearance.h"

using namespace ribwright;

namespace {

double brightness(const QColor& colour) {
  const auto part = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) + 0.0722 * part(colour.blueF());
}

// As WCAG 2.1 reckons it.
double contrast(const QColor& a, const QColor& b) {
  const double light = std::max(brightness(a), brightness(b)), dark = std::min(brightness(a), brightness(b));
  return (light + 0.05) / (dark + 0.05);
}

QString nameOfWidget(const QWidget* widget) {
  return QLatin1String(widget->metaObject()->className()) + QLatin1Char(' ') + widget->objectName();
}

// What a widget needs for its words, and has not.
QString clippedWords(const QWidget* widget) {
  const auto tell = [&](const QString& words, const QSize& needs) {
    return QStringLiteral("%1 \"%2\" needs %3x%4, has %5x%6")
        .arg(nameOfWidget(widget), words)
        .arg(needs.width())
        .arg(needs.height())
        .arg(widget->width())
        .arg(widget->height());
  };
  const auto small = [&](const QSize& needs) {
    return widget->width() < needs.width() || widget->height() < needs.height();
  };
  if (const auto* label = qobject_cast<const QLabel*>(widget)) {
    if (label->text().isEmpty()) return {};
    QSize needs = label->minimumSizeHint();
    if (label->wordWrap()) needs = QSize(0, label->heightForWidth(label->width()));
    return small(needs) ? tell(label->text(), needs) : QString();
  }
  if (const auto* tile = qobject_cast<const WallTile*>(widget))
    return small(tile->minimumSizeHint()) ? tell(tile->state().letter, tile->minimumSizeHint()) : QString();
  if (const auto* line = qobject_cast<const ElidedLabel*>(widget)) {
    const bool whole = line->fontMetrics().horizontalAdvance(line->text()) <= line->contentsRect().width();
    if (line->height() < line->minimumSizeHint().height()) return tell(line->text(), line->minimumSizeHint());
    return whole || line->toolTip() == line->text() ? QString() : tell(line->text(), line->sizeHint());
  }
  if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
    if (button->text().isEmpty()) return {};
    return small(button->minimumSizeHint()) ? tell(button->text(), button->minimumSizeHint()) : QString();
  }
  return {};
}

// Within its window, and within each of its parents unless that can be scrolled.
QString outside(const QWidget* widget) {
  const QWidget* window = widget->window();
  const QRect place(widget->mapTo(window, QPoint(0, 0)), widget->size());
  for (const QWidget* parent = widget->parentWidget(); parent; parent = parent->parentWidget()) {
    if (qobject_cast<const QAbstractScrollArea*>(parent)) return {};
    if (parent == window) break;
  }
  return window->rect().contains(place) ? QString() : nameOfWidget(widget) + QStringLiteral(" lies outside");
}

// In a dock that stands behind another one, out of sight.
bool isBehind(const QWidget* widget) {
  for (; widget; widget = widget->parentWidget()) {
    if (qobject_cast<const QDockWidget*>(widget)) return !isSeen(widget);
  }
  return false;
}

QStringList clippedIn(const QWidget& window) {
  QStringList all;
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    if (!widget->isVisible() || isBehind(widget)) continue;
    const QString words = clippedWords(widget);
    if (!words.isEmpty()) all << words;
    const bool ofWords = qobject_cast<const QLabel*>(widget) || qobject_cast<const QAbstractButton*>(widget);
    if (const QString away = ofWords ? outside(widget) : QString(); !away.isEmpty()) all << away;
  }
  return all;
}

}  // namespace

class AppearanceTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void cleanup();
  void everyActionHasANameAToolTipAndItsOwnKey();
  void keysInMenusAreUnique();
  void panelsHaveNames();
  void theRoundOfPanelsReachesEachOfThem();
  void lightAndDarkAreChosenAndKept();
  void wordsStandOutFromTheirGround_data();
  void wordsStandOutFromTheirGround();
  void nothingIsClipped_data();
  void nothingIsClipped();
  void rowsOfTablesAreAsTallAsTheirWords();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }

  // When everything has taken its place; layouts need some rounds of events after a change of font.
  QStringList clippedAtLast() {
    QStringList clipped;
    (void)QTest::qWaitFor(
        [&] {
          clipped = clippedIn(*window_->window);
          return clipped.isEmpty();
        },
        3000);
    return clipped;
  }

  std::unique_ptr<OpenWindow> window_;
};

void AppearanceTest::init() {
  window_ = std::make_unique<OpenWindow>();
  applyKeptAppearance();
  QVERIFY(QTest::qWaitForWindowExposed(window_->window.get()));
  QVERIFY((*window_)->openJob(workshop()));
}

void AppearanceTest::cleanup() {
  chooseAppearance(Appearance::System);
  chooseTextPercent(100);
  window_.reset();
}

void AppearanceTest::everyActionHasANameAToolTipAndItsOwnKey() {
  QMap<QString, QString> keys;
  int looked = 0;
  for (const QAction* action : (*window_)->findChildren<QAction*>()) {
    if (action->isSeparator() || action->menu() || action->text().isEmpty()) continue;
    if (action->parent() && action->parent()->inherits("QToolBar")) continue;  // Qt's own
    ++looked;
    QVERIFY2(!action->objectName().isEmpty(), qPrintable(action->text()));
    QVERIFY2(!action->toolTip().isEmpty(), qPrintable(action->text()));
    QVERIFY2(!action->toolTip().contains('&'), qPrintable(action->toolTip()));
    for (const QKeySequence& key : action->shortcuts()) {
      const QString text = key.toString();
      QVERIFY2(!keys.contains(text), qPrintable(text + ": " + keys[text] + ", " + action->objectName()));
      keys[text] = action->objectName();
    }
  }
  QVERIFY(looked >= 20);
}

namespace {

// Letters after an ampersand; a doubled one is no key.
QString keyIn(QString words) {
  words.remove(QStringLiteral("&&"));
  const qsizetype at = words.indexOf(QLatin1Char('&'));
  return at < 0 ? QString() : words.mid(at + 1, 1).toLower();
}

QString doubledKeys(const QStringList& texts) {
  QMap<QString, QString> seen;
  for (const QString& text : texts) {
    const QString key = keyIn(text);
    if (key.isEmpty()) continue;
    if (seen.contains(key)) return seen[key] + QStringLiteral(" / ") + text;
    seen[key] = text;
  }
  return {};
}

}  // namespace

void AppearanceTest::keysInMenusAreUnique() {
  QStringList atTop;
  for (const QAction* action : (*window_)->menuBar()->actions()) {
    atTop << action->text();
    QStringList inMenu;
    for (const QAction* each : action->menu()->actions()) {
      if (each->isSeparator()) continue;
      QVERIFY2(!keyIn(each->text()).isEmpty(), qPrintable(each->text()));
      inMenu << each->text();
    }
    QCOMPARE(doubledKeys(inMenu), QString());
  }
  // Those of the window itself share the Alt key with the menus.
  for (const auto* button : (*window_)->findChildren<QAbstractButton*>()) {
    if (!button->inherits("QToolButton")) atTop << button->text();
  }
  for (const auto* tabs : (*window_)->findChildren<QTabBar*>()) {
    for (int tab = 0; tab < tabs->count(); ++tab) atTop << tabs->tabText(tab);
  }
  QCOMPARE(doubledKeys(atTop), QString());
}

void AppearanceTest::panelsHaveNames() {
  for (const char* name : {"walls", "plan", "board", "pages", "sheets", "openingsTable", "particulars", "findings",
                           "findingWords", "faults", "packetProgress"}) {
    const auto* panel = find<QWidget>(name);
    QVERIFY2(panel, name);
    QVERIFY2(!panel->accessibleName().isEmpty(), name);
  }
  for (const WallTile* tile : find<PerimeterStrip>("walls")->tiles()) {
    QVERIFY(!tile->accessibleName().isEmpty());
    QVERIFY(tile->accessibleDescription().contains("Findings"));
    QVERIFY(!tile->toolTip().isEmpty());
  }
}

void AppearanceTest::theRoundOfPanelsReachesEachOfThem() {
  (*window_)->activateWindow();
  const auto panelWithKeyboard = [&]() -> QString {
    for (const char* name : {"walls", "plan", "board", "sheets", "stated", "findings"}) {
      const auto* panel = find<QWidget>(name);
      const QWidget* focus = (*window_)->focusWidget();
      if (focus && (panel == focus || panel->isAncestorOf(focus))) return QLatin1String(name);
    }
    return {};
  };
  find<PerimeterStrip>("walls")->setFocus();
  QCOMPARE(panelWithKeyboard(), QString("walls"));
  QStringList round;
  for (int i = 0; i < 6; ++i) {
    find<QAction>("nextPanel")->trigger();
    round << panelWithKeyboard();
  }
  QCOMPARE(round, QStringList({"plan", "board", "sheets", "stated", "findings", "walls"}));
  find<QAction>("previousPanel")->trigger();
  QCOMPARE(panelWithKeyboard(), QString("findings"));
}

void AppearanceTest::lightAndDarkAreChosenAndKept() {
  find<QAction>("appearance-dark")->trigger();
  QTest::qWait(30);
  QVERIFY(brightness((*window_)->palette().color(QPalette::Base)) < 0.1);
  QVERIFY(brightness((*window_)->palette().color(QPalette::Text)) > 0.6);
  QVERIFY(keptAppearance() == Appearance::Dark);
  window_->renew();
  QVERIFY(find<QAction>("appearance-dark")->isChecked());
  find<QAction>("appearance-light")->trigger();
  QTest::qWait(30);
  QVERIFY(brightness((*window_)->palette().color(QPalette::Base)) > 0.8);
  QVERIFY(keptAppearance() == Appearance::Light);
  find<QAction>("text-150")->trigger();
  QCOMPARE(keptTextPercent(), 150);
}

void AppearanceTest::wordsStandOutFromTheirGround_data() {
  QTest::addColumn<int>("appearance");
  QTest::newRow("light") << int(Appearance::Light);
  QTest::newRow("dark") << int(Appearance::Dark);
}

// WCAG 2.1, 1.4.3 and 1.4.11.
void AppearanceTest::wordsStandOutFromTheirGround() {
  QFETCH(int, appearance);
  chooseAppearance(Appearance(appearance));
  const QPalette palette = QApplication::palette();
  const auto between = [&](QPalette::ColorRole ink, QPalette::ColorRole ground) {
    return contrast(palette.color(ink), palette.color(ground));
  };
  QVERIFY(between(QPalette::WindowText, QPalette::Window) >= 7);
  QVERIFY(between(QPalette::Text, QPalette::Base) >= 7);
  QVERIFY(between(QPalette::Text, QPalette::AlternateBase) >= 7);
  QVERIFY(between(QPalette::ButtonText, QPalette::Button) >= 7);
  QVERIFY(between(QPalette::HighlightedText, QPalette::Highlight) >= 4.5);
  QVERIFY(between(QPalette::PlaceholderText, QPalette::Base) >= 4.5);
  QVERIFY(between(QPalette::Highlight, QPalette::Base) >= 3);
}

void AppearanceTest::nothingIsClipped_data() {
  QTest::addColumn<int>("percent");
  for (const int percent : textPercents) QTest::newRow(qPrintable(QString::number(percent))) << percent;
}

void AppearanceTest::nothingIsClipped() {
  QFETCH(int, percent);
  chooseTextPercent(percent);
  for (const QString& path : samplePaths()) {
    QVERIFY((*window_)->openJob(path));
    window_->session().chooseWall(1);
    for (const char* action : {"asPrinted", "asPrinted"}) {
      find<QAction>(action)->trigger();
      const QStringList clipped = clippedAtLast();
      QVERIFY2(clipped.isEmpty(), qPrintable(path + ": " + clipped.join("; ")));
    }
  }
  window_->renew();
  const QStringList clipped = clippedAtLast();
  QVERIFY2(clipped.isEmpty(), qPrintable(clipped.join("; ")));
}

void AppearanceTest::rowsOfTablesAreAsTallAsTheirWords() {
  for (const int percent : {100, 200, 100}) {
    chooseTextPercent(percent);
    QTest::qWait(30);
    auto* sheets = find<QTableView>("sheets");
    const int line = sheets->fontMetrics().height();
    QVERIFY(sheets->rowHeight(0) >= line && sheets->rowHeight(0) < 2 * line);
    for (int column = 0; column + 1 < sheets->model()->columnCount(); ++column)
      QVERIFY(sheets->columnWidth(column) >=
              sheets->fontMetrics().horizontalAdvance(sheets->model()->index(0, column).data().toString()));
    auto* findings = find<QTreeWidget>("findings");
    QVERIFY(findings->visualItemRect(findings->topLevelItem(0)).height() >= findings->fontMetrics().height());
  }
}

WINDOW_TEST(AppearanceTest)
#include "appearance_test.moc"
