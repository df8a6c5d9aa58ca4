// What the reader of job files refuses, and the words it does it with (core/job/job_file.h).
#include <catch2/catch.hpp>

#include "tests/core/job/job_file_faulty.h"

namespace ribwright {

TEST_CASE("plans, roofs and walls without a meaning") {
  const std::vector<FaultyFile> files = {
      {"two corners",
       jobOf(R"("building": {"outline": [{"x": "0'", "y": "0'"}, {"x": "9'", "y": "0'"}]})"),
       {R"(building.outline: has 2 of the corners; it needs at least 3, or none)"}},
      {"clockwise",
       jobOf(R"("building": {"outline": [{"x": "0'", "y": "0'"}, {"x": "0'", "y": "9'"}, {"x": "9'", "y": "0'"}]})"),
       {R"(building.outline: runs clockwise or goes around nothing; list the corners counter-clockwise)"}},
      {"point without y",
       jobOf(R"("building": {"outline": [{"x": "0'"}]})"),
       {R"(building.outline[0].y: is missing: to the north in the plan's grid)"}},
      {"ridge stated twice",
       jobOf(
           R"("building": {"roof": {"kind": "gable", "eave": "12'", "ridge_height": "16'", "slope": "4:12", "far_eave": "10'", "far_slope": "3:12"}})"),
       {R"(building.roof.ridge_height: stands beside slope, and each gives the ridge; state one of them)",
        R"(building.roof.far_eave: stands beside far_slope, and each gives the other side; state one of them)"}},
      {"a roof like a needle",
       jobOf(
           R"("building": {"roof": {"kind": "gable", "eave": "12'", "ridge_height": "16'", "ridge_at": "0.001 mm"}})"),
       {R"(building.roof.ridge_at: makes a roof steeper than 1000 in 1; put the ridge farther from the first side)"}},
      {"letters and ids twice",
       wallOf(
           R"("girts": [{"id": "g", "height": "1'"}, {"id": "g", "height": "2'"}]}, {"letter": "A", "bands": [{}], "openings": [{"id": "W", "width": "1'", "height": "1'"}, {"id": "W", "width": "1'", "height": "1'"}])"),
       {R"(walls[0].girts[1].id: "g" is taken already by girts[0]; each needs its own)",
        R"(walls[1].openings[1].id: "W" is taken already by openings[0]; each needs its own)",
        R"(walls[1].letter: "A" is taken already by walls[0]; each needs its own)"}},
      {"no band",
       jobOf(R"("walls": [{"letter": "A"}, {"letter": "B", "bands": []}, {"letter": "C", "cladding": "open"}])"),
       {R"(walls[0].bands: is missing or empty; a sheeted wall has at least one band, [{}] if no profile is chosen yet)",
        R"(walls[1].bands: is missing or empty; a sheeted wall has at least one band, [{}] if no profile is chosen yet)"}},
      {"top turns back, too steep",
       wallOf(
           R"("top": [{"u": "0'", "z": "1'"}, {"u": "5'", "z": "2'"}, {"u": "4'", "z": "2'"}, {"u": "4.00001'", "z": "20'"}])"),
       {R"(walls[0].top[3].z: makes a slope steeper than 1000 in 1; for a step write the same u twice)",
        R"(walls[0].top[2].u: lies left of the point before; list the points from left to right)"}},
      {"joints",
       wallOf(R"("expansion_joints": ["20'", "20'", "0'"])"),
       {R"(walls[0].expansion_joints[2]: "0'" is out of range; it may be more than 0, at most 10 km)",
        R"(walls[0].expansion_joints[1]: does not lie right of the joint before; list them from left to right)"}},
      {"steps",
       wallOf(R"("base": {"steps": [{"u": "10'", "z": "-1'"}, {"u": "10'", "z": "-2'"}]})"),
       {R"(walls[0].base.steps[1].u: does not lie right of the step before; list them from left to right)"}},
      {"line and width",
       wallOf(R"("line": {"from": {"x": "0'", "y": "0'"}, "to": {"x": "0'", "y": "0'"}}, "width": "3'")"),
       {R"(walls[0].line.to: is the same point as from; a wall has a width)",
        R"(walls[0].width: stands beside line, and each gives the width; state one of them)"}},
      {"column not said",
       wallOf(
           R"("openings": [{"id": "W1", "width": "3'", "height": "3'", "place": {"from": "column", "distance": "2'"}}])"),
       {R"(walls[0].openings[0].place.column: is missing; the distance is from a column: say which, 1, 2 ... from the left)"}},
      {"pipe of two diameters",
       wallOf(R"("penetrations": [{"id": "P1", "width": "3\"", "height": "4\""}])"),
       {R"(walls[0].penetrations[0].height: differs from width; both are the diameter of a round one)"}},
      {"module 0, module twice",
       R"({"ribwright": 1, "units": "millimetres", "walls": [{"letter": "A", "bands": [{"translucent": [3, 0]}, {"translucent": [4, 7, 4]}]}]})",
       {R"(walls[0].bands[0].translucent[1]: 0 is out of range; write a whole number from 1 to 1000000)",
        R"(walls[0].bands[1].translucent: names module 4 twice; name it once)"}},
  };
  refusesEach(files);
}

TEST_CASE("profiles, references and facts without a meaning") {
  const std::vector<FaultyFile> files = {
      {"cover no wider than the laps",
       profileOf(
           R"("cover": "2\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}, {"x": "37\"", "y": "0\""}], "thickness": "0.5 mm")"),
       {R"(profiles[0].cover: is no more than over + under; a sheet covers more than its laps)"}},
      {"section does not meet lip and leg",
       profileOf(
           R"("cover": "36\"", "over": "1\"", "under": "1\"", "section": [{"x": "0\"", "y": "0\""}, {"x": "36\"", "y": "0\""}], "thickness": "0.5 mm")"),
       {R"(profiles[0].section[0].x: is 0"; the starting edge stands at minus over: -1")",
        R"(profiles[0].section[1].x: is 3' 0"; the leading edge stands at cover + under: 3' 1")"}},
      {"section of one point",
       profileOf(
           R"("cover": "36\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}], "thickness": "0.5 mm")"),
       {R"(profiles[0].section: needs at least 2 items and has 1)"}},
      {"section turns back",
       profileOf(
           R"("cover": "36\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}, {"x": "20\"", "y": "0\""}, {"x": "10\"", "y": "0\""}, {"x": "37\"", "y": "0\""}], "thickness": "0.5 mm")"),
       {R"(profiles[0].section[2].x: lies left of the point before; list the points from the starting edge to the leading edge)"}},
      {"thickness 0, increment 0",
       profileOf(
           R"("cover": "36\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}, {"x": "37\"", "y": "0\""}], "thickness": "0 mm", "lengths": {"increment": "0\"", "shortest": "20'", "longest": "10'"})"),
       {R"(profiles[0].thickness: "0 mm" is out of range; it may be more than 0, at most 25 mm)",
        R"(profiles[0].lengths.increment: "0"" is out of range; it may be more than 0, at most 10 km)",
        R"(profiles[0].lengths.shortest: is more than longest; exchange them, or state both)"}},
      {"cover of half an inch",
       profileOf(
           R"("cover": "1/2\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}, {"x": "37\"", "y": "0\""}], "thickness": "0.5 mm")"),
       {R"(profiles[0].cover: "1/2"" is out of range; it may be from 1" to 10' 0")"}},
      {"an empty profile",
       jobOf(R"("profiles": [{}])"),
       {R"(profiles[0].id: is missing: named by its dimensions, as rib-36-1.25-at-12)",
        R"(profiles[0].cover: is missing: module line to module line)",
        R"(profiles[0].over: is missing: lip, the starting edge past its module line, over the earlier sheet)",
        R"(profiles[0].under: is missing: leg, the leading edge past its module line, under the next sheet)",
        R"(profiles[0].section: is missing: cross-section from the starting edge to the leading edge)",
        R"(profiles[0].thickness: is missing: base steel, without coating or paint)"}},
      {"names that the job does not hold",
       profileOf(
           R"("cover": "36\"", "over": "1\"", "under": "1\"", "section": [{"x": "-1\"", "y": "0\""}, {"x": "37\"", "y": "0\""}], "thickness": "0.5 mm"}], "patterns": [{"id": "q", "profile": "pp", "rows": [{"screw": "s"}], "stitch_screw": "t"}], "walls": [{"letter": "A", "bands": [{"profile": "P"}], "girts": [{"id": "g1", "height": "1'", "member": "Z"}], "base_angle": {"member": "L"}, "eave_purlin": {"member": "L"}, "rake_angle": {"member": "L"}, "columns": {"member": "W"}, "pattern": "r")"),
       {R"(patterns[0].profile: "pp" is none of this job's profiles; the nearest is "p")",
        R"(patterns[0].stitch_screw: "t" is none of this job's screws; the job holds none)",
        R"(patterns[0].rows[0].screw: "s" is none of this job's screws; the job holds none)",
        R"(walls[0].bands[0].profile: "P" is none of this job's profiles; the nearest is "p")",
        R"(walls[0].girts[0].member: "Z" is none of this job's members; the job holds none)",
        R"(walls[0].base_angle.member: "L" is none of this job's members; the job holds none)",
        R"(walls[0].eave_purlin.member: "L" is none of this job's members; the job holds none)",
        R"(walls[0].rake_angle.member: "L" is none of this job's members; the job holds none)",
        R"(walls[0].columns.member: "W" is none of this job's members; the job holds none)",
        R"(walls[0].pattern: "r" is none of this job's patterns; the nearest is "q")"}},
      {"names are not held against a list that does not read",
       jobOf(
           R"("profiles": 3, "members": [{"id": 3}], "walls": [{"letter": "A", "bands": [{"profile": "p"}], "columns": {"member": "W"}}])"),
       {R"(profiles: is a number; a list in square brackets belongs here)",
        R"(members[0].id: is a number; text in double quotes belongs here)",
        R"(members[0].depth: is missing: depth of the web, outside to outside)",
        R"(members[0].flange: is missing: outside width of the outer flange)",
        R"(members[0].thickness: is missing: thickness of the steel)"}},
      {"stations",
       wallOf(
           R"("survey": {"girts": [{"girt": "g1", "readings": [{"u": "3'", "height": "1'"}, {"u": "3'", "height": "1'", "within": "-1\""}]}, {"girt": "g1"}], "slab": [{"u": "2'", "z": "0\""}, {"u": "1'", "z": "0\""}]})"),
       {R"(walls[0].survey.girts[0].readings[1].within: "-1"" is out of range; it may be from 0 to 10 km)",
        R"(walls[0].survey.girts[0].readings[1].u: does not lie right of the station before; list them from left to right)",
        R"(walls[0].survey.girts[1].girt: "g1" is taken already by girts[0]; each needs its own)",
        R"(walls[0].survey.slab[1].u: does not lie right of the station before; list them from left to right)"}},
      {"hung and ordered",
       jobOf(
           R"("facts": {"hung": [{"mark": "A1"}, {"mark": "A1", "leading_edge": "3'"}], "orders": [{"id": "1", "placed": [{"profile": "p", "thickness": "2'", "length": "0\"", "quantity": -1}]}]})"),
       {R"(facts.hung[0].leading_edge: is missing: measured place of its leading metal edge)",
        R"(facts.orders[0].placed[0].thickness: "2'" is out of range; it may be more than 0, at most 25 mm)",
        R"(facts.orders[0].placed[0].length: "0"" is out of range; it may be more than 0, at most 10 km)",
        R"(facts.orders[0].placed[0].quantity: -1 is out of range; write a whole number from 0 to 1000000)",
        R"(facts.hung[1].mark: "A1" is taken already by hung[0]; each needs its own)"}},
      {"many at once, each told",
       jobOf(
           R"("name": 3, "date": false, "settings": {"kerf": "1/8", "drift": "x", "kurf": 1}, "walls": [{"girts": [{"id": "g1", "height": 7}]}], "silenced": [{}])"),
       {R"(name: is a number; text in double quotes belongs here)",
        R"(date: is true or false; text in double quotes belongs here)",
        R"(settings.drift: "x" is no length; write feet and inches as 7' 6" or millimetres as 2286 mm)",
        R"(settings.kerf: "1/8" has no unit; write feet and inches as 7' 6" or millimetres as 2286 mm)",
        R"(settings.kurf: is no key of this file; the nearest is "kerf")",
        R"(walls[0].letter: is missing: letter of the wall, A for the outline's first edge)",
        R"(walls[0].girts[0].height: 7 is a bare number; write a length as text with its unit, as "7' 6\"" or "2286 mm")",
        R"(walls[0].bands: is missing or empty; a sheeted wall has at least one band, [{}] if no profile is chosen yet)",
        R"(silenced[0].key: is missing: which finding)"}},
  };
  refusesEach(files);
}

}  // namespace ribwright
