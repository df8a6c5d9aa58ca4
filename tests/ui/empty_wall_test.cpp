// A wall that lacks something says so, and has a button that brings it.
#include <QMenu>
#include <QPushButton>

#include "core/editing/new_job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/panels/elided_label.h"

using namespace ribwright;

class EmptyWallTest : public QObject {
  Q_OBJECT

 private slots:
  void init() {
    window_ = std::make_unique<OpenWindow>();
    job_ = jobOf(shippedNewJob(UnitSystem::FeetInches), Words::of("en")).value();
  }
  void cleanup() {
    if (window_->session().isOpen()) window_->session().begin(job_);
    window_.reset();
  }

  void aWholeWallHasNone() {
    window_->session().begin(job_);
    QVERIFY(button()->isHidden());
  }

  void girtsAreAdded() {
    job_.walls[0].girts.clear();
    window_->session().begin(job_);
    QVERIFY(!button()->isHidden());
    QCOMPARE(button()->text().remove('&'), QStringLiteral("Add girts"));
    button()->click();
    QVERIFY(!window_->session().newest().walls[0].girts.empty());
    QCOMPARE(window_->session().history()->undoName(), std::string("Add girts to wall A"));
    QVERIFY(button()->isHidden());
    window_->session().undo();
    QVERIFY(!button()->isHidden());
  }

  void aProfileIsChosen() {
    for (Wall& wall : job_.walls) wall.bands = {Band{}}, wall.pattern.clear();
    job_.profiles.clear();
    job_.patterns.clear();
    window_->session().begin(job_);
    QVERIFY(button()->menu());
    QVERIFY(!button()->menu()->actions().isEmpty());
    button()->menu()->actions().front()->trigger();
    QCOMPARE(window_->session().newest().profiles.size(), std::size_t(1));
    QVERIFY(!window_->session().plan().walls[0]->layout.pieces.empty());
  }

  void anOpenWallIsHung() {
    job_.walls[0].cladding = Cladding::Open;
    window_->session().begin(job_);
    button()->click();
    QVERIFY(window_->session().newest().walls[0].cladding == Cladding::Sheeted);
  }

  void aJobWithoutWallsSaysSo() {
    Job bare = job_;
    bare.walls.clear();
    window_->session().begin(bare);
    QVERIFY(!button()->isHidden());
    QCOMPARE(window_->find<ElidedLabel>("wallTitle")->text(), QStringLiteral("This job has no walls yet"));
  }

 private:
  QPushButton* button() const { return window_->find<QPushButton>("emptyDo"); }

  std::unique_ptr<OpenWindow> window_;
  Job job_;
};

WINDOW_TEST(EmptyWallTest)
#include "empty_wall_test.moc"
