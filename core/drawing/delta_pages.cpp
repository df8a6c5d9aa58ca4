#include "core/drawing/delta_pages.h"

#include <algorithm>

#include "core/drawing/page_flow.h"
#include "core/drawing/shown_length.h"
#include "core/job/length_style.h"
#include "core/takeoff/sheet_needs.h"

namespace ribwright {
namespace {

constexpr const char* deltaFigures = "paper.delta-figures";

class Pages {
 public:
  Pages(const Job& job, const PageFrame& frame, const Box& work)
      : words_(*frame.words), style_(styleOf(job)), work_(work) {}

  std::vector<PageBlock> all(const DeltaOrder& delta) {
    for (const SheetLot& lot : delta.toOrder)
      line("delta.line", kindOf(lot), lot.quantity, {{"marks", named(lot.marks)}});
    close("delta.head.order", "delta.none.order");
    for (const bool toCome : {false, true}) {
      for (const ServedNeeds& served : delta.served) {
        if (served.toCome == toCome && served.cutOff() > Length()) use("delta.line.cut", served);
      }
      close(toCome ? "delta.head.cut-coming" : "delta.head.cut", nullptr);
      for (const ServedNeeds& served : delta.served) {
        if (served.toCome == toCome && served.cutOff() == Length()) use("delta.line", served);
      }
      close(toCome ? "delta.head.use-coming" : "delta.head.use", nullptr);
    }
    for (const UnneededSheets& left : delta.leftOver) {
      if (left.onSite > 0) line("delta.line", left.sheet, left.onSite, {{"marks", Phrase{"delta.on-site"}}});
      if (left.toCome > 0) line("delta.line", left.sheet, left.toCome, {{"marks", Phrase{"delta.to-come"}}});
    }
    close("delta.head.left", nullptr);
    return std::move(blocks_);
  }

 private:
  std::string say(const char* id, const WordValues& values = {}) const { return words_.say(id, values, style_); }

  static std::string named(const std::vector<std::string>& marks) {
    std::string all;
    for (const std::string& mark : marks) all.append(all.empty() || mark.empty() ? "" : ", ").append(mark);
    return all;
  }

  void line(const char* id, const SheetKind& kind, std::int64_t count, WordValues more) {
    const char* sheets = kind.sheet.translucent ? "delivery.translucent" : "delivery.sheets";
    const Phrase sheet{sheets, {{"profile", kind.sheet.profile}, {"colour", kind.sheet.colour}}};
    more.insert(more.end(), {{"count", count}, {"length", cutText(kind.length, style_)}, {"sheets", sheet}});
    addBlocks(lines_, paragraph(say(id, more), work_, 6));
  }

  // Those of them that do not hang yet.
  void use(const char* id, const ServedNeeds& served) {
    std::vector<std::string> marks;
    for (const std::string& mark : served.marks) {
      if (std::find(served.hung.begin(), served.hung.end(), mark) == served.hung.end()) marks.push_back(mark);
    }
    if (marks.empty()) return;
    line(id, served.sheet, static_cast<std::int64_t>(marks.size()),
         {{"marks", named(marks)}, {"cut", cutText(served.need, style_)}});
  }

  // The lines so far stand under this heading; `none`: what is said where there are none.
  void close(const char* heading, const char* none) {
    if (lines_.empty() && none) addBlocks(lines_, paragraph(say(none), work_, 6));
    if (lines_.empty()) return;
    std::vector<PageBlock> head = paragraph(say(heading), work_, 0, true);
    for (PageBlock& block : head) block.keepsNext = true;
    addBlocks(blocks_, std::move(head));
    addBlocks(blocks_, std::move(lines_));
    blocks_.push_back(clearPaper(4));
    lines_.clear();
  }

  const Words& words_;
  LengthStyle style_;
  Box work_;
  std::vector<PageBlock> blocks_, lines_;
};

}  // namespace

std::vector<BarePage> deltaPages(const Job& job, const Plan& plan, const PageFrame& frame) {
  if (job.facts.orders.empty()) return {};
  const DeltaOrder delta = deltaOrder(sheetNeeds(plan.order, plan.layouts()), job.facts.orders);
  PageFrame own = frame;
  own.figures = deltaFigures;
  const Box work = workArea(own);
  const LengthStyle style = styleOf(job);
  const PageBlock top = together(paragraph(frame.words->say("delta.words", {}, style), work));
  std::vector<BarePage> pages = barePages(flowed(Pages(job, frame, work).all(delta), top, work),
                                          frame.words->say("delta.subject", {}, style), deltaFigures);
  for (BarePage& page : pages) page.wall = BarePage::wholeJob;
  return pages;
}

}  // namespace ribwright
