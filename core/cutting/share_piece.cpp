#include "core/cutting/share_piece.h"

#include <algorithm>
#include <map>
#include <string>

#include "core/cutting/bought_length.h"
#include "core/cutting/cut_marks.h"
#include "core/job/by_id.h"
#include "core/job/section.h"

namespace ribwright {
namespace {

void mirrorAbout(TopEdge& edge, Length twiceMiddle) {
  for (FaceVertex& corner : edge) corner.u = twiceMiddle - corner.u;
  std::reverse(edge.begin(), edge.end());
}

class Gatherer {
 public:
  Gatherer(const Job& job, const std::vector<const WallLayout*>& layouts) : job_(job), layouts_(layouts) {}

  std::vector<SharePiece> all() {
    for (std::size_t wall = 0; wall < layouts_.size(); ++wall) {
      for (std::size_t piece = 0; piece < layouts_[wall]->pieces.size(); ++piece)
        add({static_cast<int>(wall), static_cast<int>(piece)});
    }
    joinCut();
    return std::move(pieces_);
  }

 private:
  void add(const PieceRef& ref) {
    const WallLayout& layout = *layouts_[static_cast<std::size_t>(ref.wall)];
    const Piece& piece = layout.pieces[static_cast<std::size_t>(ref.piece)];
    const SheetRun& run = layout.runs.at(static_cast<std::size_t>(piece.run));
    const Module& module = run.modules.at(static_cast<std::size_t>(piece.module));
    SharePiece share;
    share.ref = ref;
    share.sheet = sheetClassOf(job_, layout, piece);
    const Wall& wall = *byLetter(job_.walls, layout.letter);
    share.profile = byId(job_.profiles, share.sheet.profile);
    share.mayShare = reaches(wall) && !module.hung;
    share.mayTurn = isTurnable(*share.profile) && !wall.bands[static_cast<std::size_t>(run.band)].directionalFinish;
    share.rightToLeft = layout.direction.hand == Hand::RightToLeft;
    share.height = piece.top - piece.bottom;
    share.needed = share.height;
    if (piece.rake && wall.rakeCut == RakeCut::InPlace) share.needed += job_.settings.rakeAllowance;
    share.alone = share.profile->lengths.stocked.empty() ? piece.blankLength : share.needed;
    share.bought = boughtLength(share.profile->lengths, share.needed);
    if ((share.mayShare || !job_.facts.orders.empty()) && piece.rake && piece.lowerEndFactory &&
        wall.rakeCut == RakeCut::BeforeHanging)
      share.rake = topEdge(piece);
    share.rises = !share.rake.empty() && rises(share.rake);
    lay(share, piece, module);
    pieces_.push_back(std::move(share));
  }

  // Sheets off the shelf give whole blanks end to end; those are held together where they are bought.
  void joinCut() {
    std::map<PieceRef, SharePiece*> byRef;
    for (SharePiece& share : pieces_) byRef[share.ref] = &share;
    int number = 0;
    for (const CutSheet& sheet : cutSheets(job_, layouts_)) {
      ++number;
      for (const PieceRef& ref : sheet.pieces) {
        SharePiece& share = *byRef.at(ref);
        if (!share.profile->lengths.stocked.empty()) continue;
        share.cutWith = number;
        share.cutFrom = sheet.length;
      }
    }
  }

  // From the wall face to the blank.
  static void lay(SharePiece& share, const Piece& piece, const Module& module) {
    if (share.rightToLeft) {
      share.left = module.startLine - piece.right;
      share.right = module.startLine - piece.left;
      mirrorAbout(share.rake, module.startLine);
    } else {
      share.left = piece.left - module.startLine;
      share.right = piece.right - module.startLine;
      for (FaceVertex& corner : share.rake) corner.u -= module.startLine;
    }
  }

  bool reaches(const Wall& wall) const {
    const Sharing::Reach reach = job_.settings.sharing.reach;
    return reach == Sharing::Reach::On || (reach == Sharing::Reach::PerWall && wall.shares);
  }

  bool isTurnable(const Profile& profile) {
    const auto [known, isNew] = turnable_.try_emplace(profile.id);
    if (isNew) known->second = sectionOf(profile).turnable;
    return known->second;
  }

  const Job& job_;
  const std::vector<const WallLayout*>& layouts_;
  std::map<std::string, bool> turnable_;
  std::vector<SharePiece> pieces_;
};

}  // namespace

std::vector<SharePiece> sharePieces(const Job& job, const std::vector<const WallLayout*>& layouts) {
  return Gatherer(job, layouts).all();
}

SharePiece turned(const SharePiece& piece) {
  const Length edges = piece.profile->cover + piece.profile->under - piece.profile->over;
  SharePiece made = piece;
  made.left = edges - piece.right;
  made.right = edges - piece.left;
  mirrorAbout(made.rake, edges);
  return made;
}

}  // namespace ribwright
