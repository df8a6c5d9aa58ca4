// Saving the job: whole, never over someone else's changes, and asked for before changes are lost.
#include <QAction>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"

using namespace ribwright;

class SaveJobTest : public QObject {
  Q_OBJECT

 private slots:
  void init();
  void ctrlSWritesWhatIsShown();
  void theTitleMarksWhatIsNotSaved();
  void undoingBackToWhatWasSavedIsSaved();
  void nothingIsWrittenWhileNothingChanged();
  void aFileThatIsGoneIsWrittenAgain();
  void theWindowDoesNotOfferItsOwnFile();
  void someoneElsesChangesAreNotOverwritten();
  void theChangedFileIsReadAgainWhenAskedFor();
  void anotherNameIsTheJobsOwnFromThenOn();
  void savingAsItsOwnNameIsNoWayRoundTheQuestion();
  void aFolderThatCannotBeWrittenIsToldAndNothingIsLost();
  void closingAsksFirst();
  void openingAnotherJobAsksFirst();
  void readingAgainAsksFirst();
  void theKeysOfSavingAreTheirs();

 private:
  template <class Kind>
  Kind* find(const char* name) {
    return window_->find<Kind>(name);
  }
  Session& session() { return window_->session(); }
  void rename(const char* name) {
    Job job = session().job();
    job.name = name;
    QVERIFY(session().apply("Rename the job", job));
  }
  std::string nameOnDisk(const QString& path) {
    const auto job = loadJob(path.toStdString());
    return job ? job.value().name : std::string();
  }
  QByteArray changedOutside() {
    return readFile(workshop()).replace(QByteArray::fromStdString('"' + opened_ + '"'), "\"Changed outside\"");
  }
  void saveByKey() {
    (*window_)->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(window_->window.get()));
    QTest::keyClick(window_->window.get(), Qt::Key_S, Qt::ControlModifier);
  }
  // Presses a button of the next question, which must be this one.
  void answer(const char* question, const char* name) {
    asked_ = false;
    QTimer::singleShot(0, this, [this, question, name] { press(question, name); });
  }
  void press(const char* question, const char* name) {
    auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
    if (!box) return QTimer::singleShot(20, this, [this, question, name] { press(question, name); });
    asked_ = box->objectName() == QLatin1String(question);
    auto* button = box->findChild<QPushButton*>(QLatin1String(name));
    button ? button->click() : box->reject();
  }
  // Types a path into the file dialog that comes next.
  void typePath(const QString& path) {
    auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
    if (!dialog) return QTimer::singleShot(20, this, [this, path] { typePath(path); });
    auto* line = dialog->findChild<QLineEdit*>("fileNameEdit");
    line->setText(path);
    QTest::keyClick(line, Qt::Key_Return);
  }

  std::unique_ptr<OpenWindow> window_;
  std::unique_ptr<QTemporaryDir> folder_;
  QString path_;
  std::string opened_;
  bool asked_ = false;
};

void SaveJobTest::init() {
  QApplication::setAttribute(Qt::AA_DontUseNativeDialogs);
  window_ = std::make_unique<OpenWindow>();
  folder_ = std::make_unique<QTemporaryDir>();
  path_ = folder_->filePath("shop.json");
  QVERIFY(writeFile(path_, readFile(workshop())));
  QVERIFY((*window_)->openJob(path_));
  opened_ = session().job().name;
}

