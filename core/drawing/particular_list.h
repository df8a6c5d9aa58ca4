// The particulars of one part while they are gathered, and what they are gathered from.
#pragma once

#include <string>
#include <vector>

#include "core/drawing/particulars.h"

namespace ribwright {

struct ParticularList {
  const Job& job;
  const Wall& wall;
  const WallPlan& plan;
  const std::vector<std::string>& codes;  // order codes, parallel to the layout's pieces, or empty
  const Words& words;
  LengthStyle style;
  std::vector<Particular> all;

  const WallLayout& layout() const { return plan.layout; }
  std::string say(const std::string& id, const WordValues& values = {}) const;
  // With its unit, as exact as a tape or a cut needs.
  std::string text(Length length) const;
  // `id` of the name; a value that is empty is left out.
  void add(const std::string& id, std::string value);
  void add(const std::string& id, Length length) { add(id, text(length)); }
  void addCount(const std::string& id, std::size_t count) { add(id, std::to_string(count)); }
  // "a, b".
  static std::string joined(const std::vector<std::string>& words);
  // From the left corner, and from the nearest column where there is one.
  void addPlace(Length u);
};

void addFace(ParticularList& list);
void addPiece(ParticularList& list, const Piece& piece);
void addOpening(ParticularList& list, const Opening& opening);
void addPenetration(ParticularList& list, const Penetration& penetration);
void addGirt(ParticularList& list, std::size_t girt);
void addColumn(ParticularList& list, int column);
void addScrew(ParticularList& list, const Hole& hole);
// A batch that is cleared says its rows, one that is held why and what to do, and no ordinate.
void addBatch(ParticularList& list, const DrillBatch& batch);

// What may be drilled: of the wall how many batches, of a piece its batch and the first reason that holds it, of a girt
// at how many places it is measured, of a screw its sheet's batch and the height at which it is drilled.
void addWallDrilling(ParticularList& list);
void addPieceDrilling(ParticularList& list, const Piece& piece);
void addGirtSurvey(ParticularList& list, const Girt& girt);
void addScrewDrilling(ParticularList& list, const Hole& hole);

// "girt g2", "left jamb of W1": what a screw goes into.
std::string supportOf(const ParticularList& list, const Hole& hole);

}  // namespace ribwright
