// What a drag is called among the edits.
#include "core/editing/anchor_places.h"
#include "core/editing/grips.h"
#include "core/editing/opening_edits.h"
#include "core/editing/part_names.h"
#include "core/editing/penetration_edits.h"
#include "core/job/by_id.h"
#include "core/job/length_style.h"

namespace ribwright {
namespace {

const char* edgeId(BoxEdge edge, bool ofOpening) {
  if (edge.across != 0 && edge.up == 0) {
    if (ofOpening) return edge.across < 0 ? "name.left-jamb" : "name.right-jamb";
    return edge.across < 0 ? "name.left-edge" : "name.right-edge";
  }
  if (edge.up != 0 && edge.across == 0) {
    if (ofOpening) return edge.up < 0 ? "name.sill" : "name.head";
    return edge.up < 0 ? "name.lower-edge" : "name.upper-edge";
  }
  return "";  // a corner has no name of its own
}

Phrase nameOfEdge(const Grip& grip, bool ofOpening) {
  const std::string phrase = edgeId(grip.edge, ofOpening);
  return phrase.empty() ? plainName(grip.id) : namedBy(phrase.c_str(), grip.id);
}

Phrase numberedGrip(const Grip& grip, const char* phrase) {
  return numberedBy(phrase, static_cast<std::int64_t>(grip.index) + 1);
}

// Width and height that an edge leaves; absent: it points nowhere.
Outcome<FaceBox> boxWhenDragged(const Job& job, std::size_t wall, const Grip& grip, const FacePoint& to) {
  const Wall& on = job.walls.at(wall);
  const auto boxIn = [&](const Wall& of) -> Outcome<FaceBox> {
    if (const Opening* opening = grip.kind == Grip::Kind::OpeningEdge ? byId(of.openings, grip.id) : nullptr)
      return openingBox(job, of, *opening);
    if (const Penetration* penetration = byId(of.penetrations, grip.id)) return penetrationBox(job, of, *penetration);
    return Fault{"", "it is not there"};
  };
  const auto edited = grip.kind == Grip::Kind::OpeningEdge ? openingEdgeMovedTo(job, wall, grip.id, grip.edge, to)
                                                           : penetrationEdgeMovedTo(job, wall, grip.id, grip.edge, to);
  return edited ? boxIn(edited.value().walls.at(wall)) : boxIn(on);
}

std::string nameOfEnd(const Job& job, std::size_t wall, const Grip& grip, Length u, const Words& words,
                      const LengthStyle& style) {
  const auto width = faceWidth(job, job.walls.at(wall));
  const bool atCorner = grip.edge.across < 0 ? u == Length() : width && u == width.value();
  const Phrase what = namedBy("name.girt", grip.id);
  if (atCorner) return words.say("edit.end-at-corner", {{"what", what}}, style);
  return words.say("edit.end-at", {{"what", what}, {"at", u}}, style);
}

}  // namespace

Phrase nameOf(const Grip& grip) {
  switch (grip.kind) {
    case Grip::Kind::Opening:
    case Grip::Kind::Penetration:
      return plainName(grip.id);
    case Grip::Kind::OpeningEdge:
      return nameOfEdge(grip, true);
    case Grip::Kind::PenetrationEdge:
      return nameOfEdge(grip, false);
    case Grip::Kind::Girt:
      return namedBy("name.girt", grip.id);
    case Grip::Kind::GirtEnd:
      return namedBy("name.girt-end", grip.id);
    case Grip::Kind::Column:
      return numberedBy("name.column", static_cast<std::int64_t>(grip.index));
    case Grip::Kind::TopPoint:
      return numberedGrip(grip, "name.top-point");
    case Grip::Kind::BaseStep:
      return numberedGrip(grip, "name.base-step");
    case Grip::Kind::ModuleLine:
      return {"name.module-lines"};
    case Grip::Kind::Band:
      return numberedGrip(grip, "name.band-limit");
    case Grip::Kind::Joint:
      return numberedGrip(grip, "name.joint");
  }
  return {};
}

std::string nameOfDrag(const Job& job, std::size_t wall, const Grip& grip, FacePoint to, const Words& words) {
  const LengthStyle style = styleOf(job);
  if (grip.kind == Grip::Kind::OpeningEdge || grip.kind == Grip::Kind::PenetrationEdge) {
    if (const auto box = boxWhenDragged(job, wall, grip, to)) {
      const FaceBox& is = box.value();
      return words.say("edit.resize",
                       {{"what", plainName(grip.id)}, {"width", is.right - is.left}, {"height", is.top - is.bottom}},
                       style);
    }
  }
  if (grip.kind == Grip::Kind::GirtEnd) return nameOfEnd(job, wall, grip, to.u, words, style);
  const Length across = grip.alongU ? absolute(to.u - grip.at.u) : Length();
  const Length up = grip.alongZ ? absolute(to.z - grip.at.z) : Length();
  if (across != Length() && up != Length())
    return words.say("edit.move-both", {{"what", nameOf(grip)}, {"across", across}, {"up", up}}, style);
  return words.say("edit.move", {{"what", nameOf(grip)}, {"by", across + up}}, style);
}

}  // namespace ribwright
