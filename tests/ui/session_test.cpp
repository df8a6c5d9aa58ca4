// What is open, without a window: edits, previews, and plans that come from another thread.
#include <QSignalSpy>
#include <QtTest>

#include "core/job/job_file.h"
#include "tests/ui/open_window.h"
#include "tests/ui/window_tests.h"
#include "ui/session/session.h"

using namespace ribwright;

namespace {

Job withDrop(Job job, Length drop) {
  job.walls[0].base.drop = drop;
  return job;
}

QString largest() { return samples().filePath("doe-warehouse.json"); }

// Of wall A's sheets, as they hang.
std::vector<Length> blanks(const Plan& plan) {
  std::vector<Length> all;
  for (const Piece& piece : plan.walls[0]->layout.pieces) all.push_back(piece.blankLength);
  return all;
}

const Part window1{Part::Kind::Opening, "A", "W1"}, door1{Part::Kind::Opening, "A", "D1"};

}  // namespace

class SessionTest : public QObject {
  Q_OBJECT

 private slots:
  void aPreviewIsInNoHistory() {
    Session session;
    QVERIFY(session.open(workshop()));
    const Job stands = session.job();
    QSignalSpy changed(&session, &Session::jobChanged), previewed(&session, &Session::previewChanged);
    session.preview(withDrop(stands, Length::inches(3)));
    QVERIFY(session.isPreview());
    QCOMPARE(previewed.count(), 1);
    QCOMPARE(changed.count(), 0);
    QVERIFY(session.seenJob().walls[0].base.drop == Length::inches(3));
    QVERIFY(blanks(session.seenPlan()) != blanks(session.plan()));
    QVERIFY(session.job() == stands);
    QVERIFY(!session.history()->canUndo());
    session.endPreview();
    QVERIFY(!session.isPreview());
    QVERIFY(session.seenJob() == stands);
  }

  void anEditEndsThePreview() {
    Session session;
    QVERIFY(session.open(workshop()));
    const Job next = withDrop(session.job(), Length::inches(3));
    session.preview(next);
    QVERIFY(session.apply("lower the ends", next));
    QVERIFY(!session.isPreview());
    QVERIFY(session.job() == next);
    session.preview(withDrop(next, Length::inches(4)));
    QVERIFY(!session.apply("nothing", next));
    QVERIFY(!session.isPreview());
  }

  void typingIsOneStepUntilSomethingElseIsChosen() {
    Session session;
    QVERIFY(session.open(workshop()));
    const Job stands = session.job();
    for (int inches : {1, 12}) session.apply("drop", withDrop(stands, Length::inches(inches)), "drop");
    QCOMPARE(session.history()->size(), std::size_t(2));
    session.choose(window1);
    session.apply("drop", withDrop(stands, Length::inches(5)), "drop");
    QCOMPARE(session.history()->size(), std::size_t(3));
  }

  void anEditThatCannotBeDoneChangesNothing() {
    Session session;
    QVERIFY(session.open(workshop()));
    const auto faults = session.edit("no", [](const Job&) -> Outcome<Job> { return Fault{"place", "cannot be"}; });
    QCOMPARE(faults.size(), std::size_t(1));
    QVERIFY(!session.history()->canUndo());
  }

  void theNewestEditWinsAndNothingComesOutOfOrder() {
    Session session;
    QVERIFY(session.open(largest()));
    const Job stands = session.job();
    QSignalSpy changed(&session, &Session::jobChanged);
    for (int inches = 1; inches <= 40; ++inches)
      QVERIFY(session.apply("drop", withDrop(session.newest(), Length::inches(inches))));
    QVERIFY(session.isPlanning());
    QVERIFY(session.newest().walls[0].base.drop == Length::inches(40));
    QVERIFY(session.job() == stands);
    Length shown;
    const auto watching = connect(&session, &Session::jobChanged, this, [&] {
      QVERIFY(session.job().walls[0].base.drop > shown);
      shown = session.job().walls[0].base.drop;
    });
    session.settle();
    QVERIFY(!session.isPlanning());
    QVERIFY(session.job() == session.newest());
    QVERIFY(changed.count() < 40);
    disconnect(watching);
    const Plan fresh = plan(session.newest());
    QVERIFY(session.plan().findings == fresh.findings);
    QVERIFY(blanks(session.plan()) == blanks(fresh));
    for (int i = 0; i < 40; ++i) session.undo();
    session.settle();
    QVERIFY(session.job() == stands);
  }

