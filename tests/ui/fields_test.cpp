// Every field of a job has its place in the window, and what is typed there is an edit.
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QToolButton>
#include <QtTest>
#include <set>

#include "core/editing/field_path.h"
#include "core/editing/job_fields.h"
#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/field_editor.h"
#include "ui/panels/job_dialog.h"

namespace ribwright {
namespace {

// A job with everything in it: at least one item in every list, and every object that may be absent.
Job filledJob() {
  Job job = loadJob(workshop().toStdString()).value();
  for (bool more = true; more;) {
    more = false;
    const auto grow = [&](const Outcome<Job>& next) {
      if (next && next.value() != job) job = next.value(), more = true;
    };
    std::vector<Field> waiting{fieldAt(job, "").value()};
    while (!waiting.empty() && !more) {
      const Field at = waiting.back();
      waiting.pop_back();
      if (at.kind == FieldKind::List && at.items == 0) grow(withItemAdded(job, at.path, 0));
      if (at.kind == FieldKind::Object && at.absent) grow(withFieldStated(job, at.path));
      if (more) continue;
      const auto below = at.kind == FieldKind::List ? fieldAt(job, at.path).value().fields : at.fields;
      // Of a list its first item is enough.
      for (const Field& field : below) {
        if (field.path.ends_with(']') && lastIndex(field.path) != 0U) continue;
        if (!field.absent || field.kind == FieldKind::Object) waiting.push_back(field);
      }
    }
  }
  return job;
}

// "walls.base.drop" of every field that lies in the job's tables.
void gather(const Job& job, const Field& at, std::set<std::string>& names) {
  if (at.absent && at.kind == FieldKind::Object) qFatal("%s is absent", at.path.c_str());
  if (!at.path.empty() && !at.path.ends_with(']')) names.insert(withoutIndices(at.path));
  const auto below = at.kind == FieldKind::List ? fieldAt(job, at.path).value().fields : at.fields;
  if (at.kind == FieldKind::List && below.empty()) qFatal("%s is empty", at.path.c_str());
  for (const Field& field : below) {
    if (!field.path.ends_with(']') || lastIndex(field.path) == 0U) gather(job, field, names);
  }
}

void openAllFolds(QWidget* in) {
  for (bool more = true; more;) {
    more = false;
    for (QToolButton* fold : in->findChildren<QToolButton*>()) {
      if (!fold->isCheckable() || fold->isChecked() || !fold->objectName().startsWith("field:")) continue;
      fold->click();
      more = true;
    }
  }
}

}  // namespace

class FieldsTest : public QObject {
  Q_OBJECT

  std::unique_ptr<OpenWindow> made_;

  template <class Kind>
  Kind* in(const char* panel, const char* name) {
    auto* found = (*made_)->findChild<QWidget*>(panel)->findChild<Kind*>(name);
    if (!found) qFatal("no %s", name);
    return found;
  }
  QLineEdit* line(const char* name) { return in<QLineEdit>("stated", name); }
  void type(QLineEdit* into, const QString& text) {
    into->setFocus();
    into->selectAll();
    QTest::keyClicks(into, text);
    QTest::keyClick(into, Qt::Key_Return);
  }
  QString faultOf(QWidget* input) { return input->parentWidget()->findChild<QLabel*>("fault")->text(); }
  void chooseOpening(std::size_t wall, std::size_t index) {
    const Wall& stated = made_->session().newest().walls.at(wall);
    (*made_)->session().choose(Part{Part::Kind::Opening, stated.letter, stated.openings.at(index).id});
  }
  // Wall and number of the first opening.
  std::pair<std::size_t, std::size_t> anOpening() {
    const auto& walls = made_->session().newest().walls;
    for (std::size_t i = 0; i < walls.size(); ++i) {
      if (walls[i].openings.size() > 1) return {i, 0};
    }
    qFatal("no openings");
  }
  const Opening& opening() {
    const auto [wall, index] = anOpening();
    return made_->session().newest().walls[wall].openings[index];
  }

 private slots:
  void init() {
    made_ = std::make_unique<OpenWindow>();
    QVERIFY((*made_)->openJob(workshop()));
    const auto [wall, index] = anOpening();
    chooseOpening(wall, index);
  }
  void cleanup() { made_.reset(); }

