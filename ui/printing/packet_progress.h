// How far long work is, told to whoever waits for it, who may stop it.
#pragma once

#include <functional>

namespace ribwright {

struct PacketProgress {
  // Called before each step, in the thread that works: steps done, and how many there are (0 while that is not known
  // yet). False stops the work before that step. Empty: nobody waits.
  std::function<bool(int done, int of)> step;
};

}  // namespace ribwright