  void whatIsSavedIsTheNewestJobAlsoWhileItIsPlanned() {
    QTemporaryDir folder;
    const QString path = folder.filePath("job.json");
    Session session;
    QVERIFY(session.open(largest()));
    const Job next = withDrop(session.job(), Length::inches(9));
    session.apply("drop", next);
    QVERIFY(session.saveAs(path) == Session::Saved::Yes);
    Session other;
    QVERIFY(other.open(path));
    QVERIFY(other.job() == next);
  }

  void aPreviewOfALargeJobComesLaterAndAnEditOverruns() {
    Session session;
    QVERIFY(session.open(largest()));
    const Job stands = session.job();
    for (int inches = 1; inches <= 10; ++inches) session.preview(withDrop(stands, Length::inches(inches)));
    QVERIFY(!session.isPreview());
    session.settle();
    QVERIFY(session.isPreview());
    QVERIFY(session.seenJob().walls[0].base.drop == Length::inches(10));
    session.preview(withDrop(stands, Length::inches(11)));
    session.endPreview();
    session.settle();
    QVERIFY(!session.isPreview());
    QVERIFY(session.job() == stands);
  }

  // One wall alone is planned at once; the preview before it was still asked for in the other thread.
  void aPreviewThatIsPlannedAtOnceIsNotOverrunByOneFromBefore() {
    Session session;
    QVERIFY(session.open(largest()));
    const Job stands = session.job();
    Job alone = stands;
    alone.walls.resize(1);
    QVERIFY(session.apply("one wall alone", alone));
    QThread::msleep(200);  // is planned by now, and was not told yet
    session.preview(withDrop(stands, Length::inches(1)));
    QCoreApplication::processEvents();
    session.preview(withDrop(alone, Length::inches(2)));
    session.settle();
    QVERIFY(session.isPreview());
    QVERIFY(session.seenJob() == withDrop(alone, Length::inches(2)));
    session.endPreview();
    session.settle();
    QVERIFY(session.job() == alone);
  }

  void anEditIsPlannedThoughAPreviewCameBetween() {
    Session session;
    QVERIFY(session.open(largest()));
    const Job next = withDrop(session.job(), Length::inches(6));
    session.apply("drop", next);
    session.preview(withDrop(next, Length::inches(7)));
    session.endPreview();
    session.settle();
    QVERIFY(session.job() == next);
  }

  void anEditBehindAPreviewIsPlannedWhenItIsWaitedFor() {
    Session session;
    QVERIFY(session.open(largest()));
    const Job next = withDrop(session.job(), Length::inches(6));
    session.apply("drop", next);
    session.preview(withDrop(next, Length::inches(7)));
    session.settle();
    QVERIFY(session.job() == next);
    session.preview(withDrop(next, Length::inches(8)));
    session.settle();
    QVERIFY(session.isPreview());
  }

  void aPartThatComesWithAnEditIsChosenWhenItIsPlanned() {
    Session session;
    QVERIFY(session.open(largest()));
    Job next = session.job();
    Opening opening;
    opening.id = "W99";
    opening.place.distance = Length::feet(40);
    opening.width = opening.height = opening.sill = Length::feet(3);
    next.walls[1].openings.push_back(opening);
    session.apply("draw", next);
    const Part part{Part::Kind::Opening, "B", "W99"};
    session.choose(part);
    session.settle();
    QVERIFY(session.chosen() == part);
    QCOMPARE(session.wall(), 1);
  }

  void severalPartsOfOneWallAreChosenTogether() {
    Session session;
    QVERIFY(session.open(workshop()));
    session.choose(window1);
    session.chooseAlso(door1);
    QCOMPARE(session.chosenParts().size(), std::size_t(2));
    QVERIFY(session.chosen() == door1);
    session.chooseAlso(door1);
    QVERIFY(session.chosen() == window1);
    session.chooseAlso({Part::Kind::Opening, "B", "W2"});
    QCOMPARE(session.chosenParts().size(), std::size_t(1));
    QCOMPARE(session.wall(), 1);
  }

  void aJobThatIsBegunHasNoFileUntilItIsSaved() {
    QTemporaryDir folder;
    Session session;
    QVERIFY(session.open(workshop()));
    Job begun = session.job();
    begun.name = "begun";
    session.begin(begun);
    QVERIFY(session.path().isEmpty());
    QVERIFY(!session.history()->isSaved());
    QVERIFY(session.save() == Session::Saved::Unnamed);
    QVERIFY(session.saveAs(folder.filePath("begun.json")) == Session::Saved::Yes);
    QVERIFY(session.history()->isSaved());
  }
};

WINDOW_TEST(SessionTest)
#include "session_test.moc"