void SaveJobTest::ctrlSWritesWhatIsShown() {
  rename("Saved shop");
  saveByKey();
  QCOMPARE(nameOnDisk(path_), std::string("Saved shop"));
  QVERIFY(readFile(path_) == QByteArray::fromStdString(writeJob(session().job())));
  QCOMPARE(QDir(folder_->path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 1);
  rename("Saved twice");
  saveByKey();
  QCOMPARE(nameOnDisk(path_), std::string("Saved twice"));
}

void SaveJobTest::theTitleMarksWhatIsNotSaved() {
  QVERIFY(!(*window_)->isWindowModified());
  QVERIFY((*window_)->windowTitle().contains("[*]"));
  rename("With [*] in it");
  QVERIFY((*window_)->isWindowModified());
  QVERIFY((*window_)->windowTitle().startsWith("With [*][*] in it"));
  saveByKey();
  QVERIFY(!(*window_)->isWindowModified());
}

void SaveJobTest::undoingBackToWhatWasSavedIsSaved() {
  rename("One");
  saveByKey();
  rename("Two");
  find<QAction>("undo")->trigger();
  QVERIFY(!(*window_)->isWindowModified());
  find<QAction>("undo")->trigger();
  QVERIFY((*window_)->isWindowModified());
  find<QAction>("redo")->trigger();
  QVERIFY(!(*window_)->isWindowModified());
}

void SaveJobTest::nothingIsWrittenWhileNothingChanged() {
  const QByteArray before = readFile(workshop()).replace("  ", "\t");  // as someone else's editor writes it
  QVERIFY(writeFile(path_, before));
  QVERIFY((*window_)->openJob(path_));
  saveByKey();
  QVERIFY(readFile(path_) == before);
}

void SaveJobTest::aFileThatIsGoneIsWrittenAgain() {
  QVERIFY(QFile::remove(path_));
  saveByKey();
  QCOMPARE(nameOnDisk(path_), opened_);
}

void SaveJobTest::theWindowDoesNotOfferItsOwnFile() {
  auto* bar = find<QWidget>("reloadBar");
  for (const char* name : {"First", "Second"}) {
    rename(name);
    saveByKey();
    QTest::qWait(600);
    QVERIFY(!bar->isVisible());
  }
  QVERIFY(writeFile(path_, changedOutside()));
  QTRY_VERIFY(bar->isVisible());
}

void SaveJobTest::someoneElsesChangesAreNotOverwritten() {
  rename("Mine");
  QVERIFY(writeFile(path_, changedOutside()));
  answer("changedFile", "cancelSaving");
  saveByKey();
  QVERIFY(asked_);
  QVERIFY(readFile(path_) == changedOutside());
  QCOMPARE(session().job().name, std::string("Mine"));
  QVERIFY((*window_)->isWindowModified());
}

void SaveJobTest::theChangedFileIsReadAgainWhenAskedFor() {
  rename("Mine");
  QVERIFY(writeFile(path_, changedOutside()));
  answer("changedFile", "readAgainInstead");
  saveByKey();
  QCOMPARE(session().job().name, std::string("Changed outside"));
  QVERIFY(!(*window_)->isWindowModified());
}

void SaveJobTest::anotherNameIsTheJobsOwnFromThenOn() {
  const QByteArray before = readFile(path_);
  rename("Elsewhere");
  const QString other = folder_->filePath("other.json");
  QTimer::singleShot(0, this, [this] { typePath(folder_->filePath("other")); });  // the ending comes by itself
  QTest::keyClick(window_->window.get(), Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier);
  QCOMPARE(session().path(), other);
  QCOMPARE(nameOnDisk(other), std::string("Elsewhere"));
  QVERIFY(readFile(path_) == before);
  QVERIFY((*window_)->windowTitle().contains("other.json"));
  rename("Once more");
  saveByKey();
  QCOMPARE(nameOnDisk(other), std::string("Once more"));
  QVERIFY(writeFile(other, changedOutside()));
  QTRY_VERIFY(find<QWidget>("reloadBar")->isVisible());
}

void SaveJobTest::savingAsItsOwnNameIsNoWayRoundTheQuestion() {
  rename("Mine");
  QVERIFY(writeFile(path_, changedOutside()));
  QVERIFY(session().saveAs(folder_->filePath("../") + QFileInfo(folder_->path()).fileName() + "/shop.json") ==
          Session::Saved::ChangedOnDisk);
  QVERIFY(readFile(path_) == changedOutside());
}

void SaveJobTest::aFolderThatCannotBeWrittenIsToldAndNothingIsLost() {
  const QString nowhere = folder_->filePath("no such folder/shop.json");
  QVERIFY(session().saveAs(nowhere) == Session::Saved::Faulty);
  QCOMPARE(session().path(), path_);

  rename("Not to be lost");
  QVERIFY(QDir(folder_->path()).removeRecursively());  // the file's folder is gone: it cannot be written
  saveByKey();
  auto* faults = find<QPlainTextEdit>("faults");
  QVERIFY(faults->isVisible());
  QVERIFY2(faults->toPlainText().contains("shop.json"), qPrintable(faults->toPlainText()));
  QCOMPARE(session().job().name, std::string("Not to be lost"));
  QVERIFY((*window_)->isWindowModified());
  QVERIFY(QDir().mkpath(folder_->path()));
  saveByKey();
  QVERIFY(!faults->isVisible());
  QCOMPARE(nameOnDisk(path_), std::string("Not to be lost"));
}

void SaveJobTest::closingAsksFirst() {
  rename("Mine");
  answer("unsavedChanges", "cancelLeaving");
  QVERIFY(!(*window_)->close());
  QVERIFY(asked_);
  QVERIFY((*window_)->isVisible());
  QCOMPARE(nameOnDisk(path_), opened_);
  answer("unsavedChanges", "saveChanges");
  QVERIFY((*window_)->close());
  QCOMPARE(nameOnDisk(path_), std::string("Mine"));

  (*window_)->show();
  rename("Not wanted");
  answer("unsavedChanges", "discardChanges");
  QVERIFY((*window_)->close());
  QCOMPARE(nameOnDisk(path_), std::string("Mine"));
}

void SaveJobTest::openingAnotherJobAsksFirst() {
  rename("Mine");
  answer("unsavedChanges", "cancelLeaving");
  QVERIFY(!(*window_)->openJob(workshop()));
  QVERIFY(asked_);
  QCOMPARE(session().job().name, std::string("Mine"));
  QCOMPARE(session().path(), path_);
  answer("unsavedChanges", "saveChanges");
  QVERIFY((*window_)->openJob(workshop()));
  QCOMPARE(session().path(), workshop());
  QCOMPARE(nameOnDisk(path_), std::string("Mine"));
}

void SaveJobTest::readingAgainAsksFirst() {
  rename("Mine");
  answer("unsavedChanges", "cancelLeaving");
  find<QAction>("reload")->trigger();
  QVERIFY(asked_);
  QCOMPARE(session().job().name, std::string("Mine"));
  answer("unsavedChanges", "discardChanges");
  find<QAction>("reload")->trigger();
  QCOMPARE(session().job().name, opened_);
}

void SaveJobTest::theKeysOfSavingAreTheirs() {
  QCOMPARE(find<QAction>("save")->shortcut(), QKeySequence("Ctrl+S"));
  QCOMPARE(find<QAction>("saveAs")->shortcut(), QKeySequence("Ctrl+Shift+S"));
  QCOMPARE(find<QAction>("savePacket")->shortcut(), QKeySequence("Ctrl+Shift+P"));
  QStringList keys;
  for (const QAction* action : window_->window->findChildren<QAction*>()) {
    const QString key = action->shortcut().toString();
    QVERIFY2(key.isEmpty() || !keys.contains(key), qPrintable(key));
    keys << key;
  }
}

WINDOW_TEST(SaveJobTest)
#include "save_job_test.moc"