  void everyFieldOfAJobHasItsPlace() {
    const Job job = filledJob();
    QVERIFY(faultsOf(job).empty());
    std::set<std::string> wanted;
    gather(job, fieldAt(job, "").value(), wanted);
    std::size_t keys = 0;
    for (const auto& [type, object] : fieldsByType({})) keys += object.fields.size();
    QVERIFY(wanted.size() >= keys);  // a type stands in one place at least

    (*made_)->session().begin(job);
    (*made_)->findChild<QAction*>("jobParticulars")->trigger();
    auto* dialog = (*made_)->findChild<JobDialog*>("jobDialog");
    QVERIFY(dialog->isVisible());
    std::set<std::string> shown;
    for (int page = 0; page < dialog->pages(); ++page) {
      dialog->showPage(page);
      openAllFolds(dialog);
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
      for (const QWidget* widget : dialog->findChildren<QWidget*>()) {
        const QString name = widget->objectName();
        if (!name.startsWith("field:") || !widget->isVisibleTo(dialog)) continue;
        QVERIFY2(!widget->accessibleName().isEmpty(), qPrintable(name));
        QVERIFY2(widget->focusPolicy() & Qt::TabFocus, qPrintable(name));
        shown.insert(name.mid(6).toStdString());
      }
    }
    for (const std::string& name : wanted) QVERIFY2(shown.contains(name), name.c_str());
    dialog->close();
  }

  void aLengthIsTypedWithArithmeticAndUndone() {
    const Length before = opening().width;
    type(line("field:walls.openings.width"), "3' + 2\"");
    QCOMPARE(opening().width.nanometres(), Length::inches(38).nanometres());
    QCOMPARE(line("field:walls.openings.width")->text(), QString("3' 2\""));
    QVERIFY(made_->session().history()->undoName().starts_with("Width of opening "));
    (*made_)->session().undo();
    QVERIFY(opening().width == before);
  }

  void typingOnInOneFieldIsOneStep() {
    const std::size_t before = made_->session().history()->place();
    type(line("field:walls.openings.width"), "3' 1\"");
    type(line("field:walls.openings.width"), "3' 2\"");
    QCOMPARE(made_->session().history()->place(), before + 1);
    line("field:walls.openings.height")->setFocus();
    QCoreApplication::processEvents();
    type(line("field:walls.openings.width"), "3' 3\"");
    QCOMPARE(made_->session().history()->place(), before + 2);
  }

  void afterEnterUndoIsTheWindows() {
    chooseOpening(0, 0);
    const auto width = [this] { return made_->session().newest().walls[0].openings[0].width; };
    const Length before = width();
    type(line("field:walls.openings.width"), "5' 1\"");
    QVERIFY(width() == Length::feet(5, 1));
    QTest::keyClick(line("field:walls.openings.width"), Qt::Key_Z, Qt::ControlModifier);
    QVERIFY(width() == before);
    QTest::keyClicks(line("field:walls.openings.width"), "7");
    QTest::keyClick(line("field:walls.openings.width"), Qt::Key_Z,
                    Qt::ControlModifier);  // what is being typed is the line's
    QVERIFY(made_->session().history()->canRedo());
  }

  void aFaultIsSaidBelowTheFieldAndWhatWasTypedStays() {
    const Job before = made_->session().newest();
    QLineEdit* width = line("field:walls.openings.width");
    const QString stood = width->text();
    type(width, "7 fo");
    QCOMPARE(width->text(), QString("7 fo"));
    QVERIFY(faultOf(width).contains("\"7 fo\" is no length"));
    QVERIFY(made_->session().newest() == before);
    QTest::keyClick(width, Qt::Key_Escape);
    QCOMPARE(width->text(), stood);
    QVERIFY(width->parentWidget()->findChild<QLabel*>("fault")->isHidden());
    QVERIFY(made_->session().chosen().has_value());  // Esc was the field's
  }

  void leavingAFieldEntersIt() {
    QLineEdit* sill = line("field:walls.openings.sill");
    sill->setFocus();
    sill->selectAll();
    QTest::keyClicks(sill, "2' 6\"");
    QTest::keyClick(sill, Qt::Key_Tab);
    QVERIFY(opening().sill == Length::feet(2, 6));
  }

  void aBlankFieldLeavesItOutAndSaysWhatHoldsInstead() {
    QLineEdit* head = line("field:walls.openings.clearances.head");
    type(head, "1\"");
    QVERIFY(opening().clearances.head == Length::inches(1));
    type(head, " ");
    QVERIFY(!opening().clearances.head);
    QCOMPARE(head->text(), QString());
    QVERIFY(head->placeholderText().startsWith("usual: "));
  }

