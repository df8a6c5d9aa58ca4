#include "ui/session/font_list.h"

#include <fontconfig/fontconfig.h>

namespace ribwright {

std::future<void> readFontList() {
  return std::async(std::launch::async, [] { FcInit(); });
}

}  // namespace ribwright
