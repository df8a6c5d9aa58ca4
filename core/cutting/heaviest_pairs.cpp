// In C++17 with GNU extensions (see CMakeLists.txt): LEMON's maps are not for C++20, and it asks std::numeric_limits
// whether a weight is whole.
#include "core/cutting/heaviest_pairs.h"

#include <lemon/matching.h>
#include <lemon/smart_graph.h>

#include <limits>
#include <stdexcept>

namespace ribwright {
namespace {

static_assert(std::numeric_limits<PairWeight>::is_integer, "worths are scaled only where weights are whole");

using Graph = lemon::SmartGraph;
using Weights = Graph::EdgeMap<PairWeight>;

template <class Matching>
HeaviestPairs readOf(const Graph& graph, Matching& matching) {
  static_assert(Matching::dualScale == kWorthScale, "worths are told in this scale");
  HeaviestPairs found;
  const int count = graph.nodeNum();
  for (int i = 0; i < count; ++i) {
    const Graph::Node mate = matching.mate(graph.nodeFromId(i));
    found.mate.push_back(mate == lemon::INVALID ? -1 : graph.id(mate));
    found.worths.push_back(matching.nodeValue(graph.nodeFromId(i)));
  }
  for (int blossom = 0; blossom < matching.blossomNum(); ++blossom) {
    if (matching.blossomValue(blossom) <= 0) continue;
    OddSet set;
    set.worth = matching.blossomValue(blossom);
    for (typename Matching::BlossomIt node(matching, blossom); node != lemon::INVALID; ++node)
      set.members.push_back(graph.id(node));
    found.oddSets.push_back(set);
  }
  return found;
}

}  // namespace

HeaviestPairs heaviestPairs(int count, const std::vector<WeightedPair>& pairs, bool everyone) {
  Graph graph;
  graph.reserveNode(count);
  graph.reserveEdge(static_cast<int>(pairs.size()));
  for (int i = 0; i < count; ++i) graph.addNode();
  Weights weights(graph);
  for (const WeightedPair& pair : pairs)
    weights[graph.addEdge(graph.nodeFromId(pair.a), graph.nodeFromId(pair.b))] = pair.weight;
  if (everyone) {
    lemon::MaxWeightedPerfectMatching<Graph, Weights> matching(graph, weights);
    if (!matching.run()) throw std::invalid_argument("not everything can be paired");
    return readOf(graph, matching);
  }
  lemon::MaxWeightedMatching<Graph, Weights> matching(graph, weights);
  matching.run();
  return readOf(graph, matching);
}

}  // namespace ribwright
