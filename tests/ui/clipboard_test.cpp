// Cut, copy, paste, delete and select all: on the wall, between windows, and never while text is typed.
#include <QAction>
#include <QClipboard>
#include <QLineEdit>
#include <QMimeData>
#include <QStatusBar>
#include <QTabWidget>
#include <QTableView>

#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/wall_view.h"

using namespace ribwright;

class ClipboardTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void selectAllAndDeleteAreOneStep();
  void whatIsCutIsPastedWhereItWas();
  void whatIsCopiedIsPastedBesideAsOneStep();
  void anotherWindowTakesPartsWithTheirMembers();
  void theClipboardHoldsReadableText();
  void aClipboardOfAnythingElseIsToldAndChangesNothing();
  void withNothingChosenNothingIsCopied();
  void keysOfATextFieldAreTheFields();
  void keysOfATableAreTheTables();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  void trigger(const char* action) { find<QAction>(action)->trigger(); }
  const Wall& wall() { return session().chosenWall(); }
  QString told() { return window_->window->statusBar()->currentMessage(); }
  void chooseOpening(std::size_t index) {
    session().choose(Part{Part::Kind::Opening, wall().letter, wall().openings.at(index).id});
  }
  void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QTest::keyClick(window_->window->windowHandle(), key, with);  // as the system sends it: shortcuts come first
  }

  std::unique_ptr<OpenWindow> window_;
};

void ClipboardTest::init() {
  QApplication::clipboard()->clear();
  window_ = std::make_unique<OpenWindow>();
  QVERIFY((*window_)->openJob(workshop()));
  std::size_t most = 0;
  for (std::size_t i = 0; i < session().job().walls.size(); ++i) {
    if (session().job().walls[i].openings.size() > session().job().walls[most].openings.size()) most = i;
  }
  session().chooseWall(int(most));
  QVERIFY(!wall().openings.empty());
  window_->window->findChild<WallView*>()->setFocus();
}

void ClipboardTest::selectAllAndDeleteAreOneStep() {
  const Job before = session().newest();
  press(Qt::Key_A, Qt::ControlModifier);
  QCOMPARE(session().chosenParts().size(), wall().openings.size() + wall().penetrations.size() + wall().girts.size());
  press(Qt::Key_Delete);
  session().settle();
  QVERIFY(wall().openings.empty() && wall().girts.empty());
  trigger("undo");
  QVERIFY(session().newest() == before);
}

void ClipboardTest::whatIsCutIsPastedWhereItWas() {
  const std::vector<Opening> before = wall().openings;
  chooseOpening(0);
  press(Qt::Key_X, Qt::ControlModifier);
  QCOMPARE(wall().openings.size(), before.size() - 1);
  press(Qt::Key_V, Qt::ControlModifier);
  QCOMPARE(wall().openings.size(), before.size());
  QVERIFY(wall().openings.back().place == before.front().place);
}

void ClipboardTest::whatIsCopiedIsPastedBesideAsOneStep() {
  const std::size_t before = wall().openings.size();
  chooseOpening(0);
  press(Qt::Key_C, Qt::ControlModifier);
  QCOMPARE(told(), QString("Copied: ") + QString::fromStdString(wall().openings.front().id));
  press(Qt::Key_V, Qt::ControlModifier);
  QCOMPARE(wall().openings.size(), before + 1);
  QCOMPARE(session().chosenParts().size(), std::size_t(1));
  QCOMPARE(session().chosen()->id, wall().openings.back().id);
  QVERIFY2(session().history()->undoName().starts_with("Paste "), session().history()->undoName().c_str());
  QVERIFY(!(wall().openings.back().place == wall().openings.front().place));
  trigger("undo");
  QCOMPARE(wall().openings.size(), before);
}

void ClipboardTest::anotherWindowTakesPartsWithTheirMembers() {
  Job job = session().newest();
  job.members.push_back({"frame-z", Member::Shape::Zed, Length::inches(8), Length::inches(2), Length::inches(1),
                         Length::inches(0, 4), Length::inches(0, 12)});
  for (Wall& each : job.walls) {
    if (each.letter == wall().letter) each.openings.front().frame.member = "frame-z";
  }
  QVERIFY(session().apply("Frame it", job));
  chooseOpening(0);
  const Length width = wall().openings.front().width;
  trigger("copy");
  window_->renew();
  QVERIFY((*window_)->openJob(samples().filePath("l-shape.json")));
  session().chooseWall(0);
  const std::size_t before = wall().openings.size(), members = session().newest().members.size();
  trigger("paste");
  QCOMPARE(wall().openings.size(), before + 1);
  QVERIFY(wall().openings.back().width == width);
  QCOMPARE(session().newest().members.size(), members + 1);
  QCOMPARE(session().newest().members.back().id, std::string("frame-z"));
}

void ClipboardTest::theClipboardHoldsReadableText() {
  chooseOpening(0);
  trigger("copy");
  const QMimeData* held = QApplication::clipboard()->mimeData();
  QVERIFY(held->hasFormat("application/x-ribwright-parts"));
  const QString text = held->text();
  QVERIFY2(text.contains(QString::fromStdString(wall().openings.front().id)), qPrintable(text));
  QApplication::clipboard()->setText(text);  // as it comes out of a letter
  const std::size_t before = wall().openings.size();
  trigger("paste");
  QCOMPARE(wall().openings.size(), before + 1);
}

void ClipboardTest::aClipboardOfAnythingElseIsToldAndChangesNothing() {
  const Job before = session().newest();
  for (const QString& text : {QString(), QString("Bring the ladder"), QString("{\"ribwright\": 1}"), QString("[[[[")}) {
    QApplication::clipboard()->setText(text);
    trigger("paste");
    QCOMPARE(told(), QString("The clipboard holds no parts of a wall."));
    QVERIFY(session().newest() == before);
  }
}

void ClipboardTest::withNothingChosenNothingIsCopied() {
  QApplication::clipboard()->setText("kept");
  session().choose(std::nullopt);
  trigger("copy");
  QVERIFY(told().startsWith("Nothing is chosen"));
  QCOMPARE(QApplication::clipboard()->text(), QString("kept"));
}

void ClipboardTest::keysOfATextFieldAreTheFields() {
  QLineEdit field("12' 6\"", window_->window->centralWidget());
  field.show();
  field.setFocus();
  QTRY_VERIFY(field.hasFocus());
  const Job before = session().newest();
  session().choose(std::nullopt);
  press(Qt::Key_A, Qt::ControlModifier);
  QCOMPARE(field.selectedText(), QString("12' 6\""));
  QVERIFY(session().chosenParts().empty());
  chooseOpening(0);
  press(Qt::Key_X, Qt::ControlModifier);
  QCOMPARE(field.text(), QString());
  trigger("paste");  // by the menu, too
  QCOMPARE(field.text(), QString("12' 6\""));
  field.home(false);
  press(Qt::Key_Delete);
  QCOMPARE(field.text(), QString("2' 6\""));
  QVERIFY(session().newest() == before);
}

void ClipboardTest::keysOfATableAreTheTables() {
  chooseOpening(0);
  auto* sheets = find<QTableView>("sheets");
  find<QTabWidget>("tables")->setCurrentWidget(sheets);
  sheets->setFocus();
  QTRY_VERIFY(sheets->hasFocus());
  const Job before = session().newest();
  press(Qt::Key_Delete);
  QVERIFY(session().newest() == before);
}

WINDOW_TEST(ClipboardTest)
#include "clipboard_test.moc"
