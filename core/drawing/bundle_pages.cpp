#include "core/drawing/order_pages.h"
#include "core/drawing/shown_length.h"
#include "core/takeoff/bundles.h"

namespace ribwright {
namespace {

constexpr const char* bundleFigures = "paper.bundle-figures";

class BundlePaper {
 public:
  BundlePaper(const Job& job, const Plan& plan, const PageFrame& frame) : job_(job), order_(plan.order), frame_(frame) {
    bundles_ = bundlesOf(job, plan.layouts(), plan.order);
  }

  // Where all are set down, then each from the top.
  std::vector<PaperTable> tables() const {
    if (bundles_.empty()) return {};
    std::vector<PaperTable> all = {places()};
    for (const Bundle& bundle : bundles_) all.push_back(sheetsOf(bundle));
    return all;
  }

 private:
  std::string say(const std::string& id, const WordValues& values = {}) const {
    return frame_.words->say(id, values, {job_.units, job_.decimalSign});
  }
  std::string length(Length length) const { return dimensionText(length, {job_.units, job_.decimalSign}); }
  const OrderLine& line(const BundledSheet& one) const { return order_.lines[static_cast<std::size_t>(one.line)]; }

  PaperTable places() const {
    const bool feet = job_.units == UnitSystem::FeetInches;
    PaperTable table;
    table.title = say("bundle-page.places");
    table.headings = {say("bundle-page.bundle"),  say("bundle-page.from"),
                      say("bundle-page.to"),      say("bundle-page.sheets"),
                      say("bundle-page.longest"), say(feet ? "order-page.weight.ft-in" : "order-page.weight.mm"),
                      say("order-page.sheet")};
    table.figures = {false, true, true, true, true, true, false};
    for (const Bundle& bundle : bundles_) {
      const bool spare = bundle.wall.empty();
      const double weight = feet ? bundle.kilograms / 0.45359237 : bundle.kilograms;
      table.rows.push_back({bundle.name, spare ? "" : length(bundle.setDownFrom), spare ? "" : length(bundle.setDownTo),
                            std::to_string(bundle.sheets.size()), length(bundle.longest),
                            bundle.sheet.translucent ? "" : std::to_string(static_cast<long long>(weight + 0.5)),
                            classWords(bundle.sheet, frame_)});
    }
    return table;
  }

  PaperTable sheetsOf(const Bundle& bundle) const {
    PaperTable table;
    table.title = say("bundle-page.title", {{"bundle", bundle.name}, {"sheet", classWords(bundle.sheet, frame_)}});
    table.headings = {say("bundle-page.place"), say("bundle-page.marks"), say("order-page.length"),
                      say("order-page.line")};
    table.figures = {true, false, true, true};
    int place = 0;
    for (const BundledSheet& one : bundle.sheets) {
      const OrderLine& of = line(one);
      table.rows.push_back(
          {std::to_string(++place),
           one.sheet < 0 ? say("bundle-page.spare") : of.marks[static_cast<std::size_t>(one.sheet - of.firstSheet)],
           cutText(of.length, {job_.units, job_.decimalSign}), std::to_string(of.line)});
    }
    return table;
  }

  const Job& job_;
  const SheetOrder& order_;
  const PageFrame& frame_;
  std::vector<Bundle> bundles_;
};

}  // namespace

std::vector<BarePage> bundlePages(const Job& job, const Plan& plan, const PageFrame& frame) {
  return tablePages(BundlePaper(job, plan, frame).tables(), frame.words->say("bundle-page.subject", {}, {}), frame,
                    bundleFigures);
}

}  // namespace ribwright
