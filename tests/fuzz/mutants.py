#!/usr/bin/python3
"""Breaks one rule of the trade at a time and shows that the tests see it.

    tests/fuzz/mutants.py [KIND|NAME ...], of the kinds in KINDS

Each mutant is one change of the source of layout, fastening, cutting or editing, made in a copy of the tree; the tests of its floor and those
above it and the properties over random buildings are built and run against it. A mutant that no test fails on is an error
(exit 1).
"""
import pathlib
import shutil
import subprocess
import sys
import tempfile

# name, file, what stands there (exactly once), what the mutant says instead
SHEETS = [
    ("lip forgotten", "core/layout/sheet_run.cpp", "module.wholeFrom = line - rules.over;", "module.wholeFrom = line;"),
    ("leg forgotten", "core/layout/sheet_run.cpp", "module.wholeTo = module.lead + rules.under;", "module.wholeTo = module.lead;"),
    ("ties rounded up", "core/layout/height_line.cpp", "roundHalfEven(rise * along, run)", "roundHalfEven(2 * rise * along + 1, 2 * run)"),
    ("slope measured from the left", "core/layout/height_line.cpp", "const FaceVertex& low = a.z < b.z ? a : b;\n  const FaceVertex& high = a.z < b.z ? b : a;",
     "const FaceVertex& low = a;\n  const FaceVertex& high = b;"),
    ("jamb clearance inward", "core/layout/cut_regions.cpp", "left - jamb, right + jamb", "left + jamb, right - jamb"),
    ("door stops at the concrete", "core/layout/cut_regions.cpp", "cut.reachesFloor = opening.sill <= face.concrete.highest(left, right);",
     "cut.reachesFloor = face.width < Length();"),
    ("both legs cut away", "core/layout/legs.cpp", "if (!bare) strips.push_back(candidate);", "(void)bare;\n    strips.push_back(candidate);"),
    ("no leg cut away", "core/layout/run_layout.cpp", "face_.strips = legStrips(face_.modules, straight_);", "face_.strips.clear();"),
    ("start where the wind comes from", "core/layout/hang_direction.cpp", "Angle::degrees(180).microdegrees", "Angle::degrees(0).microdegrees"),
    ("work away from the sight point", "core/layout/hang_direction.cpp", "if (fartherLeft * 100 > tie) return Hand::LeftToRight;\n  if (fartherLeft * 100 < -tie) return Hand::RightToLeft;",
     "if (fartherLeft * 100 > tie) return Hand::RightToLeft;\n  if (fartherLeft * 100 < -tie) return Hand::LeftToRight;"),
    ("blank without the increment", "core/layout/pieces.cpp", "roundUp(piece.top - piece.bottom + allowance, rules.increment)",
     "piece.top - piece.bottom + allowance"),
    ("one full sheet too many between equal rips", "core/layout/start_offset.cpp", "wholeTimes(length, cover) - 1)", "wholeTimes(length, cover))"),
    ("hung edge taken for the module line", "core/layout/sheet_run.cpp", "measured->second - rules.under - rules.cover", "measured->second - rules.cover"),
    ("upper sheet ends on the row", "core/layout/end_laps.cpp", "const Length end = row - laps.endBelowRow;", "const Length end = row;"),
    ("sheets of a run numbered from the corner they end at", "core/layout/lay_out_wall.cpp", "rightward ? i : limits.size() - 2 - i", "rightward ? i : i"),
]
SCREWS = [
    ("a neighbour's edge may be bitten", "core/fastening/run_screws.cpp", "metal.nearEdge = metal.nearEdge || standing.nearEdge;",
     "metal.nearEdge = metal.nearEdge || (standing.nearEdge && m == place.module);"),
    ("one diameter from an edge", "core/fastening/chosen_pattern.cpp", "return screw.diameter + (screw.diameter - half(screw.diameter));", "return screw.diameter;"),
    ("washer forgotten at a bend", "core/fastening/seats.cpp", "const Length clear = washer - half(washer) + kFromBend;", "const Length clear = kFromBend;\n  (void)washer;"),
    ("drift of the drill forgotten", "core/fastening/run_screws.h", "return fromEdge(screwOf(line)) + job_.settings.drift;", "return fromEdge(screwOf(line));"),
    ("the sheet on top owns the screw", "core/fastening/run_screws.cpp", "if (owner == through.end()) --owner;", "owner = through.end() - 1;"),
    ("holes of two rows do not merge", "core/fastening/taken_holes.cpp", "if (!sameRow(hole, other)) return Near::Other;", "if (!sameRow(hole, other)) near = Near::SameRow;"),
    ("corner pattern only well inside the zone", "core/fastening/run_sheets.cpp", "(left < cornerZone && right > Length())", "(right <= cornerZone && right > Length())"),
    ("jamb screws in the middle of the flange, rib or not", "core/fastening/jamb_places.cpp", "std::clamp(zone.middle, flat.from, flat.to)",
     "std::clamp(zone.middle, std::min(zone.middle, flat.from), std::max(zone.middle, flat.to))"),
    ("margins on a rake measured upright", "core/fastening/upright_margin.cpp", "if (rise == 0 || margin <= Length()) return margin;", "if (rise >= 0 || margin <= Length()) return margin;"),
    ("girts pass behind the jambs", "core/fastening/supports.cpp", "inTheWay.push_back(inTheWayOf(supports.jambs.back(), cut));", "(void)inTheWayOf(supports.jambs.back(), cut);"),
    ("stitch rows do not see structural screws", "core/fastening/stitch_places.cpp", "if (z > fixed.back() && z < part.high) fixed.push_back(z);", "if (z < fixed.front()) fixed.push_back(z);"),
    ("girts' free ends forgotten", "core/fastening/support_places.cpp", "if (stretch.endsAtTo && u > stretch.to - margin) return false;", ""),
    ("end laps take the girt's pattern", "core/fastening/support_places.cpp", "place.kind = lap ? HoleKind::EndLap : kindOf(row_.kind);", "place.kind = kindOf(row_.kind);"),
    ("nested girts keep the first one's face", "core/fastening/girt_rows.cpp", "joined->low = std::max(joined->low, girt.face.low);", ""),
]
BATCHES = [
    ("a stick check counts as its middle", "core/fastening/measured_faces.cpp", "reading.within.value_or(Length())", "Length()"),
    ("a girt goes on as at its last station", "core/fastening/measured_faces.cpp", "if (!line || u < line->from || u > line->to) return std::nullopt;",
     "if (!line) return std::nullopt;"),
    ("the steel may be anywhere in a stick check", "core/fastening/measured_faces.cpp", "return {low + shift->most, high + shift->least, true, false};",
     "return {low + shift->least, high + shift->most, true, false};"),
    ("a face is as it was planned", "core/fastening/measured_faces.cpp", "  const MeasuredFace own = moved(face.low, face.high, shift);",
     "  const MeasuredFace own = moved(face.low, face.high, Shift{});"),
    ("the base stands where it was planned", "core/fastening/measured_faces.cpp", "ofSlab(hole.u));", "std::nullopt);"),
    ("of nested girts the first one counts", "core/fastening/measured_faces.cpp", "    common->high = std::min(common->high, own.high);", ""),
    ("margins forgotten on a measured face", "core/fastening/stack_holes.cpp", "noLimit : on.low + margin - piece.bottom", "noLimit : on.low - piece.bottom"),
    ("an eave purlin needs no measuring", "core/fastening/stack_holes.cpp", "(hole.kind == HoleKind::Eave && face && !face->surveyed)", "(face && face->upright && face->low > face->high)"),
    ("sheets under a lap are drilled too", "core/fastening/stack_holes.cpp", "sheet == hole.upper || both", "sheet == hole.upper || both || !inPlace"),
    ("a row is not rounded", "core/fastening/drill_batches.cpp", "const Length s = step * static_cast<std::int64_t>(roundHalfEven(twice, 2 * Int128(step.nanometres())));",
     "const Length s = Length::nanometres(static_cast<std::int64_t>(twice / 2));"),
    ("a row lies at the upper end of what is allowed", "core/fastening/drill_batches.cpp", "Int128((room.low + room.high + twiceOff).nanometres())", "2 * Int128(room.high.nanometres())"),
    ("sheets join whether their rows hold or not", "core/fastening/drill_batches.cpp", "return agreed && allHold(sheet);", "return agreed;"),
    ("a hole more does no harm", "core/fastening/drill_batches.cpp", "      if (!same && meets(hole, b)) return false;", "      if (!same && meets(hole, b)) return true;"),
    ("notches are cut before drilling", "core/fastening/drill_batches.cpp", "    return standing.inside || standing.nearEdge;", "    return standing.inside || !standing.inside;"),
    ("ripped sheets are stacked with whole ones", "core/fastening/drill_batches.cpp", "return startOf(a) == startOf(b) && isClear", "return isClear"),
    ("a stack is as high as it likes", "core/fastening/drill_batches.cpp", "if (batch.pieces.size() >= static_cast<std::size_t>(limit_)) return false;", ""),
    ("shortest lowest", "core/fastening/drill_batches.cpp", "return lengthOf(a) > lengthOf(b);", "return lengthOf(a) < lengthOf(b);"),
    ("a fallen confirmation counts", "core/fastening/batch_reasons.cpp", "look.job.screws) == Confirmed::Yes", "look.job.screws) != Confirmed::No"),
    ("the chalk line may be anywhere", "core/fastening/batch_reasons.cpp", "if (!atLine || !look.wall.survey.chalkLine) return;", "if (!atLine || look.wall.survey.chalkLine) return;"),
    ("unstated steel is cleared", "core/fastening/batch_reasons.cpp", "if (!byId(look.job.members, stated.member))", "if (stated.id.empty())"),
    ("moved rows keep no distance from screws", "core/fastening/crowded_rows.cpp", "if (u * u + up * up < Int128(limit.nanometres()) * limit.nanometres()) return false;",
     "if (u * u + up * up < 0 * limit.nanometres()) return false;"),
    ("moved rows keep no distance from edges", "core/fastening/crowded_rows.cpp", "if (standing.nearEdge || standing.inside != through) return false;",
     "if (standing.inside != through) return false;"),
    ("a clip's slot has no end", "core/fastening/batch_remedies.cpp", "return girt.clipSlot && by <= *girt.clipSlot && by <= mostGirtMove;", "return girt.clipSlot && by <= mostGirtMove;"),
    ("a stop holds nothing but what it names", "core/fastening/batch_stops.cpp", "if (ofSheet && !names(stop.mark, batch, layout)) continue;", "if ((ofSheet || !ofSheet) && !names(stop.mark, batch, layout)) continue;"),
    ("the drill does not drift", "core/fastening/stack_holes.cpp", " + job_.settings.drift;", ";"),
    ("margins forgotten at a face's upper edge", "core/fastening/stack_holes.cpp", "on.high - margin - piece.bottom", "on.high - piece.bottom"),
    ("rows are rounded up", "core/fastening/drill_batches.cpp", "const Length s = step * static_cast<std::int64_t>(roundHalfEven(twice, 2 * Int128(step.nanometres())));",
     "const Length s = roundUp(Length::nanometres(static_cast<std::int64_t>(twice / 2)), step);"),
    ("half of an odd nanometre is lost", "core/fastening/drill_batches.cpp", "Int128((room.low + room.high + twiceOff).nanometres())", "2 * Int128((room.low + half(room.high - room.low)).nanometres())"),
    ("a stack ends one sheet early", "core/fastening/drill_batches.cpp", "batch.pieces.size() >= static_cast<std::size_t>(limit_)", "batch.pieces.size() + 1 >= static_cast<std::size_t>(limit_)"),
    ("sheets join one that does not hold", "core/fastening/drill_batches.cpp", "    if (!allHold(batch.pieces.front())) return false;\n", ""),
    ("a sheet agrees with the last one alone", "core/fastening/drill_batches.cpp", "std::all_of(batch.pieces.begin(), batch.pieces.end(), [&](std::int32_t other)",
     "std::all_of(batch.pieces.end() - 1, batch.pieces.end(), [&](std::int32_t other)"),
    ("sheets that hang are drilled", "core/fastening/drill_batches.cpp", " && !isHung(layout_.pieces[i])", " && (isHung(layout_.pieces[i]) || !pieces_.empty())"),
    ("a girt stands as at its first station", "core/fastening/measured_faces.cpp", "line->least.heightAt(u, Beside::Right), line->most.heightAt(u, Beside::Right)",
     "line->least.heightAt(line->from, Beside::Right), line->most.heightAt(line->from, Beside::Right)"),
    ("a step at the corner hides the chalk line", "core/fastening/batch_reasons.cpp", "overhang && isLevel(look.layout.face.bottom)", "overhang && look.wall.base.steps.empty()"),
    ("unmeasured walls are not looked at for crowding", "core/fastening/batch_reasons.cpp", "return batch.isCleared() ||", "return"),
    ("nobody is told to measure", "core/fastening/batch_remedies.cpp", "      add(What::Measure);\n", "      (void)What::Measure;\n"),
    ("a screw line is one for the whole wall", "core/checks/batch_checks.cpp", "lines[{hole.row, static_cast<std::size_t>(bay)}]", "lines[{hole.row, static_cast<std::size_t>(bay * 0)}]"),
    ("crooked is what is off by twice the limit", "core/checks/batch_checks.cpp", "if (absolute(off) <= look.job.settings.straightness) continue;", "if (absolute(off) <= look.job.settings.straightness * 2) continue;"),
]
SURVEY = [
    ("a zed bends about its web's line alone", "core/fastening/member_properties.cpp",
     "return properties.weak - properties.product * properties.product / properties.strong;", "return properties.weak;"),
    ("corners are square", "core/fastening/member_properties.cpp", "member.bendRadius.inMillimetres() + sizes.t / 2;", "sizes.t / 2;"),
    ("a span forgets its neighbour", "core/fastening/continuous_beam.cpp", "moments[i] -= upper[i] * moments[i + 1];", "moments[i] -= 0 * upper[i];"),
    ("three spans go by the formula of two", "core/fastening/girt_sag.cpp", "return .0069 * whole;", "return whole / 185;"),
    ("flush girts run on over columns", "core/fastening/girt_spans.cpp", "setting == GirtSetting::Bypass", "setting != GirtSetting::Flush || !girt.parts.empty()"),
    ("the jambs of windows hold girts", "core/fastening/girt_spans.cpp", "return cut && cut->reachesFloor;", "return cut != nullptr;"),
    ("laps carry nothing on", "core/fastening/girt_spans.cpp", "other.to > other.from && share(part, other);", "other.to > other.from && other.girts == part.girts;"),
    ("props make no difference", "core/checks/sag_checks.cpp", "look.wall.survey.propsInPlace || ", ""),
    ("the chalk line is rounded up", "core/fastening/chalk_snaps.cpp", "one.line = step * wholeTimes(one.lowest - asked, step);", "one.line = roundUp(one.lowest - asked, step);"),
    ("sheets cover the slab edge under doors", "core/fastening/chalk_snaps.cpp", "if (!cut.reachesFloor) continue;", "if (cut.id.empty() || !cut.reachesFloor || cut.left < cut.right) continue;"),
    ("the ledge lies at the lowest edge", "core/fastening/chalk_snaps.cpp", "one.line < highest - base.depth;", "one.line < highest - highest + one.lowest - base.depth;"),
    ("the stated chalk line does not count", "core/fastening/chalk_snaps.cpp", "wall.survey.chalkLine && wall.base.steps.empty()", "wall.survey.chalkLine && !wall.base.steps.empty()"),
    ("blanks have nothing to spare", "core/fastening/chalk_snaps.cpp", "needed - piece.blankLength", "needed - (piece.top - piece.bottom)"),
    ("a wall leans the other way", "core/fastening/squareness.cpp", "half(sum - difference)", "half(difference - sum)"),
    ("a wall may lean twice as far", "core/fastening/squareness.cpp", "scaled(height, 1, 480)", "scaled(height, 1, 240)"),
]
EDITS = [
    ("an opening is anchored by its jamb wherever it was by its centre", "core/editing/anchor_places.cpp", "if (anchor.to == Anchor::To::Centre) return left + half(width);", ""),
    ("distances from the right corner grow to the right", "core/editing/anchor_places.cpp", "anchor.distance += stated.from == Anchor::From::RightCorner ? -onward : onward;", "anchor.distance += onward;"),
    ("anchored from the first column, not the nearest", "core/editing/anchor_places.cpp", "absolute(u - column) >= absolute(anchor.distance)", "absolute(u - column) >= Length()"),
    ("a door stands where the drag ended", "core/editing/opening_edits.cpp", "box.bottom = floor.value();", ""),
    ("the edge across moves along", "core/editing/face_box.cpp", "(edge.across < 0 ? box.left : box.right) = to.u;", "(edge.across < 0 ? box.right : box.left) = to.u;"),
    ("a round pipe grows to one side", "core/editing/penetration_edits.cpp", "std::max(across, up)) * 2;", "std::max(across, up)) * 1;"),
    ("numbers of ids are used again", "core/editing/next_ids.cpp", "joined(letters_, highest_ + 1)", "joined(letters_, highest_)"),
    ("a girt is given the readings of one that was deleted", "core/editing/next_ids.cpp", "for (const GirtSurvey& survey : of.survey.girts) highest.look(survey.girt);", ""),
    ("readings stay with the left part", "core/editing/girt_survey_edits.cpp", "[u](const GirtReading& reading) { return reading.u > u; }", "[u](const GirtReading& reading) { return reading.u > u * 1000; }"),
    ("two readings at one station become one", "core/editing/girt_survey_edits.cpp", "return a.u == b.u;", "return a.u > b.u;"),
    ("girts of other heights are joined", "core/editing/girt_edits.cpp", "like.id = a.id;", "like.id = a.id;\n  like.height = a.height;"),
    ("a girt is cut only up to the left jamb", "core/editing/girt_edits.cpp", "return cutOut(job, wall, *girt, left, right);", "return cutOut(job, wall, *girt, left, left);"),
    ("what is anchored from a column always follows", "core/editing/column_edits.cpp", "if (anchored == Anchored::Stay && columnAt(was, anchor.column)) restate", "if (anchored == Anchored::Stay && columnAt(was, 99'999)) restate"),
    ("columns are not counted anew when one is added", "core/editing/column_edits.cpp", "anchor.column += anchor.column >= number ? 1 : 0;", "anchor.column += anchor.column >= number ? 0 : 0;"),
    ("columns are not counted anew when one goes", "core/editing/column_edits.cpp", "--anchor.column;", "anchor.column -= 0;"),
    ("a column passes another", "core/editing/column_edits.cpp", "if (places[i] > places[i - 1]) continue;", "if (places[i] != places[i - 1]) continue;"),
    ("the start is measured from the left, whichever hand", "core/editing/run_edits.cpp", "rest(frame.toHanging(u), profile->cover)", "rest(((void)frame, u - of.left), profile->cover)"),
    ("the wall's start is typed for a band's own", "core/editing/run_edits.cpp", "next.bands[band].start ? *next.bands[band].start : next.start", "next.bands[band].start && u < Length() ? *next.bands[band].start : next.start"),
    ("a joint stands off the wall", "core/editing/run_edits.cpp", "if (joint > Length() && joint < width.value()) return std::nullopt;", "if (joint >= Length()) return std::nullopt;"),
    ("a band's limit passes the next", "core/editing/run_edits.cpp", "if (z > low && z < high) return std::nullopt;", "if (z > low) return std::nullopt;"),
    ("the lowest band keeps a limit", "core/editing/run_edits.cpp", "next.bands.front().from.reset();", ""),
    ("points are put in at the right end", "core/editing/outline_edits.cpp", "return one.u > at.u; }", "return one.u > at.u * 1000; }"),
    ("a window that is chosen with its column goes twice as far", "core/editing/part_edits.cpp", "const auto box = openingBox(first, on, *byId(on.openings, part.id));", "const auto box = openingBox(job, job.walls[wall], *byId(job.walls[wall].openings, part.id));"),
    ("what is measured from a deleted column follows", "core/editing/part_edits.cpp", "columnRemoved(now, wall, number, Anchored::Stay)", "columnRemoved(now, wall, number, Anchored::Follow)"),
    ("copies go the other way from the right corner", "core/editing/wall_things.cpp", "anchor.distance += anchor.from == Anchor::From::RightCorner ? -du : du;", "anchor.distance += du;"),
    ("the bay that has the first one is filled again", "core/editing/bay_steps.cpp", "if (bay == own) continue;", ""),
    ("across the building left stays left", "core/editing/mirrored_across.cpp", "across.from = left ? Anchor::From::RightCorner : Anchor::From::LeftCorner;", "across.from = left ? Anchor::From::LeftCorner : Anchor::From::RightCorner;"),
    ("across the building a window is a width off", "core/editing/mirrored_across.cpp", "(centre ? Length() : thick)", "(centre ? thick : Length())"),
    ("any four corners are a rectangle", "core/editing/mirrored_across.cpp", "way(p[0], p[1]) != way(p[3], p[2])", "p.empty()"),
    ("members stay behind", "core/editing/copied_parts.cpp", "if (!known) job.members.push_back(*brought);", ""),
    ("a column that the wall has not is kept", "core/editing/copied_parts.cpp", "stated.from != Anchor::From::Column || columnAt(wall.columns, stated.column)", "stated.from != Anchor::From::Column || stated.column > 0"),
    ("a girt stops at its corner", "core/editing/dragged.cpp", "on ? std::nullopt : std::optional<Length>(u)", "std::optional<Length>(on ? u : u)"),
    ("the nearest thing wins, whatever it is", "core/editing/snaps.cpp", "std::tuple(snap.to.kind, absolute(snap.by),", "std::tuple(absolute(snap.by), snap.to.kind,"),
    ("what is dragged is snapped to", "core/editing/snap_candidates.cpp", "if (!found || isLeftOut(id)) return;", "if (!found) return;"),
    ("the unit is fine at every zoom", "core/editing/snaps.cpp", "return fine >= reach * unitsInReach ? fine : coarse;", "return fine >= reach ? fine : coarse;"),
    ("a pipe above is a neighbour", "core/editing/neighbours.cpp", "if (is.top <= box_.bottom || is.bottom >= box_.top) return;", ""),
    ("a girt that ends before is a neighbour", "core/editing/neighbours.cpp", "reach.from < box_.right && reach.to > box_.left", "reach.from < box_.right"),
    ("what is typed goes to the right", "core/editing/typed_drag.cpp", "return pointer < start ? start - length : start + length;", "return pointer < start ? start + length : start + length;"),
    ("while moving, the other way follows the pointer", "core/editing/typed_drag.cpp", "typed.main && drag == DragFor::Moving ? from : to", "typed.main && drag == DragFor::Drawing ? from : to"),
    ("sheets of another length count twice", "core/editing/order_changes.cpp", "std::max(gone, come)", "gone + come"),
    ("sheets that are cut otherwise are not lit", "core/editing/order_changes.cpp", "a.blankLength == b.blankLength && a.rings == b.rings", "a.blankLength == b.blankLength"),
    ("ranges of lengths are not held", "core/editing/table_faults.cpp", "if (holds(range, length)) return;", "if (holds(range, length) || length > Length()) return;"),
    ("rules between members are not held", "core/editing/table_faults.cpp", "faults_.push_back({pathOf(at), std::string(message)});", "(void)at;\n  (void)message;"),
    ("items are kept anew in every state", "core/editing/kept_list.h", "return same == like.end() ? std::make_shared<const Item>(item) : *same;", "(void)same;\n  return std::make_shared<const Item>(item);"),
    ("an opening that stays is kept again", "core/editing/kept_list.h", "if (like && isKept(items, like)) return like;", ""),
]
SHARING = [
    ("a rake pair without its kerf", "core/cutting/rake_fit.cpp", "most + *apart", "most"),
    ("the kerf of a slope measured upright", "core/cutting/rake_fit.cpp", "(steepest.run * steepest.run + steepest.rise * steepest.rise)", "(steepest.run * steepest.run)"),
    ("heights on a rake rounded down", "core/cutting/rake_fit.cpp", "(above + run - 1) / run", "above / run"),
    ("hung sheets share", "core/cutting/share_piece.cpp", "reaches(wall) && !module.hung", "reaches(wall)"),
    ("every wall shares", "core/cutting/share_piece.cpp", "reach == Sharing::Reach::PerWall && wall.shares", "reach == Sharing::Reach::PerWall"),
    ("what does not lap turned is turned", "core/cutting/pair_ways.cpp", "if (turning && !mayTurn()) return;", ""),
    ("a finish with a direction is turned", "core/cutting/share_piece.cpp", " && !wall.bands[static_cast<std::size_t>(run.band)].directionalFinish", ""),
    ("the ridge pairs", "core/cutting/top_edge.cpp", "return up != down;", "return up || down;"),
    ("cut lower ends pair", "core/cutting/share_piece.cpp", "piece.rake && piece.lowerEndFactory &&\n        wall", "piece.rake &&\n        wall"),
    ("rakes cut in place pair", "core/cutting/share_piece.cpp", " &&\n        wall.rakeCut == RakeCut::BeforeHanging)", ")"),
    ("slopes of either way pair", "core/cutting/pair_ways.cpp", " || first_.rises != second_.rises) return;", ") return;"),
    ("rips without a kerf between", "core/cutting/pair_ways.cpp", "first_.right + settings_.kerf <= second.left", "first_.right <= second.left"),
    ("a turned part keeps its end", "core/cutting/share_blanks.cpp", "part.upsideDown = !part.upsideDown;", ""),
    ("turned about the module line", "core/cutting/share_piece.cpp", "piece.profile->cover + piece.profile->under - piece.profile->over", "piece.profile->cover"),
    ("longer than it is made", "core/cutting/pair_ways.cpp", " || bought > longestBought(lengths_)", ""),
    ("other classes share", "core/cutting/share_blanks.cpp", "classes[piece.sheet].push_back", "classes[SheetClass{piece.sheet.profile, {}, {}}].push_back"),
    ("the allowance forgotten", "core/cutting/share_piece.cpp", "share.needed += job_.settings.rakeAllowance;", ""),
    ("a drop without its kerf", "core/cutting/share_blanks.cpp", "from = blank.length + kerf;", "from = blank.length;"),
    ("gangs without kerfs", "core/cutting/gangs.cpp", "list.kerf = kerf.nanometres();", "(void)kerf;"),
    ("what hangs from the upper end stays behind", "core/cutting/blank_cuts.cpp", "part.to == blank.length", "part.to == bought"),
    ("the fewest blanks forgotten", "core/cutting/lowest_pairs.cpp", "(saving.saved / common * ranks + 1) * scale", "(saving.saved / common * ranks) * scale"),
    ("the highest marks", "core/cutting/lowest_pairs.cpp", "std::sort(partners.begin(), partners.end());", "std::sort(partners.rbegin(), partners.rend());"),
    ("ranks of the highest marks", "core/cutting/lowest_pairs.cpp", "count() - saving.b : 0", "saving.b : 0"),
    ("no odd rounds", "core/cutting/equal_pairs.cpp", "    shrink(from, to);\n", "    return;\n"),
    ("odd sets overlooked", "core/cutting/lowest_pairs.cpp", "while (!things_.empty() && !found_.oddSets.empty())", "while (things_.empty() && !found_.oddSets.empty())"),
]
ORDER = [
    ("spares are not counted in the choice", "core/takeoff/length_tradeoff.cpp", "return items_[last].length * (std::int64_t(count) + sparesOf(spares_, count));", "return items_[last].length * std::int64_t(count);"),
    ("a part of a spare is no spare", "core/takeoff/length_tradeoff.cpp", "(std::int64_t(count) * spares.percent + 99) / 100", "std::int64_t(count) * spares.percent / 100"),
    ("the highest of equal choices", "core/takeoff/length_tradeoff.cpp", "if (bought < best.bought) best", "if (bought <= best.bought) best"),
    ("one length more that saves nothing", "core/takeoff/length_tradeoff.cpp", "rows[k - 1][0].bought < made.back().bought", "rows[k - 1][0].bought <= made.back().bought"),
    ("chosen lengths below the shortest", "core/takeoff/sold_lengths.cpp", "boughtLength(lengths, blank)", "roundUp(blank, lengths.increment)"),
    ("what is too long is chosen among", "core/takeoff/sold_lengths.cpp", "if (isMade(profile.lengths, blank.length)) ++counts", "++counts"),
    ("no kerf on the shelf", "core/takeoff/sold_lengths.cpp", "list.kerf = kerf.nanometres();", "list.kerf = 0 * kerf.nanometres();"),
    ("a sheet off the shelf goes with what lies lowest in it", "core/takeoff/sold_lengths.cpp", "for (const int blank : sheet.blanks) sheet.first = std::min(sheet.first, firstHung(at(blanks, blank)));", ""),
    ("kept up to the last cut", "core/takeoff/sheet_order.cpp", "sold.length - sold.used - kerf", "sold.length - sold.used"),
    ("every rest is kept", "core/takeoff/sheet_order.cpp", "rest >= job_.settings.leastDrop", "rest >= Length()"),
    ("spares weigh nothing", "core/takeoff/sheet_order.cpp", "line.kilograms = line.quantity() *", "line.kilograms = line.hung() *"),
    ("what is cut to length is called uncut", "core/takeoff/order_codes.cpp", "isUncut(piece, bought)", "isUncut(piece, bought > Length() ? piece.blankLength : bought)"),
    ("doors take nothing from a sheet's end", "core/takeoff/cut_outs.cpp", "sum += cutBelow(layout, piece, cells[from]);", ""),
    ("openings take what is above the wall", "core/takeoff/cut_outs.cpp", "std::max(std::min(ceiling, wallAt), endAt)", "std::max(std::max(ceiling, wallAt), endAt)"),
    ("one spare of a line", "core/takeoff/order_account.cpp", "line.metalWidth * line.length * line.spares", "line.metalWidth * line.length"),
    ("a bundle holds one more", "core/takeoff/bundles.cpp", "< limits_.mostSheets", "<= limits_.mostSheets"),
    ("a bundle is closed when it is too heavy", "core/takeoff/bundles.cpp", "open.kilograms + line(one).kilogramsOfOne() <=", "open.kilograms <="),
    ("a bundle is closed when its lengths are too far apart", "core/takeoff/bundles.cpp", "std::max(open.longest, length) - std::min(open.shortest, length)", "(length, open.longest - open.shortest)"),
    ("what is hung first lies at the bottom", "core/takeoff/bundles.cpp", "return first(a) < first(b);", "return first(b) < first(a);"),
    ("set down before its first sheets", "core/takeoff/bundles.cpp", "std::max(bundle.setDownTo, piece.right)", "bundle.setDownTo"),
]
COST = [
    ("a tie of cents is rounded up", "core/units/money.cpp", "const Int128 rounded = roundHalfEven(exact->above, exact->below);", "const Int128 rounded = (2 * exact->above + exact->below) / (2 * exact->below);"),
    ("cents that are left over are lost", "core/units/money.cpp", "parts[order[i]] += Money::cents(1);", "parts[order[i]] += Money::cents(0);"),
    ("cents that are left over go to the smallest remainders", "core/units/money.cpp", "return rests[a] > rests[b];", "return rests[a] < rests[b];"),
    ("a comma in front of three digits is a group", "core/units/money_reading.cpp", "} else if (groupedBy_ == otherSign()) {", "} else if (groupedBy_ == otherSign() && cents_ < 0) {"),
    ("thickness before colour", "core/takeoff/price_choice.cpp", "(price.colour.empty() ? 0 : 2) + (price.thickness ? 1 : 0)", "(price.colour.empty() ? 0 : 1) + (price.thickness ? 2 : 0)"),
    ("translucent sheets are priced as steel", "core/takeoff/price_choice.cpp", "price.colour.empty() ? thing.colour != translucentColour : price.colour == thing.colour", "price.colour.empty() || price.colour == thing.colour"),
    ("spares cost nothing", "core/takeoff/cost.cpp", "line.quantity = sheets.quantity();", "line.quantity = sheets.hung();"),
    ("a sheet is of its first piece's wall", "core/takeoff/cost_shares.cpp", "for (std::size_t i = 0; i < parts.size(); ++i) shares[parts[i].cell] += divided[i].cents();", "for (const Money& part : divided) shares[parts.front().cell] += part.cents();"),
    ("charges are nobody's", "core/takeoff/cost.cpp", "divide(*line.amount, all, CostKind::Charge, cost_.cells);", "(void)all;"),
    ("what has no price differs by nothing", "core/takeoff/order_difference.cpp", "    sum.reset();", "    (void)sum;"),
    ("the longest sheet is taken first", "core/takeoff/served_needs.cpp", "const auto at = left.lower_bound({needs[need], 0});", "const auto fits = left.lower_bound({needs[need], 0});\n    const auto at = fits == left.end() ? fits : std::prev(left.end());"),
    ("the shortest need is served first", "core/takeoff/served_needs.cpp", "return needs[a] > needs[b]; });", "return needs[a] < needs[b]; });"),
    ("what came short is there", "core/takeoff/placed_sheets.h", "placed - received - missing); }", "placed - received); }"),
    ("spares are bought again", "core/takeoff/delta_order.cpp", "if (!need.marks.empty() || !bought)", "if (!need.marks.empty() || bought || !bought)"),
    ("what hangs waits as all else", "core/takeoff/delta_order.cpp", "std::tuple(!a->hung, a->marks.empty()) < std::tuple(!b->hung, b->marks.empty())", "a->marks.empty() < b->marks.empty()"),
    ("a price that is blank stays", "core/output/price_table.cpp", "read_.taken.push_back(pricedName(price, before_.units));", "taken_.clear();\n    read_.taken.push_back(pricedName(price, before_.units));"),
    ("any lot of the kind is kept", "core/editing/placed_order_edits.cpp", "if (quantity > 0) lots.insert(lots.begin() + at, lot);", "lots.insert(lots.begin() + at, lot);"),
]
TRIM = [
    ("heads without their jamb trims", "core/takeoff/trim_openings.cpp", "right_ - left_ + beyond * 2);", "right_ - left_ + beyond);"),
    ("a door has a sill", "core/takeoff/trim_openings.cpp", "if (!cut_.reachesFloor && sill_ > ", "if (sill_ > "),
    ("one jamb", "core/takeoff/trim_openings.cpp", "{Side::Left, Side::Right}", "{Side::Left}"),
    ("base trim through the doors", "core/takeoff/trim_openings.cpp", "if (across) taken.push_back(", "if (across && z > whole.right) taken.push_back("),
    ("base trim under sheets that hang over", "core/takeoff/trim_runs.cpp", "if (!trimmed) return;", ""),
    ("rakes rounded down", "core/takeoff/trim_runs.cpp", "root * root < square ? root + 1 : root", "root"),
    ("every point of a top begins a piece", "core/takeoff/trim_runs.cpp", "if (last.b != a) return false;", "return false;"),
    ("inside taken for outside", "core/takeoff/trim_corners.cpp", "bend > 0 ?", "bend < 0 ?"),
    ("corners up to the higher top", "core/takeoff/trim_corners.cpp", "std::min(a.top, b.top)}", "std::max(a.top, b.top)}"),
    ("any opening before windows", "core/takeoff/trim_rules.cpp", "if (of == TrimRule::Of::AnyOpening) return 0;", "if (of == TrimRule::Of::AnyOpening) return 3;"),
    ("splices without a lap", "core/takeoff/trim_splices.cpp", "at += one - trim.spliceLap;", "at += one;"),
    ("a stub is cut", "core/takeoff/trim_splices.cpp", "if (lengths.back() < shortestRest) evenLastTwo(lengths);", "(void)evenLastTwo;"),
    ("the head is set before the jambs", "core/takeoff/trim_order.cpp", "return says >= 0;", "return says > 9;"),
    ("cuts without a kerf", "core/takeoff/trim_cuts.cpp", "return at + cut + settings_.kerf;", "return at + cut;"),
    ("a drop is freed without a cut", "core/takeoff/trim_cuts.cpp", "      stick.kerfs += settings_.kerf;\n      stick.drop = drop;", "      stick.drop = drop;"),
    ("the first part of a length is cut each time", "core/takeoff/trim_cuts.cpp", "refs.at(taken_[line]++)", "refs.at(taken_[line])"),
]
# For each kind: its mutants, the programs whose tests must see them, and of the random tests those that look at what they change.
KINDS = {
    "sheets": (SHEETS, ["test_layout", "test_checks", "test_plan", "test_fuzz"], "Two thousand random buildings are laid out*,Runs go on*,Sheets that hang*,A wall*,Best of*"),
    "screws": (SCREWS, ["test_fastening", "test_fuzz"], "*screw*"),
    "batches": (BATCHES, ["test_fuzz", "test_outside", "test_fastening", "test_output"], "*batch*,*stack*,A hole at a station*,A reading pushed*,A row is drilled at the mark*"),
    "survey": (SURVEY, ["test_fastening", "test_output"], ""),
    "edits": (EDITS, ["test_editing", "test_fuzz"], "random edits*"),
    "sharing": (SHARING, ["test_cutting", "test_fuzz"], "Blanks of random*"),
    "order": (ORDER, ["test_takeoff", "test_fuzz"], "Orders*"),
    "trim": (TRIM, ["test_takeoff", "test_fuzz"], "Trim of random*"),
    "cost": (COST, ["test_units", "test_takeoff", "test_output", "test_editing", "test_checks", "test_fuzz"], "costs of random*,two states*,a wall alone*"),
}
RANDOM = {"test_fuzz", "test_outside"}


