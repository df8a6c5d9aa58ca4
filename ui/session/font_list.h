// The machine's list of fonts, read beside other work.
#pragma once

#include <future>

namespace ribwright {

// Qt reads it (fontconfig's files, some forty) when the first word is measured. Started before QApplication is made,
// which mostly waits for the display, it is there by then. Wait for it before any word is measured: read twice at once,
// it is no gain.
std::future<void> readFontList();

}  // namespace ribwright
