// All of a batch goes by the hanging direction, so that a mirror changes nothing but the places along the wall; and a
// wall raised with its chalk line has the same batches.
#include "tests/fuzz/moved.h"
#include "tests/fuzz/surveyed_walls.h"

namespace ribwright::fuzz {
namespace {

class BatchText {
 public:
  BatchText& operator<<(const std::string& word) {
    text_ += word;
    text_ += ' ';
    return *this;
  }
  BatchText& operator<<(Length length) { return *this << std::to_string(length.nanometres()); }
  BatchText& operator<<(int number) { return *this << std::to_string(number); }
  template <class One>
  BatchText& operator<<(const std::vector<One>& all) {
    for (const One& one : all) *this << one;
    return *this;
  }
  void line() { text_ += '\n'; }
  std::string take() { return std::move(text_); }

 private:
  std::string text_;
};

// Every field; `turned`: what is a place u becomes width - u. Heights of rows less `raised`.
std::string batchesText(const std::vector<DrillBatch>& batches, Length width, bool turned, Length raised = Length()) {
  const auto place = [&](Length u) { return turned ? width - u : u; };
  BatchText text;
  for (const DrillBatch& batch : batches) {
    const Lane& lane = batch.lane;
    text << batch.id << static_cast<int>(lane.height) << lane.run << lane.tier << int(lane.translucent);
    text << "pieces" << batch.pieces << "stack" << batch.stack << "in place" << batch.inPlace;
    text.line();
    for (const BatchRow& row : batch.rows) {
      const bool base = row.key.kind == HoleKind::Base;
      text << "row" << static_cast<int>(row.key.kind) << row.key.screw << (base ? Length() : row.key.height - raised)
           << row.key.level << row.row << row.support << row.offsets << row.holes << row.s << row.planned << row.low
           << row.high << int(row.surveyed) << int(row.holds) << row.sheets;
      text.line();
    }
    for (const HoldReason& reason : batch.reasons) {
      const bool noPlace = reason.from == reason.to && reason.from == Length();
      const Length from = noPlace ? reason.from : place(reason.from), to = noPlace ? reason.to : place(reason.to);
      text << "reason" << static_cast<int>(reason.why) << reason.name << reason.row << std::min(from, to)
           << std::max(from, to) << reason.by;
      text.line();
    }
    for (const Remedy& remedy : batch.remedies) {
      const bool noPlace = remedy.from == remedy.to && remedy.from == Length();
      const Length from = noPlace ? remedy.from : place(remedy.from), to = noPlace ? remedy.to : place(remedy.to);
      text << "remedy" << static_cast<int>(remedy.what) << remedy.reason << remedy.name << std::min(from, to)
           << std::max(from, to) << remedy.by;
      text.line();
    }
  }
  return text.take();
}

std::vector<DrillBatch> onlyBatches(const Job& job) {
  const Plan planned = plan(job);
  return drillBatches(job, job.walls.front(), planned.walls.front()->layout, planned.walls.front()->holes);
}

// Of each sheeted wall, stated free: `use` gives what differs.
template <class Use>
bool eachWallFreed(const Job& job, int index, SurveyReport& report, const Use& use) {
  const Plan whole = plan(job);
  for (std::size_t wall = 0; wall < job.walls.size(); ++wall) {
    const WallLayout& layout = whole.walls[wall]->layout;
    if (!layout.sheeted) continue;
    const Job free = freed(job, job.walls[wall], layout.direction.hand);
    if (report.add(index, free, use(free))) return false;
  }
  return true;
}

// Of each sheeted wall, stated free, `use` gives what differs.
template <class Use>
void eachFreed(int small, int buildings, const Use& use) {
  SurveyReport report;
  for (int i = 0; i < small; ++i) {
    if (!eachWallFreed(smallSurveyedWall(i), i, report, use)) return;
  }
  for (int i = 0; i < buildings; ++i) {
    if (!eachWallFreed(surveyedBuilding(i), i, report, use)) return;
  }
}

}  // namespace

TEST_CASE("The batches of a wall in a mirror are the same batches") {
  eachFreed(400, 80, [](const Job& job) {
    const Length width = *job.walls.front().width;
    return firstDifference(batchesText(onlyBatches(job), width, true),
                           batchesText(onlyBatches(mirrored(job)), width, false));
  });
}

TEST_CASE("The batches of a wall raised are the same batches") {
  int index = 0;
  eachFreed(200, 40, [&](const Job& job) {
    Dice dice(kSurveySeed + 6, ++index);
    const Length by = dice.length(-Length::feet(30), Length::feet(30)), width = *job.walls.front().width;
    return firstDifference(batchesText(onlyBatches(job), width, false),
                           batchesText(onlyBatches(raised(job, by)), width, false, by));
  });
}

}  // namespace ribwright::fuzz