def run(words, **more):
    return subprocess.run(words, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, **more)


def failing(build, kind):
    """The first program that fails on this tree, or None."""
    for program in KINDS[kind][1]:
        done = run([str(build / "tests" / program), "--abort"] + ([KINDS[kind][2]] if program in RANDOM else []))
        if done.returncode != 0:
            case = [line for line in done.stdout.splitlines() if line.strip()]
            at = next((i for i, line in enumerate(case) if line.startswith("----")), -1)
            return program + ": " + (case[at + 1].strip() if at >= 0 else case[-1])
    return None


def main():
    source = pathlib.Path(__file__).resolve().parents[2]
    asked = set(sys.argv[1:]) or set(KINDS)
    chosen = [(kind,) + m for kind, (mutants, _, _) in KINDS.items() for m in mutants if asked & {kind, m[0]}]
    programs = sorted({program for kind, *_ in chosen for program in KINDS[kind][1]})
    survivors = 0
    with tempfile.TemporaryDirectory() as folder:
        tree, build = pathlib.Path(folder, "tree"), pathlib.Path(folder, "build")
        shutil.copytree(source, tree, ignore=shutil.ignore_patterns(".git", ".build"))
        run(["cmake", "-S", str(tree), "-B", str(build), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Release", "-DRIBWRIGHT_WINDOW=OFF",
             "-DRIBWRIGHT_BENCH=OFF"], check=True)
        unbroken = [(kind, "as it is", None, None, None) for kind in sorted({m[0] for m in chosen})]
        for kind, name, file, there, instead in unbroken + chosen:
            if file:
                path = tree / file
                text = path.read_text()
                if text.count(there) != 1:
                    sys.exit(f"mutant '{name}': {file} holds that text {text.count(there)} times; mend the list")
                path.write_text(text.replace(there, instead))
            built = run(["ninja", "-C", str(build)] + programs)
            if built.returncode != 0:
                sys.exit(f"mutant '{name}' does not build:\n{built.stdout[-3000:]}")
            seen = failing(build, kind)
            if file:
                path.write_text(text)
                print(f"{'caught  ' if seen else 'SURVIVED'}  {name}" + (f"  ({seen})" if seen else ""), flush=True)
                survivors += seen is None
            elif seen:
                sys.exit(f"the tests fail before any mutant: {seen}")
    print(f"{len(chosen) - survivors} of {len(chosen)} mutants caught")
    return 1 if survivors else 0


if __name__ == "__main__":
    sys.exit(main())
