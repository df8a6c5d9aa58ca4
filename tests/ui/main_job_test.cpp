// The project manager's main job from an empty window to the printed elevation, by the keyboard alone: a gable
// building, a door, an overhead door and windows on two walls, held against a job that was stated without the window.
//
// Counted as one who sits there would: an entry is a field that is typed into, a key is each press besides the letters
// of entries. At most 25 entries and 60 keys.
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFileDialog>
#include <QLineEdit>
#include <QProcess>
#include <QSignalSpy>
#include <QTimer>

#include "core/editing/opening_edits.h"
#include "core/job/by_id.h"
#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/board/wall_board.h"

using namespace ribwright;

namespace {

// Presses keys where the keyboard is, and counts.
class Typist {
 public:
  int entries = 0, keys = 0;

  void key(int key, Qt::KeyboardModifiers with = {}) {
    ++keys;
    QTest::keyClick(at(), Qt::Key(key), with);
  }
  void keyInMenu(int key) {
    ++keys;
    if (!QApplication::activePopupWidget()) qFatal("no menu is open");
    QTest::keyClick(QApplication::activePopupWidget(), Qt::Key(key));
  }
  // What stands in a field is chosen when the field is gone to, and typed over.
  void enter(const char* text) {
    ++entries;
    for (const char* letter = text; *letter; ++letter) QTest::keyClick(at(), *letter);
  }
  void fieldBy(char mnemonic, const char* text) {
    key(mnemonic, Qt::AltModifier);
    enter(text);
  }

 private:
  // Where a dialog was closed, the system gives the keyboard back to the window; off screen nobody does.
  static QWidget* at() {
    for (QWidget* window : QApplication::topLevelWidgets()) {
      if (!QApplication::activeWindow() && window->inherits("QMainWindow")) window->activateWindow();
    }
    if (!QTest::qWaitFor([] { return QApplication::activeWindow() != nullptr; })) qFatal("the keyboard is nowhere");
    QWidget* focused = QApplication::focusWidget();
    return focused ? focused : QApplication::activeWindow();
  }
};

// What is done while a dialog holds the window; a dialog that stays is a failed test, not one that never ends.
void meanwhile(const std::function<void(QWidget*)>& act) {
  auto* timer = new QTimer;
  QObject::connect(timer, &QTimer::timeout, timer, [timer, act] {
    QWidget* dialog = QApplication::activeModalWidget();
    if (!dialog || QApplication::activeWindow() != dialog) return;  // the keyboard comes to it a little later
    timer->deleteLater();
    timer->stop();
    act(dialog);
    if (QApplication::activeModalWidget() == dialog) qobject_cast<QDialog*>(dialog)->reject();
  });
  timer->start(50);
}

// To be looked at, where it is asked for.
void keepPicture(QWidget& seen, const char* name) {
  const QString folder = qEnvironmentVariable("RIBWRIGHT_PICTURES");
  if (!folder.isEmpty()) seen.grab().save(QDir(folder).filePath(QLatin1String(name) + QStringLiteral(".png")));
}

Length feet(int feet, int inches = 0) { return Length::feet(feet, inches); }

struct Stands {
  const char *wall, *id;
  Length left, width, sill, height;
};

// As the plans have them.
const std::vector<Stands> plans = {
    {"A", "DR1", feet(4), feet(3, 4), {}, feet(7, 2)},   {"A", "DR2", feet(24), feet(12), {}, feet(10)},
    {"A", "W1", feet(48), feet(4), feet(3, 6), feet(3)}, {"B", "W2", feet(8), feet(4), feet(3, 6), feet(3)},
    {"B", "W3", feet(28), feet(4), feet(3, 6), feet(3)},
};

QString pdfText(const QString& path) {
  QProcess reader;
  reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
  reader.waitForFinished();
  return QString::fromUtf8(reader.readAllStandardOutput());
}

}  // namespace

class MainJobTest : public QObject {
  Q_OBJECT

