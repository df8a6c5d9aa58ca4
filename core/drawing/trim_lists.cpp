#include "core/drawing/trim_lists.h"

#include <algorithm>

#include "core/cutting/proof_words.h"
#include "core/drawing/shown_length.h"
#include "core/drawing/trim_sticks.h"
#include "core/job/by_id.h"
#include "core/job/stated_words.h"

namespace ribwright {
namespace {

constexpr std::size_t linesABlock = 24;  // in columns; more go on in the next block
constexpr double listGap = 3;

std::vector<PageBlock> heading(const std::string& words, const TrimLook& look) {
  std::vector<PageBlock> blocks = paragraph(words, look.work, 0, true);
  for (PageBlock& block : blocks) block.keepsNext = true;
  return blocks;
}

void addColumns(std::vector<PageBlock>& blocks, const std::vector<std::string>& lines, const TrimLook& look) {
  for (std::size_t from = 0; from < lines.size(); from += linesABlock) {
    const auto begin = lines.begin() + static_cast<std::ptrdiff_t>(from);
    const std::vector<std::string> some(begin, std::min(begin + linesABlock, lines.end()));
    blocks.push_back(inColumns(some, look.work, listGap));
  }
  blocks.push_back(clearPaper(listGap));
}

std::string pieceLine(const TrimPiece& piece, const TrimWords& words) {
  const std::string lengths = partLengths(piece, words.style);
  const std::string name = words.words->say(trimPieceName(piece), words.style);
  const WordValues values{{"piece", name}, {"length", cutText(piece.length, words.style)}, {"parts", lengths}};
  return words.say(lengths.empty() ? "trim.piece-line" : "trim.piece-line.spliced", values);
}

std::string trimHeading(const Trim& trim, const TrimWords& words) {
  return words.say("trim.kind", {{"name", trim.name.empty() ? trim.id : trim.name},
                                 {"id", trim.id},
                                 {"girth", cutText(trim.girth, words.style)},
                                 {"lap", cutText(trim.spliceLap, words.style)}});
}

std::string ruleHeading(const TrimRule& rule, const TrimWords& words) {
  const std::string where(trimWhereWords[static_cast<int>(rule.where)]);
  const std::string laps(trimLapsWords[static_cast<int>(rule.laps)]);
  return words.say(rule.lip > Length() ? "trim.rule.lips" : "trim.rule",
                   {{"rule", rule.id},
                    {"where", Phrase{"choice.trim_rule.where." + where}},
                    {"laps", Phrase{"choice.trim_rule.laps." + laps}},
                    {"lip", cutText(rule.lip, words.style)}});
}

void addRule(std::vector<PageBlock>& blocks, const Trim& trim, const TrimRule& rule, const TrimLook& look) {
  std::vector<std::string> lines;
  for (const TrimPiece& piece : look.takeoff.pieces) {
    if (piece.rule == rule.id) lines.push_back(pieceLine(piece, look.words));
  }
  if (lines.empty()) return;
  addBlocks(blocks, heading(ruleHeading(rule, look.words), look));
  blocks.push_back(flatPicture(trim, rule, look.words));
  blocks.back().keepsNext = true;
  addColumns(blocks, lines, look);
}

bool isUsed(const Trim& trim, const TrimLook& look) {
  return std::any_of(look.takeoff.pieces.begin(), look.takeoff.pieces.end(),
                     [&](const TrimPiece& piece) { return piece.trim == trim.id; });
}

std::string batchHeading(const TrimBatch& batch, const TrimLook& look) {
  const Length bought = batch.total(&TrimStick::stock);
  const double tenths = 1000 * batch.cut().inMetres() / bought.inMetres();
  const auto whole = static_cast<std::int64_t>(tenths);
  const std::string share = std::to_string(whole / 10) + look.words.style.decimalSign + std::to_string(whole % 10);
  return look.words.say("trim.batch", {{"trim", batch.trim},
                                       {"colour", batch.colour.empty() ? "-" : batch.colour},
                                       {"count", static_cast<std::int64_t>(batch.sticks.size())},
                                       {"bought", dimensionText(bought, look.words.style)},
                                       {"used", share},
                                       {"kept", dimensionText(batch.total(&TrimStick::drop), look.words.style)},
                                       {"waste", dimensionText(batch.total(&TrimStick::waste), look.words.style)}});
}

void addProof(std::vector<PageBlock>& blocks, const TrimBatch& batch, const TrimLook& look) {
  if (batch.madeToLength || !batch.faults.empty()) {
    const char* id = batch.madeToLength ? "trim.to-length" : "trim.not-cut";
    return addBlocks(blocks, paragraph(look.words.say(id), look.work, listGap));
  }
  const auto length = [&](std::int64_t n) { return cutText(Length::nanometres(n), look.words.style); };
  const auto cost = [&](std::int64_t n) { return batch.list.stocks.size() == 1 ? std::to_string(n) : length(n); };
  std::string all;
  for (const Phrase& phrase : proofWords(batch.list, batch.plan, length, cost))
    all += (all.empty() ? "" : " ") + look.words.words->say(phrase, look.words.style);
  addBlocks(blocks, paragraph(all, look.work, listGap));
}

}  // namespace

std::vector<PageBlock> trimKinds(const TrimLook& look) {
  std::vector<PageBlock> blocks;
  for (const Trim& trim : look.job.trims) {
    if (!isUsed(trim, look)) continue;
    addBlocks(blocks, heading(trimHeading(trim, look.words), look));
    for (const TrimRule& rule : look.job.trimRules) {
      if (rule.trim == trim.id) addRule(blocks, trim, rule, look);
    }
  }
  return blocks;
}

std::vector<PageBlock> trimSettingOrder(const TrimLook& look) {
  std::vector<PageBlock> blocks = heading(look.words.say("trim.setting"), look);
  const auto& pieces = look.takeoff.pieces;
  for (auto begin = pieces.begin(); begin != pieces.end();) {
    const auto end = std::find_if(begin, pieces.end(), [&](const TrimPiece& piece) {
      return piece.place.isCorner() != begin->place.isCorner() ||
             (!piece.place.isCorner() && piece.place.wall != begin->place.wall);
    });
    const std::string of = begin->place.isCorner() ? look.words.say("trim.setting.corners")
                                                   : look.words.say("trim.setting.wall", {{"wall", begin->place.wall}});
    addBlocks(blocks, heading(of, look));
    std::vector<std::string> lines;
    for (auto piece = begin; piece != end; ++piece)
      lines.push_back(std::to_string(lines.size() + 1) + "  " +
                      look.words.words->say(trimPieceName(*piece), look.words.style));
    addColumns(blocks, lines, look);
    begin = end;
  }
  return blocks;
}

std::vector<PageBlock> trimCutPlan(const TrimLook& look) {
  std::vector<PageBlock> blocks;
  for (const TrimBatch& batch : look.batches) {
    addBlocks(blocks, heading(batchHeading(batch, look), look));
    if (!batch.madeToLength) {
      for (const TrimStick& stick : batch.sticks)
        blocks.push_back(stickPicture(look.takeoff, stick, batch.sticks.front().stock, look.words, look.work));
    }
    addProof(blocks, batch, look);
    blocks.push_back(clearPaper(listGap));
  }
  return blocks;
}

}  // namespace ribwright