  void theWheelChangesNoChoiceWithoutTheKeyboard() {
    auto* kind = in<QComboBox>("stated", "field:walls.openings.kind");
    line("field:walls.openings.width")->setFocus();
    const int before = kind->currentIndex();
    const auto wheel = [&] {
      QWheelEvent turn(QPointF(5, 5), kind->mapToGlobal(QPointF(5, 5)), {}, QPoint(0, -120), Qt::NoButton,
                       Qt::NoModifier, Qt::NoScrollPhase, false);
      QCoreApplication::sendEvent(kind, &turn);
    };
    wheel();
    QCOMPARE(kind->currentIndex(), before);
    kind->setFocus();
    kind->setCurrentIndex(0);
    wheel();
    QCOMPARE(kind->currentIndex(), 1);
  }

  void anotherMarkKeepsTheOpeningChosen() {
    type(line("field:walls.openings.id"), "Z9");
    QCOMPARE(opening().id, std::string("Z9"));
    QVERIFY(made_->session().chosen().has_value());
    QCOMPARE(made_->session().chosen()->id, std::string("Z9"));
    QCOMPARE(line("field:walls.openings.id")->text(), QString("Z9"));
  }

  void severalThatDoNotAgreeShowThatAndAreSetAtOnce() {
    const auto [wall, index] = anOpening();
    Job job = made_->session().newest();
    job.walls[wall].openings[0].width = Length::feet(3);
    job.walls[wall].openings[1].width = Length::feet(4);
    (*made_)->session().apply("two widths", job);
    const Wall& stated = made_->session().newest().walls[wall];
    (*made_)->session().chooseParts({{Part::Kind::Opening, stated.letter, stated.openings[0].id},
                                     {Part::Kind::Opening, stated.letter, stated.openings[1].id}});
    QLineEdit* width = line("field:walls.openings.width");
    QCOMPARE(width->text(), QString());
    QCOMPARE(width->placeholderText(), QString("various"));
    const std::size_t before = made_->session().history()->place();
    type(width, "5'");
    QCOMPARE(made_->session().history()->place(), before + 1);
    for (const std::size_t i : {0U, 1U})
      QVERIFY(made_->session().newest().walls[wall].openings[i].width == Length::feet(5));
    QCOMPARE(line("field:walls.openings.width")->text(), QString("5' 0\""));
  }

  void anItemIsAddedMovedAndRemoved() {
    (*made_)->session().choose(std::nullopt);
    auto* stated = (*made_)->findChild<QWidget*>("stated");
    auto* fold = stated->findChild<QToolButton*>("field:walls.girts");
    if (!fold->isChecked()) fold->click();
    const auto girts = [&] { return made_->session().newest().walls[std::size_t(made_->session().wall())].girts; };
    const auto before = girts();
    stated->findChild<QPushButton*>("field:walls.girts.add")->click();
    QCOMPARE(girts().size(), before.size() + 1);
    auto* table = stated->findChild<QTableWidget*>("field:walls.girts.items");
    QCOMPARE(table->rowCount(), int(before.size()) + 1);
    QCOMPARE(table->currentRow(), 1);
    stated->findChild<QPushButton*>("field:walls.girts.down")->click();
    QCOMPARE(table->currentRow(), 2);
    stated->findChild<QPushButton*>("field:walls.girts.remove")->click();
    QVERIFY(girts() == before);
  }

  void whatIsBeingTypedIsSaved() {
    QLineEdit* width = nullptr;
    QTemporaryDir folder;
    QVERIFY(writeFile(folder.filePath("job.json"), readFile(workshop())));
    QVERIFY((*made_)->openJob(folder.filePath("job.json")));
    const auto [wall, index] = anOpening();
    chooseOpening(wall, index);
    width = line("field:walls.openings.width");
    width->setFocus();
    width->selectAll();
    QTest::keyClicks(width, "3' 7\"");
    (*made_)->findChild<QAction*>("save")->trigger();
    QVERIFY(made_->session().history()->isSaved());
    const Job saved = loadJob(folder.filePath("job.json").toStdString()).value();
    QVERIFY(saved.walls[wall].openings[index].width == Length::feet(3, 7));
  }
};

}  // namespace ribwright

WINDOW_TEST(FieldsTest)
#include "fields_test.moc"