 private slots:
  void fromNothingToThePrintedElevation() {
    QTemporaryDir folder;
    OpenWindow window;
    Typist hand;
    meanwhile([&](QWidget* dialog) {
      hand.fieldBy('J', "Feed store");
      hand.key(Qt::Key_Tab);
      hand.key(Qt::Key_Tab);
      hand.key(Qt::Key_F);  // feet and inches, wherever the machine stands
      hand.fieldBy('L', "60'");
      hand.fieldBy('W', "40'");
      hand.fieldBy('E', "12'");
      hand.fieldBy('S', "4:12");
      hand.fieldBy('B', "3@20'");
      hand.key(Qt::Key_Tab);
      hand.enter("2@20'");
      hand.fieldBy('G', "3' 6\", 7' 4\"");
      hand.key(Qt::Key_Tab);
      hand.enter("3' 6\", 7' 4\", 11', 14' 6\"");
      keepPicture(*dialog, "new-job-typed");
      hand.key(Qt::Key_Return, Qt::ControlModifier);
    });
    hand.key(Qt::Key_N, Qt::ControlModifier);
    QVERIFY2(window.session().isOpen(),
             qPrintable(QStringLiteral("%1 entries, %2 keys").arg(hand.entries).arg(hand.keys)));
    QCOMPARE(window.session().job().name, std::string("Feed store"));
    QCOMPARE(window.session().job().walls.size(), std::size_t(4));

    hand.key(Qt::Key_F6);
    while (!window.find<WallBoard>("board")->hasFocus()) hand.key(Qt::Key_F6);
    const auto draw = [&](int tool, const char* corner, const char* size) {
      hand.key(tool);
      hand.enter(corner);
      hand.key(Qt::Key_Return);
      hand.enter(size);
      hand.key(Qt::Key_Return);
    };
    draw(Qt::Key_D, "4' x 0", "3' 4\" x 7' 2\"");
    draw(Qt::Key_O, "24' x 0", "12' x 10'");
    draw(Qt::Key_W, "48' x 3' 6\"", "4' x 3'");
    hand.key(Qt::Key_PageDown);
    QCOMPARE(window.session().chosenWall().letter, std::string("B"));
    draw(Qt::Key_W, "8' x 3' 6\"", "4' x 3'");
    hand.key(Qt::Key_F10, Qt::ShiftModifier);
    hand.keyInMenu(Qt::Key_E);  // one in each bay
    for (const Stands& each : plans) {
      const auto& walls = window.session().job().walls;
      const Wall& wall = walls[each.wall[0] == 'A' ? 0 : 1];
      const Opening* opening = byId(wall.openings, std::string(each.id));
      QVERIFY2(opening, each.id);
      const FaceBox box = openingBox(window.session().job(), wall, *opening).value();
      QVERIFY2(box.left == each.left && box.right == each.left + each.width, each.id);
      QVERIFY2(box.bottom == each.sill && box.top == each.sill + each.height, each.id);
    }
    QCOMPARE(window.session().chosenWall().openings.size(), std::size_t(2));

    QSignalSpy ended(window.window.get(), &MainWindow::packetEnded);
    meanwhile([&](QWidget*) {
      hand.enter(folder.path().toUtf8().constData());
      hand.key(Qt::Key_Return);
    });
    hand.key(Qt::Key_P, Qt::ControlModifier | Qt::ShiftModifier);
    QVERIFY(ended.count() > 0 || ended.wait(60'000));
    const QString page = pdfText(folder.filePath(QStringLiteral("elevations.pdf")));
    for (const char* printed :
         {"Feed store", "DR1", "DR2", "W1", "W2", "W3", "3' 4\"", "12' 0\"", "48' 0\"", "28' 0\""})
      QVERIFY2(page.contains(QLatin1String(printed)), printed);
    QVERIFY(!window.session().plan().hasStop());

    qInfo("%d entries, %d keys", hand.entries, hand.keys);
    QVERIFY(hand.entries <= 25);
    QVERIFY(hand.keys <= 60);
  }
};

WINDOW_TEST(MainJobTest)
#include "main_job_test.moc"
